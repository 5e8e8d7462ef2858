"""The wide net: a linear scorer over authored reports; it may raise, never lower."""

from __future__ import annotations

from collections.abc import Sequence

from guidebot.domain.sign import Finding
from guidebot.linear.weights import Weights
from guidebot.safety.scope import Meant
from guidebot.safety.spans import Found


def findings(
    text: str,
    found: Found,
    meant: Sequence[Meant],
    weights: Weights,
    sure: Sequence[Finding],
) -> list[Finding]:
    """What the scorer notices beyond what the rules are sure of."""
    return []
