"""Amounts as they are said: hours of wear, minutes of a walk, growth a day."""

from __future__ import annotations

import re
from fractions import Fraction

from guidebot.lazy import lazy
from guidebot.plan import cues
from guidebot.plan.number_words import NUMBER, read_number

ALL_DAY = Fraction(-1)
"""The amount of "all day": the target of the case, whatever it is."""

_HOUR = r"(?:hours?|hrs?|houres?|horus|hors)"
_MINUTE = r"(?:minutes?|mins?|minuets?|minits?|minuts?|mintues?)"
_HOURS = lazy(rf"\b(?P<n>{NUMBER})[ -]?(?P<u>{_HOUR}|h|{_MINUTE})\b(?! ago| old| before| after)")
_HALF = lazy(r"\b(?:an hour and a half|hour and a half)\b")
_BARE = lazy(
    rf"\b(?:do|to|try|have|for|wear|of|go|at|it|is|are|already do) (?P<n>{NUMBER})(?![\w-]|"
    rf" (?:\w+ )?"
    r"(?:times?|walks?|stairs|steps|dogs?|fingers?|sessions?|days?|weeks?|months?|years?|bit|"
    r"little|short|long|quick|few|good|more|the|his|her|calm|small|friend|kids?|of)\b)"
)
ALL_DAY_LONG = lazy(
    r"\b(?:all day(?: long)?|(?:the )?(?:w?hole|full|entire) day|full time|(?:from )?morning (?:to|till|until|through to) (?:night|evening|bed\w*)|from morning (?:to|till)|"
    r"(?:dawn|sunrise|sun-?up) (?:to|till|until) (?:dusk|sunset|sundown)|"
    r"(?:on )?(?:from |at |after )?(?:breakfast|morning|the morning|dawn)[,]? (?:to|till?|until|(?:and |then )?off at) "
    r"(?:bed\w*|night|dinner|supper|tea|dusk))\b|\bon in the morning(?: and|,) off at (?:night|bed\w*)"
)
ROUND_THE_CLOCK = lazy(
    r"\b(?:24/7|24 hours|round the clock|day and night|non-?stop|twenty[- ]four)\b"
)
_STEP = lazy(
    rf"\b(?:add|adding|increase (?:it )?by|go up (?:by)?|up it by|another|extra|more by|"
    rf"jump(?: up)? by) "
    rf"(?:an? extra |an? |another |on )?(?P<n>{NUMBER})?[ -]?(?P<u>{_HOUR}|h|{_MINUTE})\b"
    rf"|\b(?P<n2>{NUMBER}) (?:more|extra) (?P<u2>{_HOUR}|{_MINUTE})\b"
    rf"|\b(?P<n3>{NUMBER}) (?P<u3>{_HOUR}) (?:more|extra|at once|at a time|a day more)\b"
)
SKIP = lazy(
    r"\b(?:(?:skip|jump) (?:a |the |one |some |two |three |an )?(?:steps?|stages?|days?(?= (?:of|in|and go|and do))|ahead|"
    r"hours?)|double (?:it|the (?:hours|time|dose))|jump (?:straight |right )?(?:to|ahead)|"
    r"straight to|(?:speed|hurry) (?:it |this |the \w+ )?(?:up|along)|"
    r"go(?:ing)? (?:up )?faster|rush)\b"
)

AGAIN = lazy(
    r"\b(?:(?:again|carry on|go on|start|continue|resume|pick up) (?:again )?(?:at|with|from|on)|back (?:to|at)|"
    r"(?:at|with|on) the (?:same|old)|where (?:we|he|she) (?:left|stopped))\b"
)
"""Going on with what was worn before, in place of more."""
AT_ONCE = lazy(
    r"\b(?:(?:in|as) one (?:\w+ )?(?:go|piece|stretch|session|sitting|block|spell|run|bout)|at a stretch|"
    r"non-?stop|all at once|in a row|on the trot|uninterrupted\w*|continuous(?:ly)?|straight through|"
    r"without (?:a |any )?(?:breaks?|rest|pauses?|taking it off)|hours? straight|minutes? straight)\b"
)
"""The hours without a rest between."""


def wear_amount(sentence: str) -> Fraction | None:
    """Hours asked for: all day, round the clock or a number; None if none is named."""
    if ALL_DAY_LONG.search(sentence):
        return ALL_DAY
    if ROUND_THE_CLOCK.search(sentence):
        return Fraction(24)
    return None if cues.ASKS_AMOUNT.search(sentence) else hours(sentence)


def says_hours(sentence: str) -> bool:
    """Does it speak of hours?"""
    return bool(re.search(rf"\b{_HOUR}\b", sentence))


def hours(sentence: str) -> Fraction | None:
    """The hours a sentence names: "90 minutes", "do five"; None if it names none."""
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


def step(sentence: str) -> Fraction | None:
    """The growth in hours a sentence names: "two hours more", "another hour"."""
    match = _STEP.search(sentence)
    if match is None:
        return None
    number = match["n"] or match["n2"] or match["n3"] or "one"
    return _in_hours(number, match["u"] or match["u2"] or match["u3"])


def _in_hours(number: str, unit: str) -> Fraction | None:
    value = read_number(number)
    if value is None:
        return None
    amount = Fraction(value).limit_denominator(60)
    return amount / 60 if unit.startswith("m") else amount


def minutes(sentence: str) -> Fraction | None:
    """The minutes a sentence names: "half an hour", "walk 20"; None if it names none."""
    timed = _HOURS.search(sentence)
    if _HALF.search(sentence):
        return Fraction(90)
    if timed:
        value = _in_hours(timed["n"], timed["u"])
        return None if value is None else value * 60
    bare = re.search(rf"\b(?:do|walk|to|for) (?P<n>{NUMBER})(?![\w-])(?! \w+s\b)", sentence)
    number = read_number(bare["n"]) if bare and bare["n"] not in ("a", "an") else None
    return Fraction(number).limit_denominator(60) if number and number >= 5 else None
