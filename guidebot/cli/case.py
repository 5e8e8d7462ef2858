"""`guidebot case`: keep the dogs."""

from __future__ import annotations

import json
from datetime import date
from typing import Any

import click

from guidebot.cli.dates import DAY
from guidebot.cli.guide import plain_guide


def _store(ctx: click.Context) -> Any:
    from guidebot.cases.store import open_store

    return open_store(demo=bool(ctx.obj.get("demo")))


@click.group()
@click.option("--demo", is_flag=True, help="Use the demo's store.")
@click.pass_context
def command(ctx: click.Context, demo: bool) -> None:
    """Keep the dogs: add, list, show, edit, export, remove."""
    ctx.obj = {**(ctx.obj or {}), "demo": demo}


def _fields(function: Any) -> Any:
    for option in (
        click.option(
            "--sex", type=click.Choice(["male", "female", "unknown"]), help="For he and she."
        ),
        click.option("--side", type=click.Choice(["left", "right"]), help="Leg with the device."),
        click.option("--sleeve", help="A sleeve of the guide: standard or extended."),
        click.option("--part", "parts", multiple=True, help="An optional part the device has."),
        click.option("--fitted", type=DAY, help="The fitting day (day 1)."),
        click.option("--target", type=float, help="Hours a day to work up to."),
    ):
        function = option(function)
    return function


def _values(
    ctx: click.Context,
    sex: str | None,
    side: str | None,
    sleeve: str | None,
    parts: tuple[str, ...],
    fitted: date | None,
    target: float | None,
) -> dict[str, Any]:
    """What was given, as fields of a case; sleeve and parts must be the guide's."""
    from guidebot.domain.case import Sex, Side
    from guidebot.errors import InputError

    given: dict[str, Any] = {
        "sex": Sex(sex) if sex else None,
        "side": Side(side) if side else None,
        "sleeve": sleeve,
        "parts": frozenset(parts) or None,
        "fitted": fitted,
        "target_hours": target,
    }
    if sleeve or parts:
        device = plain_guide(ctx).device
        sleeves = [kind.key for kind in device.sleeves]
        optional = [part.key for part in device.parts if part.optional]
        if sleeve and sleeve not in sleeves:
            raise InputError(
                f"there is no sleeve {sleeve!r}", remedy=f"One of: {', '.join(sleeves)}"
            )
        for part in parts:
            if part not in optional:
                raise InputError(
                    f"{part!r} is no optional part", remedy=f"One of: {', '.join(optional)}"
                )
    return {key: value for key, value in given.items() if value is not None}


@command.command()
@click.argument("dog")
@_fields
@click.pass_context
def add(ctx: click.Context, /, dog: str, **given: Any) -> None:
    """Add a dog by its name; prints the id it got."""
    from guidebot.domain.case import Case

    case = Case(id="", dog=dog, **_values(ctx, **given))
    with _store(ctx) as store:
        click.echo(store.add(case).id)


@command.command(name="list")
@click.option("--json", "as_json", is_flag=True, help="Print the dogs as JSON.")
@click.pass_context
def list_(ctx: click.Context, as_json: bool) -> None:
    """List the dogs: id, name, fitting day, sleeve."""
    with _store(ctx) as store:
        cases = store.cases()
    if as_json:
        from guidebot.render.case_json import case_json

        click.echo(json.dumps([case_json(case) for case in cases], ensure_ascii=False))
        return
    for case in cases:
        fitted = case.fitted.isoformat() if case.fitted else "fitting day not known"
        click.echo(f"{case.id}: {case.dog}, {fitted}, {case.sleeve or 'sleeve not known'}")
    if not cases:
        click.echo("No dogs yet. Add one with `guidebot case add NAME`.", err=True)


@command.command()
@click.argument("dog")
@click.pass_context
def show(ctx: click.Context, dog: str) -> None:
    """Show one dog with restrictions and diary."""
    from guidebot.render.case_json import case_text

    with _store(ctx) as store:
        click.echo(case_text(store.case(dog)))


@command.command()
@click.argument("dog")
@click.option("--name", help="A new name; the id stays.")
@_fields
@click.pass_context
def edit(ctx: click.Context, /, dog: str, name: str | None, **given: Any) -> None:
    """Change what is kept about a dog."""
    from guidebot.errors import InputError
    from guidebot.render.case_json import case_text

    changes = _values(ctx, **given)
    if name is not None:
        changes["dog"] = name
    if not changes:
        raise InputError("nothing to change", remedy="See `guidebot case edit --help`")
    with _store(ctx) as store:
        click.echo(case_text(store.edit(dog, **changes)))


@command.command()
@click.argument("dog")
@click.pass_context
def export(ctx: click.Context, dog: str) -> None:
    """Print everything kept about a dog as JSON."""
    from guidebot.render.case_json import case_json

    with _store(ctx) as store:
        case = store.case(dog)
        asked = [
            {key: value for key, value in row.items() if key not in ("id", "case_id")}
            for row in store.questions()
            if row["case_id"] == case.id
        ]
    click.echo(json.dumps({**case_json(case), "questions": asked}, ensure_ascii=False, indent=2))


@command.command()
@click.argument("dog")
@click.option("--yes", is_flag=True, help="Do not ask.")
@click.pass_context
def remove(ctx: click.Context, dog: str, yes: bool) -> None:
    """Remove a dog with its diary."""
    with _store(ctx) as store:
        case = store.case(dog)
        if not yes:
            click.confirm(f"Remove {case.dog} ({case.id}) and its diary?", abort=True, err=True)
        store.remove(case.id)
    click.echo(f"Removed {case.id}", err=True)


@command.command()
@click.argument("keep", type=click.Choice(["on", "off"]))
@click.pass_context
def questions(ctx: click.Context, keep: str) -> None:
    """Keep the questions asked about dogs (on), or keep none and drop those kept (off)."""
    with _store(ctx) as store:
        store.set_logging(keep == "on")
    click.echo("Questions are kept, redacted." if keep == "on" else "No question is kept.")
