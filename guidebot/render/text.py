"""Plain text with labelled lines: for terminals of any kind, screen readers, pipes and mails."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator

from guidebot.domain.answer import Answer, Outcome, Verdict
from guidebot.domain.sign import Alert, Tier
from guidebot.reply.phrases import ALERT_FIRST
from guidebot.safety.signs import BY_KEY

WIDTH = 78
_RULE = "!" * 60

_SAY = {
    "yes": "Yes",
    "yes-with-limits": "Yes, with limits",
    "ask-first": "Ask first",
    "not-yet": "Not yet",
    "no": "No",
}


def say_word(say: str) -> str:
    """A verdict as people read it."""
    return _SAY[say]


def said_once(verdict: Verdict) -> str:
    """The verdict's word and its text; not both where the first sentence says the word itself."""
    word = say_word(verdict.say.value)
    first = verdict.text.removeprefix(f"{ALERT_FIRST} ").split(". ", 1)[0].lower()
    said = re.search(rf"\b{re.escape(word.lower())}\b", first)
    return verdict.text if said else f"{word}. {verdict.text}"


def fill(text: str, indent: str = "", first: str | None = None) -> str:
    """Wrap to `WIDTH`, each line of the text for itself."""
    return "\n".join(
        textwrap.fill(
            line,
            WIDTH,
            initial_indent=(indent if first is None else first) if at == 0 else indent,
            subsequent_indent=indent,
            break_long_words=False,
            break_on_hyphens=False,
        )
        for at, line in enumerate(text.splitlines() or [""])
    )


def alert_lines(alert: Alert) -> Iterator[str]:
    """The alert block: what it is, what was noticed, what to do, whom to call."""
    word = "EMERGENCY" if alert.tier is Tier.EMERGENCY else "ALERT"
    yield _RULE
    yield fill(f"{word}: {alert.headline.removeprefix('Emergency: ')}")
    if alert.quote:
        yield fill(f'You wrote: "{alert.quote}"')
    yield "Do this now:"
    for number, line in enumerate(alert.do, start=1):
        yield fill(line, "   ", f"{number}. ")
    if alert.asks:
        yield fill(f"Please tell us: {alert.asks}")
    if alert.also:
        names = (BY_KEY[key].name if key in BY_KEY else key for key in alert.also)
        yield fill("Also noticed: " + "; ".join(names) + ". Tell them that too.")
    yield _RULE


def body_lines(body: str) -> Iterator[str]:
    """The text of a passage, list items with a hanging indent, emphasis marks left out."""
    for line in body.replace("**", "").split("\n"):
        number = line.split(" ", 1)[0]
        if line.startswith(("- ", "* ")):
            yield fill(line, "  ", "")
        elif number.endswith(".") and number[:-1].isdigit():
            yield fill(line, " " * (len(number) + 1), "")
        else:
            yield fill(line)


def lines(answer: Answer, *, full: bool = True, owner: bool = False) -> Iterator[str]:
    """The answer, part by part.

    Args:
        answer: what to show.
        full: show the whole text of the first passage.
        owner: for somebody who has no guidebot at hand: no commands, no files of the guide.
    """
    if answer.alert:
        yield from alert_lines(answer.alert)
        yield ""
    if answer.read_as:
        yield fill(f"Read as: {answer.read_as}")
    if answer.verdict:
        yield fill(f"Verdict: {said_once(answer.verdict)}")
        if answer.lead:
            yield ""
    if answer.lead:
        yield fill(f"Answer: {answer.lead}")
    first = answer.passages[0] if answer.passages else None
    if answer.outcome is Outcome.ANSWERED and first and full and first.body:
        yield ""
        yield from body_lines(first.body)
        if answer.asks_back or answer.notes:
            yield ""
    if answer.outcome is Outcome.UNSURE and answer.choices:
        shown = {p.id: p.title for p in answer.passages}
        for number, key in enumerate(answer.choices, start=1):
            yield f"  {number}. {shown[key]}" + ("" if owner else f" (guidebot show {key})")
    if answer.asks_back:
        yield fill(f"Please tell us: {answer.asks_back}")
    for note in answer.notes:
        yield fill(f"Note: {note}")
    if answer.outcome is Outcome.ANSWERED and first:
        yield ""
        yield f"Source: {first.title} [{first.id}]"
        more = [f"{p.title} [{p.id}]" for p in answer.passages[1:4]]
        if more:
            yield fill("See also: " + "; ".join(more), "  ", "")
    if answer.verdict and answer.verdict.cites and not owner:
        yield fill("Verdict from: " + ", ".join(answer.verdict.cites), "  ", "")
    yield fill(f"Caution: {answer.caution}")
    yield (
        f"Guide {answer.guide.version} ({answer.guide.hash}), "
        f"rules {answer.rules.version} ({answer.rules.hash})"
    )


def render(answer: Answer, *, owner: bool = False) -> str:
    """The whole answer as text, without a final line end; `owner` as for `lines`."""
    return "\n".join(lines(answer, owner=owner))
