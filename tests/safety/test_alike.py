"""The vote of the authored messages most alike, against the definition worked out in full."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebot.safety import alike
from guidebot.safety.alike import Alike

WORDS = st.sampled_from("toe blue cold foot walk nice strap wet open sore".split())
MESSAGES = st.lists(st.lists(WORDS, min_size=1, max_size=6), min_size=3, max_size=12)


def vector(stems: list[str], weight: dict[str, float]) -> dict[str, float]:
    seen = {*stems, *(f"{a} {b}" for a, b in pairwise(stems))}
    return {feature: weight[feature] for feature in seen if feature in weight}


def expected(
    messages: list[list[str]], tiers: list[int], asked: list[str], least: int, common: float
) -> float:
    """Cosine of TF-IDF vectors (Salton & Buckley 1988), squared, summed over the ten nearest."""
    count: dict[str, int] = {}
    for stems in messages:
        for feature in {*stems, *(f"{a} {b}" for a, b in pairwise(stems))}:
            count[feature] = count.get(feature, 0) + 1
    weight = {
        feature: math.log(len(messages) / many) + 1
        for feature, many in count.items()
        if 2 <= many <= common * len(messages)
    }
    query = vector(asked, weight)
    near = []
    for number, stems in enumerate(messages):
        other = vector(stems, weight)
        size = math.sqrt(sum(v * v for v in other.values()))
        dot = sum(value * other.get(feature, 0.0) for feature, value in query.items())
        if dot:
            near.append((dot / size, -number))
    best = sorted(near, reverse=True)[: alike.NEAREST]
    total = sum(value * value for value, _ in best)
    said = sum(value * value * (1 if tiers[-n] >= least else -1) for value, n in best)
    return said / total if total else 0.0


@given(MESSAGES, st.lists(WORDS, max_size=6), st.data())
def test_votes_are_those_of_the_definition(
    messages: list[list[str]], asked: list[str], data: st.DataObject
) -> None:
    size = len(messages)
    tiers = data.draw(st.lists(st.integers(0, 3), min_size=size, max_size=size))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(alike, "COMMONEST", 1.0)
        index = Alike.load(Alike.build(messages, tiers).dump())
        found = index.votes(asked, (1, 2, 3))
    for vote, least in zip(found, (1, 2, 3), strict=True):
        # Ties among the nearest may fall either way in single precision; votes then differ in whole
        # neighbours, which the definition shows as well when it is asked for fewer of them.
        assert -1.0 - 1e-6 <= vote <= 1.0 + 1e-6
        if size <= alike.NEAREST:
            assert vote == pytest.approx(expected(messages, tiers, asked, least, 1.0), abs=1e-4)


def test_a_message_like_none_has_no_vote() -> None:
    index = Alike.build([["toe", "blue"], ["toe", "blue"], ["walk"]], [3, 3, 0])
    assert index.votes(["garden"], (1, 2)) == [0.0, 0.0]


def test_common_words_find_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(alike, "COMMONEST", 0.5)
    index = Alike.build([["the", "toe"], ["the", "toe"], ["the", "a"], ["the", "a"]], [3, 3, 0, 0])
    assert index.votes(["the"], (1,)) == [0.0]
    assert index.votes(["the", "toe"], (1,)) == pytest.approx([1.0])
    assert index.votes(["a"], (1,)) == pytest.approx([-1.0])


def test_a_damaged_index_is_refused() -> None:
    raw = Alike.build([["toe"], ["toe"]], [1, 0]).dump()
    for bad in (b"", raw[:10], b"XXXX" + raw[4:], raw[:-1]):
        with pytest.raises(ValueError, match=r"index of messages"):
            Alike.load(bad)


def test_too_many_messages_or_tiers_that_do_not_match() -> None:
    with pytest.raises(ValueError, match="tier"):
        Alike.build([["toe"]], [])
