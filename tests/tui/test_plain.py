"""The plain loop: the same features, line by line."""

from __future__ import annotations

import os
import subprocess
import sys
from datetime import datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tui_fakes import FakeAssistant, FakeTalk

from guidebot.tui.desk import Desk
from guidebot.tui.plain import HELP, Plain
from guidebot.tui.session import Session


def loop() -> tuple[Plain, FakeTalk]:
    talk = FakeTalk()
    session = Session(None, Desk(), lambda: datetime(2026, 11, 25, 9, 30))
    session.assistant = FakeAssistant()
    return Plain(session, lambda assistant, case: talk), talk


def say(plain: Plain, *lines: str | bytes) -> str:
    return "\n".join(said for line in lines for said in plain.hear(line))


def test_an_alert_comes_first_and_every_part_has_its_label() -> None:
    plain, _ = loop()
    text = say(plain, "blood, and can she do stairs")
    labels = ["EMERGENCY:", "Verdict: Not yet", "Answer: Carry", "Source: Stairs", "Caution:"]
    assert sorted(labels, key=text.index) == labels


def test_a_number_picks_when_titles_are_offered() -> None:
    plain, talk = loop()
    say(plain, "maybe this")
    assert "Washing it" in say(plain, "2")
    assert talk.heard == ["maybe this"]
    say(plain, "7")
    assert talk.heard[-1] == "7"


def test_steps_go_on_with_enter_and_a_message_is_never_taken_for_a_reply() -> None:
    plain, talk = loop()
    assert "Which sleeve" in say(plain, ":steps on")
    assert "Step 1 of 4: Get ready" in say(plain, "1")
    assert "Step 2 of 4: Close short sleeve" in say(plain, "")
    text = say(plain, "there is blood on it")
    assert text.index("EMERGENCY") < text.index("Step 2 of 4")
    assert talk.heard == ["there is blood on it"]
    assert "Step 1 of 4" in say(plain, "back")
    assert "All steps are done" in say(plain, *["next"] * 4)
    assert plain.walk is None


def test_the_fit_check_ends_in_pictures_a_passage_or_an_alert() -> None:
    plain, _ = loop()
    assert "Question 1 of 3: How are the toes?" in say(plain, ":fit")
    assert "Send these pictures to Ashmoor" in say(plain, "1", "2")
    assert "Answer: Short answer of gap-look." in say(plain, "", "2")
    assert "The check is done" in say(plain, "")
    assert "EMERGENCY" in say(plain, ":fit", "2")
    assert plain.walk is None


def test_a_dog_and_its_diary() -> None:
    plain, _ = loop()
    say(plain, ":add", "Rex [/b]", "2")
    assert "this is no date" in say(plain, "soon")
    assert "kept on this machine only" in say(plain, "4", "1", "2")
    assert "Day: Rex [/b]: day 4" in say(plain, ":today")
    text = say(plain, ":diary", "3", "3", "", "", "")
    assert text.index("ALERT: ") < text.index("Changed plan: ")
    assert "[rex-b]" in say(plain, ":dogs")
    assert "no particular dog" in say(plain, ":dog none")
    assert "No dog is chosen" in say(plain, ":today")
    assert "about Rex [/b] now" in say(plain, ":dog rex-b")
    assert "Hours of wear" in say(plain, ":chart")


def test_a_paste_is_one_message_and_is_answered_even_if_it_is_never_ended() -> None:
    plain, talk = loop()
    say(plain, ":paste", "one", "", ":fit", "two", ".")
    assert talk.heard == ["one\n\n:fit\ntwo"]
    say(plain, ":paste", "blood")
    assert "EMERGENCY" in "\n".join(plain.end())


def test_read_mail_unanswered_new_stop_quit() -> None:
    plain, talk = loop()
    assert "Ask something first" in say(plain, ":read 1")
    assert "no answer to send" in say(plain, ":mail")
    say(plain, "can she do stairs", "nope")
    assert "Not answered: nope" in say(plain, ":unanswered")
    say(plain, "can she do stairs")
    assert "Washing it" in say(plain, ":read 2")
    assert "Looking at gaps" in say(plain, ":read looking at")
    assert "There is no passage zzz" in say(plain, ":read zzz")
    assert "> can she do stairs" in say(plain, ":mail")
    assert "Left." in say(plain, ":steps on", ":stop")
    assert "A new talk" in say(plain, ":new")
    assert plain.session.shown is None
    assert "no command" in say(plain, ":dance")
    assert say(plain, ":help") == HELP
    say(plain, ":quit")
    assert plain.over
    assert len(talk.heard) == 3


def test_a_failure_ends_in_stop_and_call() -> None:
    plain, _ = loop()
    assert "Stop and call" in say(plain, "boom")


WORDS = st.sampled_from(
    [":steps on", ":steps off", ":fit", ":add", ":diary", ":today", ":chart", ":paste", ".",
     ":stop", ":dogs", ":dog none", ":read 1", ":mail", ":new", "", "1", "2", "3", "9", "back",
     "stop", "blood", "maybe", "boom", "nope", "Rex", "4", "\x1b]0;x\x07", ":", ":\x00"]
)  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(st.lists(WORDS | st.text(max_size=12) | st.binary(max_size=8), max_size=40))
def test_no_lines_whatever_break_the_loop_or_reach_the_terminal_raw(
    lines: list[str | bytes],
) -> None:
    plain, _ = loop()
    text = say(plain, *lines)
    assert not any(ord(c) < 32 and c != "\n" for c in text)


@pytest.mark.parametrize("ending", [b"", b":quit\n", b"\xff\xfe\x00\n"])
def test_the_command_reads_a_pipe_to_its_end(ending: bytes, tmp_path: object) -> None:
    done = subprocess.run(
        [sys.executable, "-c", FAKED, "chat"],
        input=b"can she do stairs\n" + ending,
        capture_output=True,
        timeout=60,
        env={**os.environ, "GUIDEBOT_HOME": str(tmp_path), "PYTHONPATH": PATHS},
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert b"Answer: Carry the dog." in done.stdout
    assert b"You: " not in done.stdout, "no prompt in a pipe"


def test_an_interrupt_ends_with_130(tmp_path: object) -> None:
    with subprocess.Popen(
        [sys.executable, "-c", FAKED, "chat"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env={
            **os.environ,
            "GUIDEBOT_HOME": str(tmp_path),
            "PYTHONPATH": PATHS,
            "PYTHONUNBUFFERED": "1",
        },
    ) as running:
        assert running.stdin is not None
        assert running.stdout is not None
        running.stdin.write(b"can she do stairs\n")
        running.stdin.flush()
        assert b"Verdict" in running.stdout.readline()  # it is in its loop now
        running.send_signal(2)
        assert running.wait(30) == 130


PATHS = os.pathsep.join([os.path.dirname(__file__), *sys.path])  # noqa: PTH120
FAKED = """
import sys
from tui_fakes import FakeAssistant, FakeTalk
from guidebot.tui import session
session.open_guide = lambda content, say: FakeAssistant()
session.start_talk = lambda assistant, case: FakeTalk()
from guidebot.cli.main import main
main(sys.argv[1:])
"""
