"""`guidebot ask --batch`: JSON lines in, JSON lines out, as a process."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent


def rows(*given: object) -> bytes:
    return b"".join(json.dumps(row).encode() + b"\n" for row in given)


def test_one_line_out_for_each_line_in(run) -> None:
    given = [{"id": str(n), "text": text} for n, text in enumerate(["can he swim", "", "hi"])]
    ran = run("ask", "--batch", "-", "--json", stdin=rows(*given))
    assert ran.code == 0
    assert [json.loads(line)["id"] for line in ran.out.splitlines()] == ["0", "1", "2"]
    assert ran.err == ""


def test_an_empty_batch(run) -> None:
    for stdin in (b"", b"\n\n  \n"):
        ran = run("ask", "--batch", "-", "--json", stdin=stdin)
        assert (ran.code, ran.out, ran.err) == (0, "", "")


def test_a_file_with_a_byte_order_mark_and_other_line_ends(run, tmp_path) -> None:
    path = tmp_path / "batch.jsonl"
    path.write_bytes(b'\xef\xbb\xbf{"id": "1", "text": "hi"}\r\n\r\n{"id": "2", "text": "hi"}')
    ran = run("ask", "--batch", str(path), "--json")
    assert ran.code == 0
    assert [json.loads(line)["id"] for line in ran.out.splitlines()] == ["1", "2"]


@pytest.mark.parametrize(
    "broken",
    [
        b"{",
        b"null",
        b"[]",
        b'"text"',
        b"{}",
        b'{"id": "2"}',
        b'{"text": null}',
        b'{"text": 5}',
        b'{"text": "x", "day": 0}',
        b'{"text": "x", "day": -1}',
        b'{"text": "x", "day": 1e3}',
        b'{"text": "x", "day": true}',
        b'{"text": "x", "day": "6"}',
        b'{"text": "x", "day": 99999999999999999999}',
        b'{"text": "x", "sleeve": 5}',
        b'{"text": "x", "id": {}}',
        b'{"text": "x", "conversation": []}',
        b"\xff\xfe",
        b"[" * 100_000,
        b'{"text": "\x1b[31m"}',
        b"\x00",
    ],
    ids=lambda b: ascii(b[:30]),
)
def test_a_broken_line_in_the_middle(run, broken: bytes) -> None:
    ran = run("ask", "--batch", "-", stdin=rows({"id": "1", "text": "hi"}) + broken + b"\n" + rows(
        {"id": "3", "text": "hi"}))  # fmt: skip
    assert ran.code == 2
    assert [json.loads(line)["id"] for line in ran.out.splitlines()] == ["1"]
    assert "batch:2: " in ran.err
    assert len(ran.err.splitlines()) == 1


def test_a_sleeve_nobody_knows_is_said_and_asked_for(run_second) -> None:
    row = {"text": "how tight should i close the cuff"}
    ran = run_second("ask", "--batch", "-", stdin=rows({**row, "sleeve": "long"}, row))
    assert ran.code == 0
    assert "batch:1: there is no sleeve 'long'" in ran.err
    asked, unsaid = ran.out.splitlines()
    assert asked == unsaid
    assert "Which sleeve" in json.loads(asked)["asks_back"]


def test_strange_text_in_a_batch(run) -> None:
    strange = ["\ud800", "\x00", "\u202e" * 9, "\x1b]0;x\x07", "a" * 1_000, "\u4e2d\u6587" * 50]
    ran = run("ask", "--batch", "-", stdin=rows(*({"id": t, "text": t} for t in strange)))
    assert ran.code == 0
    assert [json.loads(line)["id"] for line in ran.out.splitlines()] == strange
    assert ran.out.isascii()


def test_a_long_row_alerts(run) -> None:
    ran = run("ask", "--batch", "-", stdin=rows({"id": "1", "text": "wash " * 50_000}))
    assert ran.code == 0
    assert json.loads(ran.out)["alert"]["sign"] == "stop-and-call"


def test_a_reader_that_goes_away(run) -> None:
    command = [sys.executable, "-m", "guidebot", "ask", "--batch", "-"]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, cwd=ROOT
    ) as process:
        assert process.stdin
        assert process.stdout
        assert process.stderr
        process.stdout.close()
        process.stdin.write(rows(*[{"text": "can he swim"}] * 40))
        process.stdin.close()
        err = process.stderr.read()
        assert process.wait(120) == 0
    assert err == b""


def test_a_full_disk_is_no_traceback(run) -> None:
    if not os.path.exists("/dev/full"):  # noqa: PTH110 - a device, not a file
        pytest.skip("no /dev/full here")
    with open("/dev/full", "wb") as full:  # noqa: PTH123
        ended = subprocess.run(
            [sys.executable, "-m", "guidebot", "ask", "can he swim"],
            stdout=full,
            stderr=subprocess.PIPE,
            cwd=ROOT,
            check=False,
        )
    assert ended.returncode == 1
    assert b"Traceback" not in ended.stderr
    assert b"No space left" in ended.stderr
