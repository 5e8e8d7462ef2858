"""Score answers to owner questions and to messages off the topic."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from guidebot.domain.answer import Answer, Outcome
from guidebot.domain.guide import Guide
from guidebot.evaluate.metrics import RANKING, Share
from guidebot.evaluate.sets import Row
from guidebot.linear.features import stem, words
from guidebot.search.bm25 import Bm25

Ask = Callable[[str], Answer]


@dataclass(frozen=True, slots=True)
class Scored:
    """One question with what came back.

    Attributes:
        row: the question; its `needs` are the judgment, best first.
        outcome: of the answer.
        ranked: needs of the passages shown, best first, one tuple for each passage.
        alerted: an injury alert was shown.
    """

    row: Row
    outcome: Outcome
    ranked: tuple[tuple[str, ...], ...]
    alerted: bool = False

    @property
    def gains(self) -> list[int]:
        """1 for each passage that answers a judged need, in rank order."""
        wanted = set(self.row.more["needs"])
        return [int(bool(wanted & set(needs))) for needs in self.ranked]

    @property
    def right(self) -> bool:
        """Is the first passage one of those judged right?"""
        return bool(self.gains[:1] == [1])


def score(rows: Sequence[Row], ask: Ask) -> list[Scored]:
    """Ask every question once."""
    found = []
    for row in rows:
        answer = ask(row.text)
        ranked = tuple(passage.needs for passage in answer.passages)
        found.append(Scored(row, answer.outcome, ranked, answer.alert is not None))
    return found


def plain_bm25(guide: Guide, rows: Sequence[Row]) -> list[Scored]:
    """The baseline: BM25 with rank-bm25's defaults over the same passages, stems, no wordings."""
    keys = list(guide.passages)
    texts = [
        [stem(w) for w in words(f"{p.title} {p.short} {p.body}")] for p in guide.passages.values()
    ]
    index = Bm25.build(texts)
    found = []
    for row in rows:
        top = index.top([stem(w) for w in words(row.text)], 10)
        ranked = tuple(guide.passages[keys[number]].answers for number, _ in top)
        found.append(Scored(row, Outcome.ANSWERED if top else Outcome.NOT_IN_GUIDE, ranked))
    return found


def ranking(scored: Sequence[Scored]) -> dict[str, Share]:
    """Mean of each ranking measure."""
    out: dict[str, Share] = {}
    for name, measure in RANKING.items():
        total = sum(measure(one.gains, _relevant(one)) for one in scored)
        out[name] = Share(total, len(scored))
    return out


def _relevant(one: Scored) -> list[int]:
    # Passages beyond those shown are not known to the judge: the ideal is one right passage each.
    return [1] * max(1, sum(one.gains))


def outright(scored: Sequence[Scored]) -> dict[str, Share]:
    """Answered outright, and answered but wrong, of all questions the guide answers."""
    answered = [one for one in scored if one.outcome is Outcome.ANSWERED]
    wrong = [one for one in answered if not one.right]
    return {
        "answered outright": Share(len(answered), len(scored)),
        "answered but wrong": Share(len(wrong), len(scored)),
        "alerted": Share(sum(one.alerted for one in scored), len(scored)),
    }


def refused(scored: Sequence[Scored]) -> dict[str, Share]:
    """Messages off the topic: not answered outright, and refused altogether."""
    n = len(scored)
    return {
        "off-topic not answered": Share(
            sum(one.outcome is not Outcome.ANSWERED for one in scored), n
        ),
        "off-topic refused": Share(sum(one.outcome is Outcome.NOT_IN_GUIDE for one in scored), n),
    }


def groups(scored: Sequence[Scored], of: Callable[[Row], str]) -> Mapping[str, list[Scored]]:
    """The scored rows by a label, labels sorted."""
    found: dict[str, list[Scored]] = {}
    for one in scored:
        found.setdefault(of(one.row), []).append(one)
    return dict(sorted(found.items()))


def topic(row: Row) -> str:
    """Topic of the first judged need."""
    return str(row.more["needs"][0]).partition(".")[0]


def kind(row: Row) -> str:
    """What kind of question the author says it is."""
    return str(row.more.get("kind", "?"))
