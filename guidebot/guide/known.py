"""What the tables of a guide define and its other files may name."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from guidebot.guide.fields import Form
from guidebot.guide.fill import Filler


@dataclass(frozen=True, slots=True)
class Known:
    """Known names; None where the file that defines them could not be read.

    Attributes:
        needs, topics, sleeves, stages: their keys in order.
        parts: keys of the optional parts.
        filler: fills the numbers in.
    """

    needs: Collection[str] | None
    topics: Collection[str] | None
    sleeves: Collection[str] | None
    parts: Collection[str] | None
    stages: Collection[str] | None
    filler: Filler


def optional_key(form: Form, key: str, known: Collection[str] | None) -> str | None:
    """A name under a key that may be missing, checked if the known names are given."""
    if known is None:
        return form.key(key, required=False) or None
    return form.one_of(key, known, required=False) or None
