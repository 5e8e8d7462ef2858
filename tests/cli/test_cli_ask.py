"""`guidebot ask` as a process: what goes in, what comes out, how it ends."""

from __future__ import annotations

import json
import os

import pytest

ALERT = "!!!!!!!!"


def test_an_answer_is_the_only_thing_on_stdout(run) -> None:
    ran = run("ask", "how do i wash the sleeve")
    assert ran.code == 0
    assert "Answer: " in ran.out
    assert "Caution: " in ran.out
    assert "Source: " in ran.out
    assert ran.err == ""


@pytest.mark.parametrize("question", ["", " ", " \n\t ", "\u200b\u202e", "\x1b[31m"])
def test_an_empty_question_is_told_so(run, question: str) -> None:
    ran = run("ask", question)
    assert ran.code == 3
    assert "There is no question in the message" in ran.out
    assert "Caution: " in ran.out


def test_an_empty_pipe_is_an_empty_question(run) -> None:
    ran = run("ask")
    assert (ran.code, "There is no question" in ran.out) == (3, True)


def test_a_dash_is_stdin(run) -> None:
    ran = run("ask", "-", stdin=b"how do i wash the sleeve\n")
    assert ran.code == 0
    assert "Answer: " in ran.out


def test_several_words_are_one_question(run) -> None:
    assert run("ask", "how", "do", "i", "wash", "it").out == run("ask", "how do i wash it").out


@pytest.mark.parametrize("as_json", [False, True])
def test_a_megabyte_is_not_read_half_and_called_harmless(run, as_json: bool) -> None:
    text = b"how do i wash the sleeve " * 42_000
    assert len(text) > 1_000_000
    ran = run("ask", *(["--json"] if as_json else []), stdin=text)
    assert ran.code == 0
    if as_json:
        assert json.loads(ran.out)["alert"]["sign"] == "stop-and-call"
    else:
        assert ran.out.startswith(ALERT)
        assert "Stop and call" in ran.out
    assert ran.err == ""


@pytest.mark.parametrize(
    "raw",
    [
        bytes(range(256)) * 20,
        os.urandom(4_096),
        b"\x7fELF\x02\x01\x01\x00" + b"\x00" * 4_000,
        "can he swim".encode("utf-16"),
        b"caf\xe9 stairs",
    ],
    ids=["all bytes", "random", "program", "utf-16", "latin-1"],
)
def test_binary_is_an_honest_outcome(run, raw: bytes) -> None:
    ran = run("ask", "-", stdin=raw)
    assert ran.code in (0, 3)
    assert "Caution: " in ran.out


def test_control_characters_do_not_come_back(run) -> None:
    ran = run("ask", "\x1b]0;owned\x07there is \x1b[5mblood\x9b31m dripping from the \u202eleg")
    assert ran.code == 0
    assert ran.out.startswith(ALERT)
    assert "owned" not in ran.out
    assert "\u202e" not in ran.out


def test_bytes_of_no_encoding_as_argument(run) -> None:
    assert run("ask", b"is the caf\xe9 floor slippery").code in (0, 3)


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "utf-8"])
def test_a_terminal_that_cannot_show_a_letter_still_gets_the_answer(run, encoding: str) -> None:
    for how in ([], ["--json"]):
        ran = run(
            "ask", *how, "blood \u4e2d everywhere from his leg \u2192 help",
            PYTHONIOENCODING=encoding, PYTHONUTF8="0",
        )  # fmt: skip
        assert ran.code == 0
        assert "emergency" in ran.out.lower()
        assert "everywhere" in ran.out


def test_off_topic_ends_with_3(run) -> None:
    ran = run("ask", "what is the capital of portugal")
    assert ran.code == 3
    assert "does not answer this" in ran.out


def test_courtesy_ends_with_0(run) -> None:
    ran = run("ask", "thank you so much!")
    assert ran.code == 0
    assert "You are welcome" in ran.out


def test_an_alert_is_an_answer(run) -> None:
    ran = run("ask", "what is the capital of portugal. blood is pouring from his leg")
    assert ran.code == 0
    assert ran.out.startswith(ALERT)


@pytest.mark.parametrize("settings", [{"NO_COLOR": "1"}, {"TERM": "dumb"}, {"TERM": None}])
def test_no_colour_where_none_is_wanted(run, settings: dict[str, str | None]) -> None:
    assert run("ask", "how do i wash the sleeve", **settings).code == 0  # `run` looks for ESC


@pytest.mark.parametrize(
    ("options", "named"),
    [
        (["--on", "2026-02-30"], "--on"),
        (["--on", "tomorrow"], "--on"),
        (["--on", "0000-01-01"], "--on"),
        (["--fitted", "2026-13-01"], "--fitted"),
        (["--fitted", "\x1b[31m"], "--fitted"),
        (["--fitted", "2026-05-02", "--on", "2026-05-01"], "before the fitting day"),
        (["--fitted", "1950-05-02", "--on", "2026-05-01"], "25 years"),
        (["--fitted", "2999-05-02"], "before the fitting day"),
        (["--day", "0"], "day 0"),
        (["--day", "-3"], "day -3"),
        (["--day", "99999999999999999999"], "25 years"),
        (["--day", "one"], "--day"),
        (["--day", "1", "--on", "0001-01-01", "--fitted", "0001-01-01"], "only one"),
        (["--case", "rex", "--day", "3"], "only one"),
        (["--case", "rex", "--fitted", "2026-05-01"], "only one"),
        (["--fitted", "2026-05-01", "--day", "3"], "only one"),
        (["--sleeve", "extendd"], "Sleeves: standard, extended"),
        (["--sleeve", "\x1b]0;x\x07"], "Sleeves"),
        (["--batch", "no/such/file"], "no/such/file"),
        (["--batch", "."], "."),
        (["--jsno"], "--json"),
        (["--\x1b[31mred"], "No such option"),
    ],
    ids=lambda v: ascii(v) if isinstance(v, str) else "",
)
def test_wrong_use(run, options: list[str], named: str) -> None:
    ran = run("ask", *options, "can he swim")
    assert ran.code == 2
    assert ran.out == ""
    assert named in ran.err
    assert len(ran.err.splitlines()) <= 5


def test_a_question_and_a_batch(run) -> None:
    ran = run("ask", "--batch", "-", "can he swim", stdin=b'{"text": "can he swim"}')
    assert (ran.code, ran.out) == (2, "")


@pytest.mark.parametrize(
    "options",
    [
        ["--on", "0001-01-01", "--day", "900"],
        ["--on", "9999-12-31", "--day", "1"],
        ["--on", "9999-12-31", "--fitted", "9999-12-31"],
        ["--on", "0001-01-01", "--fitted", "0001-01-01"],
        ["--on", "2028-02-29", "--fitted", "2024-02-29"],
    ],
    ids=lambda o: " ".join(o),
)
def test_the_ends_of_the_calendar(run, options: list[str]) -> None:
    ran = run("ask", *options, "can he swim", "-" * 3)
    assert ran.code in (0, 2)
    assert ran.out or ran.err


@pytest.mark.parametrize(
    "question",
    [
        "day 0, can he swim",
        "day 99999999999999999999, can he swim",
        "day -5 can he swim",
        "it has been 400 years, can he swim",
        "fitted on 31 february, can he swim",
        "fitted 99999 months ago, stairs yet?",
    ],
)
@pytest.mark.parametrize("known", [[], ["--fitted", "2026-05-01", "--on", "2026-05-20"]])
def test_impossible_days_in_the_words_do_not_cost_the_answer(
    run, question: str, known: list[str]
) -> None:
    ran = run("ask", *known, f"{question}? blood is dripping from the leg")
    assert ran.code == 0
    assert ran.out.startswith(ALERT)
    assert run("ask", *known, question).code in (0, 3)


def test_explain_is_for_writers(run) -> None:
    ran = run("ask", "--explain", "how do i wash the sleeve")
    assert ran.code == 0
    assert "Why: ranked words" in ran.out
    mixed = run("ask", "--explain", "--json", "how do i wash the sleeve")
    assert json.loads(mixed.out)["outcome"] == "answered"
    assert "Why: ranked words" in mixed.err


def test_a_dog_that_is_not_there(run, tmp_path) -> None:
    ran = run("ask", "--case", "no\x1b[31msuch", "can he swim", GUIDEBOT_HOME=str(tmp_path))
    assert (ran.code, ran.out) == (2, "")


def test_a_store_that_cannot_be_opened_costs_no_answer(run, tmp_path) -> None:
    (tmp_path / "file").write_text("no folder")
    ran = run(
        "ask", "--case", "rex", "blood drips from his leg", GUIDEBOT_HOME=str(tmp_path / "file")
    )
    assert ran.code == 5
    assert ran.out.startswith(ALERT)
    assert ran.err
