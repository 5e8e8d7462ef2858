"""Fit the wide net anew and ship it: `python -m guidebot.safety.refit content/wordings`.

To be run after every change of the rules, the lexicon, the reports or the look-alikes; takes some
minutes. Run `python tests/safety/freeze.py` and the tests before.
"""

from __future__ import annotations

import sys
from pathlib import Path

from guidebot.safety import net, sure, wide


def main(folder: Path) -> None:
    """Fit on the wordings in `folder` (one file a need, one line a wording) and write `data/`."""
    wordings = {
        path.stem: tuple(
            line
            for line in path.read_text(encoding="utf-8").splitlines()
            if line.strip() and not line.startswith("#")
        )
        for path in sorted(folder.glob("*.txt"))
    }
    data = Path(__file__).parent / "data"
    rows = [(True, wide.prepare(text)[1]) for *_, text in wide.read("reports")]
    rows += [(False, wide.prepare(text)[1]) for *_, text in wide.read("lookalikes")]
    rows += [(False, wide.prepare(text)[1]) for text in net.harmless(wordings)]
    (data / "sure.txt").write_text("\n".join(sure.measure(rows)) + "\n", encoding="utf-8")
    weights = net.refit(wordings, lambda what: print(what, file=sys.stderr))  # noqa: T201 - a script
    (data / "wide.bin").write_bytes(weights.dump())
    (data / "wide.lock").write_text(f"{net.print_of_inputs()}\n", encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
