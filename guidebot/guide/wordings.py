"""`wordings/*.txt` and `vocabulary.yaml` to values: how owners say it."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import texts
from guidebot.guide.marked import Table
from guidebot.text import clean, plain

CLASSES = ("off-topic", "courtesy")
"""Files of wordings of no need: what the guide does not answer, thanks and greetings."""

LEAVE_CLASSES = ("wear", "none")
"""Files of questions of leave beside the activities: hours of wear, and what asks no leave."""

LONGEST = 400
"""Characters; a longer line is rarely one wording."""


def read_wordings(
    sources: Mapping[str, str], needs: Collection[str] | None, faults: Faults
) -> dict[str, tuple[str, ...]]:
    """Read the wordings, one a line; empty lines and lines that start with `#` do not count.

    Args:
        sources: text of each file by path below the content folder.
        needs: known needs in order, None if they could not be read.
        faults: receives what is wrong.

    Returns:
        The lines by need in the order of the needs, then `off-topic` and `courtesy`. A need
        without a file has no lines and a warning.
    """
    found = _files(sources, "need", needs, CLASSES, faults)
    for key in CLASSES:
        if key not in found:
            faults.add(Where(f"wordings/{key}.txt"), "the file is missing", "Every guide has it")
    for key in needs or ():
        if key not in found:
            faults.warn(Where(f"wordings/{key}.txt"), f"there are no wordings for `{key}`")
    order = [*(needs if needs is not None else sorted(set(found) - set(CLASSES))), *CLASSES]
    return {key: found.get(key, ()) for key in order}


def read_leave(
    sources: Mapping[str, str], activities: Collection[str] | None, faults: Faults
) -> dict[str, tuple[str, ...]]:
    """Read the questions of permission and amount, one a line, as for `read_wordings`.

    Args:
        sources: text of each file by path below the content folder; a guide may have none.
        activities: known activities in order, None if they could not be read.
        faults: receives what is wrong.

    Returns:
        The lines by activity, then `wear` and `none`; empty without any file.
    """
    found = _files(sources, "activity", activities, LEAVE_CLASSES, faults)
    if not found:
        return {}
    for key in (*(activities or ()), *LEAVE_CLASSES):
        if key not in found:
            faults.warn(Where(f"leave/{key}.txt"), f"there are no questions of leave for `{key}`")
    return {key: lines for key, lines in found.items() if lines}


def read_follow_ups(
    sources: Mapping[str, str], needs: Collection[str] | None, faults: Faults
) -> tuple[tuple[str, str, str], ...]:
    """Read authored follow-ups: need of the turn before, need, text, with tabs between.

    Args:
        sources: text of the file by its path, empty if the guide has none.
        needs: known needs, None if they could not be read.
        faults: receives what is wrong.
    """
    found: list[tuple[str, str, str]] = []
    for name, text in sources.items():
        for number, raw in enumerate(text.split("\n"), 1):
            if not raw.strip() or raw.startswith("#"):
                continue
            parts = [part.strip() for part in raw.split("\t")]
            if len(parts) != 3 or not parts[2]:
                faults.add(
                    Where(name, number, 1),
                    "the line is not two needs and a follow-up",
                    "Write need of the turn before, need and text, with one tab between",
                )
                continue
            for key in parts[:2]:
                if needs is not None and key not in needs:
                    what = f"there is no need `{key}`"
                    faults.add(Where(name, number, 1), what, nearest(key, list(needs)))
            found.append((parts[0], parts[1], clean(parts[2]).text))
    return tuple(found)


def _files(
    sources: Mapping[str, str],
    what: str,
    known: Collection[str] | None,
    classes: Collection[str],
    faults: Faults,
) -> dict[str, tuple[str, ...]]:
    """The lines of files that are each named after a key, or one of `classes`."""
    found: dict[str, tuple[str, ...]] = {}
    for name in sorted(sources):
        key = name.rpartition("/")[2].removesuffix(".txt")
        if known is not None and key not in known and key not in classes:
            faults.add(
                Where(name, 1, 1),
                f"the file is named after no {what}: `{key}`",
                nearest(key, [*known, *classes]),
            )
            continue
        found[key] = _lines(name, sources[name], faults)
    return found


def _lines(name: str, text: str, faults: Faults) -> tuple[str, ...]:
    found: dict[str, int] = {}
    straight = text.isascii()
    for number, raw in enumerate(text.split("\n"), 1):
        line = raw.strip() if straight else clean(raw).text
        if not line or line.startswith("#"):
            continue
        if len(line) > LONGEST:
            faults.warn(Where(name, number, 1), f"the line is longer than {LONGEST} characters")
        first = found.setdefault(line, number)
        if first != number:
            faults.warn(Where(name, number, 1), f"the line is here twice, first in line {first}")
    if not found:
        faults.warn(Where(name, 1, 1), "the file holds no wording")
    return tuple(found)


def read_vocabulary(root: Table, faults: Faults) -> dict[str, str]:
    """Read `vocabulary.yaml`.

    Args:
        root: its tree: the guide's word to a list of owners' words and phrases.
        faults: receives what is wrong.

    Returns:
        Owners' word or phrase to the guide's word, both in plain small letters.
    """
    found: dict[str, str] = {}
    places: dict[str, Where] = {}
    guide_words = {plain(key) for key in root.entries}
    for key, node in root.entries.items():
        word = plain(key)
        for written in texts(node, faults, f"`{key}`"):
            owner = plain(written)
            where = root.keys[key].where
            if owner == word:
                faults.add(where, f"`{owner}` stands for itself")
            elif owner in guide_words:
                faults.add(
                    where,
                    f"`{owner}` is an owners' word here and a guide word elsewhere",
                    "One step has to lead to the guide's word",
                )
            elif owner in found and found[owner] != word:
                faults.add(
                    where,
                    f"`{owner}` stands for `{found[owner]}` already (line {places[owner].line})",
                    "Keep it where it always fits",
                )
            else:
                found[owner] = word
                places[owner] = where
    return found
