"""Whatever is in a file, reading ends with a guide or with a ContentError."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from guidebot.errors import ContentError
from guidebot.guide.dirt import dirt
from guidebot.guide.faults import Faults
from guidebot.guide.marked import parse
from guidebot.guide.read import read_guide
from guidebot.text import clean

SECOND = Path(__file__).parent.parent / "fixtures" / "second_guide"
SLOW = settings(
    max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
PIECES = """a: b;- ;  ;{;};[;];&x ;*x;!!;<<: ;';";? ;: ;#;...;~;no;12:30;%YAML;é;{wear.target}
;title: ;answers: [;10 minutes;@;`;|;>-""".replace("\n", "").split(";")
YAML_PIECES = st.sampled_from([*PIECES, "\n", "---\n", "\t", "\0", "\x1b[1m"])


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    target = tmp_path_factory.mktemp("hostile") / "guide"
    shutil.copytree(SECOND, target)
    return target


def try_reading(folder: Path, name: str, data: bytes) -> None:
    path = folder / name
    before = path.read_bytes()
    path.write_bytes(data)
    try:
        read_guide(folder)
    except ContentError as error:
        caught = error
    else:
        return
    finally:
        path.write_bytes(before)
    assert caught.faults
    assert all(fault.where.path for fault in caught.faults)
    assert "\x1b" not in str(caught)


@SLOW
@given(st.binary(max_size=400))
def test_any_bytes_as_a_passage(folder: Path, data: bytes) -> None:
    try_reading(folder, "passages/hours/nights.md", data)
    try_reading(folder, "passages/hours/nights.md", b"---\n" + data + b"\n---\n" + data)


@SLOW
@given(st.lists(YAML_PIECES, max_size=40).map("".join))
def test_any_yaml_like_text_in_any_table(folder: Path, text: str) -> None:
    for name in ("protocol.yaml", "fitcheck.yaml", "vocabulary.yaml"):
        try_reading(folder, name, text.encode())
    try_reading(folder, "passages/hours/nights.md", f"---\n{text}\n---\n{text}".encode())


@given(st.text(max_size=200))
def test_dirt_is_what_cleaning_takes_away(text: str) -> None:
    # A text without dirt keeps every character but for spaces, line ends and composed forms.
    found = dirt(text)
    if found is None:
        assert "".join(clean(text).text.split()) == "".join(clean(text.strip()).text.split())
        assert clean(text).text.count("\n") <= text.count("\n")
    else:
        char = text[found.offset]
        assert clean(f"a{char}b").text in {"ab", "a\nb", "a"}


def test_a_nest_of_aliases_is_refused_at_once() -> None:
    rows = ["a0: &a0 [x, x]"] + [f"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]" for i in range(1, 40)]
    faults = Faults()
    parse("\n".join(rows), "x.yaml", faults)
    assert any("is repeated with" in fault.what for fault in faults.faults)
