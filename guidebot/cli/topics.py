"""`guidebot topics`: what the guide talks about."""

from __future__ import annotations

import click

from guidebot.cli.main import progress


@click.command()
@click.argument("topic", required=False)
@click.pass_context
def command(ctx: click.Context, topic: str | None) -> None:
    """List topics and the passages in them; with TOPIC only that one."""
    from guidebot.errors import InputError
    from guidebot.reply.compiled import open_compiled

    guide = open_compiled(ctx.obj["content"], say=progress(ctx)).guide
    topics = sorted({passage.topic for passage in guide.passages.values()})
    if topic and topic not in topics:
        raise InputError(f"there is no topic {topic!r}", remedy=f"Topics: {', '.join(topics)}")
    for name in [topic] if topic else topics:
        click.echo(f"{name}:")
        for passage in guide.passages.values():
            if passage.topic == name:
                click.echo(f"  {passage.id}: {passage.title}")
