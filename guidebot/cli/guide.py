"""The guide for commands that search nothing: read straight from its files, never compiled."""

from __future__ import annotations

from pathlib import Path

import click

from guidebot.domain.guide import Guide


def plain_guide(ctx: click.Context) -> Guide:
    """The guide the person named with `--content`, else the one that comes with guidebot.

    Raises:
        ContentError: the guide is missing or has faults.
    """
    from guidebot.guide.files import find_content
    from guidebot.guide.read import read_guide

    content: Path | None = (ctx.obj or {}).get("content")
    return read_guide(find_content(content))
