"""`guidebot eval`: the score sheet."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import Any

import click

from guidebot.cli.main import progress

SETS = ("answers", "verdicts", "chats", "signs")


@click.command()
@click.argument("which", type=click.Choice(["all", *SETS]), default="all")
@click.option(
    "--split",
    type=click.Choice(["dev", "test", "rounds", "all"]),
    default="dev",
    show_default=True,
    help="Questions of which authors.",
)
@click.option("--sets", type=click.Path(path_type=Path), metavar="DIR", help="The question sets.")
@click.option("--json", "as_json", is_flag=True, help="Print the sheet as JSON.")
@click.option("--misses", is_flag=True, help="List what went wrong, with the reason.")
@click.option("--calibrate", is_flag=True, help="Fit the decision anew on held-out wordings.")
@click.pass_context
def command(
    ctx: click.Context,
    which: str,
    split: str,
    sets: Path | None,
    as_json: bool,
    misses: bool,
    calibrate: bool,
) -> None:
    """Score answers, verdicts, chats and injury signs on question sets with judgments.

    Look at the test split only to report: whatever is tuned on it proves nothing any more.
    """
    from guidebot.evaluate.sheet import Sheet, as_lines, make_sheet
    from guidebot.reply.pipeline import Assistant

    say = progress(ctx)
    if calibrate:
        _calibrate(ctx, say)
        return
    from guidebot.evaluate.sets import find_sets

    folder = find_sets(sets)
    assistant = Assistant.open(ctx.obj["content"], say=say)
    wanted = SETS if which == "all" else (which,)
    sheet: Sheet = make_sheet(assistant, folder, split, wanted, on=date.today())
    if as_json:
        click.echo(json.dumps(_plain(sheet), indent=1))
    else:
        for line in as_lines(sheet):
            click.echo(line)
    if misses:
        for miss in sheet.misses:
            click.echo(miss)


def _calibrate(ctx: click.Context, say: Any) -> None:
    from guidebot.evaluate import calibrate as fitting
    from guidebot.guide.files import find_content

    weights = fitting.calibrate(fitting.measure(find_content(ctx.obj["content"]), say))
    click.echo(f"wrote {fitting.write(weights)}")


def _plain(sheet: Any) -> dict[str, Any]:
    return {
        "split": sheet.split,
        "tables": {
            title: {
                name: {"value": share.value, "n": share.n, "interval": share.interval}
                for name, share in table.items()
            }
            for title, table in sheet.tables.items()
        },
    }
