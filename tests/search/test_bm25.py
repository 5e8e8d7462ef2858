"""BM25 against the reference libraries and a published toy value."""

from __future__ import annotations

import random

import bm25s
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from rank_bm25 import BM25Okapi

from guidebot.search.bm25 import Bm25
from guidebot.search.flat import FlatPostings, dump_postings

WORDS = [f"w{i}" for i in range(60)]


def corpus(seed: int, size: int) -> list[list[str]]:
    rng = random.Random(seed)
    return [rng.choices(WORDS, k=rng.randint(1, 30)) for _ in range(size)]


def all_scores(index: Bm25, query: list[str]) -> list[float]:
    found = index.scores(query)
    return [found.get(i, 0.0) for i in range(index.size)]


def test_toy_value_of_the_rank_bm25_readme() -> None:
    """README of dorianbrown/rank_bm25: [0, 0.93729472, 0]."""
    texts = ["Hello there good man!", "It is quite windy in London", "How is the weather today?"]
    index = Bm25.build([text.split(" ") for text in texts])
    assert all_scores(index, ["windy", "London"]) == pytest.approx([0, 0.93729472, 0], abs=1e-8)


@pytest.mark.parametrize("seed", range(8))
@pytest.mark.parametrize(("k1", "b"), [(1.5, 0.75), (2.0, 0.3)])
def test_equals_rank_bm25_on_random_corpora(seed: int, k1: float, b: float) -> None:
    documents = corpus(seed, 40)
    reference = BM25Okapi(documents, k1=k1, b=b)
    index = Bm25.build(documents, k1=k1, b=b)
    for query in corpus(seed + 100, 10):
        assert all_scores(index, query) == pytest.approx(
            list(reference.get_scores(query)), abs=1e-9
        )


def test_equals_bm25s_where_no_word_is_in_half_of_the_documents() -> None:
    """bm25s (atire, Robertson idf) equals rank-bm25 only without words in over half of them."""
    rng = random.Random(3)
    vocabulary = [f"x{i}" for i in range(400)]
    documents = [rng.choices(vocabulary, k=12) for _ in range(60)]
    index = Bm25.build(documents)
    other = bm25s.BM25(method="atire", idf_method="robertson", k1=1.5, b=0.75, dtype="float64")
    other.index(documents, show_progress=False)
    for document in documents[:10]:
        query = document[:4]
        assert all_scores(index, query) == pytest.approx(list(other.get_scores(query)), rel=2e-5)


def test_one_document_and_unknown_words() -> None:
    index = Bm25.build([["a", "b"]])
    assert index.scores(["zzz"]) == {}
    assert index.top([], 3) == []


@pytest.mark.parametrize("documents", [[], [[]], [[], []]])
def test_nothing_to_index(documents: list[list[str]]) -> None:
    """rank-bm25 divides by zero here."""
    assert Bm25.build(documents).scores(["a"]) == {}


def test_ties_come_in_document_order() -> None:
    """numpy's argsort makes this depend on the processor in rank-bm25's get_top_n."""
    index = Bm25.build([["same", "word"]] * 30 + [["other"]] * 40)
    assert [number for number, _ in index.top(["same"], 10)] == list(range(10))


@settings(max_examples=30, deadline=None)
@given(st.lists(st.lists(st.sampled_from(WORDS), max_size=12), min_size=1, max_size=20))
def test_dumped_postings_score_the_same(documents: list[list[str]]) -> None:
    index = Bm25.build(documents)
    postings = FlatPostings(dump_postings(index.size, index.postings))
    loaded = Bm25(postings.size, postings)
    assert loaded.scores(WORDS[:10]) == pytest.approx(index.scores(WORDS[:10]))


def test_cut_postings_are_refused() -> None:
    raw = dump_postings(2, Bm25.build([["a"], ["b"]]).postings)
    with pytest.raises(ValueError, match="cut short"):
        FlatPostings(raw[:-3])
