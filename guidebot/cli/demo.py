"""`guidebot demo`: fill a separate store with five invented dogs."""

from __future__ import annotations

from datetime import date

import click

from guidebot.cli.dates import DAY, today


@click.command()
@click.option("--on", type=DAY, help="The day the dogs are seen on; today if left out.")
@click.pass_context
def command(ctx: click.Context, on: date | None) -> None:
    """Fill a separate store with five invented dogs; the real one is not touched."""
    from guidebot.cases.demo import demo_cases
    from guidebot.cases.home import demo_path
    from guidebot.cases.store import open_store

    day = on or today()
    path = demo_path()
    with open_store(path) as store:
        for case in store.cases():
            store.remove(case.id)
        added = [store.add(case) for case in demo_cases(day)]
    for case in added:
        click.echo(f"{case.id}: fitted {case.fitted}, {case.sleeve} sleeve")
    click.echo(f"The demo's store is {path}. See them with `guidebot today --demo`.", err=True)
