"""The one verdict on a message: which injury signs it reports, and what to do first."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from guidebot.domain.answer import Stamp
from guidebot.domain.sign import Alert, Finding, Sign
from guidebot.safety import compiled, sure, wide
from guidebot.safety.match import Hit, live, run
from guidebot.safety.scope import Meant, scopes
from guidebot.safety.signs import BY_KEY, HEADLINE, ORDER, STOP_AND_CALL
from guidebot.safety.spans import Found, find
from guidebot.safety.tokens import split
from guidebot.text import Cleaned, one_line, plain

RULES, WIDE = "rules", "wide"


@dataclass(frozen=True, slots=True)
class Judgement:
    """What was noticed.

    Attributes:
        alert: what is shown first, None if nothing was noticed.
        findings: every sign noticed, most urgent first.
        rules: version and hash of the rules.
        mentions: signs the message asks about without reporting them.
        fault: what went wrong, "" if nothing did; the alert is then the fixed one.
    """

    alert: Alert | None
    findings: tuple[Finding, ...]
    rules: Stamp
    mentions: tuple[Sign, ...] = ()
    fault: str = ""


@dataclass(frozen=True, slots=True)
class Added:
    """Cue phrases a clinic adds, phrase to sign key; they can only raise an alert."""

    cues: Mapping[str, str] = field(default_factory=dict)


def judge(
    text: Cleaned,
    net: wide.Net | None,
    remembered: Sequence[str] = (),
    added: Added | None = None,
) -> Judgement:
    """Judge one message; never raises, and never ends in silence when something fails.

    Args:
        text: the whole message, cleaned and otherwise untouched.
        net: the wide net; None is a fault.
        remembered: earlier messages of the same conversation, oldest first; the last completes
            this one ("and it is cold") for the rules but is not judged again itself.
        added: what the clinic adds.

    Returns:
        The judgement. On any fault: the fixed stop-and-call alert.
    """
    try:
        return _judge(text, net, remembered, added or Added())
    except Exception as error:
        return _stopped(f"{type(error).__name__}: {error}")


def _stopped(fault: str) -> Judgement:
    try:
        stamp = compiled.stamp()
    except Exception:
        stamp = Stamp("unknown", "unknown")
    return Judgement(STOP_AND_CALL, (), stamp, fault=fault)


def _judge(
    text: Cleaned, net: wide.Net | None, remembered: Sequence[str], added: Added
) -> Judgement:
    if text.too_long:
        return _stopped("the message is too long to be read whole")
    if net is None:
        return _stopped("the wide net is missing")
    tables = compiled.current()
    words = split(text.text)
    found = find(words, tables.lexicon)
    meant = scopes(found)
    hits = run(tables.rules, found, live(found, meant))
    trusted = sure.rules()
    hints = [hit for hit in hits if hit.rule.id not in trusted]
    findings = [_finding(hit, found, text.text) for hit in hits if hit.rule.id in trusted]
    findings += _added(text.text, added)
    if remembered and not findings:
        findings += _continued(text.text, remembered[-1], tables)
    weighed = wide.weigh(found, meant, net, hits)
    if weighed.tier is not None:
        # The net backs what a less sure rule noticed; where no rule did, it speaks for itself.
        findings += [_finding(hit, found, text.text) for hit in hints]
        if not any(finding.sign.tier >= weighed.tier for finding in findings):
            findings.append(wide.finding(text.text, found, net, weighed))
    findings = _sorted(findings)
    asked: tuple[Sign, ...] = ()
    if any(meaning & Meant.SUPPOSED for meaning in meant):
        supposed = run(tables.rules, found, live(found, meant, Meant.SUPPOSED))
        keys = {finding.sign.key for finding in findings}
        asked = tuple(
            sorted(
                {hit.rule.sign: BY_KEY[hit.rule.sign] for hit in supposed}.values(),
                key=lambda sign: ORDER[sign.key],
            )
        )
        asked = tuple(sign for sign in asked if sign.key not in keys)
    return Judgement(alert_for(findings), tuple(findings), tables.stamp, asked)


def _finding(hit: Hit, found: Found, text: str) -> Finding:
    start, end = found.words.starts[hit.first], found.words.ends[hit.stop - 1]
    cues = ", ".join(
        f"{name}={' '.join(found.words.forms[first:stop])!r}" for name, (first, stop) in hit.parts
    )
    return Finding(
        BY_KEY[hit.rule.sign],
        one_line(text[start:end]),
        (start, end),
        RULES,
        f"rule {hit.rule.id}: {cues}",
    )


def _continued(text: str, before: str, tables: compiled.Compiled) -> list[Finding]:
    """Signs told across two messages (`About his foot`, then `It is ice cold`)."""
    joined = f"{before[-BEFORE:].rstrip(' .!?')}, "
    shift = len(joined)
    found = find(split(joined + text), tables.lexicon)
    spans = live(found, scopes(found))
    out: list[Finding] = []
    for hit in run(tables.rules, found, spans):
        here = [span for _, span in hit.parts if found.words.starts[span[0]] >= shift]
        if here and len(here) < len(hit.parts):
            start = found.words.starts[min(first for first, _ in here)] - shift
            end = found.words.ends[max(stop for _, stop in here) - 1] - shift
            finding = _finding(hit, found, joined + text)
            out.append(
                Finding(finding.sign, one_line(text[start:end]), (start, end), RULES, finding.why)
            )
    return out


BEFORE = 1_000
"""Characters of the message before that are read along."""


def _added(text: str, added: Added) -> list[Finding]:
    out: list[Finding] = []
    low = plain(text) if added.cues else ""
    for cue, key in added.cues.items():
        at = low.find(plain(cue))
        if at >= 0 and cue:
            end = at + len(cue)
            out.append(
                Finding(BY_KEY[key], one_line(text[at:end]), (at, end), RULES, f"clinic: {cue!r}")
            )
    return out


def _sorted(findings: Sequence[Finding]) -> list[Finding]:
    """Most urgent first, rules before the wide net, one finding a sign."""
    best: dict[str, Finding] = {}
    for finding in sorted(findings, key=lambda f: f.net != RULES):
        best.setdefault(finding.sign.key, finding)
    return sorted(best.values(), key=lambda f: (-f.sign.tier, f.net != RULES, ORDER[f.sign.key]))


def alert_for(findings: Sequence[Finding]) -> Alert | None:
    """The alert for sorted findings: the first one leads, the others are named in `also`."""
    if not findings:
        return None
    first = findings[0]
    sure = first.net == RULES
    headline = HEADLINE[first.sign.tier]
    return Alert(
        tier=first.sign.tier,
        sign=first.sign.key,
        headline=f"{headline}: {first.sign.name}"
        if sure
        else f"{headline}: this could be {first.sign.name}",
        quote=first.quote,
        do=first.sign.do,
        asks="" if sure else first.sign.settles,
        also=tuple(finding.sign.key for finding in findings[1:]),
    )
