"""Opening the file: locking, journal, steps of the schema with a backup first, clear errors."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import TYPE_CHECKING, Any

from guidebot.cases.schema import STEPS
from guidebot.errors import StoreError, Where

if TYPE_CHECKING:
    from sqlalchemy import Connection, Engine

BUSY_MS = 5000
"""How long a writer waits for another, in milliseconds."""
WAL_FROM = (3, 51, 3)
"""First SQLite release whose write-ahead log cannot be corrupted by two writers (sqlite.org
changes, 2026-03-13); older ones keep the rollback journal."""


def journal_mode() -> str:
    """`WAL` where it is safe, else `DELETE`."""
    return "WAL" if sqlite3.sqlite_version_info >= WAL_FROM else "DELETE"


def make_engine(path: Path, busy_ms: int = BUSY_MS) -> Engine:
    """An engine whose transactions begin as the caller says (`BEGIN IMMEDIATE` for writes)."""
    import sqlalchemy as sa

    engine = sa.create_engine(
        sa.URL.create("sqlite", database=str(path)), poolclass=sa.pool.NullPool
    )

    @sa.event.listens_for(engine, "connect")
    def _connect(raw: Any, _: object) -> None:
        raw.isolation_level = None  # the driver must not begin transactions by itself
        raw.execute(f"PRAGMA busy_timeout = {int(busy_ms)}")
        raw.execute("PRAGMA foreign_keys = ON")
        raw.execute("PRAGMA synchronous = FULL")

    @sa.event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        reads = connection.get_execution_options().get("reads", False)
        connection.exec_driver_sql("BEGIN" if reads else "BEGIN IMMEDIATE")

    return engine


@contextmanager
def explained(path: Path) -> Iterator[None]:
    """Turn the database's errors into a `StoreError` that says what to do."""
    import sqlalchemy as sa

    try:
        yield
    except (sa.exc.DBAPIError, sqlite3.Error, OSError) as error:
        raise explain(error, path) from error


def explain(error: Exception, path: Path) -> StoreError:
    """What a database error means for the person in front of it."""
    said = str(getattr(error, "orig", None) or error)
    low = said.lower()
    where = Where(str(path))
    for cue, what, remedy in _MEANINGS:
        if cue in low:
            return StoreError(what, where=where, remedy=remedy.format(folder=path.parent))
    return StoreError(f"the store cannot be used ({said})", where=where, remedy=_RESTORE)


_RESTORE = "Put back a copy from the folder `backups` beside it, or move the file away"
_MEANINGS = (
    ("locked", "the store is in use by another program", "Wait a moment and try again"),
    ("busy", "the store is in use by another program", "Wait a moment and try again"),
    ("readonly", "the store is read-only; nothing was changed", "Allow writing to {folder}"),
    ("read-only", "the store is read-only; nothing was changed", "Allow writing to {folder}"),
    ("permission", "the store may not be read or written", "Allow access to {folder}"),
    ("unable to open", "the store cannot be opened", "Check that {folder} exists and is yours"),
    ("full", "the disk is full; nothing was changed", "Free some space and try again"),
    ("no space", "the disk is full; nothing was changed", "Free some space and try again"),
    ("malformed", "the store is damaged", _RESTORE),
    ("not a database", "the store is damaged or no store at all", _RESTORE),
    ("disk i/o", "the disk reports an error", "Check the disk. " + _RESTORE),
)


def prepare(path: Path, busy_ms: int = BUSY_MS) -> Engine:
    """Open the store, making or upgrading it as needed.

    Args:
        path: the file; its folder is made if missing.
        busy_ms: how long to wait for another writer.

    Raises:
        StoreError: locked, read-only, damaged, of a newer version, or the disk is full.
    """
    with explained(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        if not path.exists():
            _make(path, busy_ms)
        if path.stat().st_size == 0:
            raise StoreError("the store is empty: it was cut off", where=Where(str(path)),
                             remedy=_RESTORE)  # fmt: skip
        engine = make_engine(path, busy_ms)
        version = _check(engine, path)
        if version < len(STEPS):
            _backup(path, STEPS[version][0])
            _upgrade(engine)
        return engine


def _make(path: Path, busy_ms: int) -> None:
    """Build a new store aside and put it in place whole: an empty file is never ours."""
    aside = path.with_name(f".{path.name}.{os.getpid()}.new")
    try:
        engine = make_engine(aside, busy_ms)
        with engine.connect() as connection:
            connection.connection.driver_connection.execute(  # type: ignore[union-attr]
                f"PRAGMA journal_mode = {journal_mode()}"
            )
        _upgrade(engine)
        engine.dispose()
        _sync(aside)
        with suppress(FileExistsError):  # another process was first: its store is as good
            os.link(aside, path)
        _sync(path.parent)
    finally:
        for left in path.parent.glob(f"{aside.name}*"):
            left.unlink(missing_ok=True)


def _sync(path: Path) -> None:
    """Force a file or folder to the disk (folders cannot be opened on Windows)."""
    with suppress(PermissionError):
        handle = os.open(path, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _check(engine: Engine, path: Path) -> int:
    """The version of the file; StoreError if it is damaged or newer than this program."""
    with engine.connect().execution_options(reads=True) as connection:
        version = int(connection.exec_driver_sql("PRAGMA user_version").scalar_one())
        if version > len(STEPS):
            raise StoreError(
                f"the store is of a newer version ({version}; this guidebot knows {len(STEPS)})",
                where=Where(str(path)),
                remedy="Use the newer guidebot; nothing was changed",
            )
        found = connection.exec_driver_sql("PRAGMA quick_check(1)").scalar_one()
        if found != "ok":
            raise StoreError(
                f"the store is damaged ({str(found).splitlines()[-1]})",
                where=Where(str(path)),
                remedy=_RESTORE,
            )
        return version


def _upgrade(engine: Engine) -> None:
    """Take the missing steps, all in one transaction."""
    with engine.begin() as connection:
        # Read again under the lock: another process may have taken the steps meanwhile.
        version = int(connection.exec_driver_sql("PRAGMA user_version").scalar_one())
        for _, step in STEPS[version:]:
            step(connection)
        connection.exec_driver_sql(f"PRAGMA user_version = {len(STEPS)}")


def _backup(path: Path, name: str) -> Path:
    """Copy the store to `backups/` beside it before the step `name`; checked, then put in place."""
    folder = path.parent / "backups"
    folder.mkdir(exist_ok=True)
    number = 1
    while (kept := folder / f"{path.stem}-before-{name}-{number}.db").exists():
        number += 1
    aside = kept.with_suffix(f".{os.getpid()}.tmp")
    source, copy = sqlite3.connect(path), sqlite3.connect(aside)
    try:
        source.backup(copy)
        sound = copy.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
    finally:
        copy.close()
        source.close()
    if not sound:
        aside.unlink(missing_ok=True)
        raise StoreError("the backup before an upgrade is not sound", where=Where(str(path)),
                         remedy="Nothing was changed. " + _RESTORE)  # fmt: skip
    _sync(aside)
    aside.replace(kept)
    return kept
