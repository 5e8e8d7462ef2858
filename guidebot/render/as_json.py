"""The machine interface: one answer as a JSON object. Keys are only ever added."""

from __future__ import annotations

import json
from typing import Any

from guidebot.domain.answer import Answer, Cited, Verdict
from guidebot.domain.sign import Alert

SCHEMA = 1


def as_plain(answer: Answer, key: str | int | None = None) -> dict[str, Any]:
    """The answer as plain values, alert before everything that could be taken for the answer.

    Args:
        answer: the answer.
        key: the `id` of the request, None for a single question.
    """
    return {
        "schema": SCHEMA,
        "id": key,
        "alert": _alert(answer.alert),
        "text": answer.text,
        "outcome": answer.outcome.value,
        "read_as": answer.read_as,
        "verdict": _verdict(answer.verdict),
        "lead": answer.lead,
        "passages": [_cited(passage) for passage in answer.passages],
        "choices": list(answer.choices),
        "asks_back": answer.asks_back,
        "notes": list(answer.notes),
        "caution": answer.caution,
        "guide": {"version": answer.guide.version, "hash": answer.guide.hash},
        "rules": {"version": answer.rules.version, "hash": answer.rules.hash},
    }


def render(answer: Answer, key: str | int | None = None) -> str:
    """One line of JSON, without a line end; ASCII only, so that no terminal or pipe chokes."""
    return json.dumps(as_plain(answer, key), ensure_ascii=True)


def _alert(alert: Alert | None) -> dict[str, Any] | None:
    if alert is None:
        return None
    return {
        "tier": alert.tier.key,
        "sign": alert.sign,
        "headline": alert.headline,
        "quote": alert.quote,
        "do": list(alert.do),
        "asks": alert.asks or None,
        "also": list(alert.also),
    }


def _verdict(verdict: Verdict | None) -> dict[str, Any] | None:
    if verdict is None:
        return None
    return {
        "say": verdict.say.value,
        "text": verdict.text,
        "day": verdict.day,
        "stage": verdict.stage,
        "activity": verdict.activity or None,
        "changes_on": verdict.changes_on.isoformat() if verdict.changes_on else None,
        "cites": list(verdict.cites),
    }


def _cited(passage: Cited) -> dict[str, Any]:
    return {
        "id": passage.id,
        "title": passage.title,
        "needs": list(passage.needs),
        "quote": passage.quote,
        "score": round(passage.score, 4),
        "path": passage.path,
    }
