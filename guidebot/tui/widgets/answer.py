"""One answer, part by part, in the order a worried person needs it."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from guidebot.domain.answer import Answer, Outcome
from guidebot.domain.guide import Guide
from guidebot.render.text import said_once
from guidebot.text import one_line
from guidebot.tui.session import Turn
from guidebot.tui.widgets.words import Line, Prose, shown

RELATED = 3
"""Related passages listed below the sources."""


class Rows(OptionList):
    """Things to pick by number, by arrow and Enter, or with the mouse; markup-free."""

    def __init__(self, *, id: str | None = None) -> None:
        super().__init__(id=id, markup=False, compact=True)

    def fill(self, rows: list[tuple[str, str]]) -> None:
        """Show rows of (key, text), numbered."""
        self.clear_options()
        self.add_options(
            Option(shown(f"{n}. {text}"), id=key) for n, (key, text) in enumerate(rows, start=1)
        )
        self.display = bool(rows)

    def action_page_up(self) -> None:
        """To the first: the lists are short, and the widget's own page fails before it is drawn."""
        self.action_first()

    def action_page_down(self) -> None:
        """To the last, likewise."""
        self.action_last()

    def key_of(self, number: int) -> str | None:
        """The key of the row with this number."""
        if 1 <= number <= self.option_count:
            return self.get_option_at_index(number - 1).id
        return None


def rows_of(answer: Answer, guide: Guide | None) -> tuple[str, list[tuple[str, str]]]:
    """What can be opened or picked: a heading, and (passage id, text) rows.

    For `unsure` these are the titles to pick from; else the sources, then what they name as
    related.
    """
    if answer.outcome is Outcome.UNSURE and answer.choices:
        titles = {p.id: p.title for p in answer.passages}
        if guide:
            titles |= {
                key: guide.passages[key].title for key in answer.choices if key in guide.passages
            }
        return (
            "Which one do you mean? Write its number and press Enter.",
            [(key, titles.get(key, key)) for key in answer.choices],
        )
    if answer.outcome is not Outcome.ANSWERED:
        return "", []
    rows = [(p.id, f"Source: {p.title}") for p in answer.passages[:1]]
    rows += [(p.id, f"See also: {p.title}") for p in answer.passages[1:RELATED]]
    there = {key for key, _ in rows}
    first = guide.passages.get(rows[0][0]) if guide and rows else None
    for key in first.see if first and guide else ():
        if key not in there and guide and key in guide.passages and len(rows) <= RELATED + 2:
            rows.append((key, f"Related: {guide.passages[key].title}"))
            there.add(key)
    return "Sources. F6 opens them one by one.", rows


class AnswerView(VerticalScroll):
    """The answer on the screen; an alert stands above it, outside."""

    def compose(self) -> ComposeResult:
        """Question, reading, verdict, answer, steps, sources, caution."""
        yield Line(id="asked")
        yield Line(id="read-as")
        yield Line(id="verdict")
        yield Line(id="lead")
        yield Line(id="asks-back")
        yield Line(id="notes")
        yield Prose(id="steps")
        yield Line(id="rows-head")
        yield Rows(id="rows")
        yield Line(id="caution")
        yield Line(id="stamp")

    def say(self, key: str, text: str) -> None:
        """Show a text in one of the lines."""
        self.query_one(f"#{key}", Line).say(text)

    def clear(self) -> None:
        """Show nothing."""
        for line in self.query(Line):
            line.say("")
        self.query_one("#steps", Prose).say("")
        self.query_one(Rows).fill([])

    def welcome(self, lines: str, examples: list[str]) -> None:
        """Before the first question."""
        self.clear()
        self.say("lead", lines)
        self.query_one("#steps", Prose).say("\n".join(f"- {line}" for line in examples))

    def show(self, turn: Turn, guide: Guide | None) -> None:
        """Show a turn from its top."""
        self.clear()
        self.say("asked", f"You asked: {one_line(turn.text, 300)}")
        answer = turn.answer
        if answer is None:
            self.say(
                "lead",
                "No answer could be given. Please call the clinic."
                if turn.failed
                else "Looking in the guide ...",
            )
            return
        self.say("read-as", f"Read as: {answer.read_as}" if answer.read_as else "")
        if answer.verdict:
            self.say("verdict", f"Verdict: {said_once(answer.verdict)}")
        self.say("lead", answer.lead)
        self.say("asks-back", f"Please tell us: {answer.asks_back}" if answer.asks_back else "")
        self.say("notes", "\n".join(f"Note: {note}" for note in answer.notes))
        first = answer.passages[0] if answer.passages else None
        steps = first.body if first and answer.outcome is Outcome.ANSWERED else ""
        self.query_one("#steps", Prose).say(steps)
        head, rows = rows_of(answer, guide)
        self.say("rows-head", head)
        self.query_one(Rows).fill(rows)
        self.say("caution", f"Caution: {answer.caution}")
        self.say(
            "stamp",
            f"Guide version {answer.guide.version} ({answer.guide.hash}), "
            f"injury rules version {answer.rules.version} ({answer.rules.hash})",
        )
        self.scroll_home(animate=False)
