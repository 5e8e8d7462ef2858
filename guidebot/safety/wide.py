"""The wide net: two opinions over authored reports; it may raise, never lower.

A linear scorer (one class a sign, one for `none`, and one for each of `UNIONS`) and a vote of the
authored messages most alike (`alike`). Fitted by `fit` on the reports and look-alikes in `data/`
and on the demo guide's wordings as harmless ones, and shipped: it hangs on no guide, so content
cannot weaken it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from importlib.resources import files

from guidebot import blob
from guidebot.domain.sign import Finding, Tier
from guidebot.linear.fit import FitSettings, Progress
from guidebot.linear.fit import fit as fit_linear
from guidebot.linear.weights import Weights
from guidebot.safety import compiled
from guidebot.safety.alike import Alike
from guidebot.safety.features import features
from guidebot.safety.match import Hit, live, run
from guidebot.safety.scope import scopes
from guidebot.safety.signs import BY_KEY
from guidebot.safety.spans import Found, find
from guidebot.safety.tokens import split
from guidebot.text import clean, one_line

NONE, URGENT, EMERGENCY, ANY = "none", "urgent", "emergency", "any"
LEAST = {URGENT: Tier.VET_TODAY, EMERGENCY: Tier.EMERGENCY, ANY: Tier.CLINIC}
"""The classes that decide, which stand before all others, and the least tier of each."""
UNIONS = {
    name: tuple(key for key, sign in BY_KEY.items() if sign.tier >= least)
    for name, least in LEAST.items()
}
"""Their signs, fitted as one class: the sum of many small scores drifts, this does not."""
URGENT_AT = -0.41
"""Alert as urgent from this score of the class `urgent`, the linear score plus the vote.

Set on the dev authors and on plain short reports ("there is blood under the strap"): higher
thresholds ring less often on harmless messages and lose those first.
"""
ANY_AT = 0.1
"""Alert at all from this score of the class `any`."""
EMERGENCY_AT = -0.8
"""An urgent message is an emergency from this score: erring upwards costs a call."""
SURELY, CLEARLY = -0.3, 0.3
"""Below the first, an emergency is one of the veterinarian's today if a sign of that tier scores
higher by the second than any sign of an emergency."""
NEARLY_URGENT = -0.55
"""A message alerted only as `any` is urgent, not `clinic`, from this score."""
VOTE = 0.3
"""Weight of the vote of the messages most alike, from -1 to 1, beside the linear score."""
SETTINGS = FitSettings(ridge=0.3, stem_share=0.7, together=0.3, keep=6000, least_lines=3)
QUOTE_WORDS = 12


def read(name: str) -> Iterator[tuple[str, str, str]]:
    """Lines of a data file: the author's mark, sign or kind, and the message."""
    path = files("guidebot.safety") / "data" / f"{name}.tsv"
    for line in path.read_text(encoding="utf-8").splitlines():
        hand, label, text = line.split("\t", 2)
        yield hand, label, text


def _look(text: str) -> tuple[Found, Sequence[int], list[Hit]]:
    tables = compiled.current()
    found = find(split(clean(text).text), tables.lexicon)
    meant = scopes(found)
    return found, meant, run(tables.rules, found, live(found, meant))


def hits(text: str) -> list[Hit]:
    """The rules that fire in a message given as raw text."""
    return _look(text)[2]


def prepare(text: str) -> tuple[list[str], list[str]]:
    """What the scorer sees of a message given as raw text."""
    return features(*_look(text))


@dataclass(frozen=True, slots=True)
class Net:
    """The fitted net: the linear scorer and the index of the messages it was fitted on."""

    weights: Weights
    alike: Alike

    def decisive(
        self, found: Found, tokens: Sequence[str], stems: Sequence[str]
    ) -> dict[str, float]:
        """The scores of the classes in `LEAST`, both opinions together.

        Where not even a vote of all for a report could bring an alert, nobody is asked to vote.

        Raises:
            ValueError: the weights are those of another scorer.
        """
        if self.weights.classes[: len(LEAST)] != tuple(LEAST):
            raise ValueError("these weights were not fitted for injury signs")
        linear = self.weights.first_scores(tokens, stems, len(LEAST))
        most = {name: score + VOTE for name, score in zip(LEAST, linear, strict=True)}
        if tier_of(most) is None:
            return most
        votes = self.alike.votes(stems[: len(found.words.forms)], list(LEAST.values()))
        return {
            name: score + VOTE * vote
            for name, score, vote in zip(LEAST, linear, votes, strict=True)
        }

    def dump(self) -> bytes:
        """Bytes that `load` reads."""
        return blob.pack({"weights": self.weights.dump(), "alike": self.alike.dump()})

    @classmethod
    def load(cls, raw: bytes | memoryview) -> Net:
        """Read what `dump` wrote; ValueError if it is no such dump or is damaged."""
        sections = blob.unpack(raw)
        try:
            return cls(Weights.load(sections["weights"]), Alike.load(sections["alike"]))
        except KeyError as error:
            raise ValueError("not a dump of the wide net") from error


def fit(
    harmless: Sequence[str] = (),
    *,
    without: frozenset[str] = frozenset(),
    say: Progress = lambda _: None,
) -> Net:
    """Fit the wide net.

    Args:
        harmless: further messages that report nothing: wordings of the guide, off-topic lines.
        without: authors' marks to leave out, for cross-validation.
        say: told what is being done.
    """
    lines = [(label, text) for hand, label, text in read("reports") if hand not in without]
    lines += [(NONE, text) for hand, _, text in read("lookalikes") if hand not in without]
    lines += [(NONE, text) for text in dict.fromkeys(harmless)]
    say("reading reports")
    rows = [prepare(text) for _, text in lines]
    labels = [label for label, _ in lines]
    weights = fit_linear(rows, labels, SETTINGS, classes=(NONE, *BY_KEY), sums=UNIONS, say=say)
    tiers = [0 if label == NONE else int(BY_KEY[label].tier) for label in labels]
    return Net(weights, Alike.build([stems[: len(tokens)] for tokens, stems in rows], tiers))


@dataclass(frozen=True, slots=True)
class Weighed:
    """What the scorer makes of a message.

    Attributes:
        tier: how urgent, None if nothing is to be said.
        key: the likeliest sign of that tier, "" without one.
        why: the scores, for a reviewer.
        stems: what the scorer saw, for the quote.
    """

    tier: Tier | None
    key: str = ""
    why: str = ""
    stems: tuple[str, ...] = ()


NOTHING = Weighed(None)


def weigh(found: Found, meant: Sequence[int], net: Net, hits: Sequence[Hit]) -> Weighed:
    """Score a message.

    Args:
        found: the concepts in it.
        meant: the scope of each word.
        net: from `fit`.
        hits: the rules that fired.

    Raises:
        ValueError: the weights are those of another scorer.
    """
    if not found.words.forms:
        return NOTHING
    tokens, stems = features(found, meant, hits)
    first = net.decisive(found, tokens, stems)
    tier = tier_of(first)
    if tier is None:
        return NOTHING
    scores = dict(zip(net.weights.classes, net.weights.scores(tokens, stems), strict=True))
    best = {
        each: max((k for k, sign in BY_KEY.items() if sign.tier is each), key=scores.__getitem__)
        for each in Tier
    }
    ahead = scores[best[Tier.VET_TODAY]] - scores[best[Tier.EMERGENCY]]
    if tier is Tier.EMERGENCY and first[EMERGENCY] < SURELY and ahead > CLEARLY:
        tier = Tier.VET_TODAY
    key = best[tier]
    if key in MEDICINE and _own_medicine(found):
        return NOTHING
    said = f"any {first[ANY]:+.2f}, urgent {first[URGENT]:+.2f}, {key} {scores[key]:+.2f}"
    return Weighed(tier, key, f"wide net: {said}", tuple(stems))


def tier_of(scores: Mapping[str, float]) -> Tier | None:
    """The tier of a scored message, None if no alert is due."""
    urgent = scores[URGENT]
    if urgent >= URGENT_AT:
        return Tier.EMERGENCY if scores[EMERGENCY] >= EMERGENCY_AT else Tier.VET_TODAY
    if scores[ANY] >= ANY_AT:
        return Tier.VET_TODAY if urgent >= NEARLY_URGENT else Tier.CLINIC
    return None


def finding(text: str, found: Found, net: Net, weighed: Weighed) -> Finding:
    """The finding of a message that `weigh` gave a tier."""
    start, end = _quote(found, net.weights, weighed.stems, weighed.key)
    return Finding(
        BY_KEY[weighed.key], one_line(text[start:end]), (start, end), "wide", weighed.why
    )


MEDICINE = frozenset(("medicine-taken", "medicine-asked"))


def _own_medicine(found: Found) -> bool:
    """Is it about what the veterinarian prescribed, and not about too much of it?"""
    return "own" in found.spans and "double" not in found.spans


def _quote(found: Found, weights: Weights, stems: Sequence[str], key: str) -> tuple[int, int]:
    """The stretch of at most `QUOTE_WORDS` words that speaks most for the sign."""
    words = found.words
    size = len(words.forms)
    if size <= QUOTE_WORDS:
        return words.starts[0], words.ends[-1]
    loud = dict(weights.contributions(words.forms, stems[:size], key, most=40))
    worth = [max(0.0, loud.get(stem, 0.0)) for stem in stems[:size]]
    window = sum(worth[:QUOTE_WORDS])
    best, at = window, 0
    for first in range(1, size - QUOTE_WORDS + 1):
        window += worth[first + QUOTE_WORDS - 1] - worth[first - 1]
        if window > best + 1e-9:
            best, at = window, first
    return words.starts[at], words.ends[at + QUOTE_WORDS - 1]
