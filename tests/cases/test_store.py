"""The store: nothing lost, nothing mixed up, clear errors."""

from __future__ import annotations

import os
import shutil
import sqlite3
import stat
from datetime import date
from pathlib import Path

import pytest

from guidebot.cases import engine as engine_module
from guidebot.cases import schema
from guidebot.cases.redact import redact
from guidebot.cases.store import Store, open_store
from guidebot.domain.case import Case, DiaryEntry, Gait, Restriction, Sex, Side, Skin
from guidebot.errors import ExitCode, InputError, StoreError

FITTED = date(2026, 11, 20)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home" / "cases.db"


def full_case() -> Case:
    return Case(
        id="",
        dog="Juniper",
        sex=Sex.FEMALE,
        side=Side.LEFT,
        sleeve="extended",
        parts=frozenset({"knee-elastic"}),
        fitted=FITTED,
        target_hours=10.5,
        restrictions=(Restriction("wear", FITTED, date(2026, 12, 1), 4.0, "take it slow"),),
        diary=(DiaryEntry(FITTED, 2.5, Skin.FADED, Gait.USUAL, True, False, "calm"),),
    )


def test_a_case_comes_back_whole(path: Path) -> None:
    with open_store(path) as store:
        added = store.add(full_case())
    with open_store(path) as store:
        assert store.case("juniper") == added
        assert store.cases() == (added,)


def test_two_dogs_of_one_name_stay_apart(path: Path) -> None:
    with open_store(path) as store:
        one = store.add(Case("", "Rex", fitted=FITTED))
        two = store.add(Case("", "Rex", fitted=FITTED))
        assert (one.id, two.id) == ("rex", "rex-2")
        store.note("rex-2", DiaryEntry(FITTED, 3.0))
        assert store.case("rex").diary == ()
        with pytest.raises(InputError, match="several dogs"):
            store.case("REX ")


def test_unknown_dog_names_the_nearest(path: Path) -> None:
    with open_store(path) as store:
        store.add(Case("", "Biscuit"))
        with pytest.raises(InputError, match="biscuit"):
            store.case("biscit")


def test_foreign_text_is_cleaned(path: Path) -> None:
    with open_store(path) as store:
        case = store.add(Case("", "\x1b[31mMo\u202e\x07lly\n"))
        assert case.dog == "Molly"
        note = DiaryEntry(FITTED, note="ok\x1b]0;owned\x07\u200b!")
        assert store.note("molly", note).diary[0].note == "ok!"


def test_a_day_noted_twice_keeps_the_graver_finding(path: Path) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex", fitted=FITTED))
        store.note("rex", DiaryEntry(FITTED, 2.0, Skin.SORE, note="heel"))
        entry = store.note("rex", DiaryEntry(FITTED, 2.5, Skin.FINE, Gait.WORSE, note="later"))
        (day,) = entry.diary
        assert (day.worn_hours, day.skin, day.gait) == (2.5, Skin.SORE, Gait.WORSE)
        assert day.note == "heel\nlater"


def test_remove_takes_the_diary_along_and_keeps_the_questions(path: Path) -> None:
    with open_store(path) as store:
        store.add(full_case())
        store.log_question(FITTED, "stairs?", "answered", case_id="juniper")
        store.remove("juniper")
        assert store.cases() == ()
        assert store.questions()[0]["case_id"] is None
    with sqlite3.connect(path) as raw:
        assert raw.execute("SELECT count(*) FROM diary").fetchone() == (0,)
        assert raw.execute("PRAGMA foreign_key_check").fetchall() == []
    raw.close()


def test_a_lifted_restriction_ends_the_day_before(path: Path) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex"))
        store.restrict("rex", Restriction("stairs", FITTED))
        case = store.lift("rex", "stairs", date(2026, 12, 1))
        assert case.restrictions[0].ends == date(2026, 11, 30)
        store.restrict("rex", Restriction("bath", FITTED))
        assert len(store.lift("rex", "bath", FITTED).restrictions) == 1


@pytest.mark.parametrize("hours", [-1, 24.5, float("nan"), float("inf")])
def test_impossible_hours_are_refused(path: Path, hours: float) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex", fitted=FITTED))
        with pytest.raises(InputError, match="from 0 to 24"):
            store.note("rex", DiaryEntry(FITTED, hours))
        with pytest.raises(InputError):
            store.edit("rex", target_hours=hours)
        with pytest.raises(InputError):
            store.restrict("rex", Restriction("wear", FITTED, None, hours))


def test_a_diary_day_before_the_fitting_is_refused(path: Path) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex", fitted=FITTED))
        with pytest.raises(InputError, match="before the fitting day"):
            store.note("rex", DiaryEntry(date(2026, 11, 19), 1.0))


# --------------------------------------------------------------------------------- questions


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("write to jo.bloggs+dog@mail.example.com please", "write to [e-mail] please"),
        ("call me on 555-0142 or (020) 7946 0018", "call me on [phone] or [phone]"),
        ("+44 7700 900123", "[phone]"),
        ("see https://x.example/a?b=c now", "see [link] now"),
        ("we live at 14b Old Mill Lane", "we live at [number] Old Mill Lane"),
        ("my name is Aurelia and he limps", "my name is [name] and he limps"),
        ("8 hours on day 6, 12 h by day 10", "8 hours on day 6, 12 h by day 10"),
        ("fitted 2026-11-20, 30 minutes", "fitted 2026-11-20, 30 minutes"),
    ],
)
def test_redaction(said: str, kept: str) -> None:
    assert redact(said) == kept


def test_questions_older_than_180_days_become_counts(path: Path) -> None:
    with open_store(path) as store:
        store.log_question(date(2026, 1, 5), "stairs?", "answered", need="activity.stairs")
        store.log_question(date(2026, 1, 9), "stairs yet?", "answered", need="activity.stairs")
        store.log_question(date(2026, 7, 3), "bath?", "unsure", need="activity.water")
        assert len(store.questions()) == 3  # 3 July is day 179 after 5 January
        store.log_question(date(2026, 7, 9), "sofa?", "answered")
        assert [q["text"] for q in store.questions()] == ["bath?", "sofa?"]
        assert store.counts() == {("2026-01", "activity.stairs", "answered"): 2}


def test_the_log_can_be_turned_off_and_forgets(path: Path) -> None:
    with open_store(path) as store:
        assert store.logging()
        store.log_question(FITTED, "stairs?", "answered")
        store.set_logging(False)
        assert store.questions() == ()
        assert not store.log_question(FITTED, "sofa?", "answered")
        assert store.questions() == ()
        assert sum(store.counts().values()) == 1


# ---------------------------------------------------------------------------------- damage


def test_a_locked_store_says_so(path: Path) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex"))
    other = sqlite3.connect(path, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    try:
        with pytest.raises(StoreError, match="in use") as caught:
            open_store(path, busy_ms=20)
        assert caught.value.exit_code is ExitCode.STORE_UNAVAILABLE
    finally:
        other.execute("ROLLBACK")
        other.close()
    with open_store(path) as store:
        assert len(store.cases()) == 1


@pytest.mark.skipif(os.name == "nt", reason="POSIX permissions")
def test_a_read_only_store_can_still_be_read(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex"))
    # Root writes in spite of permissions: the connection is made read-only as well.
    connect = sqlite3.connect
    path.chmod(stat.S_IRUSR)
    monkeypatch.setattr(
        sqlite3.dbapi2,
        "connect",
        lambda name, **more: connect(f"file:{name}?mode=ro", **{**more, "uri": True}),
    )
    with open_store(path) as store:
        assert store.case("rex").dog == "Rex"
        with pytest.raises(StoreError, match="read-only"):
            store.add(Case("", "Max"))


@pytest.mark.parametrize("keep", [0, 100, 4096, 9000])
def test_a_truncated_store_is_not_taken_for_a_new_one(path: Path, keep: int) -> None:
    with open_store(path) as store:
        for number in range(40):
            store.add(Case("", f"Dog {number}"))
    whole = path.read_bytes()
    path.write_bytes(whole[:keep])
    with pytest.raises(StoreError, match=r"damaged|cut off"), open_store(path) as store:
        store.cases()
    assert path.read_bytes() == whole[:keep]


def test_a_file_that_is_no_store(path: Path) -> None:
    path.parent.mkdir(parents=True)
    path.write_text("dear diary " * 500)
    with pytest.raises(StoreError, match="damaged"):
        open_store(path)


def test_a_newer_store_is_left_alone(path: Path) -> None:
    open_store(path).close()
    with sqlite3.connect(path) as raw:
        raw.execute("PRAGMA user_version = 99")
    raw.close()
    before = path.read_bytes()
    with pytest.raises(StoreError, match="newer version"):
        open_store(path)
    assert path.read_bytes() == before


def test_a_full_disk_loses_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex"))
    connect = sqlite3.connect

    def cramped(*args: object, **more: object) -> sqlite3.Connection:
        raw: sqlite3.Connection = connect(*args, **more)  # type: ignore[call-overload]
        pages = raw.execute("PRAGMA page_count").fetchone()[0]
        raw.execute(f"PRAGMA max_page_count = {pages}")
        return raw

    with monkeypatch.context() as patched:
        patched.setattr(sqlite3.dbapi2, "connect", cramped)
        with open_store(path) as store, pytest.raises(StoreError, match="disk is full"):
            _fill(store)
    with open_store(path) as store:
        assert store.case("rex").dog == "Rex"
    with sqlite3.connect(path) as raw:
        assert raw.execute("PRAGMA integrity_check").fetchone() == ("ok",)
    raw.close()


def _fill(store: Store) -> None:
    for number in range(400):
        store.restrict("rex", Restriction("bath", FITTED, note="x" * 900 + str(number)))


def test_a_folder_that_cannot_be_made(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(StoreError):
        open_store(tmp_path / "file" / "cases.db")


# ------------------------------------------------------------------------------- migrations


def test_every_older_version_upgrades_with_a_backup(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    steps = schema.STEPS
    monkeypatch.setattr(engine_module, "STEPS", steps[:1])
    with Store(path) as store:
        store.add(Case("", "Rex", fitted=FITTED))
        store.note("rex", DiaryEntry(FITTED, 3.0))
    before = shutil.copy(path, path.with_suffix(".was"))
    monkeypatch.setattr(engine_module, "STEPS", steps)
    with Store(path) as store:
        assert store.case("rex").diary[0].worn_hours == 3.0
        assert store.log_question(FITTED, "stairs?", "answered")
    (backup,) = (path.parent / "backups").glob("*.db")
    assert steps[1][0] in backup.name
    was, kept = sqlite3.connect(before), sqlite3.connect(backup)
    assert list(was.iterdump()) == list(kept.iterdump())
    was.close()
    kept.close()


def test_a_step_that_fails_changes_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_store(path) as store:
        store.add(Case("", "Rex"))

    def broken(connection: object) -> None:
        connection.exec_driver_sql("CREATE TABLE half (x)")  # type: ignore[attr-defined]
        connection.exec_driver_sql("CREATE TABLE half (x)")  # type: ignore[attr-defined]

    monkeypatch.setattr(engine_module, "STEPS", (*schema.STEPS, ("broken", broken)))
    with pytest.raises(StoreError):
        open_store(path)
    monkeypatch.undo()
    with open_store(path) as store:
        assert store.case("rex").dog == "Rex"
    with sqlite3.connect(path) as raw:
        assert raw.execute("SELECT count(*) FROM sqlite_master WHERE name='half'").fetchone() == (
            0,
        )
    raw.close()


def test_the_write_ahead_log_waits_for_a_safe_sqlite(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sqlite3, "sqlite_version_info", (3, 51, 2))
    assert engine_module.journal_mode() == "DELETE"
    monkeypatch.setattr(sqlite3, "sqlite_version_info", (3, 51, 3))
    assert engine_module.journal_mode() == "WAL"
