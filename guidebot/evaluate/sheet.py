"""The score sheet: every set, side by side with its baseline, with n and 95 % intervals."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from guidebot.domain.answer import Answer
from guidebot.evaluate import answers, baselines, turns
from guidebot.evaluate.metrics import Share
from guidebot.evaluate.sets import Row, read_set
from guidebot.reply.dialogue import Dialogue
from guidebot.reply.pipeline import Assistant
from guidebot.text import clean, one_line


@dataclass(slots=True)
class Sheet:
    """Tables by title, each a measure's name and its share; and what went wrong, a line each."""

    split: str
    tables: dict[str, Mapping[str, Share]] = field(default_factory=dict)
    misses: list[str] = field(default_factory=list)


def make_sheet(
    assistant: Assistant, folder: Path, split: str, wanted: Sequence[str], *, on: date
) -> Sheet:
    """Run the sets.

    Args:
        assistant: the open guide.
        folder: from `sets.find_sets`.
        split: `dev`, `test` or `all`.
        wanted: of `answers`, `verdicts`, `chats`, `signs`.
        on: the day the questions are asked.

    Raises:
        EvaluationError: a set cannot be read.
    """
    sheet = Sheet(split)
    if "answers" in wanted:
        _answers(sheet, assistant, folder, on)
    if "verdicts" in wanted:
        _verdicts(sheet, assistant, read_set(folder, "verdicts", split), on)
    if "chats" in wanted:
        _chats(sheet, assistant, read_set(folder, "chats", split), on)
    if "signs" in wanted:
        _signs(sheet, assistant, read_set(folder, "signs", split))
    return sheet


def _answers(sheet: Sheet, assistant: Assistant, folder: Path, on: date) -> None:
    rows = read_set(folder, "questions", sheet.split)
    off = read_set(folder, "offtopic", sheet.split)

    def ask(text: str) -> Answer:
        return assistant.answer(text, on=on)

    scored = answers.score(rows, ask)
    refused = answers.score([_unjudged(row) for row in off], ask)
    sheet.tables["answers"] = {
        **answers.ranking(scored),
        **answers.outright(scored),
        **answers.refused(refused),
    }
    sheet.tables["answers: plain BM25 over the passages"] = answers.ranking(
        answers.plain_bm25(assistant.guide, rows)
    )
    for label, of in (("topic", answers.topic), ("kind", answers.kind)):
        sheet.tables[f"first right by {label}"] = {
            name: answers.ranking(group)["success@1"]
            for name, group in answers.groups(scored, of).items()
        }
    sheet.tables["off-topic not answered by kind"] = {
        name: answers.refused(group)["off-topic not answered"]
        for name, group in answers.groups(refused, answers.kind).items()
    }
    for one in scored:
        if not one.right:
            wanted = "/".join(one.row.more["needs"])
            got = "; ".join("/".join(needs) for needs in one.ranked[:3]) or "nothing"
            _miss(sheet, "question", one.row, f"wanted {wanted}, got {got} ({one.outcome.value})")
        if one.alerted:
            _miss(sheet, "question", one.row, "an injury alert was shown")
    for one in refused:
        if one.outcome.value == "answered":
            _miss(sheet, "off-topic", one.row, f"answered with {'/'.join(one.ranked[0])}")


def _unjudged(row: Row) -> Row:
    return Row(row.key, row.author, row.text, {**row.more, "needs": []})


def _verdicts(sheet: Sheet, assistant: Assistant, rows: Sequence[Row], on: date) -> None:
    checked = turns.verdicts(
        rows, lambda row: assistant.answer(row.text, on=on, day=row.more.get("day"))
    )
    sheet.tables["verdicts"] = {"right": _share(checked)}
    for one in checked:
        if not one.right:
            _miss(sheet, "verdict", one.row, f"wanted {one.row.more['say']}, got {one.got}")


def _chats(sheet: Sheet, assistant: Assistant, rows: Sequence[Row], on: date) -> None:
    talks: dict[str, Dialogue] = {}

    def say(row: Row) -> Answer:
        key = f"{row.author} {row.more['conversation']}"
        return talks.setdefault(key, Dialogue(assistant, on=on)).say(row.text)

    checked = turns.chats(rows, say)
    sheet.tables["chats"] = {
        "first turns right": _share([one for one in checked if one.row.more["turn"] == 0]),
        "later turns right": _share([one for one in checked if one.row.more["turn"] > 0]),
    }
    for one in checked:
        if not one.right:
            _miss(sheet, "turn", one.row, f"wanted {one.row.more['needs']}, got {one.got}")


def _signs(sheet: Sheet, assistant: Assistant, rows: Sequence[Row]) -> None:
    judged = []
    for row in rows:
        judgement = assistant.judge(clean(row.text))
        alert = judgement.alert
        why = "; ".join(f"{f.net}: {f.why}" for f in judgement.findings[:2])
        judged.append(
            turns.Judged(
                row, alert.tier.key if alert else "none", alert.sign if alert else None, why
            )
        )
    sheet.tables["signs"] = turns.sign_table(judged)
    for title, judge in baselines.BASELINES.items():
        sheet.tables[f"signs: {title}"] = turns.sign_table(
            [turns.Judged(row, judge(row.text), None) for row in rows]
        )
    for one in judged:
        if (one.got == "none") != (one.wanted == "none") or turns.TIERS.index(
            one.got
        ) < turns.TIERS.index(one.wanted):
            _miss(
                sheet,
                "sign",
                one.row,
                f"wanted {one.wanted} ({one.row.more.get('sign')}), "
                f"got {one.got} ({one.sign}) {one.why}",
            )


def _share(checked: Sequence[turns.Checked]) -> Share:
    return Share(sum(one.right for one in checked), len(checked))


def _miss(sheet: Sheet, what: str, row: Row, why: str) -> None:
    sheet.misses.append(f"{what} {row.author}/{row.key}: {one_line(row.text, 300)} | {why}")


def as_lines(sheet: Sheet) -> Iterator[str]:
    """The sheet as text."""
    yield f"Split: {sheet.split}. Shares with 95 % Wilson intervals."
    for title, table in sheet.tables.items():
        yield ""
        yield title
        for name, share in table.items():
            yield f"  {name:<28} {share}"
