"""The commands case, log, plan, today and demo, as a person would use them."""

from __future__ import annotations

import json
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from guidebot.cli.main import cli
from guidebot.errors import GuidebotError, InputError, StoreError


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("GUIDEBOT_HOME", str(tmp_path / "home"))
    return tmp_path / "home"


def run(*words: str, fails: type[GuidebotError] | None = None) -> Result:
    result = CliRunner().invoke(cli, list(words), input="")
    if fails is None:
        assert result.exit_code == 0, (result.output, result.exception)
    else:
        assert isinstance(result.exception, fails), (result.output, result.exception)
    return result


def test_the_plan_as_json() -> None:
    out = json.loads(run("plan", "--fitted", "2026-11-20", "--on", "2026-11-25", "--json").stdout)
    assert (out["day"], out["stage"], out["hours_allowed"]) == (6, "break-in", 8)
    assert sum(s["minutes"] for s in out["sessions"]) <= 8 * 60
    assert out["walk"]["minutes"] == 10
    assert out["walk"]["times"] == 2
    assert out["next"][0] == {"date": "2026-11-30", "what": "stage: restricted"}


def test_a_dog_from_adding_to_removing(home: Path) -> None:
    add = ("case", "add", "Rex", "--fitted", "2026-11-20", "--sleeve", "extended")
    assert run(*add).stdout == "rex\n"
    assert run(*add).stdout == "rex-2\n"
    said = run("log", "rex", "--on", "2026-11-21", "--hours", "4", "--skin", "stayed").stdout
    assert "Rex (rex): day 3" in said
    assert "3 hours of wear" in said
    assert "Redness that stayed" in said
    run("log", "rex", "--on", "2026-11-22", "--restrict", "stairs", "--until", "2026-12-31")
    assert "restricted: stairs" in run("case", "show", "rex").stdout
    assert "2026-11-21: 4 h, skin stayed" in run("case", "show", "rex").stdout
    lines = run("today", "--on", "2026-11-22").stdout.splitlines()
    assert lines[0].startswith("! Rex (rex): day 3")
    assert lines[1].startswith("  Rex (rex-2): day 3")
    run("case", "edit", "rex", "--name", "Rexy", "--target", "10")
    out = json.loads(run("case", "export", "rex").stdout)
    assert (out["dog"], out["target_hours"], len(out["diary"])) == ("Rexy", 10.0, 1)
    run("case", "remove", "rex", "--yes")
    run("case", "show", "rexy", fails=InputError)


@pytest.mark.parametrize(
    "words",
    [
        ("plan",),
        ("plan", "--fitted", "2026-11-20", "--on", "2026-11-19"),
        ("plan", "--fitted", "1926-11-20", "--on", "2026-11-19"),
        ("plan", "--fitted", "2026-11-20", "--on", "2026-11-25", "--target", "-2"),
        ("plan", "--case", "nobody"),
        ("log", "nobody", "--hours", "3"),
        ("case", "add", " \x07 "),
        ("case", "add", "Rex", "--sleeve", "wizard"),
    ],
)
def test_bad_input_is_refused(words: tuple[str, ...]) -> None:
    run(*words, fails=InputError)


@pytest.mark.parametrize("bad", ["2026-02-30", "tomorrow", "20.11.2026"])
def test_dates_that_do_not_exist(bad: str) -> None:
    result = CliRunner().invoke(cli, ["plan", "--fitted", bad])
    assert result.exit_code == 2
    assert "is not a date" in result.stderr


def test_a_damaged_store_is_said(home: Path) -> None:
    home.mkdir()
    (home / "cases.db").write_bytes(b"")
    run("today", fails=StoreError)


def test_the_demo_shows_five_dogs_and_leaves_the_real_store(home: Path) -> None:
    run("demo", "--on", "2026-11-25")
    run("demo", "--on", "2026-11-25")
    rows = run("today", "--demo", "--json", "--on", "2026-11-25").stdout.splitlines()
    found = {row["id"]: row for row in map(json.loads, rows)}
    stages = {key: row["stage"] for key, row in found.items()}
    assert stages == {
        "pepper": "break-in",
        "otis": "break-in",
        "clover": "restricted",
        "bramble": "return",
        "juno": "long-term",
    }
    assert found["bramble"]["hours_allowed"] == 0
    assert not (home / "cases.db").exists()


def test_the_charts(tmp_path: Path) -> None:
    run("demo", "--on", "2026-11-25")
    picture = tmp_path / "ramp.svg"
    words = ("plan", "--demo", "--case", "otis", "--on", "2026-11-25", "--chart")
    text = run(*words, "--svg", str(picture)).stdout
    assert "redness stayed" in text
    root = ET.fromstring(picture.read_text("utf-8"))  # noqa: S314 - our own picture
    space = "{http://www.w3.org/2000/svg}"
    assert len(root.findall(f"{space}rect")) == 1 + 9  # the ground and one bar a day
    assert "day 7: redness stayed" in (root.findtext(f"{space}desc") or "")
    assert "<script" not in picture.read_text("utf-8")


def test_a_question_about_a_dog_is_kept_with_it(home: Path) -> None:
    from guidebot.cases.store import open_store

    run("case", "add", "Rex", "--fitted", "2026-11-20")
    run("ask", "--case", "rex", "--on", "2026-11-25", "can he do stairs yet? 0555 123456")
    with open_store() as store:
        kept = store.questions()
    assert [(row["case_id"], row["need"]) for row in kept] == [("rex", "activity.stairs")]
    assert "0555" not in kept[0]["text"]
    run("case", "questions", "off")
    run("ask", "--case", "rex", "--on", "2026-11-25", "can he do stairs yet")
    with open_store() as store:
        assert not store.questions()


def test_a_demo_dog_can_be_asked_about(home: Path) -> None:
    run("demo", "--on", "2026-11-25")
    first = run("today", "--demo", "--on", "2026-11-25").stdout.splitlines()[0]
    key = first.partition("(")[2].partition(")")[0]
    said = run("ask", "--demo", "--case", key, "--on", "2026-11-25", "can she do stairs yet")
    assert said.stdout.startswith("Verdict:")
    run("ask", "--case", key, "can she do stairs yet", fails=InputError)


def test_redness_puts_a_condition_before_the_sessions() -> None:
    run("case", "add", "Rex", "--fitted", "2026-11-20")
    run("log", "rex", "--on", "2026-11-22", "--hours", "5", "--skin", "stayed")
    said = run("plan", "--case", "rex", "--on", "2026-11-22").stdout
    assert "Only once the skin is calm again, and not before:\nSessions" in said
