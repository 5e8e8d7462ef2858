"""Question sets with judgments: JSON lines, one file for each author, split by author."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from guidebot.errors import EvaluationError, Where

SPLITS = ("dev", "test")


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a set.

    Attributes:
        key: unique in its file.
        author: who wrote it.
        text: the message.
        more: everything else on the line.
    """

    key: str
    author: str
    text: str
    more: Mapping[str, Any]


def find_sets(folder: Path | None = None) -> Path:
    """The folder of sets: the one named, else `eval` beside the checkout.

    Raises:
        EvaluationError: there is none.
    """
    found = folder or Path(__file__).resolve().parent.parent.parent / "eval"
    if not (found / "splits.json").is_file():
        raise EvaluationError(
            "no question sets were found",
            where=Where(str(found)),
            remedy="Name the folder that holds splits.json with --sets",
        )
    return found


def read_set(folder: Path, name: str, split: str) -> list[Row]:
    """All rows of the set `name` (`questions`, `offtopic`, ...) by the authors of one split.

    Args:
        folder: from `find_sets`.
        name: folder of the set.
        split: one of `SPLITS`, or `all`.

    Raises:
        EvaluationError: a file is missing or a line is not what it should be.
    """
    splits = json.loads((folder / "splits.json").read_text(encoding="utf-8"))
    rows: list[Row] = []
    for path in sorted((folder / name).glob("*.jsonl")):
        if split not in ("all", splits.get(path.stem)):
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1):
            if line.strip():
                rows += _rows(path, number, line)
    return rows


def _rows(path: Path, number: int, line: str) -> list[Row]:
    where = Where(str(path), number)
    try:
        value = json.loads(line)
    except ValueError as error:
        raise EvaluationError(
            f"not a line of JSON: {error}", where=where, remedy="Write one object a line"
        ) from error
    if not isinstance(value, dict):
        raise EvaluationError("not a JSON object", where=where, remedy="Write one object a line")
    author = path.stem
    if "turns" in value:
        return [
            Row(f"{value['conversation']}#{at}", author, turn["text"], {**turn, "turn": at} | value)
            for at, turn in enumerate(value["turns"])
        ]
    if not isinstance(value.get("text"), str):
        raise EvaluationError("no `text` on this line", where=where, remedy="Add it")
    return [Row(str(value.get("id", number)), author, value["text"], value)]
