"""Each search choice on and off, on the dev split: python eval/ablation.py

Ranking of needs only (first right, within three), on the owner questions of the dev authors and on
the same questions with up to two typing slips each (seeded). The test split is never read here.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from unittest import mock

from guidebot.domain.guide import Guide
from guidebot.evaluate.calibrate import hands
from guidebot.evaluate.sets import Row, find_sets, read_set
from guidebot.guide.files import find_content
from guidebot.guide.read import read_guide
from guidebot.linear.features import stem, words
from guidebot.linear.fit import FitSettings
from guidebot.search import needs as need_module
from guidebot.search.bm25 import Bm25
from guidebot.search.engine import SearchEngine
from guidebot.search.needs import ASIDE
from guidebot.search.words import Query, query_of

Rank = Callable[[str], list[str]]


def slips(text: str, rng: random.Random) -> str:
    """Up to two words of five letters and more get one slip: left out, swapped, wrong, doubled."""
    parts = text.split()
    long = [i for i, word in enumerate(parts) if len(word) >= 5]
    for i in rng.sample(long, min(len(long), 2)):
        word = parts[i]
        at = rng.randrange(1, len(word) - 1)
        parts[i] = rng.choice(
            [
                word[:at] + word[at + 1 :],
                word[:at] + word[at + 1] + word[at] + word[at + 2 :],
                word[:at] + rng.choice("abcdefghijklmnoprstu") + word[at + 1 :],
                word[:at] + word[at] + word[at:],
            ]
        )
    return " ".join(parts)


def share(rows: Sequence[Row], texts: Sequence[str], rank: Rank) -> tuple[float, float]:
    """First right and within three."""
    first = three = 0
    for row, text in zip(rows, texts, strict=True):
        top = rank(text)[:3]
        first += top[0] in row.more["needs"]
        three += any(need in row.more["needs"] for need in top)
    return first / len(rows), three / len(rows)


def only(engine: SearchEngine, which: str) -> Rank:
    """Rank by one of the two scorers alone."""

    def rank(text: str) -> list[str]:
        scores = getattr(engine.needs.scores(engine.read(text)), which)
        return sorted((n for n in scores if n not in ASIDE), key=lambda n: -scores[n])

    return rank


def both(engine: SearchEngine, repair: bool = True) -> Rank:
    """Rank as the program does."""

    def rank(text: str) -> list[str]:
        query = engine.read(text) if repair else query_of(text)
        return [need for need, _ in engine.needs.scores(query).ranked]

    return rank


def with_vocabulary(engine: SearchEngine, vocabulary: Mapping[str, str]) -> Rank:
    """As the program, with the guide's word added for each owners' word."""

    def rank(text: str) -> list[str]:
        query = engine.read(text)
        extra = [w for t in query.tokens if t in vocabulary for w in words(vocabulary[t])]
        tokens = (*query.tokens, *extra)
        wide = Query(tokens, tuple(stem(t) for t in tokens))
        return [need for need, _ in engine.needs.scores(wide).ranked]

    return rank


def passages_only(guide: Guide) -> Rank:
    """Plain BM25 over the passages, first needs of the passages found."""
    keys = list(guide.passages)
    index = Bm25.build(
        [[stem(w) for w in words(f"{p.title} {p.short} {p.body}")] for p in guide.passages.values()]
    )

    def rank(text: str) -> list[str]:
        found = index.top([stem(w) for w in words(text)], 20)
        out = [need for number, _ in found for need in guide.passages[keys[number]].answers]
        return [*dict.fromkeys(out), "", "", ""]

    return rank


def per_wording(engine: SearchEngine, wordings: Mapping[str, Sequence[str]], best: int) -> Rank:
    """BM25 over the single wordings, mean of the best few of each need, added as z-scores."""
    lines = [(name, line) for name in wordings if name not in ASIDE for line in wordings[name]]
    index = Bm25.build([list(query_of(line).stems) for _, line in lines], k1=1.2, b=0.5)

    def rank(text: str) -> list[str]:
        query = engine.read(text)
        found: dict[str, list[float]] = {}
        for number, score in index.top(query.stems, 400):
            found.setdefault(lines[number][0], []).append(score)
        ranked = dict(engine.needs.scores(query).ranked)
        mean = {n: sum(found.get(n, [])[:best]) / best for n in ranked}
        middle = sum(mean.values()) / len(mean)
        spread = (sum((v - middle) ** 2 for v in mean.values()) / len(mean)) ** 0.5 or 1.0
        return sorted(ranked, key=lambda n: -(ranked[n] + (mean[n] - middle) / spread))

    return rank


def main() -> None:
    """Print the table."""
    content: Path = find_content()
    guide = read_guide(content)
    rows = read_set(find_sets(), "questions", "dev")
    rng = random.Random(20261125)
    plain = [row.text for row in rows]
    slipped = [slips(row.text, rng) for row in rows]
    wordings = dict(guide.wordings)
    engine = SearchEngine.build_from(wordings, guide)

    def refit(**settings: float) -> SearchEngine:
        base = {"ridge": 1.0, "stem_share": 0.5, "keep": 4000, "least_lines": 1, **settings}
        with mock.patch.object(need_module, "SETTINGS", FitSettings(**base)):  # type: ignore[arg-type]
            return SearchEngine.build_from(wordings, guide)

    def fewer(count: int) -> SearchEngine:
        kept = {}
        for path in sorted((content / "wordings").glob("*.txt")):
            by = hands(path)
            kept[path.stem] = (
                wordings[path.stem]
                if path.stem in ASIDE
                else tuple(line for hand in sorted(by)[:count] for line in by[hand])
            )
        return SearchEngine.build_from(kept, guide)

    table: list[tuple[str, Rank]] = [
        ("as shipped", both(engine)),
        ("plain BM25 over the passages", passages_only(guide)),
        ("pooled BM25 alone", only(engine, "pooled")),
        ("linear scorer alone", only(engine, "linear")),
        ("without typo repair", both(engine, repair=False)),
        ("with owners' words added", with_vocabulary(engine, guide.vocabulary)),
        ("with BM25 per wording added", per_wording(engine, wordings, 3)),
        ("without character n-grams", both(refit(stem_share=0.999))),
        ("without stems", both(refit(stem_share=0.001))),
        ("2,000 weights a need", both(refit(keep=2000))),
        ("features of two lines and more", both(refit(least_lines=2))),
        ("one hand", both(fewer(1))),
        ("two hands", both(fewer(2))),
        ("four hands", both(fewer(4))),
    ]
    print(f"{len(rows)} dev questions; first right, within three | the same with typing slips")
    for name, rank in table:
        a, b = share(rows, plain, rank)
        c, d = share(rows, slipped, rank)
        print(f"{name:<34} {a:.3f} {b:.3f} | {c:.3f} {d:.3f}", flush=True)


if __name__ == "__main__":
    main()
