"""The wide net: the fitted one that is shipped, or a new fit when it is stale."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import lru_cache
from importlib.resources import files

from guidebot.safety import compiled, wide

NOT_HARMLESS = frozenset(
    "skin.sores parts.broken-shell skin.redness tension.too-tight fit.slips-down parts.chewed "
    "adapt.knuckling skin.hair-loss skin.licking why.other-leg help.medicine".split()
)
"""Needs whose wordings are reports themselves; they teach the net nothing harmless."""
MAY_REPORT = frozenset(("human-medicine", "medicine-self", "heat", "none"))
"""Questions of leave that may be reports, or of medicine."""


@lru_cache(maxsize=1)
def print_of_inputs() -> str:
    """SHA-256 over the rules and the reports and look-alikes: what shipped weights hang on."""
    digest = hashlib.sha256(compiled.stamp().hash.encode())
    for name in ("reports.tsv", "lookalikes.tsv", "common.txt", "sure.txt"):
        digest.update((files("guidebot.safety") / "data" / name).read_bytes())
    return digest.hexdigest()


def fit_net(
    lines: Callable[[], Sequence[str]] = tuple, say: Callable[[str], None] = lambda _: None
) -> wide.Net:
    """The wide net for a guide.

    Args:
        lines: gives those of the guide, from `harmless`; asked only if the net must be fitted.
        say: told what is being done.

    Returns:
        The shipped net if it was fitted on these rules and reports, else a new fit, which
        takes some minutes.
    """
    ready = shipped()
    return ready if ready is not None else wide.fit(lines(), say=say)


def harmless(
    wordings: Mapping[str, Sequence[str]],
    leave: Mapping[str, Sequence[str]] | None = None,
    follow_ups: Iterable[tuple[str, str, str]] = (),
) -> list[str]:
    """The lines of a guide that report nothing.

    Args:
        wordings: lines by need; those of `NOT_HARMLESS` are left out.
        leave: questions of leave by activity; those of `MAY_REPORT` are left out, and such as a
            rule finds something in.
        follow_ups: need of the turn before, need, text; likewise.
    """
    found = [
        line for need in sorted(wordings) if need not in NOT_HARMLESS for line in wordings[need]
    ]
    asked = leave or {}
    more = [line for key in sorted(asked) if key not in MAY_REPORT for line in asked[key]]
    more += [text for _, need, text in follow_ups if need not in NOT_HARMLESS]
    return found + [line for line in more if not wide.hits(line)]


def shipped() -> wide.Net | None:
    """The weights in `data/`, None if they were fitted on other rules or reports."""
    folder = files("guidebot.safety") / "data"
    try:
        lock = (folder / "wide.lock").read_text(encoding="utf-8").strip()
        if lock != print_of_inputs():
            return None
        return wide.Net.load((folder / "wide.bin").read_bytes())
    except (OSError, ValueError):
        return None
