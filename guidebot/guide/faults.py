"""Where everything that is wrong with a guide is gathered, in one run."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches

from guidebot.errors import Fault, Where


class Faults:
    """Faults (the guide cannot be used) and warnings (it can, but somebody should look)."""

    def __init__(self) -> None:
        self._faults: list[Fault] = []
        self._warnings: list[Fault] = []

    def add(self, where: Where, what: str, remedy: str = "") -> None:
        """Note a fault."""
        self._faults.append(Fault(where, what, remedy))

    def warn(self, where: Where, what: str, remedy: str = "") -> None:
        """Note a warning."""
        self._warnings.append(Fault(where, what, remedy))

    @property
    def faults(self) -> tuple[Fault, ...]:
        """All faults by path, line and column; each once."""
        return in_order(self._faults)

    @property
    def warnings(self) -> tuple[Fault, ...]:
        """All warnings by path, line and column; each once."""
        return in_order(self._warnings)


def in_order(faults: Iterable[Fault]) -> tuple[Fault, ...]:
    """Sort by path, line, column and text; drop repetitions."""
    return tuple(sorted(dict.fromkeys(faults), key=_place))


def _place(fault: Fault) -> tuple[str, int, int, str]:
    where = fault.where
    return where.path, where.line or 0, where.column or 0, fault.what


def nearest(name: str, known: Iterable[str]) -> str:
    """A remedy that names what was probably meant, or the choice when it is small.

    Args:
        name: the name that is not known.
        known: the names that are.

    Returns:
        One sentence without its full stop; "" when nothing helps.
    """
    names = sorted(set(known))
    close = get_close_matches(name, names, n=1, cutoff=0.6)
    if close:
        return f"Did you mean `{close[0]}`?"
    if 0 < len(names) <= 12:
        return "Known: " + ", ".join(names)
    return ""
