"""The command and the guide: broken folders, damaged caches, the other commands, Ctrl-C."""

from __future__ import annotations

import contextlib
import os
import re
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from guidebot import blob
from guidebot.reply import compiled as opening
from guidebot.safety import compiled as safety

ROOT = Path(__file__).resolve().parent.parent.parent
SECOND = ROOT / "tests" / "fixtures" / "second_guide"
PLACE = re.compile(r"passages/fastening/cuff-mesh\.md:\d+:\d+: ")


def caches(folder: Path) -> list[Path]:
    return sorted(folder.glob("guide-*.bin"))


@pytest.mark.parametrize("command", [["ask", "x"], ["show", "x"], ["topics"], ["check"]])
def test_no_such_folder(run, command: list[str], tmp_path: Path) -> None:
    ran = run("--content", str(tmp_path / "none"), *command)
    assert (ran.code, ran.out) == (4, "")
    assert "there is no such folder" in ran.err
    assert len(ran.err.splitlines()) == 1


def test_an_empty_folder_and_a_file(run, tmp_path: Path) -> None:
    assert run("--content", str(tmp_path), "ask", "x").code == 4
    (tmp_path / "file").write_text("x")
    ran = run("--content", str(tmp_path / "file"), "ask", "x")
    assert (ran.code, "is not a folder" in ran.err) == (4, True)


@pytest.mark.parametrize(
    "broken",
    [
        lambda text: text.replace("title:", "titel:"),
        lambda text: text.replace("{cuff.room}", "{cuff.rom}"),
        lambda text: text.replace("[nights]", "[nihgts]"),
        lambda text: text.replace("fastening.cuff", "fastening.cuf"),
        lambda text: text.replace("sleeve: mesh", "sleeve: mseh"),
        lambda text: text.replace("title:", "title: twice\ntitle:"),
        lambda text: text.replace("2026-11-01", "2026-02-30"),
        lambda text: text.replace("answers: [", "answers: ["[:-1] + "{"),
    ],
    ids=["key", "number", "see", "need", "sleeve", "twice", "date", "yaml"],
)
def test_a_broken_passage(run, second, copied: Path, broken) -> None:
    path = copied / "passages" / "fastening" / "cuff-mesh.md"
    path.write_text(broken(path.read_text(encoding="utf-8")), encoding="utf-8")
    ran = run("--content", str(copied), "ask", "digging")
    assert (ran.code, ran.out) == (4, "")
    assert PLACE.search(ran.err), ran.err
    checked = run("--content", str(copied), "check")
    assert checked.code == 4
    assert PLACE.search(checked.err), checked.err


def test_all_faults_at_once(run, second, copied: Path) -> None:
    for name in ("cuff-mesh", "cuff-padded", "dewclaw"):
        path = copied / "passages" / "fastening" / f"{name}.md"
        path.write_text(path.read_text(encoding="utf-8").replace("title:", "titel:"))
    ran = run("--content", str(copied), "ask", "digging")
    assert {"cuff-mesh.md", "cuff-padded.md", "dewclaw.md"} <= set(
        re.findall(r"[\w-]+\.md", ran.err)
    )


@pytest.mark.parametrize("raw", [b"\xff\xfe\x00", b"\x00" * 50, b"\x1b[31m" * 9], ids=ascii)
def test_a_passage_of_garbage(run, second, copied: Path, raw: bytes) -> None:
    (copied / "passages" / "fastening" / "cuff-mesh.md").write_bytes(raw)
    ran = run("--content", str(copied), "ask", "digging")
    assert (ran.code, ran.out) == (4, "")
    assert "cuff-mesh.md" in ran.err


# ------------------------------------------------------------------------------------ the cache


def test_a_cache_that_cannot_be_written_only_costs_time(run_second, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("no folder")
    ran = run_second("ask", "my dog is digging holes", GUIDEBOT_CACHE=str(tmp_path / "file" / "x"))
    assert ran.code == 0
    assert "Do not let the dog dig" in ran.out
    assert ran.err == ""


@pytest.mark.parametrize("folder", ["/proc/none", "/dev/null", "/dev/null/x"])
def test_writing_where_nothing_can_be_written(monkeypatch: pytest.MonkeyPatch, folder: str) -> None:
    monkeypatch.setenv("GUIDEBOT_CACHE", folder)
    opening._to_cache("0" * 24, b"data")
    assert opening._from_cache("0" * 24) is None


def own_cache(folder: Path) -> Path:
    """A copy of the compiled small guide."""
    folder.mkdir(parents=True)
    name = f"guide-{opening.folder_print(SECOND)}.bin"
    return Path(shutil.copy2(opening.cache_folder() / name, folder))


def test_no_home_at_all(run_second, tmp_path: Path) -> None:
    path = own_cache(tmp_path / "guidebot")
    before = path.stat().st_mtime_ns
    homeless = {"GUIDEBOT_CACHE": None, "HOME": None, "XDG_CACHE_HOME": str(tmp_path)}
    ran = run_second("ask", "my dog is digging holes", **homeless)
    assert ran.code == 0
    assert path.stat().st_mtime_ns == before
    assert caches(path.parent) == [path], "it was found, not made anew"


def cut(raw: bytes, at: int, put: bytes) -> bytes:
    return raw[:at] + put + raw[at + len(put) :]


DAMAGES: dict[str, Callable[[bytes], bytes]] = {
    "empty": lambda raw: b"",
    "garbage": lambda raw: os.urandom(5_000),
    "head only": lambda raw: raw[:12],
    "cut short": lambda raw: raw[:-1_000],
    "half": lambda raw: raw[: len(raw) // 2],
    "a bit in the middle": lambda raw: cut(raw, len(raw) // 2, bytes([raw[len(raw) // 2] ^ 1])),
    "a bit in the table": lambda raw: cut(raw, 40, bytes([raw[40] ^ 1])),
    "a page of zeros": lambda raw: cut(raw, len(raw) // 3, bytes(4_096)),
}


@pytest.mark.parametrize("how", DAMAGES)
def test_damage_is_noticed(
    second, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, how: str
) -> None:
    path = own_cache(tmp_path / "cache")
    name = path.stem.removeprefix("guide-")
    monkeypatch.setenv("GUIDEBOT_CACHE", str(path.parent))
    monkeypatch.setattr(safety, "_current", [])
    assert opening._from_cache(name) is not None
    path.write_bytes(DAMAGES[how](path.read_bytes()))
    assert opening._from_cache(name) is None


@pytest.mark.parametrize("how", ["half", "a bit in the middle"])
def test_a_damaged_cache_is_made_anew(run_second, tmp_path: Path, how: str) -> None:
    path = own_cache(tmp_path / "cache")
    whole = path.read_bytes()
    question = ("ask", "my dog is digging holes")
    first = run_second(*question, GUIDEBOT_CACHE=str(path.parent))
    assert path.read_bytes() == whole, "the cache was used"
    path.write_bytes(DAMAGES[how](whole))
    assert run_second(*question, GUIDEBOT_CACHE=str(path.parent)) == first
    assert blob.unpack(path.read_bytes()).keys() == blob.unpack(whole).keys()
    assert caches(path.parent) == [path]


@pytest.mark.parametrize("section", ["guide", "need-linear", "words", "rules", "net"])
def test_every_section_is_checked(section: str, second, tmp_path: Path) -> None:
    raw = bytearray(own_cache(tmp_path / "cache").read_bytes())
    inside = bytes(blob.unpack(bytes(raw))[section])
    at = raw.find(inside[: 1 << 12]) + len(inside) // 2
    raw[at] ^= 0x10
    with pytest.raises(ValueError, match="damaged"):
        blob.unpack(bytes(raw))


def test_a_changed_file_is_seen(copied: Path) -> None:
    prints = {opening.folder_print(copied)}
    path = copied / "passages" / "moving" / "digging.md"
    path.write_text(path.read_text().replace("Do not let", "Never let"))
    prints.add(opening.folder_print(copied))
    path.rename(path.with_name("dig.md"))
    prints.add(opening.folder_print(copied))
    (copied / "wordings" / "new.need.txt").write_text("a line\n")
    prints.add(opening.folder_print(copied))
    assert len(prints) == 4


def test_only_a_few_compiled_guides_are_kept(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("GUIDEBOT_CACHE", str(tmp_path))
    for number in range(9):
        opening._to_cache(f"{number:024}", b"data")
    assert len(caches(tmp_path)) <= 5
    assert tmp_path / f"guide-{8:024}.bin" in caches(tmp_path)


# --------------------------------------------------------------------------------- other commands


@pytest.mark.parametrize(
    ("typed", "meant"),
    [("aks", "ask"), ("chek", "check"), ("shwo", "show"), ("topic", "topics"), ("evla", "eval")],
)
def test_an_unknown_command_names_the_nearest(run, typed: str, meant: str) -> None:
    ran = run(typed, "x")
    assert (ran.code, ran.out) == (2, "")
    assert f"Did you mean {meant}?" in ran.err


def test_a_command_like_no_other(run) -> None:
    ran = run("\x1b[31mzzzz")
    assert (ran.code, ran.out) == (2, "")
    assert "guidebot --help" in ran.err


def test_no_command_and_no_terminal(run) -> None:
    ran = run()
    assert ran.code == 2
    assert "Usage: guidebot" in ran.out + ran.err


def test_show(run) -> None:
    listed = run("topics")
    assert listed.code == 0
    key = re.search(r"^  ([\w-]+): ", listed.out, re.M)
    assert key
    shown = run("show", key[1])
    assert (shown.code, shown.err) == (0, "")
    assert "Source: passages/" in shown.out
    assert "Reviewed: " in shown.out
    assert "Caution: " in shown.out
    near = run("show", key[1][:-1] + "\x1b[31m")
    assert (near.code, near.out) == (2, "")
    assert f"Did you mean {key[1]}?" in near.err


def test_topics_that_are_not_there(run) -> None:
    ran = run("topics", "\x1b[31mnone")
    assert (ran.code, ran.out) == (2, "")
    assert "Topics: " in ran.err


def test_eval_without_sets(run_second, tmp_path: Path) -> None:
    ran = run_second("eval", "--sets", str(tmp_path / "none"))
    assert (ran.code, ran.out) == (2, "")
    assert str(tmp_path / "none") in ran.err


def test_version_and_help(run) -> None:
    assert run("--version").out.startswith("guidebot, version ")
    assert run("--help").out.startswith("Usage: guidebot")


def test_a_closed_pipe_in_the_middle(run) -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "guidebot", "topics"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        cwd=ROOT,
    ) as process:
        assert process.stdout
        assert process.stderr
        process.stdout.close()
        err = process.stderr.read()
        assert process.wait(120) == 0
    assert err == b""


PTY = pytest.mark.skipif(not hasattr(os, "openpty"), reason="pseudo terminals of POSIX")


@PTY
def test_interrupted(tmp_path: Path) -> None:
    """Ctrl-C while the guide is being compiled: code 130, a word, and no half cache."""
    cache = tmp_path / "cache"
    master, slave = os.openpty()
    with subprocess.Popen(
        [sys.executable, "-m", "guidebot", "ask", "can he swim"],
        stdin=slave,
        stdout=subprocess.PIPE,
        stderr=slave,
        cwd=ROOT,
        env={**os.environ, "GUIDEBOT_CACHE": str(cache)},
    ) as process:
        said = b""
        while b"questions: " not in said:
            said += os.read(master, 65_536)
        process.send_signal(signal.SIGINT)
        out, _ = process.communicate(timeout=120)
    os.close(slave)
    said = read_all(master)
    assert process.returncode == 130
    assert out == b""
    assert b"Stopped." in said
    assert b"Traceback" not in said
    assert not cache.exists() or not list(cache.iterdir())


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
def test_interrupted_while_it_waits_for_a_question(run) -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "guidebot", "ask", "--batch", "-"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        cwd=ROOT,
    ) as process:
        assert process.stdin
        assert process.stdout
        process.stdin.write(b'{"text": "hi"}\n' * 2_000)  # more than is read ahead
        process.stdin.flush()
        assert process.stdout.readline()
        process.send_signal(signal.SIGINT)
        _, err = process.communicate(timeout=120)
    assert process.returncode == 130
    assert b"Traceback" not in err


@PTY
def test_progress_on_a_terminal_leaves_a_clean_line(second, copied: Path, tmp_path: Path) -> None:
    master, slave = os.openpty()
    with subprocess.Popen(
        [sys.executable, "-m", "guidebot", "--content", str(copied), "ask", "digging holes"],
        stdin=slave,
        stdout=subprocess.PIPE,
        stderr=slave,
        cwd=ROOT,
        env={**os.environ, "GUIDEBOT_CACHE": str(tmp_path / "cache")},
    ) as process:
        out, _ = process.communicate(timeout=120)
    os.close(slave)
    said = read_all(master)
    assert b"Preparing the guide (once): reading the guide" in said
    assert said.endswith(b"\r" + b" " * 78 + b"\r")
    assert b"Preparing" not in out


def read_all(master: int) -> bytes:
    said = b""
    with contextlib.suppress(OSError):  # Linux says EIO at the end
        while piece := os.read(master, 65_536):
            said += piece
    os.close(master)
    return said
