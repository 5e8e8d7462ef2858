"""A question and how it was answered, for the log of questions."""

from __future__ import annotations

from datetime import date

from guidebot.cases.store import Store
from guidebot.domain.answer import Answer


def keep(store: Store, on: date, answer: Answer, case_id: str | None) -> bool:
    """Keep the question of an answer, redacted, if questions are kept.

    Args:
        store: where.
        on: the day.
        answer: with the cleaned question in `text`.
        case_id: the dog it is about, None if unknown.

    Returns:
        False if the log is off.

    Raises:
        StoreError: it could not be written.
    """
    return store.log_question(
        on,
        answer.text,
        answer.outcome.value,
        need=answer.need,
        passage=answer.passages[0].id if answer.passages else None,
        sign=answer.alert.sign if answer.alert else None,
        guide=answer.guide.hash,
        rules=answer.rules.hash,
        case_id=case_id,
    )
