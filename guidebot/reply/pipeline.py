"""The pipeline, the only path from a message to an answer.

clean -> judge signs -> read the day -> verdict -> search -> compose. Signs are judged first, on the
whole cleaned message; whatever fails afterwards, the alert and the caution are still said.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path

from guidebot.domain.answer import Answer, Outcome
from guidebot.domain.case import Case
from guidebot.domain.guide import Guide
from guidebot.errors import InputError
from guidebot.plan.ask import Ask
from guidebot.plan.said import ASK_FITTED
from guidebot.reply import phrases
from guidebot.reply.compiled import Compiled, open_compiled
from guidebot.reply.compose import Composer
from guidebot.reply.reading import Given, Reader
from guidebot.safety.judge import Judgement, judge
from guidebot.search.decide import Decision
from guidebot.search.engine import SearchEngine
from guidebot.search.words import Query
from guidebot.text import Cleaned, clean

MEMORY = 6
"""Earlier messages of a conversation that the injury rules still see."""


@dataclass(frozen=True, slots=True)
class Before:
    """The turn before, for a follow-up.

    Attributes:
        query: how that turn was ranked.
        need: the need it was read as.
        ask: the question of permission it held.
        messages: earlier messages of the conversation, oldest first, for the injury rules.
        asked_day: the answer asked for the fitting day.
        fitted: the fitting day, if that was told in reply.
    """

    query: Query | None = None
    need: str | None = None
    ask: Ask | None = None
    messages: tuple[str, ...] = ()
    asked_day: bool = False
    fitted: date | None = None


@dataclass(frozen=True, slots=True)
class Turn:
    """An answer and what the next turn needs of it."""

    answer: Answer
    before: Before


class Assistant:
    """Answers from one compiled guide; make it with `Assistant.open`."""

    def __init__(self, compiled: Compiled) -> None:
        self.guide: Guide = compiled.guide
        self.engine: SearchEngine = compiled.engine
        self._net = compiled.net
        self._leave = compiled.leave
        self._reader = Reader(compiled.guide, compiled.asks)
        self._composer = Composer(compiled.guide)

    @classmethod
    def open(
        cls,
        path: Path | str | None = None,
        *,
        say: Callable[[str], None] = lambda _: None,
        cache: bool = True,
    ) -> Assistant:
        """Open a guide.

        Args:
            path: its content folder; None for the one that comes with guidebot.
            say: told what is being done while the guide is compiled (once, some seconds).
            cache: keep the compiled guide in the user's cache.

        Raises:
            ContentError: the guide is missing or has faults.
        """
        return cls(open_compiled(Path(path) if path is not None else None, say=say, cache=cache))

    def answer(
        self,
        text: str | bytes,
        case: Case | None = None,
        on: date | None = None,
        *,
        day: int | None = None,
        sleeve: str | None = None,
    ) -> Answer:
        """Answer one message.

        Args:
            text: what the person wrote, as it came.
            case: the dog it is about, if known.
            on: the date it was written; today if not given.
            day: day number (fitting day = 1) where no case says it.
            sleeve: key of the sleeve where no case says it.
        """
        return self.turn(text, case, on, day=day, sleeve=sleeve).answer

    def judge(self, text: Cleaned, remembered: Sequence[str] = ()) -> Judgement:
        """Judge injury signs in one message; never raises."""
        return judge(text, self._net, remembered)

    def turn(
        self,
        text: str | bytes,
        case: Case | None = None,
        on: date | None = None,
        *,
        day: int | None = None,
        sleeve: str | None = None,
        before: Before | None = None,
    ) -> Turn:
        """Answer one message of a conversation; arguments as for `answer`."""
        cleaned = clean(text)
        before = before or Before()
        judgement = self.judge(cleaned, before.messages)
        if before.fitted is not None and day is None and (case is None or case.fitted is None):
            case = replace(case or Case(id="", dog=""), fitted=before.fitted)
        given = Given(case, on or date.today(), day, sleeve)
        try:
            turn = self._turn(cleaned, judgement, given, before)
        except Exception as error:
            if isinstance(error, InputError) and judgement.alert is None:
                raise
            answer = self._composer.outcome(Outcome.NOT_IN_GUIDE, phrases.FAILED, judgement)
            turn = Turn(answer, Before())
        messages = (*before.messages, cleaned.text)[-MEMORY:]
        return Turn(
            replace(turn.answer, text=cleaned.text), replace(turn.before, messages=messages)
        )

    def _turn(self, cleaned: Cleaned, judgement: Judgement, given: Given, before: Before) -> Turn:
        if not cleaned.text:
            answer = self._composer.outcome(Outcome.NOT_IN_GUIDE, phrases.EMPTY, judgement)
            return Turn(answer, before)
        reading = self._reader.read(cleaned.text, given, asked_day=before.asked_day)
        found = self.engine.search(reading.text, reading.situation, before.query, before.need)
        if reading.only_day and before.need is not None:
            found = replace(
                self.engine.led_by(found, before.need, reading.situation),
                decision=Decision(1.0, 1.0),
                follows=True,
                thread=before.query,
            )
        leave = self._leave.scores(found.query) if self._leave else None
        reading = self._reader.judge_leave(
            reading, cleaned.text, given, found.scores.ranked, leave, before.ask
        )
        need = self._composer.named_need(reading, found)
        if need is not None:
            found = self.engine.led_by(found, need, reading.situation)
        answer = self._composer.compose(cleaned.text, judgement, reading, found)
        if answer.need is None:
            return Turn(answer, before)
        told = reading.when.fitted if reading.only_day and reading.when else None
        return Turn(
            answer,
            Before(
                found.thread,
                answer.need,
                reading.ask,
                asked_day=answer.asks_back == ASK_FITTED,
                fitted=told or before.fitted,
            ),
        )
