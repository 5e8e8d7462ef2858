"""`guidebot show`: one passage of the guide."""

from __future__ import annotations

import click

from guidebot.cli.main import progress


@click.command()
@click.argument("passage_id", metavar="ID")
@click.pass_context
def command(ctx: click.Context, passage_id: str) -> None:
    """Show the passage ID with its source (ids: guidebot topics)."""
    import difflib

    from guidebot.errors import InputError
    from guidebot.render.passage import lines
    from guidebot.reply.compiled import open_compiled
    from guidebot.text import clean, one_line

    guide = open_compiled(ctx.obj["content"], say=progress(ctx)).guide
    passage = guide.passages.get(passage_id)
    if passage is None:
        near = difflib.get_close_matches(passage_id, guide.passages, 1)
        shown = one_line(clean(passage_id).text, 60)
        remedy = f"Did you mean {near[0]}?" if near else "guidebot topics lists them"
        raise InputError(f"there is no passage {shown!r}", remedy=remedy)
    for line in lines(passage, guide.clinic.caution):
        click.echo(line)
