"""The one verdict: faults end in a call, clinics may only add, asking is no telling."""

from __future__ import annotations

import pytest

from guidebot.domain.sign import Tier
from guidebot.errors import ContentError
from guidebot.linear.fit import fit, tokenise
from guidebot.safety import compiled, judge, net, rules, sure, wide
from guidebot.safety.signs import STOP_AND_CALL
from guidebot.safety.wide import Net
from guidebot.text import MAX_CHARS, clean


def test_quote_is_cut_from_the_message(weights: Net) -> None:
    text = clean("Shes been licking and theres a wet hole in her heel, can we do stairs")
    found = judge.judge(text, weights)
    assert found.alert is not None
    assert found.alert.tier >= Tier.VET_TODAY
    for finding in found.findings:
        start, end = finding.span
        assert finding.quote == text.text[start:end]
        assert finding.why


@pytest.mark.parametrize("part", ["split", "find", "scopes", "run", "live"])
def test_a_fault_in_any_part_stops_and_calls(
    part: str, monkeypatch: pytest.MonkeyPatch, weights: Net
) -> None:
    def fails(*_: object) -> None:
        raise RuntimeError("injected")

    monkeypatch.setattr(judge, part, fails)
    found = judge.judge(clean("which strap first"), weights)
    assert found.alert == STOP_AND_CALL
    assert "injected" in found.fault
    assert found.rules.hash


def test_fault_in_the_wide_net_stops_and_calls(monkeypatch: pytest.MonkeyPatch) -> None:
    strange = fit([tokenise("a strap"), tokenise("a hinge")], ["x", "y"])
    assert judge.judge(clean("which strap first"), strange).alert == STOP_AND_CALL
    assert judge.judge(clean("which strap first"), None).alert == STOP_AND_CALL


def test_fault_in_the_stamp_itself(monkeypatch: pytest.MonkeyPatch) -> None:
    def fails() -> None:
        raise RuntimeError("injected")

    monkeypatch.setattr(compiled, "stamp", fails)
    assert judge.judge(clean("which strap first"), None).alert == STOP_AND_CALL


def test_text_that_was_cut_stops_and_calls(weights: Net) -> None:
    found = judge.judge(clean("a" * (MAX_CHARS + 1)), weights)
    assert found.alert == STOP_AND_CALL


def test_more_unknown_words_than_a_person_writes(weights: Net) -> None:
    letters = "bcdfgjkmpqvwxz"
    odd = (a + b + c + d for a in letters for b in letters for c in letters for d in letters)
    text = " ".join(f"{word}{word[::-1]}" for word in list(odd)[:4_000])
    assert judge.judge(clean(text), weights).alert == STOP_AND_CALL


@pytest.mark.parametrize(
    "table", ["no-such-sign: blood & heavy @4", "unwell: blood & no_such_concept @4"]
)
def test_a_rule_that_cannot_be_read_is_told(table: str) -> None:
    with pytest.raises(ContentError, match="unknown"):
        rules.read((table,))


def test_dump_and_load_give_the_same_rules() -> None:
    built = compiled.build()
    loaded = compiled.load(compiled.dump(built))
    assert loaded.rules == built.rules
    assert loaded.lexicon.forms == built.lexicon.forms
    assert loaded.stamp == built.stamp
    with pytest.raises(ValueError, match="no dump"):
        compiled.load(b"\x00\x01")


def test_stamp_changes_with_the_rules(monkeypatch: pytest.MonkeyPatch) -> None:
    before = compiled.stamp()
    compiled.stamp.cache_clear()
    monkeypatch.setattr(rules, "TABLES", (*rules.TABLES[:2], rules.TABLES[2] + "# more"))
    after = compiled.stamp()
    compiled.stamp.cache_clear()
    assert before.hash != after.hash


def test_a_clinic_adds_but_never_weakens(weights: Net) -> None:
    added = judge.Added({"doing the zoomies backwards": "unwell", "toes are blue": "hair-worn"})
    more = judge.judge(clean("he is doing the zoomies backwards"), weights, (), added)
    assert more.alert is not None
    assert more.alert.tier is Tier.VET_TODAY
    same = judge.judge(clean("His toes are blue and ice cold"), weights, (), added)
    assert same.alert is not None
    assert same.alert.sign == "foot-no-blood"


def test_two_messages_make_one_report(weights: Net, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(wide, "URGENT_AT", 99.0)  # the rules alone
    monkeypatch.setattr(wide, "ANY_AT", 99.0)
    assert not judge.judge(clean("It is blue"), weights).findings
    found = judge.judge(clean("It is blue"), weights, ("About his left foot",))
    assert [f.sign.key for f in found.findings] == ["foot-no-blood"]
    assert found.findings[0].quote == "blue"


def test_asking_about_a_sign_is_a_mention(weights: Net) -> None:
    found = judge.judge(clean("What does a pressure sore on the heel look like?"), weights)
    assert found.alert is None
    assert "skin-open" in {sign.key for sign in found.mentions}


def test_asked_about_a_pain_reliever_is_vet_today_given_is_emergency(weights: Net) -> None:
    asked = judge.judge(clean("Can I give her half an ibuprofen?"), weights).alert
    given = judge.judge(clean("I gave her half an ibuprofen"), weights).alert
    assert asked is not None
    assert given is not None
    assert (asked.tier, given.tier) == (Tier.VET_TODAY, Tier.EMERGENCY)


def test_prescribed_pills_are_no_sign(weights: Net) -> None:
    text = clean("Should he have the pills the vet prescribed before or after breakfast?")
    assert judge.judge(text, weights).alert is None


def test_wide_net_says_could_be_and_asks(weights: Net, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(wide, "URGENT_AT", -99.0)
    found = judge.judge(clean("something about the garden"), weights)
    assert found.alert is not None
    assert "this could be" in found.alert.headline
    assert found.alert.asks == found.findings[0].sign.settles


def test_wide_net_never_lowers(weights: Net, monkeypatch: pytest.MonkeyPatch) -> None:
    text = clean("She collapsed and can't get up")
    sure = judge.judge(text, weights).alert
    monkeypatch.setattr(wide, "URGENT_AT", -99.0)
    both = judge.judge(text, weights).alert
    assert sure is not None
    assert both is not None
    assert both.tier >= sure.tier


def test_shipped_weights_belong_to_these_rules() -> None:
    assert net.shipped() is not None, "rules or reports changed: run guidebot.safety.refit"


def test_empty_and_blank_are_quiet(weights: Net) -> None:
    for text in ("", "   ", "\n\n", "?!"):
        assert judge.judge(clean(text), weights).alert is None


def test_a_rule_that_is_not_sure_never_alerts_alone(
    weights: Net, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It speaks only where the wide net backs it."""
    text = clean("She collapsed and can't get up")
    monkeypatch.setattr(sure, "rules", frozenset)
    backed = judge.judge(text, weights)
    assert any(finding.net == "rules" for finding in backed.findings)
    monkeypatch.setattr(wide, "URGENT_AT", 99.0)
    monkeypatch.setattr(wide, "ANY_AT", 99.0)
    assert judge.judge(text, weights).findings == ()


def test_tiers_of_scores() -> None:
    def tier(reported: float, urgent: float, emergency: float) -> Tier | None:
        return wide.tier_of({"any": reported, "urgent": urgent, "emergency": emergency})

    low, nearly = wide.URGENT_AT - 1, (wide.URGENT_AT + wide.NEARLY_URGENT) / 2
    assert tier(1, 1, wide.EMERGENCY_AT) is Tier.EMERGENCY
    assert tier(1, wide.URGENT_AT, wide.EMERGENCY_AT - 0.01) is Tier.VET_TODAY
    assert tier(wide.ANY_AT, low, -1) is Tier.CLINIC
    assert tier(wide.ANY_AT, nearly, -1) is Tier.VET_TODAY
    assert tier(wide.ANY_AT - 0.01, nearly, 1) is None


@pytest.mark.parametrize(
    ("fired", "wrong", "earned"), [(8, 0, True), (7, 0, False), (95, 5, True), (94, 6, False)]
)
def test_a_rule_earns_to_alert_alone(fired: int, wrong: int, earned: bool) -> None:
    rows = [(True, ["i:one/1", "c:leg"])] * fired + [(False, ["i:one/1"])] * wrong
    assert sure.measure(rows) == (["one/1"] if earned else [])
