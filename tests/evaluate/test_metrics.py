"""Metrics against published worked examples and ir-measures."""

from __future__ import annotations

import random

import ir_measures
import pytest
from hypothesis import given
from hypothesis import strategies as st
from ir_measures import RR, Success, nDCG

from guidebot.evaluate.metrics import (
    Share,
    dcg,
    dcg_2002,
    ndcg,
    reciprocal_rank,
    success_at,
    wilson,
)


def test_dcg_of_jarvelin_and_kekalainen() -> None:
    """ACM TOIS 2002;20(4):422-446, section 2 (recalled and worked out again)."""
    gains = [3, 2, 3, 0, 0, 1, 2, 2, 3, 0]
    expected = [3, 5, 6.89, 6.89, 6.89, 7.28, 7.99, 8.66, 9.61, 9.61]
    assert dcg_2002(gains) == pytest.approx(expected, abs=0.006)


def test_ndcg_worked_example() -> None:
    """The usual six-document example, log2(rank + 1): DCG 6.861, IDCG 8.740, nDCG 0.785."""
    gains = [3, 2, 3, 0, 1, 2]
    assert dcg(gains, 6) == pytest.approx(6.861, abs=0.001)
    assert ndcg(gains, [*gains, 3, 2], 6) == pytest.approx(0.785, abs=0.001)
    assert ndcg(gains, gains, 6) == pytest.approx(0.961, abs=0.001)


def test_mean_reciprocal_rank_worked_example() -> None:
    """First hits at ranks 3, 2 and 1: 11/18 (TREC-8 question answering, Voorhees 1999)."""
    ranks = [[0, 0, 1], [0, 1, 0], [1, 0, 0]]
    assert sum(map(reciprocal_rank, ranks)) / 3 == pytest.approx(11 / 18)


@pytest.mark.parametrize(
    ("hits", "n", "low", "high"),
    [
        (81, 263, 0.2553, 0.3662),
        (15, 148, 0.0624, 0.1605),
        (0, 20, 0.0, 0.1611),
        (1, 29, 0.0061, 0.1718),
    ],
)
def test_wilson_of_newcombe(hits: int, n: int, low: float, high: float) -> None:
    """Newcombe, Stat Med 1998;17:857-872, Table I."""
    assert wilson(hits, n) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize("seed", range(5))
def test_agrees_with_ir_measures_on_random_runs(seed: int) -> None:
    rng = random.Random(seed)
    qrels, run, ours = [], [], {"s1": 0.0, "s3": 0.0, "rr": 0.0, "ndcg": 0.0}
    queries = [f"q{i}" for i in range(20)]
    for query in queries:
        docs = [f"d{i}" for i in range(15)]
        grades = {doc: rng.choice([0, 0, 0, 1]) for doc in docs}
        grades[docs[0]] = 1
        rng.shuffle(docs)
        shown = docs[: rng.randint(0, 12)]
        qrels += [ir_measures.Qrel(query, doc, grade) for doc, grade in grades.items()]
        run += [ir_measures.ScoredDoc(query, doc, -rank) for rank, doc in enumerate(shown)]
        gains = [grades[doc] for doc in shown]
        ours["s1"] += success_at(gains, 1)
        ours["s3"] += success_at(gains, 3)
        ours["rr"] += reciprocal_rank(gains, 10)
        ours["ndcg"] += ndcg(gains, list(grades.values()), 10)
    wanted = [Success @ 1, Success @ 3, RR @ 10, nDCG @ 10]
    theirs = ir_measures.calc_aggregate(wanted, qrels, run)
    assert [total / len(queries) for total in ours.values()] == pytest.approx(
        [theirs[measure] for measure in wanted]
    )


@given(st.integers(0, 300), st.integers(1, 300))
def test_interval_holds_the_share(hits: int, n: int) -> None:
    share = Share(min(hits, n), n)
    low, high = share.interval
    assert 0 <= low <= share.value + 1e-12
    assert share.value - 1e-12 <= high <= 1


def test_nothing_counted() -> None:
    assert Share(0, 0).value == 0
    assert Share(0, 0).interval == (0.0, 1.0)
    assert success_at([], 1) == reciprocal_rank([]) == ndcg([], [1]) == 0
