"""Every sign in every guise: plain, shouted, misspelt, hedged, buried, denied, past, supposed."""

from __future__ import annotations

import itertools

import pytest
from safety_common import plain_cases, signs

from guidebot.domain.sign import Tier
from guidebot.linear.weights import Weights
from guidebot.safety.judge import judge
from guidebot.safety.signs import BY_KEY
from guidebot.text import clean

PLAIN = {case[0]: case[1] for case in plain_cases()}
DENIED = {case[0]: case[2] for case in plain_cases()}
OTHERS = {case[0]: case[3] for case in plain_cases()}
# These say `today` or `again and again` themselves, so that no past can be put behind them;
# asking is the report itself for the other two.
NO_PAST = {"not-drinking", "device-slides", "medicine-asked"}
NO_SUPPOSING = {"medicine-asked"}
NO_OTHER = {"medicine-asked", "pain-touch", "other-leg"}
CHAT = (
    "We picked the brace up on Monday and the lady at the desk was lovely. "
    "I would like to know which strap comes first and how often the sleeve should be washed. "
    "The garden is lovely at this time and we sit outside a good deal. "
)
keys = pytest.mark.parametrize("key", list(PLAIN))


@keys
def test_plain(key: str) -> None:
    assert key in signs(PLAIN[key])


@keys
@pytest.mark.parametrize(
    "dress",
    [
        str.upper,
        str.lower,
        lambda text: text.replace("'", "\u2019"),
        lambda text: text.replace(",", "").replace("'", ""),
        lambda text: f"Probably nothing, but {text[0].lower()}{text[1:]}, I guess",
        lambda text: f"Hi there, it's Maria. {text}. Thanks so much!",
        lambda text: f'My wife says: "{text}"',
        lambda text: f"{CHAT * 2}{text}. {CHAT * 2}",
        lambda text: f"{text}!!!",
        lambda text: f"quick question about straps, also {text}",
    ],
    ids="upper lower curly bare hedged greeting quoted buried loud asked".split(),
)
def test_dress_never_loses_a_sign(key: str, dress) -> None:  # type: ignore[no-untyped-def]
    assert key in signs(dress(PLAIN[key]))


def _typos(text: str) -> list[str]:
    """One typo in each longer word: two neighbours swapped, a letter lost, a letter doubled."""
    words = text.split()
    out = []
    for at, word in enumerate(words):
        if len(word) < 5 or not word.isalpha():
            continue
        middle = len(word) // 2
        for wrong in (
            word[: middle - 1] + word[middle] + word[middle - 1] + word[middle + 1 :],
            word[:middle] + word[middle + 1 :],
            word[:middle] + word[middle] + word[middle:],
        ):
            if wrong != word:
                out.append(" ".join([*words[:at], wrong, *words[at + 1 :]]))
    return out


def test_one_typo_loses_no_alert(weights: Weights) -> None:
    made, lost = 0, []
    for key, text in PLAIN.items():
        for wrong in _typos(text):
            made += 1
            alert = judge(clean(wrong), weights).alert
            if alert is None or alert.tier < BY_KEY[key].tier:
                lost.append(f"{key}: {wrong}")
    assert made > 300
    assert len(lost) <= 0.03 * made, lost


@keys
def test_denied(key: str) -> None:
    assert not signs(DENIED[key])


@keys
def test_of_somebody_else(key: str) -> None:
    if key not in NO_OTHER:
        assert not signs(OTHERS[key])


@keys
def test_long_gone(key: str) -> None:
    if key not in NO_PAST:
        assert not signs(f"{PLAIN[key]}, that was two years ago and healed long since.")


@keys
@pytest.mark.parametrize("frame", ["What if {}?", "Should I worry if {}?"])
def test_supposed(key: str, frame: str) -> None:
    told = PLAIN[key][0].lower() + PLAIN[key][1:]
    if key not in NO_SUPPOSING:
        assert key not in signs(frame.format(told))


@keys
def test_supposed_is_mentioned(key: str, weights: Weights) -> None:
    told = PLAIN[key][0].lower() + PLAIN[key][1:]
    judgement = judge(clean(f"What if {told}?"), weights)
    known = {sign.key for sign in judgement.mentions} | {f.sign.key for f in judgement.findings}
    assert key in known


def test_a_second_sign_never_lowers_the_tier(weights: Weights) -> None:
    for one, two in itertools.permutations(list(PLAIN)[::3], 2):
        alert = judge(clean(f"{PLAIN[one]}. {PLAIN[two]}."), weights).alert
        assert alert is not None
        assert alert.tier >= max(BY_KEY[one].tier, BY_KEY[two].tier), (one, two)


def test_a_denial_never_silences_a_second_sign() -> None:
    for one, two in itertools.permutations(list(PLAIN)[::4], 2):
        assert two in signs(f"{DENIED[one]}. {PLAIN[two]}."), (one, two)
        told = PLAIN[two][0].lower() + PLAIN[two][1:]
        assert two in signs(f"{DENIED[one]}, but {told}."), (one, two)


def test_tier_is_the_highest_found(weights: Weights) -> None:
    alert = judge(clean(f"{PLAIN['hair-worn']}. {PLAIN['collapse']}."), weights).alert
    assert alert is not None
    assert alert.tier is Tier.EMERGENCY
    assert alert.sign == "collapse"
    assert "hair-worn" in alert.also
