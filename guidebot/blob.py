"""Named sections of bytes in one file: written whole, mapped into memory."""

from __future__ import annotations

import json
import mmap
import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

_MAGIC = b"GUIDEBOT\x02"


def pack(sections: Mapping[str, bytes]) -> bytes:
    """One run of bytes: magic, length of the table, the table (JSON), the sections."""
    table: dict[str, tuple[int, int]] = {}
    at = 0
    for name, data in sections.items():
        table[name] = (at, len(data))
        at += len(data) + (-len(data) % 8)
    head = json.dumps(table).encode("utf-8")
    parts = [_MAGIC, len(head).to_bytes(4, "little"), head]
    for data in sections.values():
        parts += [data, b"\0" * (-len(data) % 8)]
    return b"".join(parts)


def unpack(raw: bytes | memoryview | mmap.mmap) -> dict[str, memoryview]:
    """The sections as views.

    Raises:
        ValueError: the bytes are not of this form or are cut short.
    """
    view = memoryview(raw)
    start = len(_MAGIC) + 4
    if bytes(view[: len(_MAGIC)]) != _MAGIC or len(view) < start:
        raise ValueError("not a compiled guide of this version")
    size = int.from_bytes(view[len(_MAGIC) : start], "little")
    table = json.loads(bytes(view[start : start + size]))
    start += size
    sections: dict[str, memoryview] = {}
    for name, (at, length) in table.items():
        piece = view[start + at : start + at + length]
        if len(piece) != length:
            raise ValueError("the compiled guide is cut short")
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
