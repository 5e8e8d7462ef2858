"""`guidebot chat`: line by line, for screen readers, pipes and plain terminals."""

from __future__ import annotations

import contextlib
import sys
from collections.abc import Iterator

import click

from guidebot.cli.main import progress
from guidebot.errors import ExitCode, InputError


@click.command()
@click.option("--case", "case_id", metavar="ID", help="The dog, as kept with `guidebot case`.")
@click.pass_context
def command(ctx: click.Context, case_id: str | None) -> None:
    """Talk line by line. :help lists the commands, :quit or the end of the input ends it."""
    from guidebot.tui.desk import Desk
    from guidebot.tui.plain import Plain
    from guidebot.tui.session import Session, open_guide, start_talk

    session = Session(ctx.obj["content"], Desk())
    session.assistant = open_guide(session.content, progress(ctx))
    desk = session.desk
    desk.open()
    if desk.trouble:
        click.echo(desk.trouble, err=True)
    if case_id is not None:
        session.case = desk.find(case_id)
        if session.case is None and not desk.trouble:
            raise InputError(f"there is no dog {case_id!r}", remedy="See `guidebot case list`")
    unicode = (sys.stdout.encoding or "").lower().startswith("utf")
    loop = Plain(session, start_talk, unicode)
    terminal = sys.stdin.isatty()
    if terminal:
        click.echo("Ask in your own words. :help lists the commands, :quit quits.")
    try:
        for line in _typed() if terminal else _piped():
            for said in loop.hear(line):
                click.echo(said)
            click.echo()
            if loop.over:
                break
        for said in loop.end():
            click.echo(said)
    finally:
        desk.close()
    if case_id is not None and desk.trouble:
        ctx.exit(ExitCode.STORE_UNAVAILABLE)


def _typed() -> Iterator[str]:
    """Lines from a terminal, until the end of the input."""
    with contextlib.suppress(ImportError):
        import readline  # noqa: F401 - editing, and a paste of several lines stays one
    while True:
        try:
            yield input("You: ")
        except EOFError:
            click.echo()
            return


def _piped() -> Iterator[bytes]:
    """Lines from a pipe as bytes: they need not be text at all."""
    yield from sys.stdin.buffer
