"""What the guide says the device is made of: parts, sleeves, places where skin is checked."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the device.

    Attributes:
        key: for example `achilles-strap`.
        name: as the guide says it.
        words: how owners say it.
        optional: not every device has one.
    """

    key: str
    name: str
    words: tuple[str, ...]
    optional: bool = False


@dataclass(frozen=True, slots=True)
class SleeveKind:
    """One kind of sleeve; which instructions apply depends on it."""

    key: str
    name: str
    words: tuple[str, ...]
    usual: bool = False


@dataclass(frozen=True, slots=True)
class Device:
    """The device: name, owners' words for it, its parts and sleeves, where skin is checked."""

    name: str
    words: tuple[str, ...]
    parts: tuple[Part, ...]
    sleeves: tuple[SleeveKind, ...]
    skin_places: tuple[str, ...]
