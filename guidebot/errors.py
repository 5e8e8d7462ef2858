"""The one tree of errors; `cli.main` alone turns one into a line on stderr and an exit code.

GuidebotError
├── ContentError      the guide cannot be read or breaks a rule        exit 4
├── InputError        what the person gave cannot be used              exit 2
├── StoreError        the case store cannot be opened or written       exit 5
└── EvaluationError   a question set or its judgments cannot be used   exit 2
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum


class ExitCode(IntEnum):
    """What the process says to the shell."""

    OK = 0
    INTERNAL = 1
    USAGE = 2
    NOT_IN_GUIDE = 3
    GUIDE_INVALID = 4
    STORE_UNAVAILABLE = 5
    INTERRUPTED = 130


@dataclass(frozen=True, slots=True)
class Where:
    """A place in a file: 1-based line and column, and the key if there is one."""

    path: str
    line: int | None = None
    column: int | None = None
    key: str | None = None

    def __str__(self) -> str:
        """`path:line:col` as far as it is known."""
        parts = [self.path]
        if self.line is not None:
            parts.append(str(self.line))
            if self.column is not None:
                parts.append(str(self.column))
        return ":".join(parts)


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong with the guide: where, what, and what to do about it."""

    where: Where
    what: str
    remedy: str = ""

    def __str__(self) -> str:
        """`path:line:col: what (remedy)`."""
        text = f"{self.where}: {self.what}"
        return f"{text}. {self.remedy}" if self.remedy else text


class GuidebotError(Exception):
    """Root of the tree; never raised itself.

    Args:
        what: what is wrong, one sentence.
        where: file, line and key, if there is one.
        remedy: what to do.
    """

    exit_code = ExitCode.INTERNAL

    def __init__(self, what: str, *, where: Where | None = None, remedy: str = "") -> None:
        super().__init__(what)
        self.what = what
        self.where = where
        self.remedy = remedy

    def __str__(self) -> str:
        """Where, what and what to do, on one line."""
        head = f"{self.where}: {self.what}" if self.where else self.what
        return f"{head}. {self.remedy}" if self.remedy else head


class ContentError(GuidebotError):
    """The guide is missing, unreadable or breaks a rule; carries every fault found."""

    exit_code = ExitCode.GUIDE_INVALID

    def __init__(
        self,
        what: str,
        *,
        where: Where | None = None,
        remedy: str = "",
        faults: Sequence[Fault] = (),
    ) -> None:
        super().__init__(what, where=where, remedy=remedy)
        self.faults = tuple(faults)

    def __str__(self) -> str:
        """Every fault on its own line, after the headline."""
        return "\n".join([super().__str__(), *(str(fault) for fault in self.faults)])


class InputError(GuidebotError):
    """What the person gave cannot be used (an impossible date, an unknown dog)."""

    exit_code = ExitCode.USAGE


class StoreError(GuidebotError):
    """The case store cannot be opened, read or written."""

    exit_code = ExitCode.STORE_UNAVAILABLE


class EvaluationError(GuidebotError):
    """A question set or its judgments cannot be used."""

    exit_code = ExitCode.USAGE
