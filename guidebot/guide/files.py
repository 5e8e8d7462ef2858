"""Finding the guide, reading its files as clean text, and the hash over all of them."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

from guidebot.errors import ContentError, Where
from guidebot.guide.dirt import dirt
from guidebot.guide.faults import Faults

ENVIRONMENT = "GUIDEBOT_CONTENT"
MAX_BYTES = 4_000_000
"""Largest file that is read; a guide is written by hand."""

TABLES = (
    "activities.yaml",
    "clinic.yaml",
    "device.yaml",
    "fitcheck.yaml",
    "handson.yaml",
    "needs.yaml",
    "protocol.yaml",
    "vocabulary.yaml",
)
"""The files every guide has, beside `passages/` and `wordings/`."""


def find_content(path: Path | None = None) -> Path:
    """Where the guide is.

    Args:
        path: the folder a person named; None to look for it.

    Returns:
        `path`, else the folder in the environment variable `GUIDEBOT_CONTENT`, else `content`
        beside the checkout, else the guide inside the package.

    Raises:
        ContentError: there is no such folder.
    """
    if path is not None:
        return _folder(path, "Name the folder that holds protocol.yaml")
    named = os.environ.get(ENVIRONMENT)
    if named:
        return _folder(Path(named), f"The environment variable {ENVIRONMENT} names it")
    package = Path(__file__).resolve().parent.parent
    for folder in (package.parent / "content", package / "content"):
        if (folder / "protocol.yaml").is_file():
            return folder
    raise ContentError(
        "no guide was found",
        remedy=f"Name its folder with --content or in the environment variable {ENVIRONMENT}",
    )


def _folder(path: Path, remedy: str) -> Path:
    if path.is_dir():
        return path
    what = "is not a folder" if path.exists() else "there is no such folder"
    raise ContentError(what, where=Where(str(path)), remedy=remedy)


def files_of(folder: Path) -> dict[str, Path]:
    """All files that belong to the guide, by path below the folder, sorted.

    Args:
        folder: the content folder.

    Returns:
        The tables, `passages/<topic>/<id>.md` and `wordings/*.txt`, and where the guide has them
        `leave/*.txt` and `follow-ups.tsv`. Anything else in the folder (notes, backups of an
        editor) is not part of the guide.
    """
    found = [folder / name for name in TABLES if (folder / name).is_file()]
    found += (folder / "passages").rglob("*.md")
    found += (folder / "wordings").glob("*.txt")
    found += (folder / "leave").glob("*.txt")
    found += folder.glob("follow-ups.tsv")
    named = {path.relative_to(folder).as_posix(): path for path in found}
    return {name: named[name] for name in sorted(named) if not _hidden(name)}


def _hidden(name: str) -> bool:
    return name.rpartition("/")[2].startswith((".", "~", "#"))


def guide_hash(contents: dict[str, bytes]) -> str:
    """The hash printed in every answer: 12 hex digits of SHA-256 over names and bytes.

    Args:
        contents: bytes of each file by path below the content folder.

    Returns:
        The same for the same guide on every machine, whatever the order it was listed in.
    """
    total = hashlib.sha256()
    for name in sorted(contents):
        data = contents[name]
        total.update(f"{name}\0{len(data)}\0".encode("utf-8", "surrogateescape"))
        total.update(data)
    return total.hexdigest()[:12]


def content_hash(folder: Path) -> str:
    """`guide_hash` of a folder without reading the guide: the key for anything compiled from it.

    Raises:
        ContentError: a file cannot be read.
    """
    return guide_hash({name: read_bytes(path, name) for name, path in files_of(folder).items()})


def read_bytes(path: Path, name: str) -> bytes:
    """The bytes of one file.

    Raises:
        ContentError: the file cannot be read or is larger than `MAX_BYTES`.
    """
    try:
        with path.open("rb") as file:
            data = file.read(MAX_BYTES + 1)
    except OSError as error:
        reason = error.strerror or type(error).__name__
        raise ContentError(f"cannot be read: {reason}", where=Where(name)) from error
    if len(data) > MAX_BYTES:
        raise ContentError(f"is larger than {MAX_BYTES} bytes", where=Where(name))
    return data


def decode(data: bytes, name: str, faults: Faults) -> str | None:
    """The text of one file; what is not clean UTF-8 text is a fault.

    Args:
        data: its bytes; a byte order mark and CR LF line ends are accepted.
        name: the file as it is named to people.
        faults: receives a fault for broken bytes and one for each line with hidden characters.

    Returns:
        The text with line feeds and nothing hidden, None if it is not UTF-8.
    """
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        before = data[: error.start].decode("utf-8", "replace").replace("\r\n", "\n")
        line = before.count("\n") + 1
        column = len(before) - before.rfind("\n")
        faults.add(Where(name, line, column), "the file is not UTF-8 text", "Save it as UTF-8")
        return None
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if dirt(text) is None:
        return text
    return "\n".join(
        _without_dirt(line, Where(name, number), faults)
        for number, line in enumerate(text.split("\n"), 1)
    )


def _without_dirt(line: str, where: Where, faults: Faults) -> str:
    """Note hidden characters and put a visible sign in their places, so that columns stay true."""
    found = dirt(line)
    if found is not None:
        faults.add(
            Where(where.path, where.line, found.offset + 1),
            f"the line holds {found.name}",
            "Remove it",
        )
    while found is not None:
        line = f"{line[: found.offset]}\ufffd{line[found.offset + 1 :]}"
        found = dirt(line)
    return line
