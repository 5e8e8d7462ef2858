"""`guidebot check`: the whole guide, strictly, with counts."""

from __future__ import annotations

import click


@click.command()
@click.option("--json", "as_json", is_flag=True, help="Print the counts as JSON.")
@click.pass_context
def command(ctx: click.Context, as_json: bool) -> None:
    """Read the whole guide strictly; print counts, and every fault with its place."""
    from guidebot.errors import ExitCode
    from guidebot.guide.check import check_folder
    from guidebot.guide.files import find_content

    report = check_folder(find_content(ctx.obj["content"]))
    click.echo(report.as_json() if as_json else "\n".join(report.lines()))
    for fault in report.faults:
        click.echo(str(fault), err=True)
    ctx.exit(ExitCode.GUIDE_INVALID if report.faults else ExitCode.OK)
