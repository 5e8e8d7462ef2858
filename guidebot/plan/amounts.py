"""Verdicts on amounts: hours of wear and minutes of a walk."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

from guidebot.domain.activity import STRICTNESS, Activity, Say
from guidebot.domain.answer import Verdict
from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol, Stage
from guidebot.plan.ask import Ask, Trouble
from guidebot.plan.days import stage_of_day, stage_on
from guidebot.plan.said import (
    capital,
    cite,
    said_date,
    said_hours,
    said_minutes,
    said_start,
)
from guidebot.plan.sessions import longest_spell
from guidebot.plan.spoken import ALL_DAY
from guidebot.plan.walks import Walk, walk_on
from guidebot.plan.wear import (
    Held,
    Reason,
    WearDay,
    allowed_on,
    day_reaching,
    plain_hours,
    target,
    wear_cap,
)

_WHY = {
    Held.SORE: "A sore was noted on {date}. No wear until the veterinarian has cleared it.",
    Held.CLEARED: "The veterinarian cleared wear on {date}, so the hours start low again.",
    Held.REDNESS: "Redness that stayed was noted on {date}. Leave the device off until the skin "
    "is calm and call the fitter; then use the hours of the last day that went well.",
    Held.LIMPING: "More limping was noted on {date}. Go back to the hours of the last day that "
    "went well, and call the veterinarian if it goes on.",
    Held.WAITING: "The hours stay as they are until a good day is noted.",
    Held.MISSED: "No wear on {date}: go on with the hours of the last good day.",
    Held.BREAK: "There was a longer break up to {date}: start low and build up again.",
    Held.SHORT: "On {date} less was worn than allowed, so the hours go on from what was worn.",
    Held.AGAIN: "The hours go up again step by step since the setback of {date}.",
    Held.RESTRICTED: "The veterinarian has limited the hours. That comes before the guide.",
}
_TROUBLE = {
    Trouble.SORE: (
        Say.NO,
        "Hours of wear: none for now. After an open sore there is no wear until your veterinarian "
        "has cleared it. Then the hours start at about {restart} and build up again.",
        ("wear.restart",),
    ),
    Trouble.FLAG: (
        Say.NOT_YET,
        "More hours: not yet. Stop adding hours and go back to the hours of the last day that "
        "went well. Redness that has not faded {fade} after it came off, or more limping, means: "
        "device off, and call.",
        ("skin.fade",),
    ),
    Trouble.MISSED: (
        Say.YES_WITH_LIMITS,
        "Hours of wear: yes, with limits. After up to {short} off, go on with the hours of the "
        "last good day. After a longer break, start at about {restart} and build up again.",
        ("wear.short_break", "wear.restart"),
    ),
}


def why_text(reason: Reason) -> str:
    """One sentence for a reason of the wear plan."""
    return _WHY[reason.held].format(date=said_date(reason.on))


def wear_verdict(
    protocol: Protocol, ask: Ask, case: Case, on: date | None, day: int | None
) -> Verdict:
    """May the dog wear it so long, or how long may it?

    Args:
        protocol: numbers of the ramp.
        ask: amount in hours, or growth in hours a day, or neither.
        case: with the fitting day if it is known.
        on: date of the question, None if unknown.
        day: day number, None if unknown.
    """
    stage = _stage_key(protocol, case, on, day)
    most = target(protocol, case)
    amount = most if ask.amount == ALL_DAY else ask.amount
    dated = on is not None and case.fitted is not None
    missed = ask.trouble is Trouble.MISSED
    if ask.trouble and not (dated and case.diary) and not (missed and ask.step):
        found = _troubled(protocol, ask.trouble, case, on, day, stage)
        full = most if day is None else min(plain_hours(protocol, day, most), most)
        if missed and amount is not None and amount >= full and found.say is not Say.NO:
            what = "All day" if amount >= most else capital(said_hours(amount))
            text = found.text.replace("Hours of wear: yes, with limits", f"{what} at once: not yet")
            return replace(found, say=Say.NOT_YET, text=text)
        return found
    if ask.step is not None:
        return _step(protocol, ask.step, case, on, day, stage)
    if dated:
        today = allowed_on(protocol, case, on)  # type: ignore[arg-type]
        return _on_day(protocol, today, amount, case, stage, at_once=ask.at_once)
    cap = _undated_cap(case, on)
    if day is not None:
        allowed = min(plain_hours(protocol, day, most), most if cap is None else cap)
        plain = WearDay(date.min, day, allowed, allowed, None, None, ())
        return _on_day(protocol, plain, amount, case, stage, dated=False, at_once=ask.at_once)
    return _no_day(protocol, amount, most, cap)


def _undated_cap(case: Case, on: date | None) -> Fraction | None:
    """The veterinarian's limit; without a date every restriction counts."""
    if on is not None:
        return wear_cap(case, on)
    caps = [wear_cap(case, r.starts) for r in case.restrictions]
    return min((c for c in caps if c is not None), default=None)


def _troubled(
    protocol: Protocol,
    trouble: Trouble,
    case: Case,
    on: date | None,
    day: int | None,
    stage: str | None,
) -> Verdict:
    say, text, keys = _TROUBLE[trouble]
    text = text.format(
        restart=protocol.numbers["wear.restart"].text(),
        fade=protocol.numbers["skin.fade"].text(),
        short=protocol.numbers["wear.short_break"].text(),
    )
    found = Verdict(say, text, day, stage, "wear", None, cite(protocol, *keys))
    cap = _undated_cap(case, on)
    return _capped(found, cap)


def _capped(found: Verdict, cap: Fraction | None) -> Verdict:
    if cap is None:
        return found
    text = f"{found.text} Your veterinarian has set a limit of {said_hours(cap)} a day."
    if cap == 0:
        return replace(found, say=Say.NO, text="Hours of wear: none. " + _WHY[Held.RESTRICTED])
    return replace(found, text=text)


def _step(
    protocol: Protocol,
    step: Fraction,
    case: Case,
    on: date | None,
    day: int | None,
    stage: str | None,
) -> Verdict:
    limit = protocol.numbers["wear.daily_step"]
    keys = cite(protocol, "wear.daily_step")
    if step > limit.value:
        text = (
            f"Faster than the plan: no. At most {limit.text()} more each day, and only while the "
            "skin and the walk stay as they were."
        )
        found = Verdict(Say.NO, text, day, stage, "wear", None, keys)
    else:
        text = (
            f"{capital(said_hours(step))} more: yes, with limits. At most {limit.text()} more "
            "each day, and only while the skin and the walk stay as they were."
        )
        found = Verdict(Say.YES_WITH_LIMITS, text, day, stage, "wear", None, keys)
    if on is None or case.fitted is None:
        return _capped(found, _undated_cap(case, on))
    today = allowed_on(protocol, case, on)
    said = f"On day {today.day} that makes up to {said_hours(today.allowed)} in all."
    if today.allowed == 0:
        return _on_day(protocol, today, None, case, stage)
    if today.reasons and found.say is Say.YES_WITH_LIMITS:
        found = replace(found, say=Say.NOT_YET, text="More hours: not yet.")
    why = " ".join(why_text(r) for r in today.reasons)
    return replace(found, text=f"{found.text} {said} {why}".strip())


def _on_day(
    protocol: Protocol,
    today: WearDay,
    amount: Fraction | None,
    case: Case,
    stage: str | None,
    *,
    dated: bool = True,
    at_once: bool = False,
) -> Verdict:
    allowed, most = today.allowed, target(protocol, case)
    why = " ".join(why_text(r) for r in today.reasons)
    cites = cite(protocol, "wear.first_day", "wear.daily_step", "wear.target")
    changes: date | None = None
    calm = any(reason.held is Held.REDNESS for reason in today.reasons)
    if allowed == 0:
        say, head = Say.NO, f"Hours of wear: none on day {today.day}."
    elif calm and (amount is None or amount <= allowed):
        say = Say.NOT_YET
        head = (
            f"Hours of wear: none until the skin is calm. Then up to {said_hours(allowed)} on "
            f"day {today.day}."
        )
    elif amount is None:
        say = Say.YES_WITH_LIMITS
        head = f"Hours of wear: up to {said_hours(allowed)} on day {today.day}."
    elif at_once and allowed < most and amount * 60 > longest_spell(protocol, allowed):
        spell = said_minutes(Fraction(longest_spell(protocol, allowed)))
        say = Say.NOT_YET
        head = (
            f"{capital(said_hours(amount))} of wear in one go: not yet. On day {today.day} spells "
            f"of {spell} at most, up to {said_hours(allowed)} in all."
        )
    elif amount <= allowed:
        say = Say.YES_WITH_LIMITS
        head = (
            f"{capital(said_hours(amount))} of wear: yes, with limits. On day {today.day} up to "
            f"{said_hours(allowed)} are allowed."
        )
    elif amount > most:
        say = Say.NO
        head = (
            f"{capital(said_hours(amount))} of wear: no. The goal is {said_hours(most)} a day, "
            f"and on day {today.day} up to {said_hours(allowed)} are allowed."
        )
    else:
        say = Say.NOT_YET
        changes = _reaches(protocol, case, today, amount) if dated else None
        then = f" If all goes well, from {said_date(changes)}." if changes else ""
        head = (
            f"{capital(said_hours(amount))} of wear: not yet. On day {today.day} up to "
            f"{said_hours(allowed)} are allowed.{then}"
        )
    how = ""
    if allowed > 0:
        how = (
            "Split them into spells with a rest and a skin check between."
            if allowed < most
            else "On in the morning, off at night, with a skin check each time it comes off."
        )
    text = " ".join(part for part in (head, why, how) if part)
    return Verdict(say, text, today.day, stage, "wear", changes, cites)


def _reaches(protocol: Protocol, case: Case, today: WearDay, amount: Fraction) -> date | None:
    """First date on which the hours reach `amount`, if every day to come goes well."""
    step = protocol.value("wear.daily_step")
    if any(r.held in (Held.SORE, Held.RESTRICTED) for r in today.reasons) or today.allowed <= 0:
        return None
    days = -(-(amount - today.allowed) // step) + (1 if today.flag else 0)
    then = today.on + timedelta(days=int(days))
    cap = wear_cap(case, then)
    return None if cap is not None and cap < amount else then


def _no_day(
    protocol: Protocol, amount: Fraction | None, most: Fraction, cap: Fraction | None
) -> Verdict:
    first, step = protocol.numbers["wear.first_day"], protocol.numbers["wear.daily_step"]
    cites = cite(protocol, "wear.first_day", "wear.daily_step", "wear.target")
    line = (
        f"{first.text()} at most on day 1, then at most {step.text()} more each day, up to "
        f"{said_hours(most)} a day."
    )
    if amount is None:
        say, head = Say.YES_WITH_LIMITS, f"Hours of wear: {line}"
    elif amount > most:
        say, head = Say.NO, f"{capital(said_hours(amount))} of wear: no. The plan is {line}"
    elif amount <= first.value:
        say = Say.YES_WITH_LIMITS
        head = f"{capital(said_hours(amount))} of wear: yes, with limits. The plan is {line}"
    else:
        say = Say.NOT_YET
        reached = day_reaching(protocol, amount)
        head = (
            f"{capital(said_hours(amount))} of wear: not yet, before day {reached}. "
            f"The plan is {line}"
        )
    return _capped(Verdict(say, head, None, None, "wear", None, cites), cap)


def walk_verdict(
    protocol: Protocol,
    table: Activity | None,
    ask: Ask,
    case: Case,
    on: date | None,
    day: int | None,
    stage: Stage | None,
) -> Verdict:
    """May the dog walk so long, or how long may it?"""
    walk = _walk(protocol, case, on, day, stage)
    rule = table.stages[stage.key] if table is not None and stage is not None else None
    cites = cite(protocol, "walk.usual", "walk.longest", "walk.times", "walk.build")
    times = f"{walk.times} time{'' if walk.times == 1 else 's'} a day"
    usual = f"about {said_minutes(walk.minutes)}, {times}, {said_minutes(walk.most)} at most"
    grown = stage is not None and protocol.stages.index(stage) >= 2
    where = f"On day {day}: {usual}." if day is not None and stage is not None else ""
    if ask.amount is None:
        say, head = Say.YES_WITH_LIMITS, "Walks: yes, with limits."
    elif ask.amount <= walk.most:
        say = Say.YES_WITH_LIMITS
        head = f"A walk of {said_minutes(ask.amount)}: yes, with limits."
    elif grown:
        say = Say.ASK_FIRST
        head = f"A walk of {said_minutes(ask.amount)}: ask first if your dog is not used to it."
        where = ""
    else:
        say, head = Say.NOT_YET, f"A walk of {said_minutes(ask.amount)}: not yet."
    if stage is None:
        build = protocol.numbers["walk.build"].text()
        every = protocol.numbers["walk.build_every"].text()
        later = said_start(protocol.stages[1]) if len(protocol.stages) > 1 else "later"
        where = (
            f"At first {usual}. {capital(later)} add at most {build}, then stay there for {every}."
        )
    elif grown and ask.amount is None:
        where = ""
    if rule is not None:
        say = max(say, rule.say, key=STRICTNESS.__getitem__)
        where = f"{where} {rule.why} {rule.now}".strip()
        cites = (f"activities.yaml:{rule.line}", *cites)
    text = f"{head} {where}".strip()
    return Verdict(say, text, day, stage.key if stage else None, "walk", None, cites)


def _walk(
    protocol: Protocol, case: Case, on: date | None, day: int | None, stage: Stage | None
) -> Walk:
    if on is not None and case.fitted is not None:
        return walk_on(protocol, replace(case, restrictions=()), on)
    if day is None or stage is None:
        return walk_on(protocol, Case("", ""), date(2000, 1, 1))
    fitted = date(2000, 1, 1)
    return walk_on(protocol, Case("", "", fitted=fitted), fitted + timedelta(days=day - 1))


def _stage_key(protocol: Protocol, case: Case, on: date | None, day: int | None) -> str | None:
    if on is not None and case.fitted is not None:
        return stage_on(protocol, case.fitted, on).key
    return None if day is None else stage_of_day(protocol, day).key
