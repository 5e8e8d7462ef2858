"""`protocol.yaml` to values: every number of the course of care, and its stages."""

from __future__ import annotations

from collections.abc import Iterable

from guidebot.domain.protocol import UNITS, Protocol, Quantity, Stage
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import KEY, Form, as_integer, as_items, as_number, as_table
from guidebot.guide.fill import Filler
from guidebot.guide.marked import Node, Table

NEEDED = {
    "wear.first_day": "h",
    "wear.daily_step": "h",
    "wear.target": "h",
    "wear.restart": "h",
    "wear.session_first": "min",
    "wear.session_first_max": "min",
    "wear.rest": "min",
    "wear.earliest": "h",
    "wear.latest": "h",
    "wear.short_break": "day",
    "walk.usual": "min",
    "walk.longest": "min",
    "walk.times": "count",
    "walk.build": "min",
    "walk.build_every": "week",
    "skin.fade": "min",
    "course.shortest": "month",
    "course.longest": "month",
    "recheck.first": "week",
}
"""Numbers that the plan computes with, and their units: no guide works without them."""

_NOT_LESS = (
    ("wear.target", "wear.first_day"),
    ("wear.target", "wear.restart"),
    ("wear.session_first_max", "wear.session_first"),
    ("walk.longest", "walk.usual"),
    ("course.longest", "course.shortest"),
    ("wear.latest", "wear.earliest"),
)


def read_protocol(root: Table, faults: Faults) -> tuple[str, Protocol]:
    """Read `protocol.yaml`.

    Args:
        root: its tree.
        faults: receives what is wrong.

    Returns:
        The version of the guide and the protocol, as far as it could be read.
    """
    form = Form(root, faults)
    version = form.text("version")
    numbers = _numbers(as_table(form.node("numbers"), faults, "`numbers`"), faults)
    protocol = Protocol(numbers, ())
    filler = Filler(protocol, faults)
    stages = tuple(_stages(as_items(form.node("stages"), faults, "`stages`"), filler, faults))
    form.close()
    _check_order(stages, form, faults)
    return version, Protocol(numbers, stages)


def _numbers(table: Table | None, faults: Faults) -> dict[str, Quantity]:
    if table is None:
        return {}
    found = {}
    for key, node in table.entries.items():
        name = table.keys[key]
        if not all(KEY.fullmatch(part.replace("_", "-")) for part in key.split(".")):
            faults.add(name.where, f"`{key}` is not words joined with dots and underscores")
        entry = as_table(node, faults, f"`{key}`")
        if entry is None:
            continue
        form = Form(entry, faults)
        value_node = form.node("value")
        value = as_number(value_node, faults, "`value`") if value_node else None
        unit = form.one_of("unit", UNITS)
        basis = form.text("basis")
        form.close()
        if NEEDED.get(key, unit) != unit and unit:
            faults.add(
                form.where("unit"),
                f"`{key}` is in `{unit}`, but the plan counts it in `{NEEDED[key]}`",
            )
        if value is not None and unit:
            found[key] = Quantity(key, value, unit, basis, name.where.line or 0)
    _check_numbers(table, found, faults)
    return found


def _check_numbers(table: Table, found: dict[str, Quantity], faults: Faults) -> None:
    for key, unit in NEEDED.items():
        if key not in table.entries:
            faults.add(
                table.where,
                f"the number `{key}` (in `{unit}`) is missing",
                nearest(key, set(table.entries) - set(NEEDED)) or "The plan needs it",
            )
    for more, less in _NOT_LESS:
        if more in found and less in found and found[more].value < found[less].value:
            faults.add(table.keys[more].where, f"`{more}` is less than `{less}`, which cannot be")


def _stages(nodes: Iterable[Node], filler: Filler, faults: Faults) -> Iterable[Stage]:
    known: set[str] = set()
    for node in nodes:
        entry = as_table(node, faults, "a stage")
        if entry is None:
            continue
        form = Form(entry, faults)
        key = form.key("key")
        name = form.text("name")
        day_node = form.node("from_day", required=False)
        month_node = form.node("from_month", required=False)
        day = as_integer(day_node, faults, "`from_day`", 1) if day_node else None
        month = as_integer(month_node, faults, "`from_month`", 1) if month_node else None
        says = filler.text(form, "says")
        form.close()
        if (day_node is None) == (month_node is None):
            faults.add(
                entry.where,
                f"the stage `{key}` has to start on a day or in a month",
                "Write one of `from_day` and `from_month`",
            )
        if key in known:
            faults.add(form.where("key"), f"the stage `{key}` is here twice")
        known.add(key)
        yield Stage(key, name, day, month, says)


def _check_order(stages: tuple[Stage, ...], form: Form, faults: Faults) -> None:
    where = form.where("stages")
    if not stages:
        faults.add(where, "there is no stage")
        return
    if stages[0].from_day != 1:
        faults.add(where, f"the first stage `{stages[0].key}` does not start on day 1")
    # A month has at least 28 days: enough to tell an order that cannot be meant.
    starts = [
        (stage.from_day or 0) if stage.from_month is None else 28 * stage.from_month + 1
        for stage in stages
    ]
    for earlier, later, start, after in zip(stages, stages[1:], starts, starts[1:], strict=False):
        if after <= start:
            faults.add(where, f"the stage `{later.key}` does not start after `{earlier.key}`")
