"""`guidebot today`: every dog's line for the staff."""

from __future__ import annotations

import json
from datetime import date

import click

from guidebot.cli.dates import DAY, today
from guidebot.cli.guide import plain_guide


@click.command()
@click.option("--on", type=DAY, help="The day; today if left out.")
@click.option("--json", "as_json", is_flag=True, help="JSON lines.")
@click.option("--demo", is_flag=True, help="Use the demo's store.")
@click.pass_context
def command(ctx: click.Context, on: date | None, as_json: bool, demo: bool) -> None:
    """Every dog: day, stage, hours, what is due, who has a flag. Flags come first."""
    from datetime import timedelta

    from guidebot.cases.store import open_store
    from guidebot.plan.plan import make_plan, plan_json, plan_line
    from guidebot.plan.said import said_date

    day = on or today()
    with open_store(demo=demo) as store:
        cases = store.cases()
    protocol = plain_guide(ctx).protocol
    lines: list[tuple[bool, str, str]] = []
    for case in cases:
        if case.fitted is None or case.fitted > day:
            said = f"fitting on {said_date(case.fitted)}" if case.fitted else "no fitting day"
            row = json.dumps({"id": case.id, "dog": case.dog, "day": None})
            lines.append((False, row if as_json else f"{case.dog} ({case.id}): {said}", case.id))
            continue
        plan = make_plan(protocol, case, day)
        if as_json:
            row = json.dumps(
                {"id": case.id, "dog": case.dog, **plan_json(plan)}, ensure_ascii=False
            )
            lines.append((plan.flagged, row, case.id))
            continue
        text = plan_line(plan, f"{case.dog} ({case.id})")
        due = [n for n in plan.next if n.on <= day + timedelta(days=7)]
        if due:
            text += " Due: " + "; ".join(f"{n.what}, {said_date(n.on)}" for n in due)
        lines.append((plan.flagged, f"{'! ' if plan.flagged else '  '}{text}", case.id))
    for _, line, _ in sorted(lines, key=lambda row: (not row[0], row[2])):
        click.echo(line)
    if not lines:
        click.echo("No dogs yet. Add one with `guidebot case add NAME`.", err=True)
