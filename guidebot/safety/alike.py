"""The authored messages most like a message, and what they were: k nearest neighbours.

Beside the linear scorer a second, different opinion: it looks at a few whole messages instead of
summing over all words. Cover & Hart, IEEE Trans. Inf. Theory 1967; cosine similarity over TF-IDF of
stems and pairs of stems (Salton & Buckley, 1988).
"""

from __future__ import annotations

import heapq
import math
import struct
from array import array
from collections.abc import Sequence
from itertools import pairwise

from guidebot.linear import arrays
from guidebot.linear.weights import feature_hash

NEAREST = 10
"""Messages that vote."""
COMMONEST = 0.004
"""Stems and pairs in a larger share of the messages are left out: they find nothing."""
_HEADER = struct.Struct("<4sIII")
_MAGIC = b"GBA1"


def _seen(stems: Sequence[str]) -> set[str]:
    return {*stems, *(f"{a} {b}" for a, b in pairwise(stems))}


def _square(messages: int, having: int) -> float:
    """The square of the inverse document frequency of a feature that `having` messages have."""
    weight = math.log(messages / having) + 1.0
    return weight * weight


class Alike:
    """An index of the authored messages.

    The arrays are: sorted feature hashes (uint32), where the messages of each feature begin
    (uint32, one more than features), one over the length of each message's vector (float32), the
    messages of all features (uint16) and the tier of each message (uint8, 0 for harmless).
    """

    __slots__ = ("_docs", "_hashes", "_scale", "_starts", "_tiers")

    def __init__(
        self,
        hashes: Sequence[int],
        starts: Sequence[int],
        scale: Sequence[float],
        docs: Sequence[int],
        tiers: Sequence[int],
    ) -> None:
        self._hashes = hashes
        self._starts = starts
        self._scale = scale
        self._docs = docs
        self._tiers = tiers

    @classmethod
    def build(cls, messages: Sequence[Sequence[str]], tiers: Sequence[int]) -> Alike:
        """Index messages.

        Args:
            messages: the stems of each; at most 65,535 messages.
            tiers: the tier each reports, 0 for none.

        Raises:
            ValueError: more messages than that, or not as many tiers.
        """
        if len(messages) > 65_535 or len(messages) != len(tiers):
            raise ValueError("at most 65,535 messages, each with its tier")
        where: dict[int, list[int]] = {}
        for number, stems in enumerate(messages):
            for hashed in sorted({feature_hash(feature) for feature in _seen(stems)}):
                where.setdefault(hashed, []).append(number)
        most = COMMONEST * len(messages)
        kept = sorted(hashed for hashed, docs in where.items() if 2 <= len(docs) <= most)
        square = [0.0] * len(messages)
        starts, docs = [0], array("H")
        for hashed in kept:
            weight = _square(len(messages), len(where[hashed]))
            for number in where[hashed]:
                square[number] += weight
            docs.extend(where[hashed])
            starts.append(len(docs))
        scale = [1.0 / math.sqrt(value) if value else 0.0 for value in square]
        return cls(kept, starts, scale, docs, tiers)

    def votes(self, stems: Sequence[str], tiers: Sequence[int]) -> list[float]:
        """How far the nearest messages report each of some tiers or worse, from -1 to 1.

        Args:
            stems: of the message.
            tiers: the tiers asked for.

        Returns:
            One number a tier, each neighbour counting by its squared similarity; 0 for a message
            like none.
        """
        count = len(self._scale)
        near: dict[int, float] = {}
        for feature in _seen(stems):
            at = arrays.position(self._hashes, feature_hash(feature))
            if at is None:
                continue
            first, last = self._starts[at], self._starts[at + 1]
            weight = _square(count, last - first)
            for number in self._docs[first:last]:
                near[number] = near.get(number, 0.0) + weight
        scale = self._scale
        alike = [value * scale[number] for number, value in near.items()]
        least = heapq.nlargest(NEAREST, alike)[-1] if alike else 0.0
        best = sorted(
            ((value, -number) for value, number in zip(alike, near, strict=True) if value >= least),
            reverse=True,
        )[:NEAREST]
        total = sum(value * value for value, _ in best)
        if not total:
            return [0.0] * len(tiers)
        return [
            sum(value * value * (1 if self._tiers[-n] >= tier else -1) for value, n in best) / total
            for tier in tiers
        ]

    def dump(self) -> bytes:
        """The arrays in little-endian order, with a header."""
        head = _HEADER.pack(_MAGIC, len(self._hashes), len(self._docs), len(self._tiers))
        return head + arrays.pack(
            (
                ("I", self._hashes),
                ("I", self._starts),
                ("f", self._scale),
                ("H", self._docs),
                ("B", self._tiers),
            )
        )

    @classmethod
    def load(cls, raw: bytes | memoryview) -> Alike:
        """Read what `dump` wrote; the arrays are views of `raw`, nothing is copied.

        Raises:
            ValueError: the bytes are not such a dump, or are cut short.
        """
        view = memoryview(raw)
        try:
            magic, features, entries, messages = _HEADER.unpack_from(view)
        except struct.error as error:
            raise ValueError("the index of messages is cut short") from error
        if magic != _MAGIC:
            raise ValueError("not an index of messages of this version")
        sizes = (
            ("I", features),
            ("I", features + 1),
            ("f", messages),
            ("H", entries),
            ("B", messages),
        )
        return cls(*arrays.views(view[_HEADER.size :], sizes, "the index of messages"))
