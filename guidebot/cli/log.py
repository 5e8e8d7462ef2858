"""`guidebot log`: note a day in a dog's diary, or what the veterinarian restricts."""

from __future__ import annotations

from datetime import date

import click

from guidebot.cli.dates import DAY, today
from guidebot.cli.guide import plain_guide


@click.command()
@click.argument("dog")
@click.option("--on", type=DAY, help="The day; today if left out.")
@click.option("--hours", type=float, help="Hours worn, 0 for a day off.")
@click.option(
    "--skin", type=click.Choice(["fine", "faded", "stayed", "sore"]), help="The skin check."
)
@click.option("--gait", type=click.Choice(["usual", "better", "worse"]), help="The walk.")
@click.option("--powder/--no-powder", default=None, help="Was the lining powdered?")
@click.option("--cleared", is_flag=True, help="The veterinarian allowed wear again, after a sore.")
@click.option("--note", default="", help="Your own words.")
@click.option("--restrict", metavar="ACTIVITY", help="The veterinarian restricts this, or `wear`.")
@click.option("--until", type=DAY, help="Last day of the restriction.")
@click.option("--max-hours", type=float, help="For `wear`: most hours a day.")
@click.option("--lift", metavar="ACTIVITY", help="The restriction of this is lifted.")
@click.option("--demo", is_flag=True, help="Use the demo's store.")
@click.pass_context
def command(
    ctx: click.Context,
    dog: str,
    on: date | None,
    hours: float | None,
    skin: str | None,
    gait: str | None,
    powder: bool | None,
    cleared: bool,
    note: str,
    restrict: str | None,
    until: date | None,
    max_hours: float | None,
    lift: str | None,
    demo: bool,
) -> None:
    """Note a day of wear in a dog's diary. Prints what it means for the next day."""
    from datetime import timedelta

    from guidebot.cases.store import open_store
    from guidebot.domain.case import DiaryEntry, Gait, Restriction, Skin
    from guidebot.errors import InputError
    from guidebot.plan.plan import make_plan, plan_line

    day = on or today()
    if day > today() and on is not None and restrict is None:
        raise InputError(f"{day.isoformat()} is still to come", remedy="Note it on that day")
    noted = hours is not None or skin or gait or powder is not None or cleared or note
    if not noted and not restrict and not lift:
        raise InputError("nothing to note", remedy="See `guidebot log --help`")
    if cleared and skin == "sore":
        raise InputError(
            "a sore and its clearing cannot be of one day",
            remedy="Note the clearing on the day on which wear starts again",
        )
    guide = plain_guide(ctx)
    for activity in (restrict, lift):
        known = [*guide.activities, "wear", "all"]
        if activity is not None and activity not in known:
            raise InputError(
                f"there is no activity {activity!r}", remedy=f"One of: {', '.join(known)}"
            )
    with open_store(demo=demo) as store:
        case = store.case(dog)
        if noted:
            case = store.note(
                case.id,
                DiaryEntry(
                    on=day,
                    worn_hours=hours,
                    skin=Skin(skin) if skin else None,
                    gait=Gait(gait) if gait else None,
                    powder=powder,
                    cleared=cleared,
                    note=note,
                ),
            )
        if restrict:
            case = store.restrict(case.id, Restriction(restrict, day, until, max_hours, note))
        if lift:
            case = store.lift(case.id, lift, day)
    if case.fitted is None or day < case.fitted:
        click.echo(f"Noted for {case.dog}. The fitting day is not known, so there is no plan.")
        return
    following = day if cleared else day + timedelta(days=1)
    plan = make_plan(guide.protocol, case, following)
    line = plan_line(plan, f"{case.dog} ({case.id})")
    click.echo(f"Noted. {following.isoformat()}: {line}")
