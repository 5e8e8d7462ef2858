"""Today and Staff: the day, the diary, the dogs, the mail."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from tui_fakes import TODAY, Setup, ask, screen_text, settle, small_guide

from guidebot.domain.case import Case, DiaryEntry, Gait, Skin
from guidebot.errors import InputError, StoreError
from guidebot.tui import clipboard
from guidebot.tui.desk import Desk
from guidebot.tui.forms import case_from, date_reader, read_hours

FITTED = Case("rex", "Rex", sleeve="short", fitted=date(2026, 11, 22))


@pytest.fixture
def kept(setup: Setup, tmp_path: Path) -> Iterator[Setup]:
    """With a store, and a dog in it on day 4."""
    made = Setup(tmp_path / "cases.db")
    desk = Desk(tmp_path / "cases.db")
    desk.open()
    assert desk.trouble == ""
    desk.add(FITTED)
    desk.close()
    made.app._case_id = "rex"
    yield made
    made.desk.close()


async def test_the_day_is_counted(kept: Setup) -> None:
    async with kept.app.run_test(size=(120, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f3")
        await settle(pilot)
        text = screen_text(kept.app)
        assert "Rex: day 4" in text
        assert "5 hours at most today" in text  # 2 on the first day, one more each day
        assert "Hours of wear" in text


async def test_a_diary_entry_in_a_few_keys_changes_the_plan_at_once(kept: Setup) -> None:
    async with kept.app.run_test(size=(120, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f3", "y")
        await settle(pilot)
        await pilot.press("3", "enter")
        await pilot.pause(0.1)
        await pilot.press("3", "1", "1", "enter")
        await pilot.pause(0.1)
        await settle(pilot)
        text = screen_text(kept.app)
        assert "CHANGED PLAN" in text
        assert "24 November 2026" in text
        assert "ALERT" in text, "redness that stays is a sign, whoever notes it"
        desk = Desk(kept.desk._path)
        desk.open()
        case = desk.find("rex")
        desk.close()
        assert case is not None
        assert case.diary[0].skin is Skin.STAYED
        assert case.diary[0].worn_hours == 3


async def test_powder_and_skin_are_ticked(kept: Setup) -> None:
    async with kept.app.run_test(size=(120, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f3", "p")
        await settle(pilot)
        await pilot.press("s")
        await settle(pilot)
        await pilot.press("1")
        await settle(pilot)
        text = screen_text(kept.app)
        assert "[x] powder used" in text
        assert "[x] skin looked at" in text
        assert "[ ] hours noted" in text


async def test_without_a_dog_the_way_to_one_is_shown(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press("f3", "d")
        await settle(pilot)
        assert "Choose a dog first: F9" in screen_text(setup.app)


async def test_a_dog_is_added_with_a_name_that_looks_like_markup(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f9", "1")
        await settle(pilot)
        for char in "[/b]":
            await pilot.press(
                {"[": "left_square_bracket", "]": "right_square_bracket", "/": "slash"}.get(
                    char, char
                )
            )
        await pilot.press("enter")
        await pilot.pause(0.1)
        await pilot.press("1", "x", "enter")
        await pilot.pause(0.1)
        assert "this is no date" in screen_text(setup.app)
        await pilot.press("4", "enter")
        await pilot.pause(0.1)
        await pilot.press("2", "0")
        await settle(pilot)
        case = setup.app.session.case
        assert case is not None
        assert (case.dog, case.fitted, case.sleeve) == ("[/b]", date(2026, 11, 22), "long")
        for key in ("f3", "f5", "f9"):
            await pilot.press(key)
            await settle(pilot)
            assert "[/b]" in screen_text(setup.app)


async def test_a_report_written_into_a_form_is_not_taken_for_a_reply(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f9", "1")
        await settle(pilot)
        await pilot.press(*"blood", "space", *"all", "space", *"over", "enter")
        await pilot.pause(0.2)
        await settle(pilot)
        text = screen_text(setup.app)
        assert "EMERGENCY" in text
        assert "Also noticed: open, raw, wet or smelling skin" in text
        assert not setup.app.screen.is_modal


async def test_a_store_that_cannot_be_opened_never_stops_the_talk(tmp_path: Path) -> None:
    (tmp_path / "cases.db").write_bytes(b"no database" * 500)
    setup = Setup(tmp_path / "cases.db")
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        assert "Carry the dog." in screen_text(setup.app)
        await pilot.press("f5")
        await settle(pilot)
        assert "kept for this sitting only" in screen_text(setup.app).replace("\n ", " ")


def test_a_write_that_fails_keeps_the_entry_in_memory(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    desk = Desk(tmp_path / "cases.db")
    desk.open()
    case = desk.add(FITTED)

    def full(*_: object) -> Case:
        raise StoreError("the disk is full")

    monkeypatch.setattr(desk._store, "note", full)
    entry = DiaryEntry(TODAY, skin=Skin.SORE)
    case = desk.log(desk.with_entry(case, entry), entry)
    desk.close()
    assert "the disk is full" in desk.trouble
    day = desk.day(small_guide(), case, TODAY)
    assert day.flagged
    assert day.hours.startswith("none today")


async def test_staff_picks_a_dog_and_sees_what_was_not_answered(kept: Setup) -> None:
    async with kept.app.run_test(size=(120, 40)) as pilot:
        await settle(pilot)
        kept.app.session.case = None
        await ask(pilot, "nope, the price of [tea]")
        await pilot.press("f5")
        await settle(pilot)
        text = screen_text(kept.app)
        assert "1. Rex: day 4" in text
        assert "- nope, the price of [tea]" in text
        await pilot.press("enter")
        await settle(pilot)
        assert kept.app.session.case is not None
        assert "The talk is about Rex now" in screen_text(kept.app)


async def test_the_mail_is_copied_and_it_is_said_how(
    setup: Setup, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(clipboard, "system_tool", lambda: None)
    async with setup.app.run_test(size=(120, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f7")
        await settle(pilot)
        assert "There is no answer to copy yet" in screen_text(setup.app)
        await ask(pilot, "blood, and can she do stairs")
        await pilot.press("f7")
        await settle(pilot)
        copied = setup.app.clipboard
        assert copied.index("EMERGENCY") < copied.index("Carry the dog.")
        assert "Verdict from" not in copied
        assert copied.rstrip().endswith("> blood, and can she do stairs")
        assert "Bye\nAshmoor" in copied
        saved = list((tmp_path / "mails").iterdir())
        assert [path.read_text() for path in saved] == [copied + "\n"]
        assert saved[0].stat().st_mode & 0o077 == 0
        text = " ".join(screen_text(setup.app).split())
        assert "does not say whether that worked" in text


@pytest.mark.parametrize("code", [0, 1])
def test_only_a_program_that_took_the_text_is_called_a_copy(tmp_path: Path, code: int) -> None:
    tool = tmp_path / "wl-copy"
    tool.write_text(f"#!/bin/sh\ncat > {tmp_path}/got\nexit {code}\n")
    tool.chmod(0o755)
    assert clipboard.hand_over("text", [str(tool)]) is (code == 0)
    assert (tmp_path / "got").read_text() == "text"
    assert not clipboard.hand_over("text", [str(tmp_path / "missing")])


def test_without_a_folder_to_write_to_that_is_said_too(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(clipboard, "system_tool", lambda: None)
    (tmp_path / "file").write_text("")
    said = clipboard.copy("text", lambda _: None, tmp_path / "file" / "mails")
    assert "could not be saved" in said


@pytest.mark.parametrize(
    ("text", "hours"), [("5", 5), ("5.5 h", 5.5), ("5,5", 5.5), ("0", 0), ("24 hours", 24)]
)
def test_hours_are_read(text: str, hours: float) -> None:
    assert read_hours(text) == hours


@pytest.mark.parametrize("text", ["", "25", "-1", "nan", "a lot", "1e1"])
def test_hours_that_cannot_be_are_refused(text: str) -> None:
    with pytest.raises(InputError):
        read_hours(text)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("2026-11-20", date(2026, 11, 20)),
        ("today", TODAY),
        ("Yesterday", date(2026, 11, 24)),
        ("6", date(2026, 11, 20)),
        ("day 1", TODAY),
    ],
)
def test_fitting_days_are_read(text: str, day: date) -> None:
    assert date_reader(TODAY)(text) == day


@pytest.mark.parametrize("text", ["soon", "2026-13-01", "9999", "0", "2030-01-01"])
def test_fitting_days_that_cannot_be_are_refused(text: str) -> None:
    with pytest.raises(InputError):
        date_reader(TODAY)(text)


def test_two_dogs_of_one_name_get_ids_of_their_own() -> None:
    assert case_from({"dog": "Rex"}, ["rex"]).id == "rex-2"
    assert case_from({"dog": "\u732b"}, []).id == "dog"


def test_a_dog_that_limps_more_is_flagged() -> None:
    case = replace(FITTED, diary=(DiaryEntry(TODAY, gait=Gait.WORSE, worn_hours=2),))
    day = Desk().day(small_guide(), case, TODAY)
    assert day.flagged
    assert day.sessions == (), "a setback ends the day's wear"


def test_a_dog_before_its_fitting_day_is_told_so() -> None:
    day = Desk().day(small_guide(), replace(FITTED, fitted=date(2026, 12, 1)), TODAY)
    assert "before the fitting day" in day.why[0]
    day = Desk().day(small_guide(), replace(FITTED, fitted=None), TODAY)
    assert "early weeks: Little." in day.stages
