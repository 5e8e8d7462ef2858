"""`handson.yaml` and `fitcheck.yaml` to values: what is done step by step."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from guidebot.domain.guide import FitStep, HandsOnStep
from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import KEY, Form, as_items, as_table
from guidebot.guide.known import Known, optional_key
from guidebot.guide.marked import Node, Table


def read_hands_on(
    root: Table, known: Known, faults: Faults
) -> tuple[tuple[HandsOnStep, ...], tuple[HandsOnStep, ...]]:
    """Read `handson.yaml`.

    Args:
        root: its tree: `putting_on` and `taking_off`, lists of steps.
        known: sleeves and parts a step may be for, and the numbers.
        faults: receives what is wrong.

    Returns:
        The steps of putting on and of taking off.
    """
    form = Form(root, faults)
    lists = []
    for key in ("putting_on", "taking_off"):
        node = form.node(key)
        steps = tuple(_hands_on(as_items(node, faults, f"`{key}`"), known, faults))
        if node is not None and not steps:
            faults.add(node.where, f"`{key}` has no step")
        for sleeve in known.sleeves or ():
            if steps and not any(step.sleeve in {None, sleeve} for step in steps):
                faults.add(form.where(key), f"`{key}` has no step for the sleeve `{sleeve}`")
        lists.append(steps)
    form.close()
    return lists[0], lists[1]


def _hands_on(nodes: Iterable[Node], known: Known, faults: Faults) -> Iterable[HandsOnStep]:
    filler = known.filler
    for node in nodes:
        table = as_table(node, faults, "a step")
        if table is None:
            continue
        form = Form(table, faults)
        yield HandsOnStep(
            title=filler.text(form, "title"),
            do=filler.text(form, "do"),
            check=filler.text(form, "check", required=False),
            sleeve=optional_key(form, "sleeve", known.sleeves),
            part=optional_key(form, "part", known.parts),
        )
        form.close()


def read_fit_check(
    root: Node, known: Known, signs: Collection[str] | None, faults: Faults
) -> tuple[FitStep, ...]:
    """Read `fitcheck.yaml`.

    Args:
        root: its tree: a list of steps with `key`, `ask` and `options`.
        known: needs it may name, and the numbers.
        signs: keys of the injury signs; None leaves `alert:` targets unchecked, because the
            signs live in code that this package may not know.
        faults: receives what is wrong.
    """
    filler = known.filler
    steps: list[FitStep] = []
    targets: list[tuple[str, Where]] = []
    for node in as_items(root, faults, "the fit check"):
        table = as_table(node, faults, "a step")
        if table is None:
            continue
        form = Form(table, faults)
        key = form.key("key")
        ask = filler.text(form, "ask")
        options = []
        for entry in as_items(form.node("options"), faults, "`options`"):
            option_table = as_table(entry, faults, "an option")
            if option_table is not None:
                option = Form(option_table, faults)
                options.append((filler.text(option, "label"), option.text("goes")))
                option.close()
                place = option_table.entries.get("goes")
                targets.append((options[-1][1], place.where if place else option_table.where))
        form.close()
        if form.has("options") and len(options) < 2:
            faults.add(form.where("options"), "a question needs two options or more")
        if key and any(step.key == key for step in steps):
            faults.add(form.where("key"), f"the step `{key}` is here twice")
        steps.append(FitStep(key, ask, tuple(options)))
    if not steps:
        faults.add(root.where, "the fit check has no step")
    places = {
        "step": [step.key for step in steps],
        "need": known.needs,
        "pictures": known.needs,
        "alert": signs,
    }
    for goes, where in targets:
        if goes:
            _check_target(goes, where, places, faults)
    _check_reachable(steps, root.where, faults)
    return tuple(steps)


def _check_target(
    goes: str, where: Where, places: dict[str, Collection[str] | None], faults: Faults
) -> None:
    kind, colon, name = goes.partition(":")
    if goes == "next":
        return
    if not colon or kind not in places:
        faults.add(
            where,
            f"`{goes}` is no place to go",
            "Write next, step:KEY, need:KEY, pictures:KEY or alert:SIGN",
        )
        return
    names = places[kind]
    if names is None:
        if not all(KEY.fullmatch(part) for part in name.split(".")):
            faults.add(where, f"`{name}` is not in small letters, digits and hyphens")
    elif name not in names:
        said = {"step": "step", "alert": "injury sign"}.get(kind, "need")
        faults.add(where, f"there is no {said} `{name}`", nearest(name, names))


def _check_reachable(steps: list[FitStep], where: Where, faults: Faults) -> None:
    """Warn of steps that no path from the first step leads to."""
    order = [step.key for step in steps]
    reached: set[str] = set()
    waiting = order[:1]
    while waiting:
        key = waiting.pop()
        if key in reached or key not in order:
            continue
        reached.add(key)
        position = order.index(key)
        for _, goes in steps[position].options:
            if goes == "next":
                waiting += order[position + 1 : position + 2]
            elif goes.startswith("step:"):
                waiting.append(goes.partition(":")[2])
    for key in order:
        if key not in reached:
            faults.warn(where, f"no answer leads to the step `{key}`")
