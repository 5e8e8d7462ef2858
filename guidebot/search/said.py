"""Messages that are, but for small words, one of the authored wordings: there the need is known."""

from __future__ import annotations

import struct
from collections.abc import Mapping, Sequence

from guidebot.linear import arrays
from guidebot.linear.features import stem, words
from guidebot.linear.weights import feature_hash
from guidebot.search.needs import ASIDE

SMALL = frozenset(
    "the a an his her my our your it this that pleas hi hello so ok now well just i you we one he "
    "she they him them dog brace devic orthosi boot splint thing leg".split()
)
"""Stems of words that may differ: articles, who asks, who wears it, and names of the device."""
LEAST_WORDS = 3
"""A message must hold so many other words."""
_HEADER = struct.Struct("<4sII")
_MAGIC = b"GBS1"
_SHARED = 0xFFFF


class Said:
    """Needs by the hash of the words of a wording."""

    __slots__ = ("_classes", "_hashes", "_needs")

    def __init__(self, needs: Sequence[str], hashes: Sequence[int], classes: Sequence[int]) -> None:
        self._needs = tuple(needs)
        self._hashes = hashes
        self._classes = classes

    @classmethod
    def build(cls, wordings: Mapping[str, Sequence[str]]) -> Said:
        """Index wordings by need; a wording of two needs stands for neither."""
        needs = sorted(wordings)
        found: dict[int, int] = {}
        for number, need in enumerate(needs):
            for line in wordings[need]:
                key = _key([stem(word) for word in words(line)])
                if key is not None:
                    found[key] = number if found.get(key, number) == number else _SHARED
        order = sorted(found)
        return cls(needs, order, [found[key] for key in order])

    def need(self, stems: Sequence[str]) -> str | None:
        """The need whose wording this is, None if it is none, or one of `ASIDE`."""
        key = _key(stems)
        if key is None:
            return None
        at = arrays.position(self._hashes, key)
        if at is None or self._classes[at] == _SHARED:
            return None
        need = self._needs[self._classes[at]]
        return None if need in ASIDE else need

    def dump(self) -> bytes:
        """The arrays in little-endian order, with a header."""
        names = "\n".join(self._needs).encode("utf-8")
        names += b"\n" * (-len(names) % 4)
        head = _HEADER.pack(_MAGIC, len(self._hashes), len(names)) + names
        return head + arrays.pack((("I", self._hashes), ("H", self._classes)))

    @classmethod
    def load(cls, raw: bytes | memoryview) -> Said:
        """Read what `dump` wrote; ValueError if it is no such dump or is cut short."""
        view = memoryview(raw)
        if len(view) < _HEADER.size or bytes(view[:4]) != _MAGIC:
            raise ValueError("not an index of wordings")
        _, count, size = _HEADER.unpack_from(view)
        at = _HEADER.size
        needs = bytes(view[at : at + size]).decode("utf-8").strip("\n").split("\n")
        sizes = (("I", count), ("H", count))
        return cls(needs, *arrays.views(view[at + size :], sizes, "the index of wordings"))


def _key(stems: Sequence[str]) -> int | None:
    kept = [s for s in stems if s not in SMALL]
    return feature_hash(" ".join(kept)) if len(kept) >= LEAST_WORDS else None
