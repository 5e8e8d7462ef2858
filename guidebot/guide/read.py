"""One content folder to one `Guide`, strictly, with every fault of every file in one run."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from pathlib import Path

from guidebot.domain.answer import Stamp
from guidebot.domain.guide import FitStep, Guide
from guidebot.errors import ContentError, Fault, Where
from guidebot.guide.activities import read_activities
from guidebot.guide.device import read_clinic, read_device
from guidebot.guide.faults import Faults
from guidebot.guide.fields import as_table
from guidebot.guide.files import (
    TABLES,
    content_hash,
    decode,
    files_of,
    find_content,
    guide_hash,
    read_bytes,
)
from guidebot.guide.fill import Filler
from guidebot.guide.known import Known
from guidebot.guide.marked import Node, Table, parse
from guidebot.guide.needs import read_needs
from guidebot.guide.numbers import read_protocol
from guidebot.guide.passages import read_passages
from guidebot.guide.steps import read_fit_check, read_hands_on
from guidebot.guide.wordings import read_follow_ups, read_leave, read_vocabulary, read_wordings

__all__ = ["Survey", "content_hash", "find_content", "read_guide", "survey"]


@dataclass(frozen=True, slots=True)
class Survey:
    """What reading a folder gave.

    Attributes:
        guide: the guide, None if there is any fault.
        faults: all that makes the guide unusable, by path and line.
        warnings: what somebody should look at, by path and line.
    """

    guide: Guide | None
    faults: tuple[Fault, ...]
    warnings: tuple[Fault, ...]


def read_guide(folder: Path) -> Guide:
    """Read the guide.

    Args:
        folder: the content folder (`find_content`).

    Returns:
        The guide; it is complete and free of faults.

    Raises:
        ContentError: with all faults of all files, sorted by path and line.
    """
    result = survey(folder)
    if result.guide is None:
        count = len(result.faults)
        raise ContentError(
            f"the guide has {count} fault{'s' if count != 1 else ''}",
            where=Where(str(folder)),
            remedy="Nothing was read from it",
            faults=result.faults,
        )
    return result.guide


def survey(folder: Path, *, signs: Collection[str] | None = None) -> Survey:
    """Read a content folder and tell everything that is wrong with it.

    A file that cannot be read silences the checks that depend on it: one fault, one message.

    Args:
        folder: the content folder.
        signs: keys of the injury signs; given, the fit check's `alert:` targets are checked.
    """
    faults = Faults()
    source = _Source(folder, faults)
    needs = read_needs(*source.table("needs.yaml"))
    version, protocol = read_protocol(*source.table("protocol.yaml"))
    device = read_device(*source.table("device.yaml"))
    filler = Filler(protocol if protocol.numbers else None, faults)
    known = Known(
        needs=tuple(needs.by_key) or None,
        topics=tuple(needs.topics) or None,
        sleeves=tuple(sleeve.key for sleeve in device.sleeves) or None,
        parts=tuple(part.key for part in device.parts if part.optional) if device.parts else None,
        stages=tuple(stage.key for stage in protocol.stages) or None,
        filler=filler,
    )
    activities, noted = source.table("activities.yaml")
    hands_on, hands_noted = source.table("handson.yaml")
    putting_on, taking_off = read_hands_on(hands_on, known, hands_noted)
    table = read_activities(activities, known, noted)
    guide = Guide(
        needs=needs.by_key,
        topics=needs.topics,
        passages=read_passages(source.below("passages/"), known, faults),
        wordings=read_wordings(source.below("wordings/"), known.needs, faults),
        vocabulary=read_vocabulary(*source.table("vocabulary.yaml")),
        protocol=protocol,
        activities=table,
        device=device,
        clinic=read_clinic(*source.table("clinic.yaml")),
        fit_check=_fit_check(source, known, signs, faults),
        putting_on=putting_on,
        taking_off=taking_off,
        stamp=Stamp(version, guide_hash(source.contents)),
        leave=read_leave(source.below("leave/"), tuple(table) or None, faults),
        follow_ups=read_follow_ups(source.below("follow-ups.tsv"), known.needs, faults),
    )
    return Survey(None if faults.faults else guide, faults.faults, faults.warnings)


def _fit_check(
    source: _Source, known: Known, signs: Collection[str] | None, faults: Faults
) -> tuple[FitStep, ...]:
    root = source.tree("fitcheck.yaml")
    return () if root is None else read_fit_check(root, known, signs, faults)


class _Source:
    """The files of one folder as text and as trees.

    Attributes:
        contents: bytes of each file that could be read, by path below the folder.
    """

    def __init__(self, folder: Path, faults: Faults) -> None:
        self.contents: dict[str, bytes] = {}
        self._texts: dict[str, str] = {}
        self._faults = faults
        files = files_of(folder)
        for name, path in files.items():
            if not name.isprintable():
                faults.add(Where(ascii(name)), "the file name holds hidden characters", "Rename it")
                continue
            try:
                self.contents[name] = read_bytes(path, name)
            except ContentError as error:
                faults.add(Where(name), error.what, "Check the file and its permissions")
                continue
            text = decode(self.contents[name], name, faults)
            if text is not None:
                self._texts[name] = text
        for name in TABLES:
            if name not in files:
                faults.add(Where(name), "the file is missing", "Every guide has it")
        if not self.below("passages/"):
            faults.add(Where("passages"), "there is no passage", "Write passages/<topic>/<id>.md")

    def below(self, start: str) -> Mapping[str, str]:
        """The texts of the files whose path starts so."""
        return {name: text for name, text in self._texts.items() if name.startswith(start)}

    def tree(self, name: str) -> Node | None:
        """The tree of a YAML file, None if there is none."""
        text = self._texts.get(name)
        return None if text is None else parse(text, name, self._faults)

    def table(self, name: str) -> tuple[Table, Faults]:
        """The top map of a YAML file and where to note its faults.

        Without one, an empty table whose faults nobody reads: its fault is noted already.
        """
        table = as_table(self.tree(name), self._faults, "the file")
        return (Table({}, {}, Where(name)), Faults()) if table is None else (table, self._faults)
