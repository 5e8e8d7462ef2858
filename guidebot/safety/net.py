"""The wide net: the fitted one that is shipped, or a new fit when it is stale."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from functools import lru_cache
from importlib.resources import files

from guidebot.safety import compiled, wide

NOT_HARMLESS = frozenset(
    "skin.sores parts.broken-shell skin.redness tension.too-tight fit.slips-down parts.chewed "
    "adapt.knuckling skin.hair-loss skin.licking why.other-leg help.medicine".split()
)
"""Needs whose wordings are reports themselves; they teach the net nothing harmless."""


@lru_cache(maxsize=1)
def print_of_inputs() -> str:
    """SHA-256 over the rules and the reports and look-alikes: what shipped weights hang on."""
    digest = hashlib.sha256(compiled.stamp().hash.encode())
    for name in ("reports.tsv", "lookalikes.tsv", "common.txt", "sure.txt"):
        digest.update((files("guidebot.safety") / "data" / name).read_bytes())
    return digest.hexdigest()


def fit_net(
    wordings: Mapping[str, tuple[str, ...]], say: Callable[[str], None] = lambda _: None
) -> wide.Net:
    """The wide net for a guide.

    Args:
        wordings: lines by need; those of `NOT_HARMLESS` are left out.
        say: told what is being done.

    Returns:
        The shipped net if it was fitted on these rules and reports, else a new fit, which
        takes some minutes.
    """
    ready = shipped()
    return ready if ready is not None else refit(wordings, say)


def refit(
    wordings: Mapping[str, tuple[str, ...]], say: Callable[[str], None] = lambda _: None
) -> wide.Net:
    """Fit anew, whatever is shipped."""
    return wide.fit(harmless(wordings), say=say)


def harmless(wordings: Mapping[str, tuple[str, ...]]) -> list[str]:
    """The wordings that report nothing."""
    return [
        line for need in sorted(wordings) if need not in NOT_HARMLESS for line in wordings[need]
    ]


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
