"""Fit the linear scorer: ridge regression on TF-IDF with numpy.

One target column a class, +1 for its own lines and -1 for all others. With X the rows of
features, W = X' (X X' + lambda I)^-1 Y (Hoerl & Kennard, Technometrics 1970; dual form: Saunders,
Gammerman & Vovk, ICML 1998). Above `MOST_DUAL` lines, where the square matrix of the dual form gets
too large, by conjugate gradients on the same problem (Hestenes & Stiefel, J. Res. NBS 1952). Only
numpy is needed and two runs give the same weights.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from guidebot.linear.features import Blocks, stem, words
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
        together: weight of the block of pairs of content words beside these two, 0 for none.
        keep: weights kept for each class, the largest by size; the rest is dropped.
        least_lines: a feature must occur in so many lines.
        least_together: the same for pairs of content words.
        grams: least and most characters of a character n-gram.
    """

    ridge: float = 0.5
    stem_share: float = 0.5
    together: float = 0.0
    keep: int = 2000
    least_lines: int = 2
    least_together: int = 5
    grams: tuple[int, int] = (3, 4)

    @property
    def blocks(self) -> Blocks:
        """The blocks of features, as the scorer takes them."""
        return Blocks(self.stem_share, 1.0 - self.stem_share, self.together, self.grams)


MOST_DUAL = 15_000
"""Lines up to which the dual form is solved; its matrix has the square of that many entries."""
ROUNDS_WHOLE, ROUNDS = 60, 20
"""Rounds of conjugate gradients for the `sums`, on which decisions hang, and for the others."""


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
    whole = len(unions)
    if len(texts) > MOST_DUAL:
        say("solving")
        primal = np.column_stack(
            [
                _conjugate(sparse, part, settings.ridge, rounds)
                for part, rounds in ((target[:, :whole], ROUNDS_WHOLE), (target[:, whole:], ROUNDS))
                if part.shape[1]
            ]
        )
    else:
        say("comparing lines")
        gram = _gram(sparse, len(texts))
        say("solving")
        gram[np.diag_indices_from(gram)] += np.float32(settings.ridge)
        primal = _primal(sparse, _solve(gram, target))
    say("pruning")
    return _prune(sparse, primal, hashes, idf, columns, bias, settings, whole=whole)


def _features(
    texts: Sequence[tuple[Sequence[str], Sequence[str]]], settings: FitSettings
) -> tuple[_Sparse, Ints, Floats]:
    """TF-IDF rows; columns are sorted by feature hash. Sublinear tf, smooth idf (Salton)."""
    import numpy as np

    blocks = settings.blocks
    seen: dict[int, int] = {}
    pairs: set[int] = set()
    hashed: list[list[tuple[dict[int, int], float]]] = []
    cache: dict[str, int] = {}

    def hashes_of(block: Any) -> dict[int, int]:
        out: dict[int, int] = {}
        for feature, count in block.items():
            value = cache.get(feature)
            if value is None:
                value = cache[feature] = feature_hash(feature)
            out[value] = out.get(value, 0) + count
        return out

    for tokens, stems in texts:
        row = [(hashes_of(block), share) for block, share in blocks.of(tokens, stems)]
        hashed.append(row)
        for value in set().union(*(block for block, _ in row)):
            seen[value] = seen.get(value, 0) + 1
        if settings.together:
            pairs.update(row[-1][0])
    kept = sorted(
        value
        for value, lines in seen.items()
        if lines >= (settings.least_together if value in pairs else settings.least_lines)
    )
    column = {value: i for i, value in enumerate(kept)}
    total = len(texts)
    idf = {value: math.log((1 + total) / (1 + seen[value])) + 1.0 for value in kept}
    starts: list[int] = [0]
    cols: list[int] = []
    values: list[float] = []
    for row in hashed:
        for block, share in row:
            weighed = [
                (column[v], (1.0 + math.log(c)) * idf[v]) for v, c in block.items() if v in column
            ]
            norm = math.sqrt(sum(x * x for _, x in weighed))
            if norm:
                cols.extend(c for c, _ in weighed)
                values.extend(x * share / norm for _, x in weighed)
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


def _times(starts: Ints, cols: Ints, values: Floats, dense: Floats, block: int = 2048) -> Floats:
    """A sparse matrix, given row by row, times a dense one."""
    import numpy as np

    rows = len(starts) - 1
    out = np.zeros((rows, dense.shape[1]), dtype=np.float32)
    for first in range(0, rows, block):
        last = min(first + block, rows)
        span = slice(starts[first], starts[last])
        if span.start == span.stop:
            continue
        part = dense[cols[span]] * values[span][:, None]
        filled = np.diff(starts[first : last + 1]) > 0
        out[first:last][filled] = np.add.reduceat(
            part, (starts[first:last] - starts[first])[filled], axis=0
        )
    return out


def _primal(sparse: _Sparse, dual: Floats) -> Floats:
    """Weights of the features from those of the lines: X' times the dual."""
    return _times(*_by_column(sparse, len(dual)), dual)


def _conjugate(sparse: _Sparse, target: Floats, ridge: float, rounds: int) -> Floats:
    """Minimise |X W - Y|^2 + ridge |W|^2, every column on its own, by conjugate gradients."""
    import numpy as np

    columns = _by_column(sparse, len(target))
    left = target.copy()
    slope = _times(*columns, left)
    weights = np.zeros_like(slope)
    way = slope.copy()
    size = (slope**2).sum(axis=0)
    for _ in range(rounds):
        step = _times(sparse.starts, sparse.cols, sparse.values, way)
        long = size / np.maximum((step**2).sum(axis=0) + ridge * (way**2).sum(axis=0), 1e-20)
        weights += long * way
        left -= long * step
        slope = _times(*columns, left) - np.float32(ridge) * weights
        grown = (slope**2).sum(axis=0)
        way = slope + grown / np.maximum(size, 1e-20) * way
        size = grown
    return weights.astype(np.float32)


def _prune(
    sparse: _Sparse,
    primal: Floats,
    hashes: Ints,
    idf: Floats,
    names: tuple[str, ...],
    bias: Floats,
    settings: FitSettings,
    whole: int,
) -> Weights:
    """Pack the weights; all but the first `whole` columns keep their largest ones only."""
    import numpy as np

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
        settings.blocks,
        hashes.tolist(),
        idf.tolist(),
        row_starts.tolist(),
        filled_cols.tolist(),
        primal[filled_rows, filled_cols].tolist(),
        bias.tolist(),
    )
