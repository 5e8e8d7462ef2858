"""The store of cases: every read and write of it goes through here."""

from __future__ import annotations

import difflib
import re
import unicodedata
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Any, Self

from guidebot.cases import rows
from guidebot.cases.engine import BUSY_MS, explained, prepare
from guidebot.cases.home import demo_path, store_path
from guidebot.cases.redact import redact
from guidebot.cases.schema import metadata
from guidebot.domain.case import Case, DiaryEntry, Restriction
from guidebot.errors import InputError
from guidebot.text import clean, one_line

if TYPE_CHECKING:
    from sqlalchemy import Connection, Table

KEEP_DAYS = 180
"""Questions are kept this many days, then only counted."""
NAME_CHARS = 60
NOTE_CHARS = 2000


def open_store(path: Path | None = None, *, demo: bool = False, busy_ms: int = BUSY_MS) -> Store:
    """Open the store, made or upgraded as needed.

    Args:
        path: the file; None takes the one in the data folder.
        demo: take the one of the demonstration instead.
        busy_ms: how long to wait for another writer, in milliseconds.

    Raises:
        StoreError: locked, read-only, damaged, of a newer version, or the disk is full.
    """
    return Store(path or (demo_path() if demo else store_path()), busy_ms)


class Store:
    """An open store; use it in a `with`."""

    def __init__(self, path: Path, busy_ms: int = BUSY_MS):
        self.path = path
        self._engine = prepare(path, busy_ms)

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the file."""
        self._engine.dispose()

    # ------------------------------------------------------------------ dogs

    def cases(self) -> tuple[Case, ...]:
        """Every dog, by id."""
        with self._read() as connection:
            table = _table("dog_case")
            found = connection.execute(table.select().order_by(table.c.id)).mappings().all()
            return tuple(self._whole(connection, row) for row in found)

    def case(self, key: str) -> Case:
        """One dog, by id, or by name where only one dog has it.

        Raises:
            InputError: no such dog, or several of the name; says which ids there are.
        """
        with self._read() as connection:
            return self._find(connection, key)

    def add(self, case: Case) -> Case:
        """Add a dog; it gets an id of its own made from its name.

        Raises:
            InputError: no name, or values that cannot be.
        """
        case = _cleaned(case)
        with self._write() as connection:
            table = _table("dog_case")
            taken = set(connection.execute(table.select().with_only_columns(table.c.id)).scalars())
            case = replace(case, id=_new_id(case.dog, taken))
            connection.execute(table.insert().values(rows.case_row(case)))
            for restriction in case.restrictions:
                self._insert_restriction(connection, case.id, restriction)
            for entry in case.diary:
                self._merge_entry(connection, case.id, entry)
        return case

    def edit(self, key: str, **changes: Any) -> Case:
        """Change fields of a dog (dog, sex, side, sleeve, parts, fitted, target_hours)."""
        with self._write() as connection:
            case = _cleaned(replace(self._find(connection, key), **changes))
            table = _table("dog_case")
            connection.execute(
                table.update().where(table.c.id == case.id).values(rows.case_row(case))
            )
        return case

    def remove(self, key: str) -> Case:
        """Remove a dog with its diary and restrictions; gives what was removed."""
        with self._write() as connection:
            case = self._find(connection, key)
            table = _table("dog_case")
            connection.execute(table.delete().where(table.c.id == case.id))
        return case

    def restrict(self, key: str, restriction: Restriction) -> Case:
        """Note what the veterinarian restricts."""
        rows.check_restriction(restriction)
        with self._write() as connection:
            case = self._find(connection, key)
            self._insert_restriction(connection, case.id, restriction)
            return self._find(connection, case.id)

    def lift(self, key: str, activity: str, on: date) -> Case:
        """End every restriction of an activity: its last day is the day before `on`."""
        with self._write() as connection:
            case = self._find(connection, key)
            table = _table("restriction")
            mine = (table.c.case_id == case.id) & (table.c.activity == activity)
            before = (on - timedelta(days=1)).isoformat()
            connection.execute(table.delete().where(mine & (table.c.starts > before)))
            connection.execute(
                table.update()
                .where(mine & (table.c.ends.is_(None) | (table.c.ends > before)))
                .values(ends=before)
            )
            return self._find(connection, case.id)

    # ------------------------------------------------------------------ diary

    def note(self, key: str, entry: DiaryEntry) -> Case:
        """Note a day. What was noted before for the day stays; a graver finding is never lost.

        Raises:
            InputError: hours that cannot be, or a day before the fitting day.
        """
        rows.check_entry(entry)
        with self._write() as connection:
            case = self._find(connection, key)
            if case.fitted is not None and entry.on < case.fitted:
                raise InputError(
                    f"{entry.on.isoformat()} is before the fitting day {case.fitted.isoformat()}",
                    remedy="Give a later date with --on, or correct the fitting day",
                )
            self._merge_entry(connection, case.id, entry)
            return self._find(connection, case.id)

    # ------------------------------------------------------------------ questions

    def logging(self) -> bool:
        """Are questions kept?"""
        with self._read() as connection:
            table = _table("setting")
            query = table.select().where(table.c.key == "question-log")
            row = connection.execute(query).mappings().first()
            return row is None or row["value"] != "off"

    def set_logging(self, keep: bool) -> None:
        """Turn the question log on or off; turning it off removes the texts kept so far."""
        with self._write() as connection:
            table = _table("setting")
            connection.execute(table.delete().where(table.c.key == "question-log"))
            connection.execute(
                table.insert().values(key="question-log", value="on" if keep else "off")
            )
            if not keep:
                self._count_and_drop(connection, None)

    def log_question(self, on: date, text: str, outcome: str, **more: str | None) -> bool:
        """Keep a question, redacted; older ones than `KEEP_DAYS` become counts.

        Args:
            on: the day.
            text: the question as cleaned.
            outcome: how it ended.
            **more: `need`, `passage`, `sign`, `guide`, `rules`, `case_id`.

        Returns:
            False if the log is off.
        """
        if not self.logging():
            return False
        kept = redact(one_line(clean(text).text, NOTE_CHARS))
        with self._write() as connection:
            values = {key: value for key, value in more.items() if value is not None}
            connection.execute(
                _table("question")
                .insert()
                .values(day=on.isoformat(), text=kept, outcome=outcome, **values)
            )
            self._count_and_drop(connection, on - timedelta(days=KEEP_DAYS))
        return True

    def questions(self) -> tuple[Mapping[str, Any], ...]:
        """The questions kept, oldest first."""
        with self._read() as connection:
            table = _table("question")
            found = connection.execute(table.select().order_by(table.c.id)).mappings().all()
            return tuple(dict(row) for row in found)

    def counts(self) -> Mapping[tuple[str, str, str], int]:
        """Questions no longer kept: how many by month, need and outcome."""
        with self._read() as connection:
            found = connection.execute(_table("question_count").select()).mappings().all()
            return {(r["month"], r["need"], r["outcome"]): r["asked"] for r in found}

    def purge(self, on: date, days: int = KEEP_DAYS) -> None:
        """Turn questions older than `days` into counts, and clear the freed pages."""
        with self._write() as connection:
            connection.exec_driver_sql("PRAGMA secure_delete = ON")
            self._count_and_drop(connection, on - timedelta(days=days))

    # ------------------------------------------------------------------ within

    @contextmanager
    def _read(self) -> Iterator[Connection]:
        with explained(self.path), self._engine.connect() as connection:
            yield connection.execution_options(reads=True)

    @contextmanager
    def _write(self) -> Iterator[Connection]:
        with explained(self.path), self._engine.begin() as connection:
            yield connection

    def _find(self, connection: Connection, key: str) -> Case:
        table = _table("dog_case")
        row = connection.execute(table.select().where(table.c.id == key)).mappings().first()
        if row is not None:
            return self._whole(connection, row)
        known = connection.execute(table.select().order_by(table.c.id)).mappings().all()
        named = [r for r in known if r["dog"].casefold() == key.strip().casefold()]
        if len(named) == 1:
            return self._whole(connection, named[0])
        shown = one_line(clean(key).text, NAME_CHARS)
        if named:
            ids = ", ".join(r["id"] for r in named)
            raise InputError(f"several dogs are called {shown!r}", remedy=f"Give the id: {ids}")
        ids_known = [r["id"] for r in known]
        near = difflib.get_close_matches(key.casefold(), ids_known, n=3, cutoff=0.5)
        hint = f"Did you mean: {', '.join(near)}" if near else "See `guidebot case list`"
        raise InputError(f"there is no dog {shown!r}", remedy=hint)

    def _whole(self, connection: Connection, row: Mapping[Any, Any]) -> Case:
        def of(name: str, order: str) -> list[Mapping[Any, Any]]:
            table = _table(name)
            query = table.select().where(table.c.case_id == row["id"])
            return list(connection.execute(query.order_by(table.c[order])).mappings())

        with explained(self.path):
            return rows.read_case(row, of("restriction", "id"), of("diary", "day"))

    def _insert_restriction(self, connection: Connection, case_id: str, r: Restriction) -> None:
        rows.check_restriction(r)
        connection.execute(
            _table("restriction").insert().values(case_id=case_id, **rows.restriction_row(r))
        )

    def _merge_entry(self, connection: Connection, case_id: str, entry: DiaryEntry) -> None:
        rows.check_entry(entry)
        entry = replace(entry, note=clean(entry.note).text[:NOTE_CHARS])
        table = _table("diary")
        mine = (table.c.case_id == case_id) & (table.c.day == entry.on.isoformat())
        old = connection.execute(table.select().where(mine)).mappings().first()
        if old is None:
            connection.execute(table.insert().values(case_id=case_id, **rows.diary_row(entry)))
            return
        merged = rows.merge(rows.read_entry(old), entry)
        connection.execute(table.update().where(mine).values(rows.diary_row(merged)))

    def _count_and_drop(self, connection: Connection, before: date | None) -> None:
        import sqlalchemy as sa

        table, counts = _table("question"), _table("question_count")
        old = sa.true() if before is None else table.c.day < before.isoformat()
        month = sa.func.substr(table.c.day, 1, 7)
        query = (
            sa.select(month, table.c.need, table.c.outcome, sa.func.count())
            .where(old)
            .group_by(month, table.c.need, table.c.outcome)
        )
        for when, need, outcome, number in connection.execute(query).all():
            mine = (
                (counts.c.month == when) & (counts.c.need == need) & (counts.c.outcome == outcome)
            )
            changed = connection.execute(
                counts.update().where(mine).values(asked=counts.c.asked + number)
            )
            if changed.rowcount == 0:
                connection.execute(
                    counts.insert().values(month=when, need=need, outcome=outcome, asked=number)
                )
        connection.execute(table.delete().where(old))


def _table(name: str) -> Table:
    return metadata().tables[name]


def _cleaned(case: Case) -> Case:
    """The case with its name cleaned; InputError for values that cannot be."""
    dog = one_line(clean(case.dog).text, NAME_CHARS)
    if not dog:
        raise InputError("the dog needs a name", remedy="Give one with --dog")
    rows.check_target(case.target_hours)
    sleeve = None if case.sleeve is None else one_line(clean(case.sleeve).text, NAME_CHARS)
    return replace(case, dog=dog, sleeve=sleeve or None)


def _new_id(dog: str, taken: set[str]) -> str:
    """An id from the name, plain letters; a number is added where the name is taken."""
    plain = unicodedata.normalize("NFKD", dog).encode("ascii", "ignore").decode()
    base = re.sub(r"[^a-z0-9]+", "-", plain.casefold()).strip("-")[:40] or "dog"
    name, number = base, 2
    while name in taken:
        name, number = f"{base}-{number}", number + 1
    return name
