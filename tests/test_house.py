"""The house: dependencies point down, and every package is installed."""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "guidebot"
RANK = {
    "errors": 0,
    "lazy": 0,
    "text": 0,
    "blob": 1,
    "domain": 1,
    "linear": 1,
    "guide": 2,
    "plan": 2,
    "safety": 2,
    "search": 2,
    "reply": 3,
    "cases": 3,
    "render": 4,
    "evaluate": 4,
    "report": 5,
    "desk": 5,
    "cli": 6,
    "tui": 6,
}
DOORS = {
    # The launcher opens the terminal face; the face has no other door.
    ("guidebot/cli/main.py", "tui"),
    # The plain loop walks through the same forms, steps and fit check, without textual.
    ("guidebot/cli/chat.py", "tui"),
    # Both faces say in the same words what a dog's day holds.
}
LAZY = {"nltk", "numpy", "sqlalchemy", "textual", "yaml"}


def imports(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            if node.module == "guidebot":
                yield from (f"guidebot.{alias.name}" for alias in node.names)
            else:
                yield node.module


def modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


@pytest.mark.parametrize("path", modules(), ids=lambda p: str(p.relative_to(PACKAGE)))
def test_imports_point_down(path: Path) -> None:
    own = path.relative_to(PACKAGE).with_suffix("").parts[0]
    if own not in RANK:  # __init__ and __main__ only hand on
        return
    for name in imports(path):
        parts = name.split(".")
        if parts[0] != "guidebot" or len(parts) == 1:
            continue
        other = parts[1]
        if other in (own, "__version__") or (str(path.relative_to(ROOT)), other) in DOORS:
            continue
        assert RANK[other] < RANK[own], f"{own} must not import {other}"


def test_every_package_is_installed() -> None:
    with (ROOT / "pyproject.toml").open("rb") as file:
        named = set(tomllib.load(file)["tool"]["setuptools"]["packages"])
    found = {".".join(p.parent.relative_to(ROOT).parts) for p in PACKAGE.rglob("__init__.py")}
    assert named == found | {"guidebot.content"}


@pytest.mark.parametrize("path", modules(), ids=lambda p: str(p.relative_to(PACKAGE)))
def test_heavy_packages_are_imported_late(path: Path) -> None:
    if "tui" in path.parts:
        return
    for node in ast.parse(path.read_text(encoding="utf-8")).body:
        names = (
            [alias.name for alias in node.names]
            if isinstance(node, ast.Import)
            else [node.module or ""]
            if isinstance(node, ast.ImportFrom)
            else []
        )
        assert not LAZY & {name.split(".")[0] for name in names}, path
