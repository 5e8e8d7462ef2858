"""The wide net: a linear scorer over authored reports; it may raise, never lower.

Fitted by `fit` when the guide is compiled, on the reports and look-alikes in `data/` and on the
guide's own wordings as harmless ones. One class a sign and one for `none`; because ridge scores
are linear, the score of a tier is the sum of those of its signs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from importlib.resources import files

from guidebot.domain.sign import Finding, Tier
from guidebot.linear.fit import FitSettings, Progress
from guidebot.linear.fit import fit as fit_linear
from guidebot.linear.weights import Weights
from guidebot.safety import compiled
from guidebot.safety.features import features
from guidebot.safety.match import Hit, live, run
from guidebot.safety.scope import scopes
from guidebot.safety.signs import BY_KEY
from guidebot.safety.spans import Found, find
from guidebot.safety.tokens import split
from guidebot.text import clean, one_line

NONE = "none"
URGENT_AT = 1.36
"""Alert as urgent when the urgent signs together, and the likeliest once more, score so much.

Chosen by cross-validation by author: on two unseen hands of reports it caught .88 and .75 of
`emergency` and `vet-today` together with the rules; alone it alarmed on 3 % of unseen care
questions. The score for `none` alone did far worse (.71 and .55), because device questions look
like the lowest tier.
"""
LIKELIEST_COUNTS = 0.6
CLINIC_AT = -0.5
"""Alert for the lowest tier when the score for `none` is below this."""
HOPELESS = 0.75
"""Above this score for `none` nothing ever reached an alert; the rest is not worked out."""
LEANS_UP = 0.1
"""How much `emergency` may score less than `vet-today` and still be taken."""
SAMPLE, HARDEST = 1_400, 1_800
"""Harmless lines of the guide used in the first round, and added in the second."""
SETTINGS = FitSettings(ridge=1.0, stem_share=0.6, keep=6000, least_lines=2)
QUOTE_WORDS = 12


def read(name: str) -> Iterator[tuple[str, str, str]]:
    """Lines of a data file: the author's mark, sign or kind, and the message."""
    path = files("guidebot.safety") / "data" / f"{name}.tsv"
    for line in path.read_text(encoding="utf-8").splitlines():
        hand, label, text = line.split("\t", 2)
        yield hand, label, text


def prepare(text: str) -> tuple[list[str], list[str]]:
    """What the scorer sees of a message given as raw text."""
    tables = compiled.current()
    found = find(split(clean(text).text), tables.lexicon)
    meant = scopes(found)
    return features(found, meant, run(tables.rules, found, live(found, meant)))


def fit(
    harmless: Sequence[str] = (),
    *,
    without: frozenset[str] = frozenset(),
    say: Progress = lambda _: None,
) -> Weights:
    """Fit the wide net in two rounds: the second adds the harmless lines most like reports.

    Args:
        harmless: further messages that report nothing: wordings of the guide, off-topic lines.
        without: authors' marks to leave out, for cross-validation.
        say: told what is being done.
    """
    lines = [(label, text) for hand, label, text in read("reports") if hand not in without]
    lines += [(NONE, text) for hand, _, text in read("lookalikes") if hand not in without]
    say("reading reports")
    rows = [prepare(text) for _, text in lines]
    labels = [label for label, _ in lines]
    others = [prepare(text) for text in dict.fromkeys(harmless)]
    step = max(1, len(others) // SAMPLE)
    sample, rest = others[::step], [row for at, row in enumerate(others) if at % step]

    def solve(extra: Sequence[tuple[list[str], list[str]]]) -> Weights:
        return fit_linear(
            [*rows, *extra],
            [*labels, *([NONE] * len(extra))],
            SETTINGS,
            classes=(NONE, *BY_KEY),
            say=say,
        )

    weights = solve(sample)
    if not rest:
        return weights
    say("looking for harmless lines like reports")
    rest.sort(key=lambda row: weights.scores(*row)[0])
    return solve([*sample, *rest[:HARDEST]])


def findings(
    text: str,
    found: Found,
    meant: Sequence[int],
    weights: Weights,
    hits: Sequence[Hit],
) -> list[Finding]:
    """What the scorer notices; at most one finding."""
    if not found.words.forms:
        return []
    tokens, stems = features(found, meant, hits)
    if weights.classes[0] != NONE:
        raise ValueError("these weights were not fitted for injury signs")
    if weights.first_score(tokens, stems) >= HOPELESS:
        return []
    scores = dict(zip(weights.classes, weights.scores(tokens, stems), strict=True))
    key = likeliest(scores)
    if key is None or (key in MEDICINE and _own_medicine(found)):
        return []
    start, end = _quote(found, weights, stems, key)
    return [
        Finding(
            BY_KEY[key],
            one_line(text[start:end]),
            (start, end),
            "wide",
            f"wide net: none {scores[NONE]:+.2f}, {key} {scores[key]:+.2f}",
        )
    ]


def likeliest(scores: Mapping[str, float]) -> str | None:
    """The sign to alert for, None if no tier scores enough."""
    tiers = dict.fromkeys(Tier, 0.0)
    for key, sign in BY_KEY.items():
        tiers[sign.tier] += scores[key] + 1.0
    urgent = tiers[Tier.EMERGENCY] + tiers[Tier.VET_TODAY]
    if urgent + LIKELIEST_COUNTS * max(scores[key] for key in BY_KEY) >= URGENT_AT:
        ahead = tiers[Tier.EMERGENCY] >= tiers[Tier.VET_TODAY] - LEANS_UP
        tier = Tier.EMERGENCY if ahead else Tier.VET_TODAY
    elif scores[NONE] < CLINIC_AT:
        tier = Tier.CLINIC
    else:
        return None
    return max(
        (key for key, sign in BY_KEY.items() if sign.tier is tier), key=lambda key: scores[key]
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
