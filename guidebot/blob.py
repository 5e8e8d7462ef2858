"""Named sections of bytes in one file: written whole, mapped into memory.

Every section carries its Adler-32 sum (RFC 1950): a page that was damaged on the disk must not
become a wrong weight, least of all in the injury rules.
"""

from __future__ import annotations

import json
import marshal
import mmap
import os
import tempfile
import zlib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

_MAGIC = b"GUIDEBOT\x03"


def pack(sections: Mapping[str, bytes]) -> bytes:
    """One run of bytes: magic, length and sum of the table, the table (JSON), the sections."""
    table: dict[str, tuple[int, int, int]] = {}
    at = 0
    for name, data in sections.items():
        table[name] = (at, len(data), zlib.adler32(data))
        at += len(data) + (-len(data) % 8)
    head = json.dumps(table).encode("utf-8")
    parts = [_MAGIC, _number(len(head)), _number(zlib.adler32(head)), head]
    for data in sections.values():
        parts += [data, b"\0" * (-len(data) % 8)]
    return b"".join(parts)


def pack_values(values: Any) -> bytes:
    """Plain values (tables, lists, texts, numbers) as bytes; good for this version of Python."""
    return marshal.dumps(json.loads(json.dumps(values)))  # by way of JSON, which knows enums


def unpack_values(raw: bytes | memoryview) -> Any:
    """What `pack_values` packed, three times as quick as JSON; the sum was checked by `unpack`.

    Raises:
        ValueError: the bytes are not that.
    """
    try:
        return marshal.loads(raw)  # noqa: S302 - a section of our own file
    except (EOFError, TypeError) as error:
        raise ValueError("not packed values") from error


def _number(value: int) -> bytes:
    return value.to_bytes(4, "little")


def unpack(raw: bytes | memoryview | mmap.mmap) -> dict[str, memoryview]:
    """The sections as views.

    Raises:
        ValueError: the bytes are not of this form, are cut short or damaged.
    """
    view = memoryview(raw)
    at = len(_MAGIC)
    start = at + 8
    if bytes(view[:at]) != _MAGIC or len(view) < start:
        raise ValueError("not a compiled guide of this version")
    size = int.from_bytes(view[at : at + 4], "little")
    head = bytes(view[start : start + size])
    if zlib.adler32(head) != int.from_bytes(view[at + 4 : start], "little"):
        raise ValueError("the compiled guide is damaged")
    table = json.loads(head)
    start += size
    sections: dict[str, memoryview] = {}
    for name, (first, length, total) in table.items():
        piece = view[start + first : start + first + length]
        if len(piece) != length or zlib.adler32(piece) != total:
            raise ValueError("the compiled guide is cut short or damaged")
        sections[name] = piece
    return sections


def map_file(path: Path) -> dict[str, memoryview]:
    """The sections of a file, mapped, not read; OSError or ValueError if that cannot be."""
    with path.open("rb") as file:
        return unpack(mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ))


def write_whole(path: Path, data: bytes) -> None:
    """Write so that a reader sees the old file or the new one, never half; OSError if it fails."""
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=".writing-")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        Path(name).replace(path)
    except BaseException:
        Path(name).unlink(missing_ok=True)
        raise
