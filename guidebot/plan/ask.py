"""Is a text a question of permission or amount, and of which activity?

Three kinds get a verdict: leave for an activity of `activities.yaml`, hours of wear, minutes of a
walk. "How do I", "why" and reports of what happened get none: there a verdict would be in the way.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from fractions import Fraction

from guidebot.domain.activity import Activity
from guidebot.lazy import lazy
from guidebot.plan import cues, spoken
from guidebot.plan.activity_words import ActivityWords, Hit, WordTables, word_tables
from guidebot.plan.when import When
from guidebot.text import plain


class Kind(StrEnum):
    """What a verdict is asked for."""

    ACTIVITY = "activity"
    WEAR = "wear"
    WALK = "walk"


class Trouble(StrEnum):
    """A setback the question itself tells of: the plain ramp does not hold then."""

    SORE = "sore"
    FLAG = "flag"
    MISSED = "missed"


@dataclass(frozen=True, slots=True)
class Ask:
    """A question of permission or amount.

    Attributes:
        kind: what is asked for.
        activity: key in `activities.yaml`, or `wear` / `walk`.
        quote: the owner's words for the activity, "" if none were needed.
        amount: asked hours (wear) or minutes (walk), None if no number was named.
        step: asked growth in hours a day ("add two hours"), None if not asked.
        trouble: a setback told in the question, None if there is none.
        tomorrow: asked for the next day.
        also: further activities named in the same question.
        at_once: the hours are meant without a rest between.
        outright: the dog is what leave is asked for, in few words ("may he swim"): about a dog in
            the device even where the words around it are strange to the guide.
    """

    kind: Kind
    activity: str
    quote: str = ""
    amount: Fraction | None = None
    step: Fraction | None = None
    trouble: Trouble | None = None
    tomorrow: bool = False
    also: tuple[str, ...] = ()
    outright: bool = False
    at_once: bool = False


class AskReader:
    """Reads questions against one table of activities; build once, use for every question."""

    def __init__(
        self,
        activities: Mapping[str, Activity],
        known: frozenset[str] = frozenset(),
        tables: WordTables | None = None,
    ):
        """Prepare the words.

        Args:
            activities: the table; `walk` is taken for walks, if it is there.
            known: words of the guide in lower case that are no misspellings of an activity.
            tables: their words as `word_tables` prepared them; None to prepare them now.
        """
        self._words = ActivityWords(tables or word_tables(activities), known)
        self._needs = {key: activity.need for key, activity in activities.items()}
        self._served = frozenset(self._needs.values())
        self._meant = {a.need: key for key, a in activities.items() if a.need in a.words}

    def read(self, text: str, when: When | None = None, needs: Sequence[str] = ()) -> Ask | None:
        """The question of permission or amount in a text, None if it holds none.

        Args:
            text: cleaned text of one question (a whole message works too: the first such
                question in it is read).
            when: the time `read_when` found in it; its words are left out of account.
            needs: need keys the question was ranked to, best first (three are enough). An
                activity is then taken only if one of them is its need, or if the question is
                plainly about it (a phrase of the table, or a need of the same area).
        """
        whole = _untimed(text, when)
        before = ""
        for sentence in _sentences(whole):
            found = self._sentence(sentence, before, needs, timed=when is not None)
            if found is not None:
                trouble = _trouble(whole)
                return replace(
                    found,
                    amount=_more(found.amount, trouble, whole),
                    trouble=trouble,
                    tomorrow=_tomorrow(whole),
                    at_once=spoken.AT_ONCE.search(sentence) is not None,
                )
            before = sentence
        return None

    def learnt(
        self,
        text: str,
        when: When | None,
        asks: float,
        fits: Mapping[str, float],
        needs: Mapping[str, float],
        read: Ask | None,
    ) -> Ask | None:
        """The question of leave by what authored questions like it ask for.

        Args:
            text: cleaned text of the message.
            when: the time `read_when` found in it; its words are left out of account.
            asks: how likely leave is asked, about -1 to 1.
            fits: how well each activity (and `wear`) fits, as sums of two z-scores.
            needs: how well each need fits, likewise, best first.
            read: what `read` found in the message, None if nothing.

        Returns:
            The question; what was read in words of the table counts for much, but not for all.
        """
        whole = _untimed(text, when)
        hits = {hit.key: hit for hit in self._words.find(whole)}
        told = dict.fromkeys(hits, NAMED)
        if read is not None:
            told[read.activity] = told.get(read.activity, 0.0) + READ
        best = max(
            (key for key in (*self._needs, "wear") if not (key in LOOSE and cues.on_lead(whole))),
            key=lambda key: (
                fits.get(key, 0.0)
                + NEED_SHARE * needs.get(self._needs.get(key, _WEAR_NEED), 0.0)
                + told.get(key, 0.0)
            ),
        )
        if best in NIGHTLY and spoken.ALL_DAY_LONG.search(whole):
            best = "wear"  # "on at breakfast, off at bedtime" is a day, not a night
        walks = {self._needs.get("walk"), self._needs.get("walk-build")}
        if best == "wear" and (
            (read is not None and read.kind is Kind.WALK)
            or (next(iter(needs), None) in walks and not cues.WEARISH.search(whole))
        ):
            longer = next(iter(needs), None) == self._needs.get("walk-build")
            best = "walk-build" if longer and not spoken.minutes(whole) else "walk"
        fit = fits.get(best, 0.0)
        agreed = read is not None and read.activity == best
        if not agreed and not self._likely(best, asks, fit, needs, named=best in hits):
            sore = asks >= 0 and _trouble(whole) is Trouble.SORE
            return Ask(Kind.WEAR, "wear", trouble=Trouble.SORE) if sore else None
        first = next(iter(needs), None) == self._needs.get(best)
        sure = any(asks >= least and fit >= enough for least, enough in SURE)
        sure = sure or (agreed and first and asks >= 0)
        sure = sure or (best in hits and fit >= STRONG and asks >= 0)
        sure = sure or (read is not None and agreed and read.amount is not None and asks >= 0)
        best = self._variant(best, whole)
        minutes = spoken.minutes(whole) if best in WALKS else None
        walk = best == "walk" or (best in WALKS and (minutes or cues.HOW_MUCH_WALK.search(whole)))
        numberless = best == "wear" and read is not None and read.amount is read.step is None
        if read is not None and read.activity == best and not walk and not numberless:
            return replace(read, outright=read.outright or sure)
        found = Ask(
            Kind.ACTIVITY,
            best,
            quote=hits[best].quote if best in hits else "",
            trouble=_trouble(whole),
            tomorrow=_tomorrow(whole),
            outright=sure,
        )
        if walk:
            return replace(found, kind=Kind.WALK, activity="walk", amount=minutes)
        if best != "wear":
            return found
        step = spoken.step(whole)
        amount = spoken.wear_amount(whole) if step is None else None
        if amount is None and step is None and spoken.SKIP.search(whole):
            step = Fraction(24)
        amount = _more(amount, found.trouble, whole)
        at_once = spoken.AT_ONCE.search(whole) is not None
        return replace(found, kind=Kind.WEAR, amount=amount, step=step, at_once=at_once)

    def _variant(self, key: str, whole: str) -> str:
        """The activity as it is really meant, by `VARIANTS`."""
        for pattern, variants in VARIANTS:
            other = variants.get(key)
            if other in self._needs and pattern.search(whole):
                return other
        return key

    def _likely(
        self, key: str, asks: float, fit: float, needs: Mapping[str, float], *, named: bool
    ) -> bool:
        """Is leave for this what the message is about, as far as the ranking of needs tells?

        A verdict on swimming above "is it ok to do the top one first" would be worse than none.
        """
        if not needs:
            return True
        if not named and _area(self._needs.get(key, _WEAR_NEED)) in BY_NAME:
            return False
        if named and fit >= NAMED_FIT and asks >= 0:
            return True
        ranked = list(needs)
        need = self._needs.get(key, _WEAR_NEED)
        top = needs[ranked[0]]
        fitting = needs.get(need, 0.0)
        if key == "wear":
            fitting = max(
                (score for name, score in needs.items() if name.startswith("wear.")), default=0.0
            )
        behind = top - fitting
        if fit < LEAST_FIT and behind > 0:
            return False
        near = need in ranked[:NEAR] or (
            key == "wear" and any(n.startswith("wear.") for n in ranked[:NEAR])
        )
        plain_fit, plain_asks = PLAIN
        if behind > FAR and not (fit >= plain_fit and asks >= plain_asks):
            return False
        # Where no need stands out, the ranking of needs says little against it.
        return near or fit >= min(STRONG, top)

    def _sentence(
        self, sentence: str, before: str, needs: Sequence[str], *, timed: bool
    ) -> Ask | None:
        hits = self._words.find(sentence)
        specific = [hit for hit in hits if hit.key != "walk"]
        if cues.instructs(sentence) or cues.reports(sentence):
            return None
        if not specific:
            amount = _amount_ask(sentence, walks=bool(hits), timed=timed)
            if amount is not None and (not needs or _topical(amount, needs)):
                return amount
        permit = cues.permits(sentence, bare=bool(hits))
        if permit is None:
            return None
        if not hits and cues.points_back(sentence) and not cues.past(before):
            hits = self._words.find(before)
        hits = self._backed(_not_excluded(hits, sentence) or hits, sentence, needs)
        if not hits:
            return self._by_need(sentence, needs)
        best = max(
            hits, key=lambda h: (h.key != "walk", not h.place, h.size, h.end > permit, -h.start)
        )
        if best.key == "walk":
            return Ask(Kind.WALK, "walk", best.quote, amount=spoken.minutes(sentence))
        also = dict.fromkeys(h.key for h in hits if h.key not in (best.key, "walk"))
        outright = cues.OUTRIGHT.search(sentence) is not None and len(sentence.split()) <= _OUTRIGHT
        return Ask(Kind.ACTIVITY, best.key, best.quote, also=tuple(also), outright=outright)

    def _backed(self, hits: list[Hit], sentence: str, needs: Sequence[str]) -> list[Hit]:
        """Those activities that the ranking of needs bears out, or that stand out by themselves."""
        if not needs:
            return hits
        backed = [hit for hit in hits if self._needs.get(hit.key) in needs]
        if backed:
            return backed
        if not any(need in self._served for need in needs):
            # Not one of its likely subjects is anything that leave is asked for.
            return hits if len(sentence.split()) <= _CALL else []
        areas = {_area(need) for need in needs}
        return [h for h in hits if h.size > 1 or _area(self._needs.get(h.key, "")) in areas]

    def _by_need(self, sentence: str, needs: Sequence[str]) -> Ask | None:
        """Leave asked without naming the activity: the need that was ranked first names it."""
        if not needs:
            return None
        if needs[0] in self._meant:
            key = self._meant[needs[0]]
            if key == "walk":
                return Ask(Kind.WALK, key, amount=spoken.minutes(sentence))
            return Ask(Kind.ACTIVITY, key)
        if needs[0] in _HOURS_NEEDS and not cues.NOT_WEAR.search(sentence):
            step = spoken.step(sentence)
            amount = spoken.hours(sentence) if step is None else None
            return Ask(Kind.WEAR, "wear", amount=amount, step=step)
        return None


_HOURS_NEEDS = frozenset({"wear.first-day", "wear.build-up", "wear.setback", "wear.missed-days"})
"""Needs of the wear plan itself: leave asked under them is leave for hours."""


_WEAR_NEED = "wear.build-up"
WALKS = ("walk", "long-walk", "walk-build")
"""Activities for which minutes say more than the name."""
SURE = ((0.3, 6.0), (0.0, 9.0))
"""From any of these pairs on, of asking and of fit, leave is asked outright and for this."""
NEAR, FAR, STRONG, PLAIN = 5, 6.0, 8.5, (8.0, 0.3)
"""Leave is meant if the need of the activity is among the `NEAR` first or the fit is `STRONG`, and
if that need is not `FAR` behind the first, or fit and asking are `PLAIN`. Set on held-out authors'
lines and on wordings that ask no leave."""
LEAST_FIT = 3.5
"""Fit below which only the need, or the turn before, speaks for an activity: it is not meant."""
NAMED_FIT = 10.0
"""Fit from which an activity named in so many words is meant, whatever the needs say."""
NIGHTLY = frozenset({"sleep", "nap", "stairs-night"})
"""Activities that words of the night name."""
LOOSE = frozenset({"off-leash", "toilet-free"})
"""Not meant where the dog is said to be on its lead."""
BY_NAME = frozenset({"care", "put-on", "take-off", "tension", "parts", "fit", "help", "why"})
"""Areas where leave is meant only if the words of the table are there: how to do it is asked alike."""
VARIANTS: tuple[tuple[re.Pattern[str], dict[str, str]], ...] = (
    (
        cues.UNHELPED,
        {"stairs": "stairs-alone", "stairs-night": "stairs-alone", "toilet": "toilet-free"},
    ),
    (cues.DEVICE_OFF, {"bath": "bath-bare"}),
    (cues.WET, dict.fromkeys(("rain", "groom", "bath", "swim", "beach", "snow"), "wet-wear")),
    (cues.BROKEN, {"trim-strap": "broken-wear"}),
    (cues.CARRIED, dict.fromkeys(("stairs", "stairs-night", "bed"), "carried")),
    (cues.PRESCRIBED, {"exercises": "exercises-set"}),
    (cues.NIGHT, {"alone": "sleep", "nap": "sleep"}),
    (cues.FAR, {"jog": "long-run", "run": "long-run"}),
)
"""Activities that are others by what is said beside them: alone, with the device off, wet or broken,
carried, as prescribed, by night, or far."""
NAMED, READ, NEED_SHARE = 2.0, 1.0, 0.5
"""What a word of the table, and what the rules read, count beside the sum of two z-scores of the
authored questions; and the share of the need's own sum. Set on held-out authors."""

_CALL = 2
"""Words of a call so short that it is about the activity it names: "stairs yet?"."""


_OUTRIGHT = 12
"""Most words of a sentence that asks leave outright."""


def _more(amount: Fraction | None, trouble: Trouble | None, whole: str) -> Fraction | None:
    """The amount asked for; None where, after missed days, it is what was worn before."""
    again = trouble is Trouble.MISSED and amount != spoken.ALL_DAY and spoken.AGAIN.search(whole)
    return None if again else amount


def _untimed(text: str, when: When | None) -> str:
    """The text in plain small letters, its words of time blanked out."""
    if when is not None:
        start, end = when.span
        text = f"{text[:start]}{' ' * (end - start)}{text[end:]}"
    return plain(text)


def _area(need: str) -> str:
    return need.partition(".")[0]


def _topical(ask: Ask, needs: Sequence[str]) -> bool:
    return any(ask.activity in need for need in needs)


_ENDS = lazy(r"(?<=[.?!;\n])\s+|\n+")


def _sentences(text: str) -> list[str]:
    return [part.strip() for part in _ENDS.split(text) if part.strip()]


def _not_excluded(hits: list[Hit], sentence: str) -> list[Hit]:
    """Leave out what is named only to be set aside: "not the stairs", "instead of a walk"."""
    if cues.ASKS_LENGTH.search(sentence):
        return hits  # "no jumping, for how long" asks about the jumping
    return [hit for hit in hits if not cues.SET_ASIDE.search(sentence[: hit.start])]


def _trouble(text: str) -> Trouble | None:
    text = cues.no_trouble(text)
    if cues.SORE.search(text):
        return Trouble.SORE
    if cues.FLAG.search(text):
        return Trouble.FLAG
    return Trouble.MISSED if cues.MISSED.search(text) else None


def _tomorrow(text: str) -> bool:
    return bool(re.search(r"\btomorrow\b", text))


def _amount_ask(sentence: str, *, walks: bool, timed: bool) -> Ask | None:
    """Hours of wear or minutes of a walk, if that is what the sentence asks."""
    permits = cues.permits(sentence, bare=False) is not None
    if walks or (cues.WALKISH.search(sentence) and not cues.WEARISH.search(sentence)):
        if cues.HOW_MUCH_WALK.search(sentence) or (
            permits and spoken.minutes(sentence) is not None
        ):
            return Ask(Kind.WALK, "walk", amount=spoken.minutes(sentence))
        return None
    if cues.NOT_WEAR.search(sentence):
        return None
    wearish = bool(cues.WEARISH.search(sentence))
    step = spoken.step(sentence)
    amount = spoken.hours(sentence) if step is None else None
    if cues.HOW_MUCH_WEAR.search(sentence) or (timed and cues.HOW_LONG_BARE.search(sentence)):
        named = None if cues.ASKS_AMOUNT.search(sentence) else amount
        return Ask(Kind.WEAR, "wear", amount=named, step=step)
    asks = permits or cues.TOO_MUCH.search(sentence) or (sentence.endswith("?") and timed)
    if not asks:
        return None
    if spoken.SKIP.search(sentence) and (
        amount is not None or wearish or timed or cues.PLAN_WORDS.search(sentence)
    ):
        return Ask(Kind.WEAR, "wear", amount=amount, step=None if amount else Fraction(24))
    if step is not None and (wearish or "day" in sentence or timed):
        return Ask(Kind.WEAR, "wear", step=step)
    if spoken.ALL_DAY_LONG.search(sentence):
        return Ask(Kind.WEAR, "wear", amount=spoken.ALL_DAY)
    if spoken.ROUND_THE_CLOCK.search(sentence) and wearish:
        return Ask(Kind.WEAR, "wear", amount=Fraction(24))
    if amount is not None and (wearish or timed or spoken.says_hours(sentence)):
        return Ask(Kind.WEAR, "wear", amount=amount)
    if amount is None and wearish and cues.KEEP_ON.search(sentence):
        return Ask(Kind.WEAR, "wear")
    return None
