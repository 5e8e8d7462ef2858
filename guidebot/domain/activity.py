"""What may be done when: the table behind every yes and no."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum


class Say(StrEnum):
    """A verdict, from free to forbidden."""

    YES = "yes"
    YES_WITH_LIMITS = "yes-with-limits"
    ASK_FIRST = "ask-first"
    NOT_YET = "not-yet"
    NO = "no"


STRICTNESS = {say: rank for rank, say in enumerate(Say)}
"""How strict each verdict is; a restriction may only move a verdict up this scale."""


@dataclass(frozen=True, slots=True)
class StageRule:
    """What holds for one activity in one stage.

    Attributes:
        say: the verdict.
        why: the reason, one sentence.
        now: how to do it, or what to do instead, safely now, one or two sentences.
        line: 1-based line in `activities.yaml`.
    """

    say: Say
    why: str
    now: str
    line: int = 0


@dataclass(frozen=True, slots=True)
class Activity:
    """Something an owner may ask leave for.

    Attributes:
        key: for example `stairs`.
        name: as said in a sentence ("stairs", "a swim").
        need: the need whose passage belongs to it.
        words: owners' words for it, singular and plural, phrases allowed.
        stages: rule by stage key; every stage has one.
    """

    key: str
    name: str
    need: str
    words: tuple[str, ...]
    stages: Mapping[str, StageRule]
