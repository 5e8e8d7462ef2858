"""Our two looks, paper and lamp; every built-in one can be chosen in the palette as well."""

from __future__ import annotations

import os

from textual.theme import Theme

PAPER = Theme(
    name="paper",
    primary="#2f5d50",
    secondary="#5b6b4a",
    accent="#7a4b12",
    foreground="#22261f",
    background="#f7f3e8",
    surface="#fffdf6",
    panel="#e9e2cf",
    warning="#8a5200",
    error="#9c1c1c",
    success="#2f5d50",
    dark=False,
)

LAMP = Theme(
    name="lamp",
    primary="#9cc7b4",
    secondary="#b9c39a",
    accent="#e2b873",
    foreground="#e9e4d6",
    background="#1d211e",
    surface="#252a26",
    panel="#323934",
    warning="#f0b35c",
    error="#ff8a7a",
    success="#9cc7b4",
    dark=True,
)

LOOKS = (LAMP, PAPER)


def first_look() -> str:
    """The look to start with: `GUIDEBOT_LOOK`, else what the terminal says of its background.

    Some terminals set COLORFGBG to `fore;back`; 7 and 15 are the light backgrounds. Without a
    hint: lamp.
    """
    wanted = os.environ.get("GUIDEBOT_LOOK", "").lower()
    if wanted in {look.name for look in LOOKS}:
        return wanted
    back = os.environ.get("COLORFGBG", "").rpartition(";")[2]
    return PAPER.name if back in ("7", "15") else LAMP.name
