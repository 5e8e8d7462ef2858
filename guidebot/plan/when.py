"""Words of time in a question: on which day of wear is this dog?

Only a time that is about this dog's wear counts. "Nineteen days in" does; "for 20 minutes",
"every 2 hours", "9 year old dog", "in two weeks we travel" and "she limped last night" do not.
Where a phrase can be read as two days ("five days in"), the lower one is taken: fewer hours.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta

from guidebot.errors import InputError
from guidebot.lazy import lazy
from guidebot.plan.days import MONTH_DAYS_MOST, add_months, fitted_from
from guidebot.plan.when_phrases import Elapsed, readers
from guidebot.text import plain

_HINT = lazy(
    r"\d|day|da?ys?\b|week|wk|month|mth|moun|year|yr|fort|toda|morrow|yest|morn|noon|night|even|"
    r"sinc|ago|first|frist|got|gett|pick|fit|collect|receiv|brought|home|new|start|begin|stage|"
    r"break|quarter|just|mon|tue|wed|thu|fri|sat|sun|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|"
    r"dec|second|third|fourth|fifth|sixth|th\b"
)
"""No time is read from a message without any of these."""
_OUTRIGHT = lazy(r"(?:it's|its|it is|we're|we are|he's|she's|now|today)\b")
_NOW_IS = lazy(
    r"(?:today's|todays|today is|now it's|now is|it's now|we're (?:now )?(?:on|at|in)|here we are at) *$"
)
_MONTH_DAYS = 30.4375  # 365.25 / 12: mean Julian month, used only where no date is known


@dataclass(frozen=True, slots=True)
class When:
    """A time for this dog.

    Attributes:
        day: day number (fitting day = 1).
        fitted: the fitting day it implies, None if `on` was not given.
        span: character offsets (start, end) in the text; take these words out before ranking.
        quote: the words.
        slack: how many days the owner's words may be off, for the comparison with a case.
        from_fitting: the words say a time since the fitting ("two weeks in"); False for a day
            of the calendar ("since Sunday") that was counted from `on`.
        stage: key or name the owner gave in place of a day ("break-in"), else None.
    """

    day: int
    fitted: date | None
    span: tuple[int, int]
    quote: str
    slack: int = 0
    from_fitting: bool = True

    def agrees(self, day: int) -> bool:
        """Can the owner's words mean this day number?"""
        return abs(self.day - day) <= self.slack


def read_when(text: str, on: date | None = None) -> When | None:
    """Find the time a message gives for this dog.

    Args:
        text: cleaned text.
        on: the day the message was written; without it calendar words ("since Sunday") and exact
            months cannot be counted: the first are left alone, months count 30.44 days.

    Returns:
        The first time found, the most explicit kind first; None if there is none.
    """
    low = plain(text)
    if not _HINT.search(low):
        return None
    for pattern, reader in readers():
        hits: list[When] = []
        for match in pattern.finditer(low):
            if _not_wear(low, match):
                continue
            found = reader(match, on)
            when = _finish(found, text, low, *match.span(), on) if found else None
            if when is not None:
                hits.append(when)
        # "month one this, month two that" is a list, not a time; "it's week nine" is said outright.
        outright = [
            when
            for when in hits
            if _OUTRIGHT.match(plain(when.quote)) or _NOW_IS.search(low[: when.span[0]])
        ]
        chosen = outright or hits
        if chosen and len({when.day for when in chosen}) == 1:
            return chosen[0]
    return None


def without(text: str, when: When | None) -> str:
    """The text with the words of time taken out, for ranking."""
    if when is None:
        return text
    start, end = when.span
    rest = f"{text[:start].rstrip()} {text[end:].lstrip()}".strip()
    # A message that is nothing but a time keeps its words: there is nothing else to rank.
    return re.sub(r"\s+([,.?!])", r"\1", rest).strip(" ,;") or text


def _finish(
    found: Elapsed, text: str, low: str, start: int, end: int, on: date | None
) -> When | None:
    if found.day is not None:
        day = found.day
    elif on is None:
        day = int(found.months * _MONTH_DAYS + 0.999) + found.days + 1
    else:
        try:
            day = (on - (add_months(on, -found.months) - timedelta(days=found.days))).days + 1
        except (InputError, OverflowError):
            return None
    if found.months and not found.days:
        # "Three months" closes them, whichever months they were.
        day = max(day, found.months * MONTH_DAYS_MOST + 1)
    if not 1 <= day <= 9_000:
        return None
    while end > start and low[end - 1] in " ,.;:!?":
        end -= 1
    fitted = fitted_from(day, on) if on is not None else None
    return When(day, fitted, (start, end), text[start:end], found.slack, found.from_fitting)


# A match is not about wear when words like these stand right after or right before it.
_AFTER_NOT = lazy(
    r"^[ -]*(?:old\b|of age|(?:after|post|following|from)[ -]?(?:the |his |her |an? )?(?:surgery|"
    r"op\b|operation|injury|tear|x-?ray|accident|tplo|tta|spay|vaccin|litter|birth)|post[ -]?op|"
    r"since (?!sun|mon|tue|wed|thu|fri|sat)|of (?:limping|rain|snow)|limping|rain|snow|"
    r"without|off\b|"
    r"on holiday|away\b|sick|(?:with|a|the)* ?(?:cough|cold|flu|limp)\b)"
)
_BEFORE_NOT = lazy(
    r"(?:\b(?:in|within|every|every other|next|another|once|twice|each|until|till|from|to|off for|"
    r"for the (?:next|last)|without it for|missed|skip(?:ped)?|limp(?:ed|ing)?|"
    r"compared (?:it )?with[^.?!]{0,30}|compare[^.?!]{0,30}|past|(?:what )?happens(?: on|"
    r" in)?|in his|in her)) ?$"
)
_TROUBLE = lazy(
    r"\b(?:limp(?:ed|ing|s)?|sick|ill|vomit(?:ed|ing)?|pregnant|lame|sore|coughing|itch(?:ed|"
    r"ing|y)?|"
    r"licking|chewing|raining|snowing|pouring|away|off|out of it|without(?: it)?|not|didn't|"
    r"didnt|nobody|nothing|never|don't|hasn't|haven't|red|dead|dry|hot|cold|holiday|the strap was)"
    r"\b[^.?!,;]{0,30}$"
)


def _not_wear(low: str, match: re.Match[str]) -> bool:
    start, end = match.span()
    before, after = low[max(0, start - 60) : start].rstrip(), low[end : end + 40]
    if _AFTER_NOT.search(after) or _BEFORE_NOT.search(before):
        return True
    # "nobody put it on for a fortnight", "limping for two weeks": trouble or a gap, not wear.
    is_length = match.groupdict().get("n") and "unit" in match.groupdict()
    trouble = _TROUBLE.search(before + match.group()[:12] if is_length else before)
    return bool(trouble) and bool(re.search(r"\b(?:for|since|been)\b|\d", match.group()))
