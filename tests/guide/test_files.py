"""Finding a guide and its hash."""

from __future__ import annotations

import hashlib
import shutil
from pathlib import Path

import pytest

from guidebot.errors import ContentError
from guidebot.guide import files
from guidebot.guide.read import content_hash, find_content, read_guide

ROOT = Path(__file__).parent.parent.parent
SECOND = ROOT / "tests" / "fixtures" / "second_guide"


def test_a_named_folder_wins(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv(files.ENVIRONMENT, str(tmp_path))
    assert find_content(SECOND) == SECOND
    assert find_content() == tmp_path
    monkeypatch.delenv(files.ENVIRONMENT)
    assert find_content() == ROOT / "content"


@pytest.mark.parametrize("make", [False, True])
def test_what_is_no_folder_is_refused(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, make: bool
) -> None:
    path = tmp_path / "x"
    if make:
        path.write_text("a file")
    with pytest.raises(ContentError, match="folder"):
        find_content(path)
    monkeypatch.setenv(files.ENVIRONMENT, str(path))
    with pytest.raises(ContentError, match=files.ENVIRONMENT):
        find_content()


def test_the_hash_is_that_of_names_and_bytes() -> None:
    contents = {"b": b"2", "a": b"1"}
    by_hand = hashlib.sha256(b"a\x001\x001" + b"b\x001\x002").hexdigest()[:12]
    assert files.guide_hash(contents) == by_hand
    assert files.guide_hash({"a": b"1", "b": b"2"}) == by_hand
    assert files.guide_hash({"a": b"12", "b": b""}) != by_hand


def test_the_stamp_follows_every_file(tmp_path: Path) -> None:
    folder = tmp_path / "guide"
    shutil.copytree(SECOND, folder)
    before = content_hash(folder)
    stamp = read_guide(folder).stamp
    assert (stamp.version, stamp.hash) == ("0.2", before)
    seen = {before}
    for path in files.files_of(folder).values():
        path.write_bytes(path.read_bytes() + b"\n")
        seen.add(content_hash(folder))
    assert len(seen) == 1 + len(files.files_of(folder))


def test_notes_and_backups_are_no_part_of_the_guide(tmp_path: Path) -> None:
    folder = tmp_path / "guide"
    shutil.copytree(SECOND, folder)
    before = content_hash(folder)
    (folder / "passages" / "hours" / ".#nights.md").write_text("x")
    (folder / "passages" / "hours" / "nights.md~").write_text("x")
    (folder / "notes.txt").write_text("x")
    assert content_hash(folder) == before
    read_guide(folder)


def test_line_ends_and_byte_order_mark_do_not_matter(tmp_path: Path) -> None:
    folder = tmp_path / "guide"
    shutil.copytree(SECOND, folder)
    for path in files.files_of(folder).values():
        path.write_bytes(b"\xef\xbb\xbf" + path.read_bytes().replace(b"\n", b"\r\n"))
    changed, original = read_guide(folder), read_guide(SECOND)
    assert changed.passages == original.passages
    assert changed.wordings == original.wordings
    assert changed.fit_check == original.fit_check


def test_a_file_too_large_is_a_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(files, "MAX_BYTES", 1000)
    with pytest.raises(ContentError) as caught:
        read_guide(SECOND)
    assert any("larger than 1000 bytes" in fault.what for fault in caught.value.faults)
