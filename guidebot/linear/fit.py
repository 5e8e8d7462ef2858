"""Fit the linear scorer: ridge regression on TF-IDF, solved in its dual form with numpy.

One target column a class, +1 for its own lines and -1 for all others. With X the rows of
features, W = X' (X X' + lambda I)^-1 Y (Hoerl & Kennard, Technometrics 1970; dual form: Saunders,
Gammerman & Vovk, ICML 1998). Only numpy is needed and two runs give the same weights.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from guidebot.linear.features import counts, stem, words
from guidebot.linear.weights import Weights, feature_hash

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float32]
    Ints = NDArray[np.int64]

Progress = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class FitSettings:
    """How to fit.

    Attributes:
        ridge: lambda; larger is smoother.
        stem_share: weight of the stem block against the character block, 0 to 1.
        keep: weights kept for each class, the largest by size; the rest is dropped.
        least_lines: a feature must occur in so many lines.
        grams: least and most characters of a character n-gram.
        balance: weight lines so that every class counts as much (power 0 none, 1 full).
    """

    ridge: float = 0.5
    stem_share: float = 0.5
    keep: int = 2000
    least_lines: int = 2
    grams: tuple[int, int] = (3, 4)
    balance: float = 0.0


@dataclass(slots=True)
class _Sparse:
    """Rows of features in compressed form: row starts, column numbers, values."""

    starts: Ints
    cols: Ints
    values: Floats
    width: int


def tokenise(line: str) -> tuple[list[str], list[str]]:
    """Words and stems of a line as the scorer sees them when nobody prepared them otherwise."""
    tokens = words(line)
    return tokens, [stem(token) for token in tokens]


def fit(
    texts: Sequence[tuple[Sequence[str], Sequence[str]]],
    labels: Sequence[str],
    settings: FitSettings | None = None,
    *,
    classes: Sequence[str] | None = None,
    sums: Mapping[str, Sequence[str]] | None = None,
    say: Progress = lambda _: None,
) -> Weights:
    """Fit one linear scorer.

    Args:
        texts: words and stems of each line (see `tokenise`).
        labels: the class of each line.
        settings: see `FitSettings`.
        classes: order of the classes; sorted labels if not given.
        sums: further classes, each the union of some of the classes: a line counts for it if its
            label is one of them. They come before the classes and are not pruned: decisions
            hang on them.
        say: told what is being done, for a progress line.

    Returns:
        Weights, ready to score and to dump.

    Raises:
        ValueError: no lines, or labels of another length.
    """
    import numpy as np

    settings = settings or FitSettings()
    if not texts or len(texts) != len(labels):
        raise ValueError("fitting needs as many labels as lines, and at least one")
    names = tuple(classes) if classes else tuple(sorted(set(labels)))
    say("counting features")
    sparse, hashes, idf = _features(texts, settings)
    say("comparing lines")
    gram = _gram(sparse, len(texts))
    number = {name: i for i, name in enumerate(names)}
    target = -np.ones((len(texts), len(names)), dtype=np.float32)
    rows = np.fromiter((number[label] for label in labels), dtype=np.int64, count=len(labels))
    target[np.arange(len(labels)), rows] = 1.0
    unions = [
        np.where(np.isin(rows, [number[name] for name in parts]), 1.0, -1.0).astype(np.float32)
        for parts in (sums or {}).values()
    ]
    target = np.column_stack([*unions, target])
    columns = (*(sums or {}), *names)
    bias = np.full(len(columns), -1.0, dtype=np.float32)
    target -= bias
    sizes = np.bincount(rows, minlength=len(names)).astype(np.float32)
    say("solving")
    weight = (sizes[rows].mean() / sizes[rows]) ** settings.balance
    gram[np.diag_indices_from(gram)] += np.float32(settings.ridge) / weight
    dual = _solve(gram, target)
    del gram
    say("pruning")
    return _prune(sparse, dual, hashes, idf, columns, bias, settings, whole=len(unions))


def _features(
    texts: Sequence[tuple[Sequence[str], Sequence[str]]], settings: FitSettings
) -> tuple[_Sparse, Ints, Floats]:
    """TF-IDF rows; columns are sorted by feature hash. Sublinear tf, smooth idf (Salton)."""
    import numpy as np

    blocks = [counts(tokens, stems, settings.grams) for tokens, stems in texts]
    seen: dict[int, int] = {}
    hashed: list[tuple[dict[int, int], dict[int, int]]] = []
    cache: dict[str, int] = {}

    def hashes_of(block: Any) -> dict[int, int]:
        out: dict[int, int] = {}
        for feature, count in block.items():
            value = cache.get(feature)
            if value is None:
                value = cache[feature] = feature_hash(feature)
            out[value] = out.get(value, 0) + count
        return out

    for stem_block, char_block in blocks:
        pair = hashes_of(stem_block), hashes_of(char_block)
        hashed.append(pair)
        for value in pair[0].keys() | pair[1].keys():
            seen[value] = seen.get(value, 0) + 1
    kept = sorted(value for value, lines in seen.items() if lines >= settings.least_lines)
    column = {value: i for i, value in enumerate(kept)}
    total = len(texts)
    idf = {value: math.log((1 + total) / (1 + seen[value])) + 1.0 for value in kept}
    starts: list[int] = [0]
    cols: list[int] = []
    values: list[float] = []
    shares = (math.sqrt(settings.stem_share), math.sqrt(1.0 - settings.stem_share))
    for pair in hashed:
        for block, share in zip(pair, shares, strict=True):
            row = [
                (column[v], (1.0 + math.log(c)) * idf[v]) for v, c in block.items() if v in column
            ]
            norm = math.sqrt(sum(x * x for _, x in row))
            if norm:
                cols.extend(c for c, _ in row)
                values.extend(x * share / norm for _, x in row)
        starts.append(len(cols))
    sparse = _Sparse(
        np.array(starts, dtype=np.int64),
        np.array(cols, dtype=np.int64),
        np.array(values, dtype=np.float32),
        len(kept),
    )
    return (
        sparse,
        np.array(kept, dtype=np.int64),
        np.array([idf[v] for v in kept], dtype=np.float32),
    )


def _by_column(sparse: _Sparse, rows: int) -> tuple[Ints, Ints, Floats]:
    """The same matrix column by column: column starts, row numbers, values."""
    import numpy as np

    row_of = np.repeat(np.arange(rows), np.diff(sparse.starts))
    order = np.argsort(sparse.cols, kind="stable")
    starts = np.zeros(sparse.width + 1, dtype=np.int64)
    np.cumsum(np.bincount(sparse.cols, minlength=sparse.width), out=starts[1:])
    return starts, row_of[order], sparse.values[order]


def _gram(sparse: _Sparse, rows: int, dense_from: int = 160, block: int = 1024) -> Floats:
    """X X' in single precision: frequent columns by dense blocks, rare ones pair by pair."""
    import numpy as np

    starts, row_of, values = _by_column(sparse, rows)
    lines = np.diff(starts)
    gram = np.zeros((rows, rows), dtype=np.float32)
    frequent = np.flatnonzero(lines >= dense_from)
    for first in range(0, len(frequent), block):
        part = frequent[first : first + block]
        dense = np.zeros((rows, len(part)), dtype=np.float32)
        for at, col in enumerate(part):
            span = slice(starts[col], starts[col + 1])
            dense[row_of[span], at] = values[span]
        gram += dense @ dense.T
    flat = gram.reshape(-1)
    for size in range(1, dense_from):
        same: Ints = np.flatnonzero(lines == size)
        if not len(same):
            continue
        for first in range(0, len(same), max(1, 2_000_000 // (size * size))):
            part = same[first : first + max(1, 2_000_000 // (size * size))]
            places = starts[part][:, None] + np.arange(size)
            who, much = row_of[places], values[places]
            where = (who[:, :, None] * rows + who[:, None, :]).reshape(-1)
            np.add.at(flat, where, (much[:, :, None] * much[:, None, :]).reshape(-1))
    return gram


def _cholesky(gram: Floats, block: int) -> Floats:
    """The lower factor in place of the matrix, by blocks: nearly all work is matrix products.

    numpy's own routine takes five times as long in single precision at 8,000 rows.
    """
    import numpy as np

    size = len(gram)
    for first in range(0, size, block):
        last = min(first + block, size)
        corner = np.linalg.cholesky(gram[first:last, first:last])
        gram[first:last, first:last] = corner
        if last == size:
            break
        inverse = np.linalg.inv(corner)
        gram[last:, first:last] = gram[last:, first:last] @ inverse.T
        panel = gram[last:, first:last]
        for top in range(last, size, 4 * block):  # only the lower half is kept up to date
            bottom = min(top + 4 * block, size)
            gram[top:, top:bottom] -= panel[top - last :] @ panel[top - last : bottom - last].T
    return gram


def _solve(gram: Floats, target: Floats, block: int = 256) -> Floats:
    """Solve the symmetric positive system: Cholesky factor, then block substitution twice."""
    import numpy as np

    lower = _cholesky(gram, block)
    solved = target.copy()
    size = len(gram)
    starts = range(0, size, block)
    for first in starts:  # forward: L z = y
        last = min(first + block, size)
        solved[first:last] -= lower[first:last, :first] @ solved[:first]
        corner = np.tril(lower[first:last, first:last])
        solved[first:last] = np.linalg.solve(corner, solved[first:last])
    for first in reversed(starts):  # backward: L' x = z
        last = min(first + block, size)
        solved[first:last] -= lower[last:, first:last].T @ solved[last:]
        corner = np.tril(lower[first:last, first:last])
        solved[first:last] = np.linalg.solve(corner.T, solved[first:last])
    return solved.astype(np.float32)


def _prune(
    sparse: _Sparse,
    dual: Floats,
    hashes: Ints,
    idf: Floats,
    names: tuple[str, ...],
    bias: Floats,
    settings: FitSettings,
    whole: int,
) -> Weights:
    """Primal weights; all but the first `whole` columns keep their largest ones only."""
    import numpy as np

    starts, row_of, values = _by_column(sparse, len(dual))
    primal = np.zeros((sparse.width, len(names)), dtype=np.float32)
    for first in range(0, sparse.width, 4096):
        last = min(first + 4096, sparse.width)
        span = slice(starts[first], starts[last])
        if span.start == span.stop:
            continue
        part = dual[row_of[span]] * values[span][:, None]
        at = starts[first:last] - starts[first]
        filled = np.diff(starts[first : last + 1]) > 0
        primal[first:last][filled] = np.add.reduceat(part, at[filled], axis=0)
    if settings.keep < sparse.width:
        limit = np.partition(np.abs(primal), sparse.width - settings.keep, axis=0)[
            sparse.width - settings.keep
        ]
        limit[:whole] = 0.0
        primal[np.abs(primal) < limit] = 0.0
    filled_rows, filled_cols = np.nonzero(primal)
    row_starts = np.zeros(sparse.width + 1, dtype=np.int64)
    np.cumsum(np.bincount(filled_rows, minlength=sparse.width), out=row_starts[1:])
    return Weights(
        names,
        settings.stem_share,
        settings.grams,
        hashes.tolist(),
        idf.tolist(),
        row_starts.tolist(),
        filled_cols.tolist(),
        primal[filled_rows, filled_cols].tolist(),
        bias.tolist(),
    )
