"""Rules as data and the engine that runs them: each rule from its rarest concept outward."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from guidebot.safety.lexicon import CONTEXT
from guidebot.safety.scope import Meant
from guidebot.safety.spans import Found

Span = tuple[int, int]

GIVING = frozenset(
    (
        "gave askgive askmed double human otherpet medicine painkiller medhuman poisonfood "
        "poisonthing pillthing gavehuman pressing crimescene redfloor seeword seebone touch "
        "handto handback heard popwhere vehicle animalhit refusewhen screamlike slideagain "
        "pregword birth partany heatword cantrest "
    ).split()
)
"""Concepts of which somebody else than the dog is rightly the subject or the owner."""
ASKING = frozenset("askgive askmed medicine painkiller medhuman human otherpet".split())
"""Concepts that report by asking: a supposition does not touch them."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule.

    Attributes:
        id: sign key and a number.
        sign: the sign it reports.
        groups: each a choice of concepts; one of each must be found, at different words.
        window: steps (words and punctuation, see `tokens`) they may lie apart.
        unless: concepts that silence it when within the window of what was found.
    """

    id: str
    sign: str
    groups: tuple[tuple[str, ...], ...]
    window: int
    unless: tuple[str, ...] = ()
    choices: tuple[frozenset[str], ...] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        # The group of fewest concepts first: it is the quickest to be missing.
        sets = sorted((frozenset(group) for group in self.groups), key=len)
        object.__setattr__(self, "choices", tuple(sets))


@dataclass(frozen=True, slots=True)
class Hit:
    """A rule that fired: first word, word after the last, and the concepts with their words."""

    rule: Rule
    first: int
    stop: int
    parts: tuple[tuple[str, Span], ...]


def live(found: Found, meant: Sequence[int], allow: int = Meant.FACT) -> dict[str, list[Span]]:
    """The spans that count: meant as facts, or in a way that `allow` names."""
    out: dict[str, list[Span]] = {}
    if not any(meant):
        return found.spans
    all_but_denied = Meant.SUPPOSED | Meant.PAST | Meant.OTHERS
    for name, spans in found.spans.items():
        against = all_but_denied if name in CONTEXT else all_but_denied | Meant.DENIED
        if name in GIVING:
            against &= ~Meant.OTHERS
        if name in ASKING:
            against &= ~(Meant.SUPPOSED | Meant.DENIED)
        against &= ~allow
        kept = [span for span in spans if not _unmeant(span, against, found, meant)]
        if kept:
            out[name] = kept
    return out


def _unmeant(span: Span, against: int, found: Found, meant: Sequence[int]) -> bool:
    """Is a word of the span meant otherwise? What a phrase denies inside itself is its meaning."""
    first, stop = span
    for at in range(first, stop):
        why = meant[at] & against
        if why and (why != Meant.DENIED or not first <= found.deniers.get(at, -1) < stop):
            return True
    return False


def run(rules: Sequence[Rule], found: Found, spans: Mapping[str, list[Span]]) -> list[Hit]:
    """Every rule that fires, with the first place where it does."""
    present = spans.keys()
    hits: list[Hit] = []
    for rule in rules:
        if any(group.isdisjoint(present) for group in rule.choices):
            continue
        hit = _try(rule, found, spans)
        if hit is not None:
            hits.append(hit)
    return hits


def _try(rule: Rule, found: Found, spans: Mapping[str, list[Span]]) -> Hit | None:
    choices: list[list[tuple[Span, str]]] = []
    for group in rule.groups:
        merged = [(span, name) for name in group if name in spans for span in spans[name]]
        if not merged:
            return None
        merged.sort()
        choices.append(merged)
    anchor_at = min(range(len(choices)), key=lambda place: len(choices[place]))
    others = [choice for place, choice in enumerate(choices) if place != anchor_at]
    steps = found.words.steps
    for anchor, name in choices[anchor_at]:
        parts = [(name, anchor)]
        taken = [anchor]
        for choice in others:
            near = _nearest(choice, taken, anchor, steps, rule.window)
            if near is None:
                break
            parts.append((near[1], near[0]))
            taken.append(near[0])
        else:
            first, stop = min(s for s, _ in taken), max(e for _, e in taken)
            if not _silenced(rule, found, first, stop):
                return Hit(rule, first, stop, tuple(parts))
    return None


def _nearest(
    choice: Sequence[tuple[Span, str]],
    taken: Sequence[Span],
    anchor: Span,
    steps: Sequence[int],
    window: int,
) -> tuple[Span, str] | None:
    """The nearest span within the window that shares no word with those taken."""
    here = bisect_left(choice, (anchor, ""))
    best: tuple[Span, str] | None = None
    best_far = window + 1
    for direction in (
        range(here - 1, max(-1, here - 13), -1),
        range(here, min(here + 12, len(choice))),
    ):
        for place in direction:
            span = choice[place][0]
            far = (
                steps[span[0]] - steps[anchor[1] - 1]
                if span[0] >= anchor[1]
                else steps[anchor[0]] - steps[span[1] - 1]
            )
            if far > window:
                if span[0] >= anchor[1] or span[0] + 24 < anchor[0]:
                    break
                continue
            if any(span[0] < stop and first < span[1] for first, stop in taken):
                continue
            if far < best_far:
                best, best_far = choice[place], far
            break
    return best


def _silenced(rule: Rule, found: Found, first: int, stop: int) -> bool:
    steps = found.words.steps
    low, high = steps[first] - rule.window, steps[stop - 1] + rule.window
    for name in rule.unless:
        spans = found.spans.get(name, ())
        # Steps never fall, so a span this far before cannot reach into the window.
        here = bisect_left(spans, (first - rule.window - LONGEST, 0))
        while here < len(spans) and steps[spans[here][0]] <= high:
            if steps[spans[here][1] - 1] >= low:
                return True
            here += 1
    return False


LONGEST = 40
"""Words the longest span may have."""
