"""`needs.yaml` to values: what an owner needs to know, and so what the guide has to answer."""

from __future__ import annotations

import re
from dataclasses import dataclass

from guidebot.domain.passage import Need
from guidebot.guide.faults import Faults
from guidebot.guide.fields import KEY, Form, as_table, as_text
from guidebot.guide.marked import Table

_NEED = re.compile(rf"{KEY.pattern}\.{KEY.pattern}")


@dataclass(frozen=True, slots=True)
class Needs:
    """The needs by key in the order of the file, and the titles of the topics."""

    by_key: dict[str, Need]
    topics: dict[str, str]


def read_needs(root: Table, faults: Faults) -> Needs:
    """Read `needs.yaml`.

    Args:
        root: its tree: `topics`, each with `title` and `needs` (key to what is asked).
        faults: receives what is wrong.
    """
    form = Form(root, faults)
    topics = as_table(form.node("topics"), faults, "`topics`")
    form.close()
    needs = Needs({}, {})
    for topic, node in topics.entries.items() if topics else ():
        entry = as_table(node, faults, f"the topic `{topic}`")
        if entry is None:
            continue
        inner = Form(entry, faults)
        needs.topics[topic] = inner.text("title")
        table = as_table(inner.node("needs"), faults, f"the needs of `{topic}`")
        inner.close()
        for key, asks in table.entries.items() if table else ():
            where = table.keys[key].where if table else inner.table.where
            if not _NEED.fullmatch(key) or not key.startswith(f"{topic}."):
                faults.add(where, f"the need `{key}` is not written `{topic}.some-name`")
                continue
            needs.by_key[key] = Need(key, as_text(asks, faults, f"the question of `{key}`"))
    if topics and not needs.by_key:
        faults.add(topics.where, "there is no need")
    return needs
