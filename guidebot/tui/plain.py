"""The plain loop: line in, labelled lines out; for screen readers, dumb terminals and pipes.

A line that begins with a colon is a command. While something is asked step by step, a number, an
empty line or a short word answers it; every other line is a message and is answered as one, so
that a sign of injury is never taken for a reply.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import timedelta

from guidebot.domain.answer import Outcome
from guidebot.domain.case import Case
from guidebot.domain.sign import Alert
from guidebot.render.text import alert_lines, lines
from guidebot.text import clean, one_line
from guidebot.tui.forms import case_from, diary_fields, dog_fields, entry_from
from guidebot.tui.prose import wrapped
from guidebot.tui.session import NOT_NOW, Session, Starter, Turn, answer_next
from guidebot.tui.steps import alert_of, alerts_in, passage_for
from guidebot.tui.walks import FitWalk, FormWalk, StepWalk, Walk

WIDTH = 78

HELP = """\
Write a question and press Enter. Commands:
:steps on      put the device on, one step at a time
:steps off     take the device off, one step at a time
:fit           check the fit, one question at a time
:today         the day of the dog: hours, wear, walks, next dates
:chart         the hours as a chart
:diary         note today in the diary; :yesterday notes yesterday
:dogs          list the dogs; :dog NAME goes on with one; :dog none with none
:add           add a dog
:read 1        read a source of the last answer; :read NAME reads any passage
:mail          print the last answer as a mail
:unanswered    questions the guide did not answer
:paste         write a message of several lines; a line with a single dot ends it
:new           begin a new talk
:stop          leave what is asked step by step
:quit          quit"""


@dataclass(slots=True)
class Plain:
    """The loop without its input and output.

    Attributes:
        session: what a sitting holds; its guide is open.
        start: starts a talk.
        walk: what is being asked step by step, None if nothing is.
        pasting: lines collected since `:paste`, None outside of it.
        over: the person quit.
        unicode: signs beyond ASCII may be printed.
    """

    session: Session
    start: Starter
    unicode: bool = True
    walk: Walk | None = None
    pasting: list[str] | None = None
    over: bool = False
    _then: Callable[[], Iterator[str]] = field(default=lambda: iter(()))

    def hear(self, raw: str | bytes) -> Iterator[str]:
        """Take one line and give the lines that answer it."""
        line = clean(raw).text
        if self.pasting is not None:
            if line == ".":
                text, self.pasting = "\n".join(self.pasting), None
                yield from self._message(text)
            else:
                self.pasting.append(line)
        elif line.startswith(":"):
            yield from self._command(line)
        elif self.walk is not None and self.walk.takes(line):
            yield from self._walked(line)
        elif line:
            yield from self._message(raw if isinstance(raw, str) else line)
            if self.walk is not None:
                yield ""
                yield from self._filled(self.walk.ask())

    def end(self) -> Iterator[str]:
        """The input is over: a paste that was not ended is answered all the same."""
        if self.pasting:
            text, self.pasting = "\n".join(self.pasting), None
            yield from self._message(text)

    # ------------------------------------------------------------------ talk

    def _message(self, text: str) -> Iterator[str]:
        turn = self.session.shown
        answer = turn.answer if turn else None
        if answer and answer.outcome is Outcome.UNSURE and text.strip().isdecimal():
            number = int(text.strip()[:3])
            if 1 <= number <= len(answer.choices):
                yield from self._read(answer.choices[number - 1])
                return
        self.session.waiting.append(Turn(text, self.session.case))
        answered = answer_next(self.session, self.start)
        if answered is None:
            return
        self.session.add(answered)
        if answered.answer is None:
            yield from alert_lines(alert_of("stop-and-call"))
            yield "Answer: No answer could be given. Please call the clinic."
            return
        yield from lines(answered.answer)
        if answered.answer.outcome is Outcome.UNSURE and answered.answer.choices:
            yield "Write the number of the one you mean."

    def _read(self, key: str) -> Iterator[str]:
        from guidebot.render.passage import lines as passage_lines

        guide = self.session.guide
        if guide is None:
            return
        found = guide.passages.get(key)
        if found is None:
            low = key.casefold()
            near = [p for p in guide.passages.values() if low and low in p.title.casefold()]
            found = near[0] if near else passage_for(guide, key, self.session.case)
        if found is None:
            yield f"There is no passage {one_line(key)}."
        else:
            yield from passage_lines(found, guide.clinic.caution)

    # ------------------------------------------------------------------ commands

    def _command(self, line: str) -> Iterator[str]:
        word, _, rest = line[1:].partition(" ")
        does = {
            "help": self._help, "steps": self._steps, "fit": self._fit, "today": self._today,
            "chart": self._chart, "diary": self._diary, "yesterday": self._diary,
            "dogs": self._dogs, "dog": self._dog, "add": self._add, "read": self._read_command,
            "mail": self._mail, "unanswered": self._unanswered, "paste": self._paste,
            "new": self._new, "stop": self._stop, "quit": self._quit,
        }.get(word.casefold())  # fmt: skip
        if does is None:
            yield f"There is no command :{one_line(word, 30)}. :help lists them."
            # Whoever writes a colon by mistake may still report something that cannot wait.
            yield from self._judged(line)
            return
        yield from does(word.casefold(), rest.strip())

    def _judged(self, text: str) -> Iterator[str]:
        alert = self.session.desk.judge(self.session.assistant, text)
        if alert:
            yield from alert_lines(alert)

    def _help(self, _word: str, _rest: str) -> Iterator[str]:
        yield from HELP.splitlines()

    def _steps(self, _word: str, rest: str) -> Iterator[str]:
        guide, case = self.session.guide, self.session.case
        if guide is None or rest not in ("on", "off"):
            yield "Write :steps on or :steps off."
            yield from self._judged(rest)
            return
        if rest == "on" and self.session.bars_wear:
            yield from self._filled(
                [self.session.told, NOT_NOW.format(how=":new begins a new talk")]
            )
            return
        self.walk = StepWalk(guide, "putting_on" if rest == "on" else "taking_off", case)
        yield from self._filled(self.walk.ask())

    def _fit(self, _word: str, _rest: str) -> Iterator[str]:
        if guide := self.session.guide:
            self.walk = walk = FitWalk(guide, self.session.case)
            yield from self._filled(walk.ask())

    def _today(self, _word: str, _rest: str) -> Iterator[str]:
        session = self.session
        case = session.case
        if session.guide is None or case is None:
            yield "No dog is chosen. :dogs lists them, :add adds one."
            return
        day = session.desk.day(session.guide, case, session.today(), session.now().time())
        yield f"Day: {day.title}"
        for why in day.why:
            yield from self._filled([f"{'Changed plan' if day.flagged else 'Note'}: {why}"])
        if day.hours:
            yield f"Hours: {day.hours}"
        yield from (f"Wear: {spell}" for spell in day.sessions)
        if day.walk:
            yield f"Walks: {day.walk}"
        yield from day.stages.splitlines()
        yield from (f"Next: {line}" for line in day.next)

    def _chart(self, _word: str, _rest: str) -> Iterator[str]:
        session = self.session
        if session.guide and session.case:
            chart = session.desk.chart(
                session.guide, session.case, session.today(), WIDTH, unicode=self.unicode
            )
            yield from chart.splitlines() or ["There is no chart without a fitting day."]
        else:
            yield "No dog is chosen. :dogs lists them, :add adds one."

    def _diary(self, word: str, _rest: str) -> Iterator[str]:
        case = self.session.case
        if case is None:
            yield "No dog is chosen. :dogs lists them, :add adds one."
            return
        on = self.session.today() - timedelta(days=word == "yesterday")
        yield f"Diary of {case.dog} for {on.isoformat()}."
        self.walk = walk = FormWalk(diary_fields())

        def keep() -> Iterator[str]:
            entry = entry_from(walk.replies, on)
            if case.fitted and on < case.fitted:
                yield "That day is before the fitting day; nothing was noted."
                return
            for alert in alerts_in(self.session, entry):
                yield from self._warned(alert)
            self.session.case = self.session.desk.log(
                self.session.desk.with_entry(case, entry), entry
            )
            yield self.session.desk.trouble or f"Noted for {on.isoformat()}."
            yield from self._today("", "")

        self._then = keep
        yield from self._filled(walk.ask())

    def _warned(self, alert: Alert) -> Iterator[str]:
        self.session.warn(alert)
        yield from alert_lines(alert)

    def _dogs(self, _word: str, _rest: str) -> Iterator[str]:
        session = self.session
        rows = session.desk.today_lines(session.guide, session.today()) if session.guide else []
        for key, line in rows:
            yield f"{line} [{key}]"
        if not rows:
            yield "No dog is kept yet. :add adds one."

    def _dog(self, _word: str, rest: str) -> Iterator[str]:
        if rest.casefold() in ("", "none"):
            self.session.case = None
            yield "The talk is about no particular dog now."
            return
        case = self.session.desk.find(rest)
        if case is None:
            yield f"There is no dog {one_line(rest, 60)}. :dogs lists them."
            return
        self._go_on_with(case)
        yield f"The talk is about {case.dog} now."

    def _go_on_with(self, case: Case) -> None:
        self.session.case = case

    def _add(self, _word: str, _rest: str) -> Iterator[str]:
        guide, desk = self.session.guide, self.session.desk
        if guide is None:
            return
        self.walk = walk = FormWalk(dog_fields(guide, self.session.today()))

        def keep() -> Iterator[str]:
            case = desk.add(case_from(walk.replies, [case.id for case in desk.cases()]))
            self._go_on_with(case)
            yield desk.trouble or f"{case.dog} is kept on this machine only."

        self._then = keep
        yield from self._filled(walk.ask())

    def _read_command(self, _word: str, rest: str) -> Iterator[str]:
        turn = self.session.shown
        passages = turn.answer.passages if turn and turn.answer else ()
        if rest.isdecimal() and 1 <= int(rest[:3]) <= len(passages):
            yield from self._read(passages[int(rest[:3]) - 1].id)
        elif rest and not rest.isdecimal():
            yield from self._read(rest)
        else:
            yield "Ask something first, then :read 1, or :read and words of a title."

    def _mail(self, _word: str, _rest: str) -> Iterator[str]:
        turn, guide = self.session.shown, self.session.guide
        if turn is None or turn.answer is None or guide is None:
            yield "There is no answer to send yet."
            return
        yield from self.session.desk.mail(turn.text, turn.answer, guide, turn.case).splitlines()

    def _unanswered(self, _word: str, _rest: str) -> Iterator[str]:
        self.session.desk.refresh()
        found = self.session.desk.unanswered()
        yield from (f"Not answered: {one_line(text, 300)}" for text in found)
        if not found:
            yield "None."

    def _paste(self, _word: str, _rest: str) -> Iterator[str]:
        self.pasting = []
        yield "Paste or write. A line with a single dot ends the message."

    def _new(self, _word: str, _rest: str) -> Iterator[str]:
        self.session.forget()
        yield "A new talk begins."

    def _stop(self, _word: str, _rest: str) -> Iterator[str]:
        self.walk = None
        yield "Left. Ask anything."

    def _quit(self, _word: str, _rest: str) -> Iterator[str]:
        self.over = True
        yield from ()

    # ------------------------------------------------------------------ step by step

    def _walked(self, line: str) -> Iterator[str]:
        walk = self.walk
        if walk is None:
            return
        said = walk.take(line)
        yield from self._filled(said)
        if walk.alert:
            yield from self._warned(walk.alert)
            self.walk = None
        elif walk.left:
            self.walk = None
        elif walk.over:
            self.walk = None
            if isinstance(walk, FormWalk):
                yield from self._then()
        else:
            yield from self._filled(walk.ask())

    def _filled(self, texts: list[str]) -> Iterator[str]:
        for text in texts:
            yield from wrapped(text, WIDTH)
