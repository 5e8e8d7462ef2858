"""`device.yaml` and `clinic.yaml` to values."""

from __future__ import annotations

from collections.abc import Iterable

from guidebot.domain.device import Device, Part, SleeveKind
from guidebot.domain.guide import Clinic
from guidebot.guide.faults import Faults
from guidebot.guide.fields import Form, as_items, as_table
from guidebot.guide.marked import Node, Table


def read_device(root: Table, faults: Faults) -> Device:
    """Read `device.yaml`.

    Args:
        root: its tree.
        faults: receives what is wrong.
    """
    form = Form(root, faults)
    device = Device(
        name=form.text("name"),
        words=form.texts("words"),
        parts=tuple(_parts(as_items(form.node("parts"), faults, "`parts`"), faults)),
        sleeves=tuple(_sleeves(as_items(form.node("sleeves"), faults, "`sleeves`"), faults)),
        skin_places=form.texts("skin_places"),
    )
    form.close()
    usual = sum(sleeve.usual for sleeve in device.sleeves)
    if form.has("sleeves") and usual != 1:
        faults.add(
            form.where("sleeves"),
            f"{usual} sleeves are marked `usual`, but it has to be one",
            "It is the one assumed when nothing is known",
        )
    return device


def _parts(nodes: Iterable[Node], faults: Faults) -> Iterable[Part]:
    for form in _forms(nodes, "a part", faults):
        yield Part(
            form.key("key"), form.text("name"), form.texts("words"), optional=form.flag("optional")
        )
        form.close()


def _sleeves(nodes: Iterable[Node], faults: Faults) -> Iterable[SleeveKind]:
    for form in _forms(nodes, "a sleeve", faults):
        yield SleeveKind(
            form.key("key"), form.text("name"), form.texts("words"), usual=form.flag("usual")
        )
        form.close()


def _forms(nodes: Iterable[Node], what: str, faults: Faults) -> Iterable[Form]:
    """Forms over the tables of a list, noting keys that come twice."""
    known: set[str] = set()
    for node in nodes:
        table = as_table(node, faults, what)
        if table is None:
            continue
        form = Form(table, faults)
        yield form
        key = getattr(table.entries.get("key"), "text", "")
        if key and key in known:
            faults.add(form.where("key"), f"{what} `{key}` is here twice")
        known.add(key)


def read_clinic(root: Table, faults: Faults) -> Clinic:
    """Read `clinic.yaml`.

    Args:
        root: its tree.
        faults: receives what is wrong.
    """
    form = Form(root, faults)
    clinic = Clinic(
        name=form.text("name"),
        phone=form.text("phone"),
        email=form.text("email"),
        hours=form.text("hours"),
        emergency=form.text("emergency"),
        signature=form.texts("signature"),
        caution=form.text("caution"),
    )
    form.close()
    return clinic
