"""Formulas against published examples, syllables against a dictionary's counts."""

from __future__ import annotations

import pytest

from guidebot.guide.readability import Counts, count, syllables


@pytest.mark.parametrize(
    ("text", "ease", "grade"),
    [
        # The two sentences commonly given with the formulas (116 and 37.5 for reading ease).
        ("The cat sat on the mat.", 116.145, -1.45),
        (
            "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.",
            37.455,
            11.26,
        ),
    ],
)
def test_published_sentences(text: str, ease: float, grade: float) -> None:
    counts = count(text)
    assert counts.ease() == pytest.approx(ease, abs=0.005)
    assert counts.grade() == pytest.approx(grade, abs=0.005)


def test_formulas_by_hand() -> None:
    # 100 words, 5 sentences, 150 syllables: Flesch 1948; Kincaid et al. 1975.
    assert Counts(100, 5, 150).ease() == pytest.approx(59.635)
    assert Counts(100, 5, 150).grade() == pytest.approx(9.91)
    assert (Counts(0, 0, 0).ease(), Counts(0, 0, 0).grade()) == (0.0, 0.0)


SYLLABLES = """table 2, buckle 2, ankles 2, handle 2, walked 1, rested 2, notes 1, places 2, boxes
2, touches 2, hinges 2, sleeves 1, knee 1, device 2, devices 3, orthosis 3, played
1, tried 1, carried 2, used 1, uses 2, edges 2, toes 1, loosen 2, elastic 3, tendon
2, suspension 3, slides 1, settled 2, puddle 2, lies 1, eyes 1, clothes 1, aches 1,
people 2, area 3, closely 2, movement 2, careful 2, value 2, holes 1, rules 1,
bruised 1, breathes 1, changed 1, does 1, voices 2, before 2, lower 2, veterinarian
6, medicine 3, going 2, being 2, every 2, dog's 1, don't 1, it 1, a 1, rhythm 1"""


@pytest.mark.parametrize("entry", [entry.strip() for entry in SYLLABLES.split(",")])
def test_syllables(entry: str) -> None:
    # Counts as in a pronouncing dictionary of American English; rhythm is known to come out low.
    word, number = entry.split()
    assert syllables(word) == int(number)


def test_lists_and_paragraphs_end_sentences() -> None:
    text = "Do this:\n\n- Open the strap\n- Look at the skin\n\nThen *rest*"
    assert (count(text).sentences, count(text).words) == (4, 11)


def test_a_number_is_one_word() -> None:
    assert count("Wait 1/8 in or 3.5 mm.") == Counts(6, 1, 6)
