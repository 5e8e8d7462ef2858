"""The table of signs keeps its promises: complete, sourced, plain, without a dose."""

from __future__ import annotations

import re

import pytest
from safety_common import plain_cases

from guidebot.domain.sign import Sign, Tier
from guidebot.safety import rules
from guidebot.safety.signs import BY_KEY, HEADLINE, SIGNS, STOP_AND_CALL

# A number beside a unit or a count of pills; ten minutes and 24 hours are no doses.
_DOSE = re.compile(r"\b\d+(?:\.\d+)?\s*(?:mg|ml|g|mcg|tablets?|pills?|drops?|/kg|per kg)\b", re.I)


def test_every_sign_has_a_rule_and_cases() -> None:
    with_rules = {rule.sign for rule in rules.read()}
    assert with_rules == set(BY_KEY)
    assert {case[0] for case in plain_cases()} == set(BY_KEY)
    assert len(SIGNS) == len(BY_KEY) == 42


def test_tiers_come_in_order() -> None:
    tiers = [sign.tier for sign in SIGNS]
    assert tiers == sorted(tiers, reverse=True)
    assert set(HEADLINE) == set(Tier)


@pytest.mark.parametrize("sign", SIGNS, ids=lambda sign: sign.key)
def test_a_sign_is_told_plainly(sign: Sign) -> None:
    assert sign.source
    assert sign.said
    assert 2 <= len(sign.do) <= 4
    assert sign.settles.endswith("?")
    assert sign.settles.count("?") == 1
    for line in (*sign.do, sign.settles):
        assert not _DOSE.search(line)
        for sentence in re.split(r"[.:!?]", line):
            assert len(sentence.split()) <= 22, sentence


def test_a_leg_that_may_be_broken_keeps_the_device() -> None:
    told = " ".join(BY_KEY["limb-broken"].do)
    assert "Keep your dog still" in told
    assert "Do not take it off" in told


def test_device_comes_off_where_blood_or_skin_is_at_risk() -> None:
    for key in ("foot-no-blood", "foot-swollen", "skin-open", "joint-swollen"):
        assert "Take the device" in " ".join(BY_KEY[key].do)


def test_stop_and_call_is_most_urgent() -> None:
    assert STOP_AND_CALL.tier is Tier.EMERGENCY
    assert STOP_AND_CALL.do
