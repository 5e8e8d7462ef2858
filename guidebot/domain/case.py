"""One dog, one device, its dates: the case, and what its diary and its veterinarian say."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum


class Sex(StrEnum):
    """For he and she in what is said."""

    MALE = "male"
    FEMALE = "female"
    UNKNOWN = "unknown"


class Side(StrEnum):
    """Which leg wears the device."""

    LEFT = "left"
    RIGHT = "right"


class Skin(StrEnum):
    """What the skin check found when the device came off."""

    FINE = "fine"
    FADED = "faded"  # pink, gone within the protocol's minutes
    STAYED = "stayed"  # redness that stayed longer
    SORE = "sore"  # open, wet or blistered skin


class Gait(StrEnum):
    """How the dog walked, against its usual."""

    USUAL = "usual"
    BETTER = "better"
    WORSE = "worse"  # more limping than usual, or after a walk


@dataclass(frozen=True, slots=True)
class DiaryEntry:
    """One day of wear as the owner noted it.

    Attributes:
        on: the day.
        worn_hours: hours really worn, 0 to 24, or None if not noted; 0 is a missed day.
        skin, gait, powder: what was noted, None if nothing was.
        cleared: the veterinarian allowed wear again on this day, after a sore.
        note: the owner's words, cleaned.
    """

    on: date
    worn_hours: float | None = None
    skin: Skin | None = None
    gait: Gait | None = None
    powder: bool | None = None
    cleared: bool = False
    note: str = ""


@dataclass(frozen=True, slots=True)
class Restriction:
    """What the veterinarian restricts; it always beats the guide.

    Attributes:
        activity: a key of `activities.yaml`, or `wear` for the device itself, or `all`.
        starts, ends: first and last day; `ends` None means until lifted.
        max_hours: for `wear`, the most hours a day; None means none at all.
        note: the veterinarian's words, cleaned.
    """

    activity: str
    starts: date
    ends: date | None = None
    max_hours: float | None = None
    note: str = ""

    def holds(self, on: date) -> bool:
        """Is the restriction in force on this day?"""
        return self.starts <= on and (self.ends is None or on <= self.ends)


@dataclass(frozen=True, slots=True)
class Case:
    """A dog with its device.

    Attributes:
        id: short name of the case, unique in the store.
        dog: the dog's name, cleaned.
        sleeve: a key of `device.yaml` sleeves, None if not known.
        parts: keys of optional parts this device has (`device.yaml`).
        fitted: the fitting day (day 1), None if not known.
        target_hours: hours a day to work up to; None takes the protocol's.
    """

    id: str
    dog: str
    sex: Sex = Sex.UNKNOWN
    side: Side | None = None
    sleeve: str | None = None
    parts: frozenset[str] = frozenset()
    fitted: date | None = None
    target_hours: float | None = None
    restrictions: tuple[Restriction, ...] = ()
    diary: tuple[DiaryEntry, ...] = ()
