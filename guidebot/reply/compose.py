"""Put an answer together from guide text and fixed sentences; nothing is generated."""

from __future__ import annotations

from dataclasses import replace
from itertools import accumulate

from guidebot.domain.activity import STRICTNESS, Say
from guidebot.domain.answer import Answer, Cited, Outcome
from guidebot.domain.guide import Guide
from guidebot.domain.sign import Tier
from guidebot.lazy import lazy
from guidebot.reply import phrases
from guidebot.reply.courtesy import is_courtesy, is_greeting
from guidebot.reply.language import looks_foreign
from guidebot.reply.reading import Reading
from guidebot.safety.judge import Judgement
from guidebot.search.engine import Found
from guidebot.search.passages import Hit
from guidebot.text import plain

ANSWERS_FROM = 0.72
"""Least chance of the first need being right for an outright answer; set on the dev questions."""
AGREED_FROM = 0.45
"""The same where what leave is asked for has that need too."""
ANSWERABLE_FROM = 0.45
"""Least chance of the guide answering at all for a choice of passages."""
RIGHT_FROM = 0.30
"""A need this likely is offered even where the message looks off the topic."""
CHOICES = 3
CALMING = "adapt."
"""Topic of what is normal in the first days: its text beside an urgent alert would take the alert
back, so it is named only."""

_ORDERED = lazy(
    r"\b(?:vet|vets|veterinarian|surgeon)\b[^.?!\n]{0,30}"
    r"\b(?:said|says|told|tells|wants|ordered|orders|advised|advises|forbade|insists|restricted)\b"
)
_BARS = lazy(
    r"\b(?:no|not|never|\w+n't|cannot|only|nothing|most|max(?:imum)?|tops|until|till|rest|crate|"
    r"strict(?:ly)?|avoid|stop|off|forbade|forbidden|restricted|ban(?:ned)?|wait|hold|less|careful|"
    r"slow(?:ly)?|easy|quiet|limit(?:ed)?|without|hours?|minutes?|weeks?|months?|days?)\b"
)


class Composer:
    """Composes answers for one guide."""

    def __init__(self, guide: Guide) -> None:
        self._guide = guide
        clinic = guide.clinic
        self._contact = f"{clinic.phone}, {clinic.email}, {clinic.hours}"

    def outcome(
        self, outcome: Outcome, lead: str, judgement: Judgement, *, asked: bool = True
    ) -> Answer:
        """An answer without passages: one fixed sentence, an alert if there is one, the caution."""
        return Answer(
            outcome=outcome,
            lead=lead.format(contact=self._contact),
            passages=(),
            caution=self._guide.clinic.caution,
            guide=self._guide.stamp,
            rules=judgement.rules,
            alert=judgement.alert if asked or judgement.alert else None,
            notes=self._mentions(judgement),
        )

    def compose(self, text: str, judgement: Judgement, reading: Reading, found: Found) -> Answer:
        """The answer to one message.

        Args:
            text: the cleaned message.
            judgement: the injury signs in it.
            reading: day, sleeve, verdict and the words that were ranked.
            found: needs and passages, best first.
        """
        if judgement.alert is None and is_courtesy(text, found):
            lead = phrases.GREETING if is_greeting(text) else phrases.COURTESY
            return self.outcome(Outcome.COURTESY, lead, judgement)
        ordered = _vet_first(text)
        outcome = self._outcome(reading, found, judgement)
        if outcome is Outcome.NOT_IN_GUIDE:
            lead = phrases.OTHER_LANGUAGE if looks_foreign(text) else phrases.NOT_IN_GUIDE
            if judgement.alert is not None:
                lead = phrases.ALERT_ONLY
            answer = self.outcome(outcome, lead, judgement)
            return replace(answer, notes=(*answer.notes, *ordered))
        hits = found.hits
        passages = _cited(hits)
        choices: tuple[str, ...] = ()
        verdict = reading.verdict
        barred = ordered and _BARS.search(plain(text))
        if verdict is not None and barred and STRICTNESS[verdict.say] < STRICTNESS[Say.NO]:
            verdict = replace(
                verdict, say=Say.ASK_FIRST, text=phrases.VET_ORDERED, changes_on=None, cites=()
            )
        if verdict is not None and judgement.alert is not None:
            verdict = replace(verdict, text=f"{phrases.ALERT_FIRST} {verdict.text}")
        notes = [*ordered, *reading.notes, *self._mentions(judgement)]
        if outcome is Outcome.UNSURE:
            lead = phrases.UNSURE if judgement.alert is None else phrases.AFTER_ALERT
            choices = tuple(hit.passage.id for hit in hits[:CHOICES])
        else:
            lead = hits[0].passage.short
            notes += [
                phrases.ALSO_ASKED.format(
                    title=hit.passage.title, id=hit.passage.id, short=hit.passage.short
                )
                for hit in found.also
            ]
        notes += [
            phrases.SEARCHED_FOR.format(typed=typed, meant=meant)
            for typed, meant in found.query.repaired[:3]
        ]
        return Answer(
            outcome=outcome,
            lead=lead,
            passages=passages,
            caution=self._guide.clinic.caution,
            guide=self._guide.stamp,
            rules=judgement.rules,
            alert=judgement.alert,
            verdict=verdict,
            read_as=self._read_as(found),
            asks_back=reading.asks_back or self._which_sleeve(reading, hits, outcome),
            choices=choices,
            need=hits[0].need,
            notes=tuple(notes),
        )

    def named_need(self, reading: Reading, found: Found) -> str | None:
        """The need of the activity that leave is asked for, where the ranking has another first.

        The words of the activity were found in the message, so the passage has to be about it.
        """
        ask = reading.ask
        activity = self._guide.activities.get(ask.activity) if ask else None
        if ask is None or activity is None or not found.hits or not ask.quote:
            return None
        if activity.need == found.hits[0].need:
            return None
        unsure = found.follows or found.decision.right < ANSWERS_FROM
        return activity.need if ask.outright and unsure else None

    def _outcome(self, reading: Reading, found: Found, judgement: Judgement) -> Outcome:
        if not found.hits:
            return Outcome.NOT_IN_GUIDE
        urgent = judgement.alert is not None and judgement.alert.tier >= Tier.VET_TODAY
        if urgent and found.hits[0].need.startswith(CALMING):
            return Outcome.UNSURE  # by title only
        sure = found.decision
        if sure.right >= ANSWERS_FROM:
            return Outcome.ANSWERED
        activity = self._guide.activities.get(reading.ask.activity) if reading.ask else None
        agreed = activity is not None and activity.need == found.hits[0].need
        if agreed and sure.right >= AGREED_FROM:
            return Outcome.ANSWERED  # leave asked for, and the ranking agrees: two ways to one need
        if sure.answerable >= ANSWERABLE_FROM or sure.right >= RIGHT_FROM:
            return Outcome.UNSURE
        if reading.verdict is not None and reading.ask is not None and reading.ask.outright:
            return Outcome.UNSURE
        return Outcome.NOT_IN_GUIDE

    def _read_as(self, found: Found) -> str | None:
        if not found.follows:
            return None
        return self._guide.needs[found.hits[0].need].asks if found.hits else None

    def _which_sleeve(
        self, reading: Reading, hits: tuple[Hit, ...], outcome: Outcome
    ) -> str | None:
        if outcome is not Outcome.ANSWERED or reading.situation.sleeve is not None:
            return None
        if not hits[0].passage.applies.sleeve:
            return None
        names = " or ".join(sleeve.name for sleeve in self._guide.device.sleeves)
        return phrases.WHICH_SLEEVE.format(names=names)

    def _mentions(self, judgement: Judgement) -> tuple[str, ...]:
        if judgement.alert is not None:
            return ()
        return tuple(
            phrases.IF_NOW.format(name=sign.name, do=" ".join(sign.do))
            for sign in judgement.mentions[:1]
        )


def _vet_first(text: str) -> tuple[str, ...]:
    """Where the owner tells what the veterinarian ordered: that it beats the guide."""
    return (phrases.VET_FIRST,) if _ORDERED.search(plain(text)) else ()


def _cited(hits: tuple[Hit, ...]) -> tuple[Cited, ...]:
    """The passages as shown; further ones of the first need rank, and score, behind the others."""
    scores = accumulate((hit.score for hit in hits), min)
    return tuple(
        Cited(
            hit.passage.id,
            hit.passage.title,
            hit.passage.answers,
            hit.passage.short,
            hit.passage.body,
            score,
            hit.passage.path,
        )
        for hit, score in zip(hits, scores, strict=True)
    )
