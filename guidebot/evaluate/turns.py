"""Score verdicts, later turns of chats and injury signs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from guidebot.domain.answer import Answer, Outcome
from guidebot.evaluate.metrics import Share
from guidebot.evaluate.sets import Row

TIERS = ("none", "clinic", "vet-today", "emergency")


@dataclass(frozen=True, slots=True)
class Checked:
    """One row with whether it came out right, and what came out."""

    row: Row
    right: bool
    got: str


def verdicts(rows: Sequence[Row], ask: Callable[[Row], Answer]) -> list[Checked]:
    """Is the verdict among those its author accepts?"""
    found = []
    for row in rows:
        answer = ask(row)
        got = answer.verdict.say.value if answer.verdict else "no verdict"
        found.append(Checked(row, got in row.more["say"], got))
    return found


def chats(rows: Sequence[Row], say: Callable[[Row], Answer]) -> list[Checked]:
    """Does the first passage of each turn answer a judged need? Courtesy must stay courtesy."""
    found = []
    for row in rows:
        answer = say(row)
        wanted = set(row.more["needs"])
        first = set(answer.passages[0].needs) if answer.passages else set()
        if wanted:
            right = bool(wanted & first)
        else:
            right = answer.outcome in (Outcome.COURTESY, Outcome.NOT_IN_GUIDE)
        got = ", ".join(sorted(first)) or answer.outcome.value
        found.append(Checked(row, right, got))
    return found


@dataclass(frozen=True, slots=True)
class Judged:
    """One message of the sign sets with the tier that was found for it."""

    row: Row
    got: str
    sign: str | None
    why: str = ""

    @property
    def wanted(self) -> str:
        """The tier its author gave."""
        return str(self.row.more["tier"])


def sign_table(judged: Sequence[Judged]) -> dict[str, Share]:
    """Sensitivity for each tier, exact tier, under-triage and false alarms."""
    out: dict[str, Share] = {}
    urgent = [j for j in judged if j.wanted in ("emergency", "vet-today")]
    harmless = [j for j in judged if j.wanted == "none"]
    caught = [j for j in urgent if j.got != "none"]
    out["urgent caught"] = Share(len(caught), len(urgent))
    for tier in TIERS[1:]:
        rows = [j for j in judged if j.wanted == tier]
        out[f"caught: {tier}"] = Share(sum(j.got != "none" for j in rows), len(rows))
    for tier in TIERS[1:]:
        rows = [j for j in judged if j.wanted == tier]
        out[f"exact tier: {tier}"] = Share(sum(j.got == tier for j in rows), len(rows))
    out["under-triaged (of urgent)"] = Share(
        sum(TIERS.index(j.got) < TIERS.index(j.wanted) for j in urgent), len(urgent)
    )
    out["false alarms"] = Share(sum(j.got != "none" for j in harmless), len(harmless))
    return out
