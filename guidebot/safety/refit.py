"""Fit the wide net anew and ship it: `python -m guidebot.safety.refit content`.

To be run after every change of the rules, the lexicon, the reports or the look-alikes; takes some
minutes. Run `python tests/safety/freeze.py` and the tests before.
"""

from __future__ import annotations

import sys
from pathlib import Path

from guidebot.safety import net, sure, wide


def _lines(path: Path) -> list[str]:
    text = path.read_text(encoding="utf-8")
    return [line for line in text.splitlines() if line.strip() and not line.startswith("#")]


def _by_name(folder: Path) -> dict[str, list[str]]:
    return {path.stem: _lines(path) for path in sorted(folder.glob("*.txt"))}


def main(folder: Path) -> None:
    """Fit on the data and on the harmless lines of the guide in `folder`, and write `data/`."""
    follow_ups = [line.split("\t") for line in _lines(folder / "follow-ups.tsv")]
    lines = net.harmless(
        _by_name(folder / "wordings"),
        _by_name(folder / "leave"),
        [(before, need, text) for before, need, text in follow_ups],
    )
    data = Path(__file__).parent / "data"
    rows = [(True, wide.prepare(text)[1]) for *_, text in wide.read("reports")]
    rows += [(False, wide.prepare(text)[1]) for *_, text in wide.read("lookalikes")]
    rows += [(False, wide.prepare(text)[1]) for text in lines]
    (data / "sure.txt").write_text("\n".join(sure.measure(rows)) + "\n", encoding="utf-8")
    weights = wide.fit(lines, say=lambda what: print(what, file=sys.stderr))  # noqa: T201 - a script
    (data / "wide.bin").write_bytes(weights.dump())
    (data / "wide.lock").write_text(f"{net.print_of_inputs()}\n", encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
