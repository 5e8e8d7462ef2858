"""Whether leave is asked and for what, learnt from a handful of lines."""

from __future__ import annotations

import pytest

from guidebot.linear.fit import tokenise
from guidebot.search.leave import LeaveIndex
from guidebot.search.words import Query

LINES = {
    "stairs": ("may he climb the stairs", "are the steps up to the loft allowed", "stairs ok yet"),
    "swim": ("may she swim in the lake", "is a dip in the pond allowed", "paddling ok yet"),
    "wear": ("may it stay on all day", "are ten hours allowed", "more hours ok yet"),
    "none": ("how do I wash the sleeve", "why does the hinge squeak", "she hates the stairs gate"),
}


def query(text: str) -> Query:
    tokens, stems = tokenise(text)
    return Query(tuple(tokens), tuple(stems), ())


@pytest.fixture(scope="module")
def index() -> LeaveIndex:
    built = LeaveIndex.build(LINES, {"swim": ("snorkel", "jump ... lake")}, ["what does it cost"])
    return LeaveIndex.load(built.dump())


@pytest.mark.parametrize(
    ("text", "key"),
    [("may he go up the steps", "stairs"), ("is swimming allowed", "swim"), ("snorkel?", "swim")],
)
def test_what_leave_is_asked_for(index: LeaveIndex, text: str, key: str) -> None:
    fits = index.scores(query(text)).fits()
    assert max(fits, key=lambda name: fits[name]) == key
    assert "none" not in fits


def test_whether_it_is_asked(index: LeaveIndex) -> None:
    asked = index.scores(query("may she climb to the loft")).asks
    told = index.scores(query("how do I wash the hinge")).asks
    assert asked > 0 > told


def test_sections_of_something_else_are_refused() -> None:
    with pytest.raises(KeyError):
        LeaveIndex.load({})
