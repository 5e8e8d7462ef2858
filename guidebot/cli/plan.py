"""`guidebot plan`: hours, sessions, walks and dates for a dog and a day."""

from __future__ import annotations

import json
import sys
from datetime import date
from pathlib import Path

import click

from guidebot.cli.dates import DAY, today
from guidebot.cli.guide import plain_guide


@click.command()
@click.option("--fitted", type=DAY, help="The fitting day (day 1).")
@click.option("--case", "case_id", help="A dog of the store, by id or name.")
@click.option("--on", type=DAY, help="The day to plan; today if left out.")
@click.option("--target", type=float, help="Hours a day to work up to.")
@click.option("--json", "as_json", is_flag=True, help="Plain values for machines.")
@click.option("--chart", is_flag=True, help="Add a chart of allowed and worn hours.")
@click.option(
    "--svg", type=click.Path(path_type=Path, dir_okay=False), help="Write the chart as SVG."
)
@click.option("--demo", is_flag=True, help="Use the demo's store.")
@click.pass_context
def command(
    ctx: click.Context,
    fitted: date | None,
    case_id: str | None,
    on: date | None,
    target: float | None,
    as_json: bool,
    chart: bool,
    svg: Path | None,
    demo: bool,
) -> None:
    """Say how long, how often and how far on a day, and what comes next."""
    from dataclasses import replace

    from guidebot.domain.case import Case
    from guidebot.errors import InputError
    from guidebot.plan.plan import make_plan, plan_json
    from guidebot.plan.wear import ramp
    from guidebot.render.day_plan import as_text

    case = Case(id="", dog="")
    if case_id is not None:
        from guidebot.cases.store import open_store

        with open_store(demo=demo) as store:
            case = store.case(case_id)
    if fitted is not None:
        case = replace(case, fitted=fitted)
    if target is not None:
        case = replace(case, target_hours=target)
    if case.fitted is None:
        raise InputError("the fitting day is not known", remedy="Give it with --fitted")
    protocol = plain_guide(ctx).protocol
    day = on or today()
    plan = make_plan(protocol, case, day)
    if svg is not None:
        from guidebot.render.ramp import as_svg

        try:
            svg.write_text(as_svg(ramp(protocol, case, day), case.dog), encoding="utf-8")
        except OSError as error:
            raise InputError(f"cannot write {svg}: {error.strerror}") from error
        click.echo(f"Wrote {svg}", err=True)
    if as_json:
        click.echo(json.dumps(plan_json(plan), ensure_ascii=False))
        return
    click.echo(as_text(plan, case.dog))
    if chart:
        from guidebot.render.ramp import as_text as chart_text

        click.echo()
        click.echo(chart_text(ramp(protocol, case, day), unicode=speaks_unicode()))


def speaks_unicode() -> bool:
    """Can the output carry block signs?"""
    return (getattr(sys.stdout, "encoding", "") or "").lower().replace("-", "") == "utf8"
