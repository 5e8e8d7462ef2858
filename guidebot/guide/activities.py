"""`activities.yaml` to values: what may be done in which stage."""

from __future__ import annotations

from guidebot.domain.activity import Activity, Say, StageRule
from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import KEY, Form, as_table
from guidebot.guide.fill import Filler
from guidebot.guide.known import Known
from guidebot.guide.marked import Table
from guidebot.text import plain


def read_activities(root: Table, known: Known, faults: Faults) -> dict[str, Activity]:
    """Read `activities.yaml`.

    Args:
        root: its tree: key to `name`, `need`, `words` and `stages` (or `always`).
        known: needs and stages it may name, and the numbers.
        faults: receives what is wrong.

    Returns:
        The activities by key in the order of the file; each has a rule for every stage.
    """
    found: dict[str, Activity] = {}
    words: dict[str, tuple[str, Where]] = {}
    for key, node in root.entries.items():
        where = root.keys[key].where
        if not KEY.fullmatch(key):
            faults.add(where, f"`{key}` is not in small letters, digits and hyphens")
        table = as_table(node, faults, f"the activity `{key}`")
        if table is None:
            continue
        form = Form(table, faults)
        name = form.text("name")
        need = form.text("need") if known.needs is None else form.one_of("need", known.needs)
        activity = Activity(key, name, need, form.texts("words"), _rules(form, known, faults))
        form.close()
        for word in activity.words:
            other = words.setdefault(plain(word), (key, form.where("words")))
            if other[0] != key:
                faults.add(
                    form.where("words"),
                    f"the word `{word}` belongs to `{other[0]}` too (line {other[1].line})",
                    "Keep it where it fits best: one word, one verdict",
                )
        found[key] = activity
    return found


def _rules(form: Form, known: Known, faults: Faults) -> dict[str, StageRule]:
    """The rule for every stage, from `always` or from `stages`."""
    stages = known.stages
    if form.has("always") == form.has("stages"):
        faults.add(
            form.table.where,
            "the activity needs one of `stages` and `always`",
            "`always` is one rule for every stage",
        )
    rules: dict[str, StageRule] = {}
    always = as_table(form.node("always", required=False), faults, "`always`")
    if always is not None:
        line = form.where("always").line or 0
        rules = dict.fromkeys(stages or (), _rule(always, line, known.filler, faults))
    table = as_table(form.node("stages", required=False), faults, "`stages`")
    for key, node in table.entries.items() if table else ():
        name = table.keys[key] if table else None
        where = name.where if name else form.table.where
        if stages is not None and key not in stages:
            faults.add(where, f"`{key}` is not a stage", nearest(key, stages))
        entry = as_table(node, faults, f"the rule for `{key}`")
        if entry is not None:
            rules[key] = _rule(entry, where.line or 0, known.filler, faults)
    if table is not None:
        for key in stages or ():
            if key not in table.entries:
                faults.add(form.where("stages"), f"the rule for the stage `{key}` is missing")
    return rules


def _rule(table: Table, line: int, filler: Filler, faults: Faults) -> StageRule:
    form = Form(table, faults)
    say = form.one_of("say", Say)
    rule = StageRule(
        Say(say) if say else Say.NO, filler.text(form, "why"), filler.text(form, "now"), line
    )
    form.close()
    return rule
