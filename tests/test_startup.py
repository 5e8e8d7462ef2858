"""What a plain `ask` loads: the import list is held, not the clock."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

from guidebot.reply.compiled import Compiled

FORBIDDEN = {"numpy", "nltk", "sqlalchemy", "textual", "yaml", "rich", "sqlite3", "scipy"}
CODE = """
import sys
from guidebot.cli.main import main
try:
    main(sys.argv[1:])
except SystemExit:
    pass
import json
print(json.dumps(sorted({name.split(".")[0] for name in sys.modules})), file=sys.stderr)
"""


@pytest.mark.parametrize(
    "arguments",
    [["--help"], ["ask", "how tight should the heel strap be"], ["ask", "cna he swimm, day 6"]],
)
def test_light_path(arguments: list[str], compiled: Compiled) -> None:
    run = subprocess.run(
        [sys.executable, "-c", CODE, *arguments], capture_output=True, text=True, check=True
    )
    loaded = set(json.loads(run.stderr.splitlines()[-1]))
    assert run.stdout
    assert not FORBIDDEN & loaded


def test_importing_the_package_loads_nothing_else() -> None:
    run = subprocess.run(
        [sys.executable, "-c", "import guidebot, sys; print(*sys.modules)"],
        capture_output=True,
        text=True,
        check=True,
    )
    own = {name for name in run.stdout.split() if name.startswith("guidebot")}
    assert own == {"guidebot"}
