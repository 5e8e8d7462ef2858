"""Every kind of fault: where it is said to be, and that one run tells them all."""

from __future__ import annotations

import shutil
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path
from typing import NamedTuple

import pytest

from guidebot.errors import ContentError, Fault, Where
from guidebot.guide.faults import in_order, nearest
from guidebot.guide.read import read_guide, survey

SECOND = Path(__file__).parent.parent / "fixtures" / "second_guide"


class Case(NamedTuple):
    """In `file`, `old` becomes `new`; `§` marks where the fault with `what` has to be said."""

    file: str
    old: str
    new: str
    what: str


PROTOCOL, STAGES = "protocol.yaml", "passages/moving/outings-early.md"
CASES = [
    # YAML itself
    Case("needs.yaml", "hours.more: how", "hours.more: a\n      §hours.more: how", "twice"),
    Case("vocabulary.yaml", "[carpus,", "[§no, carpus,", "without quotes is read as false"),
    Case("vocabulary.yaml", "thumb nail", "§12:30", "without quotes is read as"),
    Case("vocabulary.yaml", "cuff:", "§on: [x]\ncuff:", "`on` without quotes is read as true"),
    Case("vocabulary.yaml", "side claw", "§0x1f", "without quotes is read as another number"),
    Case("clinic.yaml", '"555-0177"', "§555", "`phone` is a number, but has to be text"),
    Case("clinic.yaml", "help@rookmoor.example", '§""', "`email` is empty"),
    Case("clinic.yaml", "hours:", "§huors: x\nhours:", "Did you mean `hours`?"),
    Case("clinic.yaml", "[The workshop", "[§[The workshop]", "a list, but has to be text"),
    Case("clinic.yaml", "This is", '§"\\e[31mx"\nx: This is', "U+001B"),
    Case("vocabulary.yaml", "joint]", "joint, §carpus]", "twice"),
    Case("vocabulary.yaml", "cuff: [", "§cuff: [wrist, ", "a guide word elsewhere"),
    Case("vocabulary.yaml", "cuff: [", "§cuff: [pastern joint, ", "for `wrist` already"),
    Case("vocabulary.yaml", "cuff: [", "§cuff: [Cuff, ", "stands for itself"),
    Case("needs.yaml", "moving.digging:", "§hours.digging:", "is not written `moving.some-name`"),
    # protocol
    Case(PROTOCOL, "value: 45, ", "value: §no, ", "without quotes is read as false"),
    Case(PROTOCOL, "value: 8,     unit: min", "value: §much, unit: min", "has to be a number"),
    Case(PROTOCOL, "value: 3,     unit: day", "value: §-3, unit: day", "has to be a number"),
    Case(PROTOCOL, "value: 12, ", "value: §0, ", "has to be more than 0"),
    Case(PROTOCOL, "value: 4,     unit: min", 'value: §"1/0", unit: min', "divides by zero"),
    Case(PROTOCOL, "unit: finger", "unit: §fingr", "Did you mean `finger`?"),
    Case(PROTOCOL, "value: 20,    unit: min", "value: 20, §unit: h", "the plan counts it in"),
    Case(PROTOCOL, "from_month: 2", "from_month: §2nd", "has to be a whole number"),
    Case(PROTOCOL, "key: guarded", "key: §Guarded Weeks", "small letters"),
    Case(PROTOCOL, "{wear.first_day} on", "§{wear.frist_day} on", "Did you mean `wear.first_day`?"),
    # device
    Case("device.yaml", "key: padded", "§key: mesh", "a sleeve `mesh` is here twice"),
    Case("device.yaml", "usual: true", "usual: §maybe", "has to be true or false"),
    Case("device.yaml", "optional: true", "§optinal: true", "Did you mean `optional`?"),
    Case("device.yaml", "[wrist strap, middle strap]", "§[]", "empty list"),
    # activities
    Case("activities.yaml", "need: moving.digging", "need: §moving.diging", "moving.digging`?"),
    Case("activities.yaml", "say: not-yet", "say: §not-jet", "Did you mean `not-yet`?"),
    Case("activities.yaml", 'say: "no"', "say: §no", "without quotes is read as false"),
    Case("activities.yaml", "{say: yes-with-limits,", "{say: yes-with-limits, §wy: x,", "`why`?"),
    Case(
        "activities.yaml", "words: [garden, yard]", "§words: [garden, Dig]", "belongs to `digging`"
    ),
    Case("activities.yaml", "    easy:", "    §eazy:", "Did you mean `easy`?"),
    # steps
    Case("handson.yaml", "sleeve: padded", "sleeve: §paded", "Did you mean `padded`?"),
    Case("handson.yaml", "part: dewclaw-guard", "part: §palm-plate", "not known"),
    Case(
        "handson.yaml",
        "Pink fades in {skin.fade}",
        "Pink fades in §{skin.fade:x}",
        "no way to show",
    ),
    Case("handson.yaml", "{cuff.room} fit under it", "§2 fingers fit under it", "by hand"),
    Case("fitcheck.yaml", '"step:last"', '§"step:lost"', "Did you mean `last`?"),
    Case("fitcheck.yaml", '"need:fastening.cuff"', '§"need:fastening.cuf"', "fastening.cuff`?"),
    Case("fitcheck.yaml", '"pictures:fastening.cuff"', "§somewhere", "no place to go"),
    Case("fitcheck.yaml", "- key: cuff", "- §key: gap", "is here twice"),
    # passages: front matter
    Case(
        "passages/hours/nights.md", "hours.night]", "§hours.nights]", "Did you mean `hours.night`?"
    ),
    Case("passages/hours/nights.md", "first-hours]", "§first-ours]", "Did you mean `first-hours`?"),
    Case("passages/hours/nights.md", '"2026-11-01"', '§"2026-11-31"', "not in the calendar"),
    Case("passages/hours/nights.md", "role: fitter", "role: §~", "`role` is empty"),
    Case(
        "passages/hours/nights.md", "basis: inv", "§bassis: x\nbasis: inv", "Did you mean `basis`?"
    ),
    Case("passages/hours/first-hours.md", "[hours.start]", "§[]", "empty list"),
    Case("passages/hours/first-hours.md", '"2026-11-01"', "§soon", "has to be a date"),
    Case("passages/hours/first-hours.md", "all.", "§{wear.tarjet}.", "Did you mean `wear.target`?"),
    Case("passages/hours/first-hours.md", "[adding-time]", "[§first-hours]", "the passage itself"),
    Case(STAGES, "[settling,", "[§setling,", "Did you mean `settling`?"),
    Case(
        STAGES, "answers: [moving.outings]", "answers: §[moving.outings, a.b, c.d, e.f]", "1 to 3"
    ),
    Case("passages/fastening/cuff-mesh.md", "{sleeve: mesh}", "{sleeve: §mash}", "`mesh`?"),
    Case("passages/fastening/dewclaw.md", "part: dewclaw", "part: §dewclow", "`dewclaw-guard`?"),
    Case("passages/fastening/cuff-winter-late.md", "[11]", "[§0]", "at least 1"),
    Case("passages/fastening/cuff-winter-early.md", "10]", "§0]", "at least 1"),
    Case(
        "passages/fastening/cuff-padded.md", "{sleeve: padded}", "{days: §[1, 2, 3]}", "first and a"
    ),
    # passages: body
    Case(STAGES, "Start with {walk.usual}", "Start with §10 minutes", "written by hand"),
    Case(STAGES, "Turn back", "Wait ten to §12 days. Turn back", "hand"),
    Case(
        "passages/hours/adding-time.md", "Write down", "Wait §three days. Write down", "short_break"
    ),
    Case("passages/hours/adding-time.md", "In the end", "In §week 3", "written by hand"),
    Case("passages/hours/adding-time.md", "{wear.target} a day.", "§{wear.target a day.", "brace"),
    Case("passages/moving/digging.md", "toy to hold", "toy §<b>to</b> hold", "HTML"),
    Case("passages/moving/digging.md", "If the dog did dig", "§# If the dog did dig", "a heading"),
    Case("passages/moving/digging.md", "The skin then", "See [here§](x). The skin then", "a link"),
    Case("passages/upkeep/washing.md", "A damp", "A§\u202e damp", "U+202E"),
    Case(
        "passages/upkeep/washing.md", "mild soap and cool", "soap§&#27; and cool", "character code"
    ),
]


def write(tmp_path: Path, cases: Iterable[Case]) -> tuple[Path, list[tuple[str, str]]]:
    """A broken copy of the second guide, and `path:line:col` with text of each fault to expect."""
    folder = tmp_path / "guide"
    shutil.copytree(SECOND, folder)
    by_file = defaultdict(list)
    for case in cases:
        by_file[case.file].append(case)
    expected = []
    for name, wanted in by_file.items():
        text = (folder / name).read_text("utf-8")
        marks = {}
        for number, case in enumerate(wanted):
            assert text.count(case.old) >= 1, case
            mark = chr(0xE000 + number)  # private use: in no guide
            marks[mark] = case
            text = text.replace(case.old, case.new.replace("§", mark), 1)
        for mark, case in marks.items():
            before = "".join(c for c in text[: text.index(mark)] if c not in marks)
            line, column = before.count("\n") + 1, len(before) - before.rfind("\n")
            expected.append((f"{name}:{line}:{column}", case.what))
        clean = "".join(c for c in text if c not in marks)
        (folder / name).write_text(clean, "utf-8", newline="")
    return folder, expected


def said(folder: Path) -> list[str]:
    with pytest.raises(ContentError) as caught:
        read_guide(folder)
    return [str(fault) for fault in caught.value.faults]


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.file}-{case.what[:30]}")
def test_each_fault_says_its_place(tmp_path: Path, case: Case) -> None:
    folder, [(place, what)] = write(tmp_path, [case])
    lines = said(folder)
    assert any(line.startswith(f"{place}: ") and what in line for line in lines), lines


def test_one_run_tells_all_faults(tmp_path: Path) -> None:
    # Faults in the tables that define names would rightly change what else can be said.
    defining = {"needs.yaml", PROTOCOL, "device.yaml"}
    folder, expected = write(tmp_path, [case for case in CASES if case.file not in defining])
    lines = said(folder)
    for place, what in expected:
        assert any(line.startswith(f"{place}: ") and what in line for line in lines), (place, what)


def test_faults_are_sorted_by_path_and_line(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, CASES)
    faults = survey(folder).faults
    places = [(f.where.path, f.where.line or 0, f.where.column or 0) for f in faults]
    assert places == sorted(places)
    assert len(set(faults)) == len(faults)


@pytest.mark.parametrize(
    ("name", "content", "place"),
    [
        ("protocol.yaml", "a: [1\nb: 2\n", "protocol.yaml:2:2"),
        ("protocol.yaml", "a: 1\n---\nb: 2\n", "protocol.yaml:2:1"),
        ("protocol.yaml", "", "protocol.yaml:1:1"),
        ("protocol.yaml", "- 1\n", "protocol.yaml:1:1"),
        ("device.yaml", "a: &x [1]\nb: *x\n", "device.yaml:1:4"),
        ("device.yaml", "a: !!python/object:os.system x\n", "device.yaml:1:4"),
        ("device.yaml", "[" * 5000, "device.yaml:1:1001"),
        ("passages/hours/nights.md", "no front matter", "passages/hours/nights.md:1:1"),
        ("passages/hours/nights.md", "---\ntitle: 'x\n---\nBody\n", "passages/hours/nights.md:3:1"),
        ("passages/hours/Night Time.md", "---\n---\n", "passages/hours/Night Time.md:1:1"),
        ("passages/hour/x.md", "---\na: b\n---\n", "passages/hour/x.md:1:1"),
        ("passages/x.md", "---\na: b\n---\n", "passages/x.md:1:1"),
        ("passages/moving/nights.md", "---\na: b\n---\n", "passages/moving/nights.md:2:1"),
        ("wordings/hours.nigt.txt", "x\n", "wordings/hours.nigt.txt:1:1"),
        ("wordings/hours.night.txt", "fine\nhid\u200bden\n", "wordings/hours.night.txt:2:4"),
    ],
)
def test_broken_files(tmp_path: Path, name: str, content: str, place: str) -> None:
    folder, _ = write(tmp_path, [])
    (folder / name).parent.mkdir(exist_ok=True)
    (folder / name).write_text(content, "utf-8")
    assert any(line.startswith(f"{place}: ") for line in said(folder)), said(folder)


def test_bytes_that_are_not_text_are_placed(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    (folder / "clinic.yaml").write_bytes(b"name: x\nphone: \xe4\xff\n")
    assert any("clinic.yaml:2:8: the file is not UTF-8" in line for line in said(folder))


@pytest.mark.parametrize("name", ["needs.yaml", "clinic.yaml", "wordings/off-topic.txt"])
def test_a_missing_file_is_named_and_hides_nothing(tmp_path: Path, name: str) -> None:
    folder, _ = write(
        tmp_path, [Case("handson.yaml", "sleeve: padded", "sleeve: §paded", "not known")]
    )
    (folder / name).unlink()
    lines = said(folder)
    assert any(line.startswith(f"{name}: the file is missing") for line in lines)
    assert any(line.startswith("handson.yaml:4:") for line in lines)


def test_a_table_that_cannot_be_read_gives_no_echo(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    (folder / "protocol.yaml").write_text("numbers: [", "utf-8")
    assert len(said(folder)) == 1


def test_a_missing_number_of_the_plan_is_named(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / PROTOCOL
    path.write_text(path.read_text("utf-8").replace("  wear.rest:", "  wear.rset:"), "utf-8")
    assert any(
        "`wear.rest` (in `min`) is missing. Did you mean `wear.rset`?" in s for s in said(folder)
    )


@pytest.mark.parametrize(
    ("old", "new", "what"),
    [
        ("from_day: 1", "from_day: 2", "does not start on day 1"),
        ("from_day: 8", "from_month: 2", "does not start after `guarded`"),
        ("    from_day: 8\n", "", "has to start on a day or in a month"),
        ("{value: 8,     unit: h", '{value: "1/2", unit: h', "is less than"),
    ],
)
def test_a_course_that_cannot_be(tmp_path: Path, old: str, new: str, what: str) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / PROTOCOL
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), "utf-8")
    assert any(what in line for line in said(folder))


@pytest.mark.parametrize(
    ("name", "old", "new", "line"),
    [
        ("device.yaml", ", usual: true", "", "device.yaml:8:1: 0 sleeves are marked `usual`"),
        ("activities.yaml", "  always:", "  stages: {}\n  always:", "activities.yaml:2:3: the act"),
        (
            "activities.yaml",
            "    settling: {",
            "    guarded: {",
            "activities.yaml:13:3: the rule for",
        ),
        ("handson.yaml", "sleeve: winter", "sleeve: mesh", ""),
        (
            "fitcheck.yaml",
            '    - {label: "No", goes: "alert:foot-swollen"}\n',
            "",
            "fitcheck.yaml:3:3",
        ),
        (
            "clinic.yaml",
            "hours: Tuesday to Saturday, 9 to 16\n",
            "",
            "clinic.yaml:1:1: the key `hours`",
        ),
    ],
)
def test_what_is_missing(tmp_path: Path, name: str, old: str, new: str, line: str) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / name
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), "utf-8")
    if line:
        assert any(each.startswith(line) for each in said(folder)), said(folder)
    else:  # other steps hold for every sleeve
        assert survey(folder).faults == ()


def test_a_sleeve_without_any_step(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / "handson.yaml"
    text = path.read_text("utf-8")
    only = text.replace('reach over the edge."}', 'x", sleeve: mesh}').replace(
        'check: "The toes x', 'check: "x'
    )
    only = only.replace("part: dewclaw-guard", "sleeve: mesh").replace(
        "sleeve: winter", "sleeve: mesh"
    )
    path.write_text(only, "utf-8")
    assert [line for line in said(folder) if "no step for the sleeve" in line] == [
        "handson.yaml:1:1: `putting_on` has no step for the sleeve `winter`"
    ]


def test_two_passages_of_one_name_and_none(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    shutil.copy(folder / "passages/hours/nights.md", folder / "passages/moving/nights.md")
    assert any("the id `nights` is taken by passages/hours/nights.md" in s for s in said(folder))
    shutil.rmtree(folder / "passages")
    assert any(line.startswith("passages: there is no passage") for line in said(folder))


def test_half_an_hour_is_a_number_of_the_protocol_that_has_it(tmp_path: Path) -> None:
    text = "Wait half an hour. Turn back"
    folder, _ = write(tmp_path, [])
    path = folder / STAGES
    path.write_text(path.read_text("utf-8").replace("Turn back", text), "utf-8")
    assert survey(folder).faults == ()
    protocol = folder / PROTOCOL
    protocol.write_text(protocol.read_text("utf-8").replace("value: 45,", "value: 30,"), "utf-8")
    assert any("`half an hour` is a number of the protocol" in line for line in said(folder))


def test_day_1_is_a_name_and_no_number(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / STAGES
    path.write_text(path.read_text("utf-8").replace("Turn back", "From day 1 turn back"), "utf-8")
    assert survey(folder).faults == ()


@pytest.mark.parametrize(
    ("name", "old", "new", "warning"),
    [
        (STAGES, "Turn back when", "Back", ""),
        (STAGES, "Turn back", "Turn back " * 60 + "turn", STAGES + ":10:1: the text has"),
        (
            STAGES,
            "slowly and on a leash.",
            "slowly. On a leash. Always.",
            STAGES + ":4:1: `short` has 3",
        ),
        (STAGES, "slowly and on a leash.", "slowly", STAGES + ":4:1: `short` is not a full"),
        (STAGES, "[moving.outings]", "[hours.more]", STAGES + ":3:10: no need it answers belongs"),
        (
            "fitcheck.yaml",
            "goes: next}\n- key: cuff",
            'goes: "step:last"}\n- key: cuff',
            "fitcheck.yaml:1:1",
        ),
        (
            "wordings/hours.night.txt",
            "nights off?",
            "nights " * 80,
            "wordings/hours.night.txt:9:1",
        ),
        (
            "wordings/hours.night.txt",
            "nights off?",
            "bedtime and the support",
            "wordings/hours.night.txt:9:1: the line is here twice, first in line 8",
        ),
    ],
)
def test_warnings(tmp_path: Path, name: str, old: str, new: str, warning: str) -> None:
    folder, _ = write(tmp_path, [])
    path = folder / name
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), "utf-8")
    result = survey(folder)
    assert result.faults == ()
    lines = [str(each) for each in result.warnings]
    assert any(line.startswith(warning) for line in lines) if warning else not lines, lines


def test_a_need_without_wordings_is_a_warning(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    (folder / "wordings/hours.night.txt").unlink()
    (folder / "wordings/hours.more.txt").write_text("# nothing yet\n", "utf-8")
    result = survey(folder)
    assert result.guide is not None
    assert result.guide.wordings["hours.night"] == ()
    assert [str(w) for w in result.warnings] == [
        "wordings/hours.more.txt:1:1: the file holds no wording",
        "wordings/hours.night.txt: there are no wordings for `hours.night`",
    ]


def test_each_fault_is_said_once_in_order() -> None:
    late, early = (Fault(Where("a", line, 1), "x") for line in (10, 9))
    assert in_order([late, early, late]) == (early, late)


def test_a_remedy_names_what_is_near_or_the_whole_of_a_short_list() -> None:
    assert nearest("standart", ["standard", "extended"]) == "Did you mean `standard`?"
    assert nearest("zzz", ["b", "a"]) == "Known: a, b"
    assert nearest("zzz", [f"name-{n}" for n in range(13)]) == ""


def test_alert_targets_are_checked_when_the_signs_are_known() -> None:
    assert survey(SECOND, signs={"foot-swollen", "redness-stays"}).faults == ()
    [fault] = survey(SECOND, signs={"foot-swolen", "redness-stays"}).faults
    assert str(fault).startswith("fitcheck.yaml:5:27: there is no injury sign `foot-swollen`")


def test_a_hidden_character_in_a_file_name(tmp_path: Path) -> None:
    folder, _ = write(tmp_path, [])
    (folder / "wordings" / "a\x1b[1m.txt").write_text("x\n", "utf-8")
    assert [line for line in said(folder) if "hidden characters" in line] == [
        "'wordings/a\\x1b[1m.txt': the file name holds hidden characters. Rename it"
    ]
