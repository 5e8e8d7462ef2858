"""Fitted weights as flat arrays: written once, mapped into memory, scored without numpy."""

from __future__ import annotations

import math
import struct
from collections.abc import Iterator, Mapping, Sequence
from zlib import crc32

from guidebot.linear import arrays
from guidebot.linear.features import Blocks

_MAGIC = b"GBW4"
_HEADER = struct.Struct("<4sIIII")
_BLOCKS = struct.Struct("<fffHH")
_REMEMBERED = 60_000
"""Features of earlier texts that are kept unpacked; a long run must not grow without end."""

Row = tuple[float, tuple[int, ...], tuple[float, ...]]


def feature_hash(feature: str) -> int:
    """32-bit hash of a feature, the same in every process (CRC-32, ISO 3309)."""
    return crc32(feature.encode("utf-8"))


class Weights:
    """Scores a text against each class of a fitted linear model.

    Attributes:
        classes: names of the classes, in the order of the scores.
        blocks: the features it sees, and what each kind counts.

    The arrays are: sorted feature hashes (uint32), idf (float32), row starts (uint32, one more
    than features), class numbers (uint16) and weights (float32) of all rows one after another,
    and one bias for each class (float32).
    """

    __slots__ = (
        "_bias",
        "_cols",
        "_hashes",
        "_idf",
        "_rows",
        "_seen",
        "_starts",
        "blocks",
        "classes",
    )

    def __init__(
        self,
        classes: Sequence[str],
        blocks: Blocks,
        hashes: Sequence[int],
        idf: Sequence[float],
        starts: Sequence[int],
        cols: Sequence[int],
        rows: Sequence[float],
        bias: Sequence[float],
    ) -> None:
        self.classes = tuple(classes)
        self.blocks = blocks
        self._hashes = hashes
        self._idf = idf
        self._starts = starts
        self._cols = cols
        self._rows = rows
        self._bias = bias
        self._seen: dict[str, Row | None] = {}

    def scores(self, tokens: Sequence[str], stems: Sequence[str]) -> list[float]:
        """One score for each class; a text without a known feature gets the biases."""
        totals = list(self._bias)
        for rows, scale in self._rows_of(tokens, stems):
            for _, (_, cols, weights), value in rows:
                scaled = value * scale
                for column, weight in zip(cols, weights, strict=True):
                    totals[column] += scaled * weight
        return totals

    def first_scores(self, tokens: Sequence[str], stems: Sequence[str], count: int) -> list[float]:
        """Scores of the first `count` classes: quick, to decide whether the rest is needed."""
        totals = list(self._bias[:count])
        for rows, scale in self._rows_of(tokens, stems):
            for _, (_, cols, weights), value in rows:
                for at, column in enumerate(cols):  # class numbers of a row rise
                    if column >= count:
                        break
                    totals[column] += value * scale * weights[at]
        return totals

    def contributions(
        self, tokens: Sequence[str], stems: Sequence[str], label: str, most: int = 8
    ) -> list[tuple[str, float]]:
        """The features that speak loudest for class `label`, strongest first, for a reviewer."""
        column = self.classes.index(label)
        found: list[tuple[str, float]] = []
        for rows, scale in self._rows_of(tokens, stems):
            for feature, (_, cols, weights), value in rows:
                for at, weight in zip(cols, weights, strict=True):
                    if at == column:
                        found.append((feature.lstrip("\x01\x02\x04"), value * scale * weight))
        found.sort(key=lambda pair: (-abs(pair[1]), pair[0]))
        return found[:most]

    def _row(self, feature: str) -> Row | None:
        """Idf, class numbers and weights of a feature, None if it is not known; remembered."""
        try:
            return self._seen[feature]
        except KeyError:
            pass
        at = arrays.position(self._hashes, feature_hash(feature))
        row: Row | None = None
        if at is not None:
            first, last = self._starts[at], self._starts[at + 1]
            row = self._idf[at], tuple(self._cols[first:last]), tuple(self._rows[first:last])
        if len(self._seen) < _REMEMBERED:
            self._seen[feature] = row
        return row

    def _lookup(self, block: Mapping[str, int]) -> tuple[list[tuple[str, Row, float]], float]:
        rows: list[tuple[str, Row, float]] = []
        square = 0.0
        for feature, count in block.items():
            row = self._row(feature)
            if row is not None:
                value = (1.0 + math.log(count)) * row[0] if count > 1 else row[0]
                rows.append((feature, row, value))
                square += value * value
        return rows, math.sqrt(square)

    def _rows_of(
        self, tokens: Sequence[str], stems: Sequence[str]
    ) -> Iterator[tuple[list[tuple[str, Row, float]], float]]:
        """The known features of a text, block by block, and what the block is scaled by."""
        for block, share in self.blocks.of(tokens, stems):
            rows, norm = self._lookup(block)
            if norm:
                yield rows, share / norm

    def dump(self) -> bytes:
        """The arrays in little-endian order, with a header."""
        names = "\n".join(self.classes).encode("utf-8")
        names += b"\n" * (-len(names) % 8)
        blocks = self.blocks
        head = _HEADER.pack(
            _MAGIC, len(self._hashes), len(self._rows), len(self.classes), len(names)
        )
        parts = [
            head,
            _BLOCKS.pack(blocks.stems, blocks.chars, blocks.together, *blocks.grams),
            names,
        ]
        parts.append(
            arrays.pack(
                (
                    ("I", self._hashes),
                    ("f", self._idf),
                    ("I", self._starts),
                    ("f", self._rows),
                    ("f", self._bias),
                    ("H", self._cols),
                )
            )
        )
        return b"".join(parts)

    @classmethod
    def load(cls, raw: bytes | memoryview) -> Weights:
        """Read what `dump` wrote; the arrays are views of `raw`, nothing is copied.

        Raises:
            ValueError: the bytes are not such a dump, or are cut short.
        """
        view = memoryview(raw)
        try:
            magic, features, entries, classes, name_bytes = _HEADER.unpack_from(view)
        except struct.error as error:
            raise ValueError("weights are cut short") from error
        if magic != _MAGIC:
            raise ValueError("not a weights file of this version")
        at = _HEADER.size
        share, chars, together, low, high = _BLOCKS.unpack_from(view, at)
        at += _BLOCKS.size
        names = bytes(view[at : at + name_bytes]).decode("utf-8").strip("\n").split("\n")
        at += name_bytes
        sizes = (
            ("I", features),
            ("f", features),
            ("I", features + 1),
            ("f", entries),
            ("f", classes),
            ("H", entries),
        )
        hashes, idf, starts, rows, bias, cols = arrays.views(view[at:], sizes, "the weights file")
        return cls(
            names,
            Blocks(share, chars, together, (low, high)),
            hashes,
            idf,
            starts,
            cols,
            rows,
            bias,
        )
