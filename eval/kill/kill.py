"""Kill -9 in the middle of writes: two writers, N rounds; nothing acknowledged may be lost.

Usage: kill.py [ROUNDS]. Prints the figures; exit code 1 if anything was lost or damaged.
This shows the death of a process, not a power cut.
"""

from __future__ import annotations

import random
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from guidebot.cases.engine import journal_mode
from guidebot.cases.store import open_store

WRITERS = ("alpha", "beta")


def one_round(path: Path, seconds: float) -> dict[str, int]:
    """Start both writers, kill both after `seconds`; the last acknowledged number of each."""
    script = str(Path(__file__).with_name("writer.py"))
    running = {
        name: subprocess.Popen(
            [sys.executable, script, str(path), name], stdout=subprocess.PIPE, text=True
        )
        for name in WRITERS
    }
    # The clock starts when both have written: the kill must fall among writes, not imports.
    first = {name: process.stdout.readline() for name, process in running.items()}  # type: ignore[union-attr]
    time.sleep(seconds)
    for process in running.values():
        process.send_signal(signal.SIGKILL)
    last: dict[str, int] = {}
    for name, process in running.items():
        rest, _ = process.communicate()
        lines = [line for line in (first[name] + rest).split("\n") if line.startswith(name)]
        whole = [line for line in lines if line.split(" ")[-1].isdigit()]
        if whole:
            last[name] = int(whole[-1].split(" ")[1])
    return last


def check(path: Path, last: dict[str, int]) -> list[str]:
    """What is wrong with the store after a round; [] if nothing is."""
    faults: list[str] = []
    raw = sqlite3.connect(path)
    if (said := raw.execute("PRAGMA integrity_check").fetchone()[0]) != "ok":
        faults.append(f"integrity: {said}")
    if raw.execute("PRAGMA foreign_key_check").fetchall():
        faults.append("foreign keys")
    raw.close()
    with open_store(path) as store:
        for name, number in last.items():
            notes = {entry.note for entry in store.case(name).diary}
            lost = [n for n in range(number + 1) if f"{name} {n}" not in notes]
            if lost:
                faults.append(f"{name}: acknowledged days lost: {lost[:5]}")
    return faults


def run(rounds: int, seed: int = 7, folder: Path | None = None) -> tuple[int, int, list[str]]:
    """All rounds on one store: kills, acknowledged writes, faults."""
    chance = random.Random(seed)
    with tempfile.TemporaryDirectory(dir=folder) as temporary:
        path = Path(temporary) / "cases.db"
        faults: list[str] = []
        last: dict[str, int] = {}
        for _ in range(rounds):
            last |= one_round(path, chance.uniform(0.0, 0.12))
            faults += check(path, last)
    return rounds * len(WRITERS), sum(n + 1 for n in last.values()), faults


if __name__ == "__main__":
    kills, written, faults = run(int(sys.argv[1]) if len(sys.argv) > 1 else 40)
    print(f"journal {journal_mode()}, SQLite {sqlite3.sqlite_version}")
    print(f"kills {kills}, acknowledged writes {written}, faults {len(faults)}")
    for fault in faults:
        print(f"  {fault}")
    sys.exit(1 if faults else 0)
