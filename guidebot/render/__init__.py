"""One module for each output format; `FORMATS` names them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from guidebot.domain.answer import Answer


def _text(answer: Answer) -> str:
    from guidebot.render.text import render

    return render(answer)


def _json(answer: Answer) -> str:
    from guidebot.render.as_json import render

    return render(answer)


FORMATS: dict[str, Callable[[Answer], str]] = {"text": _text, "json": _json}
"""Every format an answer can be shown in; an alert stands first in each."""
