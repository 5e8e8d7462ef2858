"""Is leave asked for, and what for: learnt from authored questions of permission and amount.

The same two scorers as for the needs rank what leave is asked for; a third, fitted on asking
against not asking, tells whether it is asked at all.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from guidebot.linear.fit import FitSettings, fit, tokenise
from guidebot.linear.weights import Weights
from guidebot.search.needs import NeedIndex
from guidebot.search.words import Query

NONE = "none"
"""The class of lines that ask no leave: how, why, what to buy, and reports."""
ASKS = "asks"
OFF_TOPIC_STEP = 4
"""Every so many lines off the topic are lines that ask no leave of this guide."""
_NAMES = "leave"
_SETTINGS = FitSettings(ridge=0.5, stem_share=0.6, keep=20_000, least_lines=1)


@dataclass(frozen=True, slots=True)
class LeaveIndex:
    """The scorers over questions of permission and amount."""

    keys: NeedIndex
    asks: Weights

    @classmethod
    def build(
        cls,
        lines: Mapping[str, Sequence[str]],
        words: Mapping[str, Sequence[str]],
        off_topic: Sequence[str] = (),
        say: Callable[[str], None] = lambda _: None,
    ) -> LeaveIndex:
        """Index and fit; takes seconds and needs numpy.

        Args:
            lines: questions by key of the table, and under `NONE` what asks no leave.
            words: the words of the table by key; they tell what is asked for, not whether.
            off_topic: lines the guide does not answer.
            say: told what is being done.
        """
        say("reading")
        rows = [(key, line) for key in sorted(lines) for line in lines[key]]
        rows += [(NONE, line) for line in off_topic[::OFF_TOPIC_STEP]]
        asks = fit(
            [tokenise(line) for _, line in rows],
            [NONE if key == NONE else ASKS for key, _ in rows],
            _SETTINGS,
            classes=(ASKS, NONE),
        )
        named = {
            key: [*lines[key], *(word for word in words.get(key, ()) if "." not in word)]
            for key in lines
        }
        return cls(NeedIndex.build(named, say), asks)

    def scores(self, query: Query) -> LeaveScores:
        """Score a message."""
        asked = self.asks.first_scores(query.tokens, query.stems, 1)[0]
        return LeaveScores(asked, self.keys, query)

    def dump(self) -> dict[str, bytes]:
        """Sections for the compiled guide."""
        return {**self.keys.dump(_NAMES), "leave-asks": self.asks.dump()}

    @classmethod
    def load(cls, sections: Mapping[str, bytes | memoryview]) -> LeaveIndex:
        """Open what `dump` wrote, without copying; KeyError or ValueError if it is not that."""
        return cls(NeedIndex.load(sections, _NAMES), Weights.load(sections["leave-asks"]))


@dataclass(frozen=True, slots=True)
class LeaveScores:
    """What a message asks leave for.

    Attributes:
        asks: above 0 where leave is likelier asked than not, about -1 to 1.
    """

    asks: float
    _keys: NeedIndex
    _query: Query

    def fits(self) -> dict[str, float]:
        """How well each key of the table fits, a sum of two z-scores; worked out when asked."""
        return dict(self._keys.scores(self._query).ranked)
