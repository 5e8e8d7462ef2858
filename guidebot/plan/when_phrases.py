"""The phrases of time an owner uses, and how much time each of them counts."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from functools import lru_cache

from guidebot.plan.number_words import NUMBER, ORDINAL, read_number, read_ordinal


@dataclass(frozen=True, slots=True)
class Elapsed:
    """Elapsed time: months first, then days.

    Attributes:
        day: day number (fitting day = 1); it overrides both.
        months, days: how many have gone.
        slack: how many days the words may be off.
        from_fitting: the words say a time since the fitting.
    """

    day: int | None = None
    months: int = 0
    days: int = 0
    slack: int = 0
    from_fitting: bool = True


def _elapsed(match: re.Match[str], _: date | None) -> Elapsed | None:
    """`nineteen days in`, `after five and a half weeks`, `nearly half a year`."""
    amount = read_number(match["n"])
    unit = match["unit"]
    if amount is None or (match["n"] == "a" and unit == "day"):
        return None
    if match.groupdict().get("half"):
        amount += 0.5
    nearly = bool(
        re.search(
            r"\b(?:nearly|almost|not quite|just under|coming up (?:to|on|for)|going on|nigh on|"
            r"close (?:to|on)|just shy of|getting on for|under)\b",
            match.group(),
        )
    )
    if unit.startswith("y"):
        months, days, slack = amount * 12, 0.0, 45
    elif unit.startswith("m"):
        months, days, slack = amount, 0.0, 16
    else:
        size = {"w": 7, "f": 14}.get(unit[0], 1)
        months, days, slack = 0.0, amount * size, 1 if size == 1 else size // 2 + 1
    whole = int(months)
    days += (months - whole) * 30
    if unit.startswith("d") and re.search(r"\b(?:in|into|of it|of wear|of this)\b$", match.group()):
        # "Five days in" may be the fifth day or the sixth: take the lower.
        days = max(days - 1, 0)
    if nearly:
        days -= 1 if unit.startswith(("d", "w")) else 10
        if whole and days < 0:
            whole, days = whole - 1, days + 30
    return Elapsed(months=whole, days=max(int(days), 0), slack=slack)


def _two_units(match: re.Match[str], _: date | None) -> Elapsed | None:
    """`a year and two months on`: the one and the other."""
    months, days = 0.0, 0.0
    for number, unit in ((match["n"], match["unit"]), (match["n2"], match["unit2"])):
        amount = read_number(number)
        if amount is None:
            return None
        if unit.startswith(("y", "m")):
            months += amount * (12 if unit.startswith("y") else 1)
        else:
            days += amount * (7 if unit.startswith("w") else 1)
    return Elapsed(months=int(months), days=int(days), slack=7)


def _day_n(match: re.Match[str], _: date | None) -> Elapsed | None:
    """`day 6`, `the 4th day`, `week two`, `first week`, `month four`, `the third month`."""
    groups = match.groupdict()
    raw = groups.get("n") or ""
    amount = read_ordinal(raw) if groups.get("ord") else read_number(raw)
    if groups.get("ord"):
        amount = read_ordinal(groups["ord"])
    if amount is None or amount < 1 or amount != int(amount):
        return None
    number, unit = int(amount), match["unit"]
    if match.string[: match.start()].endswith("after "):
        number += 1
    if unit.startswith(("d", "evening", "night", "morning", "afternoon")):
        return Elapsed(day=number)
    if unit.startswith("w"):
        return Elapsed(day=7 * (number - 1) + 1, slack=7)
    return Elapsed(months=number - 1, days=0, slack=31)


def _over(match: re.Match[str], _: date | None) -> Elapsed | None:
    """`the first month is over`: so many units have gone."""
    amount, unit = read_ordinal(match["ord"]), match["unit"]
    if not amount:
        return None
    if unit.startswith("m"):
        return Elapsed(months=int(amount), slack=16)
    return Elapsed(days=int(amount) * (7 if unit.startswith("w") else 1), slack=4)


def _day_one(_match: re.Match[str], _on: date | None) -> Elapsed:
    return Elapsed(day=1)


def _yesterday(_match: re.Match[str], _on: date | None) -> Elapsed:
    return Elapsed(days=1)


_DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


def _weekday(match: re.Match[str], on: date | None) -> Elapsed | None:
    """`since Sunday`, `got it on Friday`: the last such day before today."""
    if on is None:
        return None
    wanted = next((i for i, d in enumerate(_DAYS) if match["wd"].startswith(d[:3])), None)
    if wanted is None:
        return None
    back = (on.weekday() - wanted) % 7 or 7
    if re.search(r"\blast week\b|\bweek before\b|\ba week (?:last|past)\b", match.group()):
        back += 7 if back < on.weekday() + 1 else 0
    return Elapsed(days=back, slack=1, from_fitting=False)


_MONTHS = (
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
)


def _fortnight(_match: re.Match[str], _on: date | None) -> Elapsed:
    """`fortnight today since he got it`: two weeks without a number."""
    return Elapsed(days=14, slack=4)


def _last_week(_match: re.Match[str], _on: date | None) -> Elapsed:
    """`the brace came last week`: about a week, give or take a few days."""
    return Elapsed(days=6, slack=6)


def _between(match: re.Match[str], _on: date | None) -> Elapsed | None:
    """`picked up on Monday, today's Tuesday`, `came on the 3rd, today is the 9th`."""
    groups = match.groupdict()
    if groups.get("wd"):
        first, second = (
            next((i for i, d in enumerate(_DAYS) if groups[k].startswith(d[:3])), None)
            for k in ("wd", "wd2")
        )
        if first is None or second is None:
            return None
        gone = (second - first) % 7
        if gone == 0 and re.search(r"\b(?:last|a week (?:ago|later)|week)\b", match.group()):
            gone = 7
    else:
        gone = int(groups["d1"]) - int(groups["d2"])
        gone = -gone if gone <= 0 else 30 - gone
    return Elapsed(days=gone, slack=1)


def _calendar(match: re.Match[str], on: date | None) -> Elapsed | None:
    """`fitted on 3 March`, `since March 3rd`, `got it on 2026-03-03`."""
    if on is None:
        return None
    groups = match.groupdict()
    then: date | None
    if groups.get("iso"):
        try:
            then = date.fromisoformat(groups["iso"])
        except ValueError:
            return None
    else:
        name = (groups.get("m1") or groups.get("m2") or "")[:3]
        month = next((i for i, m in enumerate(_MONTHS, 1) if m.startswith(name)), None)
        number = int(groups.get("d1") or groups.get("d2") or 1)
        if month is None:
            return None
        then = _latest(month, number, on)
        if then is None:
            return None
    gone = (on - then).days
    return Elapsed(days=gone, slack=0, from_fitting=False) if gone >= 0 else None


def _latest(month: int, number: int, on: date) -> date | None:
    for year in (on.year, on.year - 1):
        try:
            then = date(year, month, number)
        except ValueError:  # 29 February in another year
            continue
        if then <= on:
            return then
    return None


_DAY = r"(?:days?|dyas?|dayz)"
_WEEK = r"(?:weeks?|wks?|weaks?|weeeks?|weks?|wekes?|wees|weeek|wewks?)"
_MONTH = r"(?:months?|mths?|mos?|mounths?|monthes|monhts?|motnhs?|mnths?|mnoths?|moths?|montsh?)"
_UNIT = rf"(?P<unit>{_DAY}|{_WEEK}|fortnights?|{_MONTH}|years?|yrs?|yeras?)\b(?P<half> and a half\b)?(?: and a bit\b| or so\b| and counting\b)?"
_N = rf"(?P<n>{NUMBER})"
_ROUGH = (
    r"(?:(?:about|around|roughly|nearly|almost|only|just(?: under| over| shy of)?|over|more than|"
    r"less than|a good|a full|not quite|at least|exactly|already|maybe|now|some|close to|going on|"
    r"coming up (?:to|on|for)|like|barely|the best part of|well over|easily|getting on for|approx(?:imately)?|"
    r"circa|past|fully|all of|what,?|nigh on|close on|under) )*"
)
_THING = (
    r"(?:it|this|one|hers|brace|boot|device|orthosis|orthotic|splint|support|contraption|gadget|"
    r"leg|leg thing|knee thing|thing|sleeve)"
)
_THE = r"(?:(?:the|his|her|our|my|its|a|that|this|new|brand|bionic|plastic|knee|leg) )*"
_OBJECT = rf"{_THE}{_THING}\b"
_IT_IS = r"(?:it's|its|it is|we are|we're|he's|she's|he is|she is|now|today is|this is)"
_WD = r"(?P<wd>(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?)\b"
_NAMES = "|".join(f"{m[:3]}(?:{m[3:]})?" if m[3:] else m for m in _MONTHS)
_DATE = (
    r"(?:(?P<iso>\d{4}-\d\d-\d\d)|"
    rf"(?:the )?(?P<d1>\d{{1,2}})(?:st|nd|rd|th)?(?: of)? (?P<m1>{_NAMES})\b|"
    rf"(?P<m2>{_NAMES})\b(?: (?:the )?(?P<d2>\d{{1,2}})(?:st|nd|rd|th)?\b)?)"
)
_SINCE_FIT = (
    r"(?:post|after|since|from|past|following)[ -]?(?:(?:the|his|her|its|our|being|getting|"
    r"starting|"
    r"(?:he|she|we|they|i|it) (?:was|got|were|started|had|put)) )*"
    r"(?:(?:he|she|we|i|it|they) (?:began|begun|started)|(?:new )?(?:fitting|fitted|fit|brace|device|orthosis|orthotic|dispense|delivery|day one|it))\b"
)
_CLAUSE_END = (
    r"(?=$| *[,.;?!)]| (?:and|can|could|may|might|is|are|with|so|now|he|she|we|it|but|i|do|does|"
    r"should|what|how|when|to this|to it|wearing|using|on|at|today)\b)"
)
_ORD = rf"(?P<ord>{ORDINAL})"
_ORD_END = r"(?! (?:of (?:the month|next|last)|back|in a row|running|over|they|off))"
_TODAY = (
    r"(?:today|this morning|this afternoon|this evening|tonight|just now|an hour ago|(?:at )?"
    r"(?:noon|lunch(?:time)?|midday)|at (?:one|two|three|four|nine|ten|eleven|\d{1,2}(?:[.:]\d\d)?)"
    rf"(?: ?(?:am|pm|o'clock))?|{NUMBER} (?:minutes|mins?|hours?) ago)\b"
)
_TAKEN = (
    r"(?:picked|collected|received|fetched|been fitted|was fitted|were fitted|got fitted|"
    r"took (?:it|delivery)|brought (?:it|him|her) home)"
)
_GOT_IT = (
    rf"(?:(?:got|started|began|had|brought|getting|wearing|worn) (?:\w+ )?{_OBJECT}"
    r"|(?:was|got) put on (?:him|her)"
    rf"|{_TAKEN}(?: up)?(?: {_OBJECT})?|fitted(?: with)?(?: {_OBJECT})?|we (?:just )?started"
    r"|got (?:\w+ ){0,2}fitted|(?:got|get|getting|just) home (?:from the fitt\w+|with it)"
    rf"|{_THE}(?:brace|device|orthosis|splint|boot|parcel|it) (?:came|arrived)"
    r"(?! off| loose| undone| down)(?: in the post)?"
    rf"|(?:fitter|they|clinic) (?:put|strapped|fitted) {_OBJECT}(?: on)?)"
)
_WD2 = _WD.replace("?P<wd>", "?P<wd2>")
_IS_NOW = (
    r"(?:today is|today's|todays|today it's|today it is|it's|its|it is|now(?: it's| it is| is)?|"
    r"that makes today|this is|and) (?:now |already |just |only |the |next |following )*"
)
_BEHIND = (
    r"(?:done|gone(?: by)?|on(?! (?:the|a|his|her|lead|leash|grass|flat|soft)\b)|now|along|behind (?:us|him|her|me)|under (?:our|his|her|my|the) "
    r"belts?|later|down|through|past|passed|it is(?: now)?|it's been|(?:he|she|we|they)(?:'s|'ve)? "
    r"(?:has|have|had|got|been)?(?: had| worn| been wearing| been in)? ?(?:it|this)\b|over|today|tomorrow|completed|"
    r"complete|finished|as of (?:today|now)|at the (?:weekend|moment)|on (?:monday|tuesday|"
    r"wednesday|thursday|friday|saturday|sunday))"
)
_AGO_NOT = (
    r"(?! (?:of age|old|ago|older|younger|more|extra|longer|per|a day|off|break|apart|to be|to get|"
    r"without|away|early|late))"
)

_SPECS = (
    # picked it up on Monday, today's Tuesday; it came on the 3rd, today is the 9th
    (
        rf"\b(?:{_GOT_IT}|fitt(?:ing|ed)|collected|start(?:ed|ing)?|came|arrived)"
        rf"(?: [\w']+){{0,6}}?,? (?:on |last |from |since |was |this )*(?:the |a )?{_WD}"
        rf"[^.?!]{{0,30}}?[.,;(]? ?(?:and |so |but )*{_IS_NOW}{_WD2}",
        _between,
    ),
    (
        rf"\b(?:{_GOT_IT}|fitt(?:ing|ed)|collected|start(?:ed|ing)?|came|arrived)"
        rf"(?: [\w']+){{0,6}}?,? (?:on|since|from) the (?P<d1>\d{{1,2}})(?:st|nd|rd|th)?"
        rf"(?: (?:of )?(?:{_NAMES}))?\b[^.?!]{{0,16}}?[.,;(]? ?"
        rf"(?:and |so |but )*{_IS_NOW}the (?P<d2>\d{{1,2}})(?:st|nd|rd|th)\b",
        _between,
    ),
    (
        r"\byesterday was (?:(?:the|his|her|our) )?(?:very )?(?:first day|day one|day 1|"
        r"fitting day)\b",
        _yesterday,
    ),
    # a year and two months on; two weeks and three days in
    (
        rf"\b{_ROUGH}{_N}[ -]?(?P<unit>years?|months?|weeks?),? and (?P<n2>{NUMBER})[ -]?"
        r"(?P<unit2>months?|weeks?|days?)\b(?! (?:old|ago|of age))",
        _two_units,
    ),
    # three months post fitting; two weeks since we got the brace
    (rf"\b(?:(?:{_IT_IS}|at|after|been) )*{_ROUGH}{_N}[ -]?{_UNIT}\.?[ -]{_SINCE_FIT}", _elapsed),
    # it's day 6; we're in week three; month four
    (
        rf"\b(?:(?:come|got|gone|made it|moved|up)(?: on)? to |(?:{_IT_IS}|are|is|in|into|on|at|by|"
        r"only|still|just|about) )*"
        rf"(?P<unit>{_DAY}|{_WEEK}|{_MONTH})[ -]?#?(?P<n>{NUMBER})\b"
        r"(?! ?(?:times?|hours?|h\b|days?|weeks?|months?|years?))",
        _day_n,
    ),
    # his first month is over
    (
        rf"\b(?:(?:the|his|her|our|its|my|that's the|that's) )*{_ORD} (?P<unit>{_DAY}|{_WEEK}|{_MONTH}) "
        r"(?:is |has been |was )?(?:now )?(?:over|done|behind (?:us|him|her)|finished|complete|gone)\b",
        _over,
    ),
    # the 4th day; his first week; the third month
    (
        rf"\b(?:(?:on|in|into|during|only|still|at|by|for|{_IT_IS}) )*(?:(?:the|his|her|our|its|"
        rf"their|my) )?(?:very )?{_ORD} (?P<unit>day|evening|night|morning|afternoon|{_WEEK}|"
        rf"{_MONTH})\b{_ORD_END}",
        _day_n,
    ),
    # nineteen days in; two weeks into it; six weeks of wear
    (
        rf"\b(?:(?:{_IT_IS}|at|after|only|is|are) )*{_ROUGH}{_N}[ -]?{_UNIT} (?:(?:now|along|down|"
        rf"already) )?(?:in\b{_CLAUSE_END}|into\b(?: (?:the |this |our |his |her )?(?:it|wear|"
        r"brace|device|treatment|journey|course|process|program(?:me)?|thing|restrictions|"
        r"break-in|recovery)\b)?|of (?:wear|wearing|having it|(?:the )?brace|the device)\b|"
        rf"along\b|(?:with|in|wearing|using) {_OBJECT})",
        _elapsed,
    ),
    # it's been two weeks; he's had it for five weeks; wearing it for a month
    (
        r"\b(?:now that )?(?:it's|its|it has|it is|that's|has|have|he's|she's|they've|we've|i've|"
        r"we have|now) (?:only |just |already |now |really )*been (?:on (?:him|her) )?(?:for )?"
        rf"{_ROUGH}{_N}[ -]?{_UNIT}(?! walks?\b)",
        _elapsed,
    ),
    (
        rf"\b(?:had|worn|wearing|wears|wore|using|been in|in|been on|with) {_OBJECT}(?: on)?"
        rf"(?: (?:him|her|his leg|her leg))?(?: now)? (?:for )?(?!one day){_ROUGH}{_N}[ -]?{_UNIT}"
        r"(?! walks?\b)",
        _elapsed,
    ),
    # she wears it since seven weeks; so good for two months now; seven weeks braced
    (rf"\bsince (?:already )?{_ROUGH}{_N}[ -]?{_UNIT}{_AGO_NOT}", _elapsed),
    (rf"\bfor {_ROUGH}{_N}[ -]?{_UNIT} now\b", _elapsed),
    (rf"\b{_ROUGH}{_N}[ -]?{_UNIT}[ -](?:braced|fitted|wearer)\b", _elapsed),
    # after five and a half weeks; at four months; nearly half a year
    (
        rf"\b(?:after|at|past|we're|we are|it's|its|now|by now|been|that's) {_ROUGH}{_N}[ -]?"
        rf"{_UNIT}{_AGO_NOT}",
        _elapsed,
    ),
    (
        rf"\b(?<!took )(?<!for )(?<!take )(?:nearly|almost|not quite) {_N}[ -]?{_UNIT}{_AGO_NOT}",
        _elapsed,
    ),
    # got it three weeks ago; ten days ago he was fitted
    (rf"\b{_GOT_IT}[^.?!,]{{0,20}}? {_ROUGH}{_N}[ -]?{_UNIT} (?:ago|back)\b", _elapsed),
    (
        rf"\b{_N}[ -]?{_UNIT} ago (?:he |she |we |i |they |it )?(?:was |were )?(?:just )?{_GOT_IT}",
        _elapsed,
    ),
    (rf"\b(?:fitting|fitted|fit)(?: was)? {_ROUGH}{_N}[ -]?{_UNIT} ago\b", _elapsed),
    (rf"\b(?:a )?fortnight (?:today|now|yesterday)?,? ?{_SINCE_FIT}", _fortnight),
    (rf"(?:^|[.,;] ?|\b{_IT_IS} )(?:a )?fortnight (?:today|now|in|gone|done|since)\b", _fortnight),
    # the brace came last week; got it a week ago
    (
        rf"\b{_GOT_IT}[^.?!,]{{0,20}}?\blast week\b(?! on| mon| tue| wed| thu| fri| sat| sun)",
        _last_week,
    ),
    # got it yesterday; picked it up at noon; our first day
    (rf"\b{_GOT_IT}[^.?!,]{{0,30}}?\byesterday\b", _yesterday),
    (rf"\b(?:just |only |literally )*{_GOT_IT}[^.?!,]{{0,30}}?\b{_TODAY}", _day_one),
    (
        rf"\b(?:only |literally )*just (?:now )?(?:got|picked|collected|received|been fitted|"
        rf"brought)(?: up)? (?:{_OBJECT}(?: up| fitted| home)?|(?:him|her) fitted)",
        _day_one,
    ),
    (
        r"\b(?:today is |it's |this is |being )?(?:(?:the|his|her|our|"
        r"a) )?(?:very )?(?:first (?:ever )?day|opening day|"
        r"(?:very )?first go|fitting day|day of (?:the )?(?:fitting|dispense))\b|"
        r"\b(?:fitted|brand new|new) today\b",
        _day_one,
    ),
    # eight months done; five weeks gone; six weeks she has it; half a year behind us
    (
        rf"(?:^|(?<=[.,;:!?(-] )|\b(?:that's|thats|it's|its|now|so|and|with|hi|hello|ok) )"
        rf"{_ROUGH}{_N}[ -]?{_UNIT},? {_BEHIND}(?=$|[ ,.;:?!)])",
        _elapsed,
    ),
    (
        rf"\b(?:past|over|beyond|at|reached|hit|passed|cleared|got to) the {_N}[ -]?{_UNIT} "
        r"(?:mark|point|stage|line|milestone)\b",
        _elapsed,
    ),
    (
        rf"\b(?:done|completed|finished|managed|reached|hit|passed|survived) {_ROUGH}{_N}[ -]?{_UNIT}"
        r"(?= ?(?:$|[,.;:?!)]|now|and|so|of it))",
        _elapsed,
    ),
    (rf"\b{_ROUGH}{_N}[ -]?{_UNIT} (?:have|has|had) (?:now )?(?:passed|gone|flown)\b", _elapsed),
    # "Seven weeks, the neighbour's dog wants to play": a time that stands alone in front
    (rf"^(?:hi|hello|so|ok|well|hey)?[ ,]*{_ROUGH}{_N}[ -]?{_UNIT}(?= ?[,.;:!-])", _elapsed),
    (rf"(?<=[.!?] ){_ROUGH}{_N}[ -]?{_UNIT}(?= ?[.;!])", _elapsed),
    # brace since Friday; she has her splint since Sunday; since Monday he has it
    (rf"\b(?<!out of )(?<!without ){_OBJECT},? (?:on )?since (?:last )?{_WD}", _weekday),
    (
        rf"\bsince (?:last )?{_WD} (?:(?:he|she|it|we) )?(?:has|have|had|is|wears?) {_OBJECT}",
        _weekday,
    ),
    # since Sunday; got it on Friday; fitted on 3 March
    (
        rf"\b(?:{_GOT_IT}|in {_OBJECT}|(?:put|went|been) (?:it )?on(?: (?:him|her))?)"
        rf"(?: \w+){{0,3}}? (?:since|on|last) (?:last |this |the )?{_WD}(?: last week)?",
        _weekday,
    ),
    (
        rf"(?:^|[,.;(] ?|\b(?:been|started|begun|new|going|ever|it's) )since (?:last )?{_WD}"
        r"(?= *(?:$|[,.;?!]))",
        _weekday,
    ),
    (
        rf"\b(?:{_GOT_IT}|in {_OBJECT}|fitting)(?: \w+){{0,3}}? (?:since|on|from|in|was|"
        rf"of) {_DATE}",
        _calendar,
    ),
)


@lru_cache(maxsize=1)
def readers() -> tuple[
    tuple[re.Pattern[str], Callable[[re.Match[str], date | None], Elapsed | None]], ...
]:
    """The patterns, compiled when the first message that hints at a time comes: it takes long."""
    return tuple((re.compile(pattern), reader) for pattern, reader in _SPECS)
