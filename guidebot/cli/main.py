"""The command `guidebot`: finds the subcommand, turns errors into a line and an exit code."""

from __future__ import annotations

import difflib
import importlib
import io
import os
import sys
from pathlib import Path
from typing import Any

import click

from guidebot import __version__
from guidebot.errors import ExitCode, GuidebotError
from guidebot.text import clean

COMMANDS = {
    "ask": "Answer a question from the guide.",
    "case": "Keep the dogs: add, list, show, edit, export, remove.",
    "chat": "Talk line by line, for screen readers, pipes and plain terminals.",
    "check": "Read the whole guide strictly and print counts and faults.",
    "demo": "Fill a separate store with five invented dogs.",
    "eval": "Score the answers, the injury signs, verdicts and chats.",
    "log": "Note a day of wear in a dog's diary.",
    "plan": "Hours, sessions, walks and dates for a dog and a day.",
    "show": "Show one passage of the guide.",
    "signs": "List every injury sign, its tier and its source.",
    "today": "Every dog's line for today.",
    "topics": "List topics and the passages in them.",
}
"""Every subcommand lives in `guidebot.cli.<name>` as `command`; the line is its help."""


class LazyGroup(click.Group):
    """Loads a subcommand's module only when it is the one that runs."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """All names, sorted."""
        return sorted(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of this name; for an unknown one a usage error with the nearest name."""
        if cmd_name not in COMMANDS:
            near = difflib.get_close_matches(cmd_name, COMMANDS, 1)
            hint = f"Did you mean {near[0]}?" if near else "guidebot --help lists them."
            ctx.fail(f"there is no command {cmd_name!r}. {hint}")
        module = importlib.import_module(f"guidebot.cli.{cmd_name}")
        command = module.command
        assert isinstance(command, click.Command)  # noqa: S101 - a slip of ours, not of the user's
        return command

    def invoke(self, ctx: click.Context) -> Any:
        """Run the command; a reader that went away (`guidebot topics | head`) is no error."""
        try:
            return super().invoke(ctx)
        except BrokenPipeError:
            # What is still in the buffer has nowhere to go; nothing may complain about it on exit.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            return ExitCode.OK

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The list in the help, without loading a single command."""
        with formatter.section("Commands"):
            formatter.write_dl(sorted(COMMANDS.items()))


@click.group(
    cls=LazyGroup,
    invoke_without_command=True,
    context_settings={"help_option_names": ["-h", "--help"]},
)
@click.version_option(__version__, prog_name="guidebot")
@click.option(
    "--content",
    type=click.Path(path_type=Path),
    metavar="DIR",
    help="The guide to use, in place of the one that comes with guidebot.",
)
@click.pass_context
def cli(ctx: click.Context, content: Path | None) -> None:
    """Answers about a dog's custom knee orthosis, from a curated care guide.

    Without a command, in a terminal, the conversation opens.
    """
    ctx.obj = {"content": content}
    ctx.color = wants_colour()
    if ctx.invoked_subcommand is None:
        if sys.stdin.isatty() and sys.stdout.isatty() and os.environ.get("TERM") != "dumb":
            from guidebot.tui.app import run  # the one door to the terminal face

            ctx.exit(run(content, None))
        click.echo(ctx.get_help())
        ctx.exit(ExitCode.USAGE)


def wants_colour() -> bool:
    """Colour only on a terminal, never with NO_COLOR set (and not empty) or TERM=dumb."""
    return (
        sys.stdout.isatty()
        and not os.environ.get("NO_COLOR")
        and os.environ.get("TERM", "") != "dumb"
    )


def progress(ctx: click.Context) -> Any:
    """A function that says on stderr what is being done; silent where stderr is no terminal.

    Told "", it clears its line, so that the answer starts on a clean one.
    """
    if not sys.stderr.isatty():
        return lambda _: None

    def say(what: str) -> None:
        line = f"Preparing the guide (once): {what:<50}" if what else " " * 78 + "\r"
        click.echo(f"\r{line}", nl=False, err=True)

    return say


def complain(text: str, head: str = "guidebot: ") -> None:
    """Say on stderr what went wrong; it may quote what was typed or read, so it is cleaned."""
    for line in (head + text).split("\n"):
        click.echo(clean(line).text, err=True)


def main(argv: list[str] | None = None) -> None:
    """Entry point; always leaves by `SystemExit` with a code of `ExitCode`."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            # A terminal that cannot show a letter must not cost the answer.
            stream.reconfigure(errors="replace")
    try:
        result = cli.main(args=argv, prog_name="guidebot", standalone_mode=False)
        code = result if isinstance(result, int) else ExitCode.OK
    except click.exceptions.Abort:
        click.echo("Stopped.", err=True)
        code = ExitCode.INTERRUPTED
    except click.ClickException as error:
        shown = io.StringIO()
        error.show(shown)
        complain(shown.getvalue().rstrip("\n"), head="")
        code = error.exit_code
    except GuidebotError as error:
        complain(str(error))
        code = error.exit_code
    except KeyboardInterrupt:
        click.echo("Stopped.", err=True)
        code = ExitCode.INTERRUPTED
    except Exception as error:
        if os.environ.get("GUIDEBOT_DEBUG"):
            raise
        complain(
            f"internal error ({type(error).__name__}: {error}). "
            "Set GUIDEBOT_DEBUG=1 to see where. If the dog is hurt, call your veterinarian."
        )
        code = ExitCode.INTERNAL
    sys.exit(int(code))
