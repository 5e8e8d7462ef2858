"""Word tables as flat arrays: mapped into memory, looked up by bisection, nothing is built."""

from __future__ import annotations

import struct
from collections.abc import Mapping, Sequence
from itertools import chain

from guidebot.linear import arrays
from guidebot.linear.weights import feature_hash

_HEADER = struct.Struct("<4sIII")
_MAGIC = b"GBP2"


class FlatPostings(Mapping[str, tuple[Sequence[int], Sequence[float]]]):
    """Postings that were dumped: a mapping from word to document numbers and weights.

    Words are kept as 32-bit hashes only, so it can be asked but not listed.
    """

    __slots__ = ("_docs", "_hashes", "_starts", "_weights", "size")

    def __init__(self, raw: bytes | memoryview) -> None:
        """Read what `dump_postings` wrote; ValueError if it is no such dump or is cut short."""
        view = memoryview(raw)
        magic, words, entries, self.size = _HEADER.unpack_from(view)
        if magic != _MAGIC:
            raise ValueError("not a postings section of this version")
        sizes = (("d", entries), ("I", words), ("I", words + 1), ("I", entries))
        blocks = arrays.views(view[_HEADER.size :], sizes, "the postings section")
        self._weights, self._hashes, self._starts, self._docs = blocks

    def __getitem__(self, word: str) -> tuple[Sequence[int], Sequence[float]]:
        """Document numbers and weights of a word; KeyError if no document has it."""
        row = arrays.position(self._hashes, feature_hash(word))
        if row is None:
            raise KeyError(word)
        first, last = self._starts[row], self._starts[row + 1]
        return self._docs[first:last], self._weights[first:last]

    def __iter__(self):  # type: ignore[no-untyped-def] # words are not kept
        """Not possible: words are kept as hashes."""
        raise TypeError("flat postings hold hashes, not words")

    def __len__(self) -> int:
        """Number of words."""
        return len(self._hashes)


def dump_postings(
    size: int, postings: Mapping[str, tuple[Sequence[int], Sequence[float]]]
) -> bytes:
    """Postings as bytes for `FlatPostings`, words sorted by hash.

    Two words of one hash are merged; at a few thousand words that is one in a million.
    """
    by_hash: dict[int, tuple[list[int], list[float]]] = {}
    for word, (docs, weights) in postings.items():
        entry = by_hash.setdefault(feature_hash(word), ([], []))
        entry[0].extend(docs)
        entry[1].extend(weights)
    hashes = sorted(by_hash)
    starts = [0]
    for hashed in hashes:
        starts.append(starts[-1] + len(by_hash[hashed][0]))
    head = _HEADER.pack(_MAGIC, len(hashes), starts[-1], size)
    return head + arrays.pack(
        (
            ("d", chain.from_iterable(by_hash[h][1] for h in hashes)),
            ("I", hashes),
            ("I", starts),
            ("I", chain.from_iterable(by_hash[h][0] for h in hashes)),
        )
    )
