"""Verdicts: the table of activities and the numbers of the plan, filled into fixed sentences.

A restriction of the veterinarian and a setback in the diary only ever make a verdict stricter.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from guidebot.domain.activity import STRICTNESS, Activity, Say
from guidebot.domain.answer import Verdict
from guidebot.domain.case import Case, Restriction
from guidebot.domain.protocol import Protocol, Stage
from guidebot.plan import amounts
from guidebot.plan.ask import Ask, Kind, Trouble
from guidebot.plan.days import (
    add_days,
    day_number,
    fitted_from,
    stage_of_day,
    stage_on,
    stage_start,
)
from guidebot.plan.said import ASK_FITTED, SAYS, capital, said_date, said_start
from guidebot.plan.wear import Held, allowed_on
from guidebot.plan.when import When


@dataclass(frozen=True, slots=True)
class Decision:
    """A verdict, what to ask back, and remarks on how the time was read."""

    verdict: Verdict
    asks_back: str | None = None
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Moment:
    """What is known about the time of a question.

    Attributes:
        case: the case as it is to be judged: with the fitting day that the words of the question
            imply, if they differ from the case.
        on: calendar date, None if unknown.
        day: day number, None if unknown.
        notes: remark when the words and the case disagree.
    """

    case: Case
    on: date | None
    day: int | None
    notes: tuple[str, ...] = ()

    def stage(self, protocol: Protocol) -> Stage | None:
        """The stage of this moment, None if the day is not known."""
        if self.on is not None and self.case.fitted is not None:
            return stage_on(protocol, self.case.fitted, self.on)
        return None if self.day is None else stage_of_day(protocol, self.day)


def moment(
    case: Case | None,
    on: date | None = None,
    day: int | None = None,
    when: When | None = None,
    *,
    tomorrow: bool = False,
) -> Moment:
    """Settle which day a question is about: words, then the given day, then the case's dates.

    Args:
        case: the case, None if there is none.
        on: the date of the question.
        day: a day number given beside the text (`--day`).
        when: what `read_when` found in the text; it wins over the case if they disagree.
        tomorrow: the question is about the next day.

    Raises:
        InputError: a day number below 1, or a date before the fitting day.
    """
    known = case or Case(id="", dog="")
    notes: tuple[str, ...] = ()
    if known.fitted is None and day is not None and on is not None:
        known = replace(known, fitted=fitted_from(day, on))
    elif day is not None:
        fitted_from(day, date(2000, 1, 1))
    if known.fitted is not None and on is not None:
        day = day_number(known.fitted, on)
    if when is not None:
        if day is None or not when.agrees(day):
            if day is not None:
                notes = (
                    f'Your words ("{when.quote}") mean day {when.day}, but the dates on file '
                    f"make it day {day}. This answer is for day {when.day}.",
                )
            day = when.day
            if on is not None:
                known = replace(known, fitted=fitted_from(day, on))
        elif on is None:
            day = when.day
    if tomorrow and day is not None and when is None:
        day += 1
        on = add_days(on, 1) if on is not None else None
    return Moment(known, on, day, notes)


def decide(
    protocol: Protocol,
    activities: Mapping[str, Activity],
    ask: Ask,
    case: Case | None = None,
    on: date | None = None,
    day: int | None = None,
    when: When | None = None,
) -> Decision:
    """Answer a question of permission or amount.

    Args:
        protocol: the numbers and stages.
        activities: the table.
        ask: what `AskReader.read` found.
        case: the dog, with restrictions and diary; None if unknown.
        on: the date of the question.
        day: day number given beside the text.
        when: what `read_when` found in the text.

    Returns:
        The verdict; without a known day the strictest of all stages, with the stages in one line
        and a question back.

    Raises:
        InputError: dates that cannot be.
        KeyError: the activity is not in the table.
    """
    now = moment(case, on, day, when, tomorrow=ask.tomorrow)
    if ask.kind is Kind.WEAR:
        verdict = amounts.wear_verdict(protocol, ask, now.case, now.on, now.day)
    elif ask.kind is Kind.WALK:
        table = activities.get("walk")
        verdict = amounts.walk_verdict(
            protocol, table, ask, now.case, now.on, now.day, now.stage(protocol)
        )
        verdict = _restricted(verdict, "walk", now)
    else:
        verdict = _activity(protocol, activities[ask.activity], now)
    verdict = _troubled(verdict, activities, ask)
    fixed = now.day is not None or _same_in_all(verdict, activities, ask)
    return Decision(verdict, None if fixed else ASK_FITTED, now.notes)


def verdict(
    protocol: Protocol,
    activities: Mapping[str, Activity],
    ask: Ask,
    case: Case | None = None,
    on: date | None = None,
    day: int | None = None,
    when: When | None = None,
) -> Verdict:
    """The verdict of `decide` alone."""
    return decide(protocol, activities, ask, case, on, day, when).verdict


def activity_on(protocol: Protocol, activity: Activity, case: Case, on: date) -> Verdict:
    """The verdict for one activity, a case with a fitting day, and a date."""
    return _activity(protocol, activity, moment(case, on))


def _same_in_all(verdict: Verdict, activities: Mapping[str, Activity], ask: Ask) -> bool:
    if ask.kind is Kind.WEAR:
        return verdict.say is Say.NO
    table = activities.get(ask.activity)
    return table is not None and ask.kind is Kind.ACTIVITY and _common(table)


def _common(activity: Activity) -> bool:
    return len(set(activity.stages.values())) == 1


def _activity(protocol: Protocol, activity: Activity, now: Moment) -> Verdict:
    stage = now.stage(protocol)
    if stage is None:
        return _restricted(_undated(protocol, activity), activity.key, now)
    rule = activity.stages[stage.key]
    parts = [f"{capital(activity.name)}: {SAYS[rule.say]}.", rule.why, rule.now]
    if not _common(activity):
        parts.insert(1, f"Day {now.day} is in the {stage.name} stage.")
    cites = [f"activities.yaml:{rule.line}"]
    found = Verdict(
        say=rule.say,
        text="",
        day=now.day,
        stage=stage.key,
        activity=activity.key,
        cites=tuple(cites),
    )
    change = _next_change(protocol, activity, now, stage)
    if change is not None and _barred(now, activity.key) is None:
        later, starts = change
        said = SAYS[activity.stages[later.key].say]
        begins = said_date(starts) if starts is not None else said_start(later)
        begins = f"On {begins}" if starts is not None else capital(begins)
        parts.append(f"{begins} the {later.name} stage starts, and this changes to: {said}.")
        found = replace(
            found,
            changes_on=starts,
            cites=(*found.cites, f"activities.yaml:{activity.stages[later.key].line}"),
        )
    found = replace(found, text=" ".join(parts))
    return _restricted(_held(protocol, activity, found, now), activity.key, now)


def _held(protocol: Protocol, activity: Activity, found: Verdict, now: Moment) -> Verdict:
    """After a sore or more limping nothing that follows the stages is free: ask first."""
    if _common(activity) or not now.case.diary or now.on is None or now.case.fitted is None:
        return found
    for reason in allowed_on(protocol, now.case, now.on).reasons:
        if reason.held in _STOPS and STRICTNESS[found.say] < STRICTNESS[Say.ASK_FIRST]:
            text = (
                f"{capital(activity.name)}: ask first. {amounts.why_text(reason)} "
                "Ask your veterinarian before your dog does this again."
            )
            return replace(found, say=Say.ASK_FIRST, text=text, changes_on=None)
    return found


def _troubled(found: Verdict, activities: Mapping[str, Activity], ask: Ask) -> Verdict:
    """A sore or a flag told in the question itself: nothing that follows the stages is free.

    A slow walk stays free after a flag; after a sore it does not.
    """
    if ask.kind is Kind.WEAR or STRICTNESS[found.say] >= STRICTNESS[Say.ASK_FIRST]:
        return found
    flagged = ask.trouble is Trouble.FLAG and ask.kind is Kind.ACTIVITY
    if not (flagged or ask.trouble is Trouble.SORE) or _common(activities[ask.activity]):
        return found
    name = capital(activities[ask.activity].name)
    if flagged and ask.activity in _LONGER:
        text = f"{name}: not yet. {_TOO_SOON}"
        return replace(found, say=Say.NOT_YET, text=text, changes_on=None)
    text = f"{name}: ask first. You tell of trouble with the leg or the skin. {_TROUBLE_FIRST}"
    return replace(found, say=Say.ASK_FIRST, text=text, changes_on=None)


_TROUBLE_FIRST = (
    "Let your veterinarian or your fitter look at that before your dog does this again."
)
_LONGER = frozenset({"walk-build", "long-walk", "hike"})
_TOO_SOON = (
    "More limping after a walk means too much too soon. Go back to the length that went well, and "
    "call your veterinarian if the limp stays."
)
_STOPS = frozenset({Held.SORE, Held.LIMPING})


def _next_change(
    protocol: Protocol, activity: Activity, now: Moment, stage: Stage
) -> tuple[Stage, date | None] | None:
    """The next stage with another verdict, and its date if the fitting day is known."""
    say = activity.stages[stage.key].say
    after = False
    for later in protocol.stages:
        if after and activity.stages[later.key].say is not say:
            dated = now.case.fitted is not None and now.on is not None
            return later, stage_start(later, now.case.fitted) if dated else None  # type: ignore[arg-type]
        after = after or later.key == stage.key
    return None


def _undated(protocol: Protocol, activity: Activity) -> Verdict:
    """Without a day: the common verdict, else the strictest, and the stages in one line."""
    rules = [(stage, activity.stages[stage.key]) for stage in protocol.stages]
    _, rule = max(rules, key=lambda pair: STRICTNESS[pair[1].say])
    cites = tuple(dict.fromkeys(f"activities.yaml:{r.line}" for _, r in rules))
    head = f"{capital(activity.name)}: {SAYS[rule.say]}"
    if _common(activity):
        text = f"{head}. {rule.why} {rule.now}"
        return Verdict(rule.say, text, None, None, activity.key, None, cites[:1])
    line = "; ".join(f"{stage.name} ({said_start(stage)}): {SAYS[r.say]}" for stage, r in rules)
    first = rules[0][1].say is rule.say
    head += " at first." if first else " at the strictest stage."
    text = f"{head} {rule.why} {rule.now} By stage: {line}."
    return Verdict(rule.say, text, None, None, activity.key, None, cites)


def _barred(now: Moment, key: str) -> Restriction | None:
    """The restriction that bars an activity on this day, the one that lasts longest."""
    if now.on is None:
        held = [r for r in now.case.restrictions if r.activity in (key, "all")]
    else:
        held = [r for r in now.case.restrictions if r.activity in (key, "all") and r.holds(now.on)]
    return max(held, key=lambda r: r.ends or date.max, default=None)


def _restricted(found: Verdict, key: str, now: Moment) -> Verdict:
    """Let the veterinarian's restriction have the last word; it never loosens."""
    bar = _barred(now, key)
    if bar is None:
        return found
    until = f" until {said_date(bar.ends)}" if bar.ends is not None else " until it is lifted"
    text = f"Your veterinarian has restricted this{until}. That comes before the guide."
    say = Say.NO if STRICTNESS[found.say] < STRICTNESS[Say.NO] else found.say
    back = add_days(bar.ends, 1) if bar.ends is not None and now.on is not None else None
    return replace(found, say=say, text=f"{SAYS[say].capitalize()}. {text}", changes_on=back)
