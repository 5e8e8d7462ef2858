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
from guidebot.plan import cues
from guidebot.plan.activity_words import ActivityWords, Hit, WordTables, word_tables
from guidebot.plan.number_words import NUMBER, read_number
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
                return replace(found, trouble=_trouble(whole), tomorrow=_tomorrow(whole))
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
            (key for key in fits if key in self._needs or key == "wear"),
            key=lambda key: (
                fits[key]
                + NEED_SHARE * needs.get(self._needs.get(key, _WEAR_NEED), 0.0)
                + told.get(key, 0.0)
            ),
            default=None,
        )
        if best is None:
            return read
        agreed = read is not None and read.activity == best
        if not agreed and not self._likely(best, asks, fits[best], needs):
            return None
        sure = any(asks >= least and fits[best] >= fit for least, fit in SURE)
        if best in UNHELPED and UNHELPED[best] in self._needs and cues.UNHELPED.search(whole):
            best = UNHELPED[best]
        if read is not None and read.activity == best:
            return replace(read, outright=read.outright or sure)
        found = Ask(
            Kind.ACTIVITY, best, trouble=_trouble(whole), tomorrow=_tomorrow(whole), outright=sure
        )
        if best == "wear":
            step = _step(whole)
            amount = _wear_amount(whole) if step is None else None
            if amount is None and step is None and _SKIP.search(whole):
                step = Fraction(24)
            return replace(found, kind=Kind.WEAR, amount=amount, step=step)
        found = replace(found, quote=hits[best].quote if best in hits else "")
        minutes = _minutes(whole) if best in WALKS else None
        if best == "walk" or (best in WALKS and (minutes or cues.HOW_MUCH_WALK.search(whole))):
            return replace(found, kind=Kind.WALK, activity="walk", amount=minutes)
        return found

    def _likely(self, key: str, asks: float, fit: float, needs: Mapping[str, float]) -> bool:
        """Is leave for this what the message is about, as far as the ranking of needs tells?

        A verdict on swimming above "is it ok to do the top one first" would be worse than none.
        """
        if not needs:
            return True
        ranked = list(needs)
        need = self._needs.get(key, _WEAR_NEED)
        behind = needs[ranked[0]] - needs.get(need, 0.0)
        near = need in ranked[:NEAR] or (
            key == "wear" and any(n.startswith("wear.") for n in ranked[:NEAR])
        )
        plain_fit, plain_asks = PLAIN
        if behind > FAR and not (fit >= plain_fit and asks >= plain_asks):
            return False
        return near or fit >= STRONG

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
            return Ask(Kind.WALK, "walk", best.quote, amount=_minutes(sentence))
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
                return Ask(Kind.WALK, key, amount=_minutes(sentence))
            return Ask(Kind.ACTIVITY, key)
        if needs[0] in _HOURS_NEEDS and not cues.NOT_WEAR.search(sentence):
            step = _step(sentence)
            amount = _hours(sentence) if step is None else None
            return Ask(Kind.WEAR, "wear", amount=amount, step=step)
        return None


_HOURS_NEEDS = frozenset({"wear.first-day", "wear.build-up", "wear.setback", "wear.missed-days"})
"""Needs of the wear plan itself: leave asked under them is leave for hours."""


_WEAR_NEED = "wear.build-up"
WALKS = ("walk", "long-walk", "walk-build")
"""Activities for which minutes say more than the name."""
SURE = ((0.3, 6.0), (0.0, 9.0))
"""From any of these pairs on, of asking and of fit, leave is asked outright and for this."""
NEAR, FAR, STRONG, PLAIN = 5, 6.0, 9.0, (8.0, 0.3)
"""Leave is meant if the need of the activity is among the `NEAR` first or the fit is `STRONG`, and
if that need is not `FAR` behind the first, or fit and asking are `PLAIN`. Set on held-out authors'
lines and on wordings that ask no leave."""
UNHELPED = {"stairs": "stairs-alone", "stairs-night": "stairs-alone", "toilet": "toilet-free"}
"""Activities that are others when the dog does them by itself."""
NAMED, READ, NEED_SHARE = 2.0, 1.0, 0.5
"""What a word of the table, and what the rules read, count beside the sum of two z-scores of the
authored questions; and the share of the need's own sum. Set on held-out authors."""

_CALL = 2
"""Words of a call so short that it is about the activity it names: "stairs yet?"."""


_OUTRIGHT = 12
"""Most words of a sentence that asks leave outright."""


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


# ------------------------------------------------------------------------------------ amounts

_HOURS = lazy(
    rf"\b(?P<n>{NUMBER})[ -]?(?P<u>hours?|hrs?|h|minutes?|mins?)\b(?! ago| old| before| after)"
)
_HALF = lazy(r"\b(?:an hour and a half|hour and a half)\b")
_BARE = lazy(
    rf"\b(?:do|to|try|have|for|wear|of|go|at|it|is|are|already do) (?P<n>{NUMBER})(?![\w-]|"
    rf" (?:\w+ )?"
    r"(?:times?|walks?|stairs|steps|dogs?|fingers?|sessions?|days?|weeks?|months?|years?|bit|"
    r"little|short|long|quick|few|good|more|the|his|her|calm|small|friend|kids?|of)\b)"
)
_ALL_DAY = lazy(
    r"\b(?:all day(?: long)?|(?:the )?(?:w?hole|full|entire) day|full time|(?:from )?morning (?:to|till|until|through to) (?:night|evening|bed\w*)|from morning (?:to|till)|"
    r"(?:dawn|sunrise|sun-?up) (?:to|till|until) (?:dusk|sunset|sundown)|"
    r"breakfast (?:to|till|until) bed\w*)\b"
)
_ROUND = lazy(r"\b(?:24/7|24 hours|round the clock|day and night|non-?stop|twenty[- ]four)\b")
_STEP = lazy(
    rf"\b(?:add|adding|increase (?:it )?by|go up (?:by)?|up it by|another|extra|more by|"
    rf"jump(?: up)? by) "
    rf"(?:an? extra |an? |another |on )?(?P<n>{NUMBER})?[ -]?(?P<u>hours?|hrs?|h|minutes?|mins?)\b"
    rf"|\b(?P<n2>{NUMBER}) (?:more|extra) (?P<u2>hours?|hrs?|minutes?|mins?)\b"
    rf"|\b(?P<n3>{NUMBER}) (?P<u3>hours?|hrs?) (?:more|extra|at once|at a time|a day more)\b"
)
_SKIP = lazy(
    r"\b(?:(?:skip|jump) (?:a |the |one |some |two |three |an )?(?:steps?|stages?|days?(?= (?:of|in|and go|and do))|ahead|"
    r"hours?)|double (?:it|the (?:hours|time|dose))|jump (?:straight |right )?(?:to|ahead)|"
    r"straight to|(?:speed|hurry) (?:it |this |the \w+ )?(?:up|along)|"
    r"go(?:ing)? (?:up )?faster|rush)\b"
)


def _amount_ask(sentence: str, *, walks: bool, timed: bool) -> Ask | None:
    """Hours of wear or minutes of a walk, if that is what the sentence asks."""
    permits = cues.permits(sentence, bare=False) is not None
    if walks or (cues.WALKISH.search(sentence) and not cues.WEARISH.search(sentence)):
        if cues.HOW_MUCH_WALK.search(sentence) or (permits and _minutes(sentence) is not None):
            return Ask(Kind.WALK, "walk", amount=_minutes(sentence))
        return None
    if cues.NOT_WEAR.search(sentence):
        return None
    wearish = bool(cues.WEARISH.search(sentence))
    step = _step(sentence)
    amount = _hours(sentence) if step is None else None
    if cues.HOW_MUCH_WEAR.search(sentence) or (timed and cues.HOW_LONG_BARE.search(sentence)):
        named = None if cues.ASKS_AMOUNT.search(sentence) else amount
        return Ask(Kind.WEAR, "wear", amount=named, step=step)
    asks = permits or cues.TOO_MUCH.search(sentence) or (sentence.endswith("?") and timed)
    if not asks:
        return None
    if _SKIP.search(sentence) and (
        amount is not None or wearish or timed or cues.PLAN_WORDS.search(sentence)
    ):
        return Ask(Kind.WEAR, "wear", amount=amount, step=None if amount else Fraction(24))
    if step is not None and (wearish or "day" in sentence or timed):
        return Ask(Kind.WEAR, "wear", step=step)
    if _ALL_DAY.search(sentence):
        return Ask(Kind.WEAR, "wear", amount=Fraction(-1))
    if _ROUND.search(sentence) and wearish:
        return Ask(Kind.WEAR, "wear", amount=Fraction(24))
    if amount is not None and (wearish or timed or _says_hours(sentence)):
        return Ask(Kind.WEAR, "wear", amount=amount)
    if amount is None and wearish and cues.KEEP_ON.search(sentence):
        return Ask(Kind.WEAR, "wear")
    return None


ALL_DAY = Fraction(-1)
"""`Ask.amount` of "all day": the target of the case, whatever it is."""


def _wear_amount(sentence: str) -> Fraction | None:
    """Hours asked for: all day, round the clock or a number; None if none is named."""
    if _ALL_DAY.search(sentence):
        return ALL_DAY
    if _ROUND.search(sentence):
        return Fraction(24)
    return None if cues.ASKS_AMOUNT.search(sentence) else _hours(sentence)


def _says_hours(sentence: str) -> bool:
    return bool(re.search(r"\b(?:hours?|hrs?)\b", sentence))


def _hours(sentence: str) -> Fraction | None:
    if _HALF.search(sentence):
        return Fraction(3, 2)
    match = _HOURS.search(sentence)
    if match:
        return _in_hours(match["n"], match["u"])
    bare = _BARE.search(sentence)
    number = read_number(bare["n"]) if bare else None
    # "a" and "an" are no amount without a unit, and nobody wears it more than a day.
    if bare is None or number is None or bare["n"] in ("a", "an") or number > 24:
        return None
    return Fraction(number).limit_denominator(60)


def _step(sentence: str) -> Fraction | None:
    match = _STEP.search(sentence)
    if match is None:
        return None
    number = match["n"] or match["n2"] or match["n3"] or "one"
    return _in_hours(number, match["u"] or match["u2"] or match["u3"])


def _in_hours(number: str, unit: str) -> Fraction | None:
    value = read_number(number)
    if value is None:
        return None
    hours = Fraction(value).limit_denominator(60)
    return hours / 60 if unit.startswith("m") else hours


def _minutes(sentence: str) -> Fraction | None:
    hours = _HOURS.search(sentence)
    if _HALF.search(sentence):
        return Fraction(90)
    if hours:
        value = _in_hours(hours["n"], hours["u"])
        return None if value is None else value * 60
    bare = re.search(rf"\b(?:do|walk|to|for) (?P<n>{NUMBER})(?![\w-])(?! \w+s\b)", sentence)
    number = read_number(bare["n"]) if bare and bare["n"] not in ("a", "an") else None
    return Fraction(number).limit_denominator(60) if number and number >= 5 else None
