"""Flat arrays as bytes in little-endian order, and views of such bytes without a copy."""

from __future__ import annotations

import sys
from array import array
from bisect import bisect_left
from collections.abc import Iterable, Sequence

WIDTHS = {"d": 8, "I": 4, "f": 4, "H": 2, "B": 1}
"""Bytes of one value: float64, uint32, float32, uint16, uint8."""


def position(ordered: Sequence[int], value: int) -> int | None:
    """Where `value` stands among values in rising order, None if it does not."""
    at = bisect_left(ordered, value)
    return at if at < len(ordered) and ordered[at] == value else None


def pack(blocks: Sequence[tuple[str, Iterable[float]]]) -> bytes:
    """The arrays one after the other; each block is a type code of `array` and its values."""
    parts: list[bytes] = []
    for kind, values in blocks:
        block = array(kind, values)
        if sys.byteorder != "little":
            block.byteswap()
        parts.append(block.tobytes())
    return b"".join(parts)


def views(raw: memoryview, blocks: Sequence[tuple[str, int]], what: str) -> list[memoryview]:
    """The arrays in `raw`, which begins with the first.

    Args:
        raw: the bytes.
        blocks: type code and number of values of each.
        what: name for the message.

    Raises:
        ValueError: there are too few bytes.
    """
    found: list[memoryview] = []
    at = 0
    for kind, size in blocks:
        width = WIDTHS[kind]
        piece = raw[at : at + size * width]
        if len(piece) != size * width:
            raise ValueError(f"{what} is cut short")
        if sys.byteorder != "little":
            swapped = array(kind, piece.tobytes())
            swapped.byteswap()
            piece = memoryview(swapped)
        found.append(piece.cast("B").cast(kind))  # type: ignore[call-overload]
        at += size * width
    return found
