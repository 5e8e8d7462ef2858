"""One writer of the kill test: adds diary days and says each one that was acknowledged.

Usage: writer.py STORE NAME. Prints `NAME N` after the store has returned from the N-th write.
"""

from __future__ import annotations

import sys
from datetime import date, timedelta
from pathlib import Path

from guidebot.cases.store import open_store
from guidebot.domain.case import Case, DiaryEntry


def main() -> None:
    path, name = Path(sys.argv[1]), sys.argv[2]
    start = date(2020, 1, 1)
    with open_store(path, busy_ms=30_000) as store:
        if not any(case.id == name for case in store.cases()):
            store.add(Case("", name, fitted=start))
        number = len(store.case(name).diary)
        while True:
            # Two rows in one transaction's worth of meaning: hours and note must stay together.
            entry = DiaryEntry(start + timedelta(days=number), 4.0, note=f"{name} {number}")
            store.note(name, entry)
            print(f"{name} {number}", flush=True)
            number += 1


if __name__ == "__main__":
    main()
