"""Properties over random dress: nothing an owner adds loses a sign; time stays linear."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from safety_common import look, plain_cases, signs

from guidebot.linear.weights import Weights
from guidebot.safety.judge import judge
from guidebot.safety.tokens import distance_at_most_two, skeleton, split
from guidebot.text import clean

PLAIN = [(case[0], case[1]) for case in plain_cases()]
GREETINGS = [
    "Hi",
    "Hello there",
    "Dear all",
    "Good evening, Anna here",
    "hey!!",
    "Sorry to bother you",
]
NAMES = ["Biscuit", "Rosie", "Bruno", "Mr Waffles", "Juno"]
CLOSINGS = ["thanks", "Kind regards, Tom", "xx", "please advise", "Best wishes from all of us"]


@settings(max_examples=150, deadline=None)
@given(
    case=st.sampled_from(PLAIN),
    hello=st.sampled_from(GREETINGS),
    name=st.sampled_from(NAMES),
    bye=st.sampled_from(CLOSINGS),
    upper=st.booleans(),
    mark=st.sampled_from([". ", "! ", "\n", "... ", "? "]),
)
def test_greetings_names_and_closings(
    case: tuple[str, str], hello: str, name: str, bye: str, upper: bool, mark: str
) -> None:
    text = f"{hello}{mark}This is about {name}{mark}{case[1]}{mark}{bye}"
    assert case[0] in signs(text.upper() if upper else text)


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=300))
def test_any_text_is_split_truly(text: str) -> None:
    cleaned = clean(text).text
    words = split(cleaned)
    for form, start, end in zip(words.forms, words.starts, words.ends, strict=True):
        assert (
            cleaned[start:end].translate({0x2019: "'", 0x2018: "'"}).lower().replace("'", "")[:1]
            == form[:1]
            or not cleaned[start].isascii()
        )
    assert words.steps == sorted(words.steps)
    look(cleaned)


@settings(max_examples=100, deadline=None)
@given(st.text(max_size=200))
def test_any_text_is_judged(weights: Weights, text: str) -> None:
    assert judge(clean(text), weights).fault == ""


@settings(max_examples=200, deadline=None)
@given(st.text("abcdeh", min_size=1, max_size=9), st.text("abcdeh", min_size=1, max_size=9))
def test_distance_against_the_plain_table(one: str, two: str) -> None:
    """Against the textbook table of optimal string alignment, written out in full."""
    rows = [[0] * (len(two) + 1) for _ in range(len(one) + 1)]
    for i in range(len(one) + 1):
        for j in range(len(two) + 1):
            if not i or not j:
                rows[i][j] = i + j
                continue
            rows[i][j] = min(
                rows[i - 1][j] + 1,
                rows[i][j - 1] + 1,
                rows[i - 1][j - 1] + (one[i - 1] != two[j - 1]),
            )
            if i > 1 and j > 1 and one[i - 1] == two[j - 2] and one[i - 2] == two[j - 1]:
                rows[i][j] = min(rows[i][j], rows[i - 2][j - 2] + 1)
    assert distance_at_most_two(one, two) == (rows[-1][-1] <= 2)


def test_skeleton_keeps_consonants() -> None:
    assert skeleton("diarrhea") == skeleton("diahrrea") == "dr"


HOSTILE = {
    "one word": "blood ",
    "denials": "no, not, never without ",
    "phrases": "he can't get up and won't stop bleeding from ",
    "parts": "paw leg knee toe strap brace foot ",
    "findings": "cold blue swollen raw hot red bald ",
    "supposing": "if he would, what if she could, ",
    "letters": "a b c d e f ",
    "stretched": "soooooooooo heeeeelp ",
    "punctuation": ". , ; : ! ? - ",
    "fillers": "the his her so really just ",
}


@pytest.mark.parametrize("kind", HOSTILE)
def test_a_hundred_kilobytes_in_linear_time(kind: str, weights: Weights) -> None:
    """Processor time, so that a busy machine does not fail it; the promise is one second."""
    piece = HOSTILE[kind]
    small, large = (clean((piece * 100_000)[:size]) for size in (25_000, 100_000))
    judge(small, weights)
    begin = time.process_time()
    judge(small, weights)
    middle = time.process_time()
    judge(large, weights)
    end = time.process_time()
    assert end - middle < 1.5
    assert end - middle < 12 * max(middle - begin, 0.05)
