"""Dates as options of commands."""

from __future__ import annotations

from datetime import date

import click


class DayType(click.ParamType[date]):
    """A date as `YYYY-MM-DD`; `today` is understood."""

    name = "date"

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> date:
        """The date; a usage error for one that does not exist."""
        if isinstance(value, date):
            return value
        text = str(value).strip()
        if text.casefold() == "today":
            return today()
        try:
            found = date.fromisoformat(text)
        except ValueError:
            self.fail(f"{text!r} is not a date. Write it as 2026-11-20.", param, ctx)
        return found


DAY = DayType()


def today() -> date:
    """The clock is read here and nowhere below."""
    return date.today()
