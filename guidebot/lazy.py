"""Regular expressions that are compiled when they are first used.

Compiling the turns of phrase of a whole language takes longer than answering a question; most
questions need few of them.
"""

from __future__ import annotations

import re
from typing import Any, cast


class _Lazy:
    __slots__ = ("_compiled", "_flags", "_source")

    def __init__(self, source: str, flags: int) -> None:
        self._source = source
        self._flags = flags
        self._compiled: re.Pattern[str] | None = None

    def __getattr__(self, name: str) -> Any:
        if self._compiled is None:
            self._compiled = re.compile(self._source, self._flags)
        return getattr(self._compiled, name)


def lazy(source: str, flags: int = 0) -> re.Pattern[str]:
    """A pattern to be used like a compiled one; a wrong one raises `re.error` on first use."""
    return cast("re.Pattern[str]", _Lazy(source, flags))
