"""`guidebot ask`: one question, a pipe, or a batch."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Iterator
from datetime import date
from typing import TYPE_CHECKING, Any, BinaryIO

import click

from guidebot.cli.main import complain, progress
from guidebot.errors import ExitCode, InputError, StoreError, Where

if TYPE_CHECKING:
    from guidebot.domain.answer import Answer
    from guidebot.domain.case import Case
    from guidebot.reply.pipeline import Assistant

MOST_READ = 16_000_000
"""Bytes of stdin that are read as one question; far more than is looked at, so none is missed."""
LONGEST_LINE = 4_000_000
"""Bytes of one batch line; a longer one is refused, not cut."""


def read_date(value: str | None, option: str) -> date | None:
    """A date as `YYYY-MM-DD` (ISO 8601); InputError if it is none."""
    if value is None:
        return None
    try:
        return date.fromisoformat(value)
    except ValueError as error:
        raise InputError(
            f"{option} is not a date: {value!r}", remedy="Write it as year-month-day, 2026-03-31"
        ) from error


@click.command()
@click.argument("text", nargs=-1)
@click.option("--case", "case_id", metavar="ID", help="The dog, as kept with `guidebot case`.")
@click.option("--demo", is_flag=True, help="Take the dog from the demo's store.")
@click.option("--fitted", metavar="DATE", help="The fitting day (day 1), year-month-day.")
@click.option("--day", type=int, metavar="N", help="The day number; the fitting day is 1.")
@click.option("--sleeve", metavar="KIND", help="The sleeve: standard or extended.")
@click.option("--on", "on_text", metavar="DATE", help="The day of the question; today if left out.")
@click.option("--json", "as_json", is_flag=True, help="Print the answer as JSON.")
@click.option(
    "--batch", type=click.File("rb"), metavar="FILE", help="JSON lines in, out; - is stdin."
)
@click.option("--explain", is_flag=True, help="Show a writer why these passages were found.")
@click.pass_context
def command(
    ctx: click.Context,
    text: tuple[str, ...],
    case_id: str | None,
    demo: bool,
    fitted: str | None,
    day: int | None,
    sleeve: str | None,
    on_text: str | None,
    as_json: bool,
    batch: BinaryIO | None,
    explain: bool,
) -> None:
    """Answer TEXT from the guide; without TEXT, or with -, the question is read from stdin."""
    from guidebot.reply.pipeline import Assistant

    if sum(x is not None for x in (case_id, fitted, day)) > 1:
        raise InputError(
            "--case, --fitted and --day each say the day", remedy="Give only one of them"
        )
    on = read_date(on_text, "--on")
    fitted_on = read_date(fitted, "--fitted")
    if batch is None and not text and sys.stdin.isatty():
        click.echo(ctx.get_help())
        ctx.exit(ExitCode.USAGE)
    _check_days(fitted_on, day, on or date.today())
    if batch is not None and text:
        raise InputError("there is a question and a batch", remedy="Give only one of them")
    assistant = Assistant.open(ctx.obj["content"], say=progress(ctx))
    _check_sleeve(assistant, sleeve)
    case, trouble = _case(case_id, demo, fitted_on, sleeve)
    if batch is not None:
        for line in answer_batch(assistant, batch, case, on, day, sleeve):
            click.echo(line)
    else:
        question: str | bytes = " ".join(text)
        if not text or question == "-":
            question = sys.stdin.buffer.read(MOST_READ)
        answer = assistant.answer(question, case, on, day=day, sleeve=sleeve)
        code = _print_one(assistant, question, answer, as_json, explain)
        if case is not None and case.id:
            trouble = trouble or _keep(answer, case, on or date.today(), demo)
        if code and trouble is None:
            ctx.exit(code)
    if trouble is not None:
        raise trouble


def _print_one(
    assistant: Assistant, question: str | bytes, answer: Answer, as_json: bool, explain: bool
) -> ExitCode:
    from guidebot.domain.answer import Outcome
    from guidebot.render import FORMATS

    click.echo(FORMATS["json" if as_json else "text"](answer))
    if explain:
        from guidebot.reply.explain import lines

        for line in lines(assistant, question):
            click.echo(line, err=as_json)
    missing = answer.outcome is Outcome.NOT_IN_GUIDE and answer.alert is None
    return ExitCode.NOT_IN_GUIDE if missing else ExitCode.OK


def _keep(answer: Answer, case: Case, on: date, demo: bool) -> StoreError | None:
    """Keep the question with its dog, if questions are kept; the answer is printed already."""
    from guidebot.cases.asked import keep
    from guidebot.cases.store import open_store

    try:
        with open_store(demo=demo) as store:
            keep(store, on, answer, case.id)
    except StoreError as error:
        return error
    return None


def _check_days(fitted: date | None, day: int | None, on: date) -> None:
    """InputError for days that cannot be."""
    from guidebot.plan.days import day_number, fitted_from

    if fitted is not None:
        day_number(fitted, on)
    if day is not None:
        fitted_from(day, on)


def _check_sleeve(assistant: Assistant, sleeve: str | None) -> None:
    known = [kind.key for kind in assistant.guide.device.sleeves]
    if sleeve is not None and sleeve not in known:
        raise InputError(f"there is no sleeve {sleeve!r}", remedy=f"Sleeves: {', '.join(known)}")


def _case(
    case_id: str | None, demo: bool, fitted: date | None, sleeve: str | None
) -> tuple[Case | None, StoreError | None]:
    """The case, or what kept the store from giving it; the answer is printed all the same."""
    from guidebot.domain.case import Case

    if case_id is None:
        return (Case(id="", dog="", fitted=fitted, sleeve=sleeve) if fitted else None), None
    from guidebot.cases.store import open_store

    try:
        with open_store(demo=demo) as store:
            return store.case(case_id), None
    except StoreError as error:
        return None, error


def answer_batch(
    assistant: Assistant,
    file: Iterable[bytes],
    case: Case | None,
    on: date | None,
    day: int | None,
    sleeve: str | None,
) -> Iterator[str]:
    """One JSON line out for each line in, in order.

    Raises:
        InputError: a line is not a JSON object with `text`; the lines before it are answered.
    """
    from guidebot.render.as_json import render
    from guidebot.reply.dialogue import Dialogue

    talks: dict[str, Dialogue] = {}
    known = {kind.key for kind in assistant.guide.device.sleeves}
    for number, line in enumerate(file, start=1):
        if not line.strip():
            continue
        row = _row(line, number)
        row_day, row_sleeve = row.get("day", day), row.get("sleeve", sleeve)
        if row_sleeve is not None and row_sleeve not in known:
            # One slip must not stop a thousand answers; unknown, it is asked for where it matters.
            complain(
                f"batch:{number}: there is no sleeve {row_sleeve!r}; taken as not known. "
                f"Sleeves: {', '.join(sorted(known))}"
            )
            row_sleeve = None
        talk = row.get("conversation")
        if talk is None:
            answer = assistant.answer(row["text"], case, on, day=row_day, sleeve=row_sleeve)
        else:
            dialogue = talks.setdefault(str(talk), Dialogue(assistant, case, on))
            answer = dialogue.say(row["text"], day=row_day, sleeve=row_sleeve)
        yield render(answer, row.get("id"))


_KINDS = {"id": (str, int), "day": (int,), "sleeve": (str,), "conversation": (str, int)}
_NAMED = {str: "text", int: "whole number"}


def _row(line: bytes, number: int) -> dict[str, Any]:
    where = Where("batch", number)
    remedy = 'Each line is an object such as {"id": "1", "text": "can she do stairs yet"}'
    if len(line) > LONGEST_LINE:
        raise InputError("the line is too long", where=where, remedy=remedy)
    try:
        row = json.loads(line)
    except (ValueError, RecursionError) as error:
        raise InputError("not a line of JSON", where=where, remedy=remedy) from error
    if not isinstance(row, dict) or not isinstance(row.get("text"), str):
        raise InputError("no `text` on this line", where=where, remedy=remedy)
    for key, kinds in _KINDS.items():
        value = row.get(key)
        if value is not None and (not isinstance(value, kinds) or isinstance(value, bool)):
            named = " or ".join(_NAMED[kind] for kind in kinds)
            raise InputError(f"`{key}` is not a {named}", where=where, remedy=remedy)
    try:
        _check_days(None, row.get("day"), date.today())
    except InputError as error:
        raise InputError(error.what, where=where, remedy=error.remedy) from error
    return row
