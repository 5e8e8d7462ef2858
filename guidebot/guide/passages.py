"""`passages/<topic>/<id>.md` to values: YAML front matter between `---` lines, then CommonMark."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date

from guidebot.domain.passage import Applies, Passage, Reviewed
from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import KEY, Form, as_date, as_integer, as_items, as_table, texts
from guidebot.guide.fill import Filler
from guidebot.guide.known import Known, optional_key
from guidebot.guide.marked import Items, Scalar, parse
from guidebot.text import clean

MOST_NEEDS = 3
BODY_WORDS = (50, 150)
SHORT_SENTENCES = 2

_FENCE = re.compile(r"---[ \t]*")
_SENTENCE_END = re.compile(r"[.!?](?=\s|$)")
_NOT_ALLOWED = (
    (re.compile(r"<[A-Za-z!/?]"), "HTML"),
    (re.compile(r"&(?:#|[A-Za-z]+;)"), "an HTML character code"),
    (re.compile(r"^ {0,3}#{1,6}(?=\s|$)"), "a heading"),
    (re.compile(r"^ {0,3}(?:=+|-{2,}|\*{3,}|_{3,})\s*$"), "a heading or rule line"),
    (re.compile(r"\]\("), "a link"),
    (re.compile(r"\bhttps?://|\bwww\."), "a link"),
    (re.compile(r"\|"), "a table"),
    (re.compile(r"^ {0,3}(?:```|~~~)|`"), "code"),
)


def read_passages(sources: Mapping[str, str], known: Known, faults: Faults) -> dict[str, Passage]:
    """Read all passages and check what they say about each other.

    Args:
        sources: text of each file by path below the content folder.
        known: what passages may name.
        faults: receives what is wrong.

    Returns:
        The passages by id, sorted.
    """
    found: dict[str, Passage] = {}
    links: list[tuple[str, Where]] = []
    ids = {name.rpartition("/")[2].removesuffix(".md") for name in sources}
    for name in sorted(sources):
        passage = _read(name, sources[name], known, links, faults)
        if passage is None:
            continue
        if passage.id in found:
            faults.add(
                Where(name, 1, 1),
                f"the id `{passage.id}` is taken by {found[passage.id].path}",
                "Rename one of the files",
            )
        found[passage.id] = passage
    for target, where in links:
        if target not in ids:
            faults.add(where, f"`see` names no passage `{target}`", nearest(target, ids))
        elif where.path.endswith(f"/{target}.md"):
            faults.add(where, "`see` names the passage itself")
    return {key: found[key] for key in sorted(found)}


def _read(
    name: str, text: str, known: Known, links: list[tuple[str, Where]], faults: Faults
) -> Passage | None:
    parts = name.split("/")
    topic, identifier = parts[-2], parts[-1].removesuffix(".md")
    if len(parts) != 3:
        faults.add(Where(name, 1, 1), "a passage has to be in passages/<topic>/<id>.md")
        return None
    if not KEY.fullmatch(identifier):
        faults.add(
            Where(name, 1, 1),
            f"the file name `{identifier}` is not a passage id",
            "Use small letters, digits and hyphens",
        )
    if known.topics is not None and topic not in known.topics:
        faults.add(Where(name, 1, 1), f"`{topic}` is not a topic", nearest(topic, known.topics))
    lines = text.split("\n")
    fences = [number for number, line in enumerate(lines) if _FENCE.fullmatch(line)][:2]
    if len(fences) < 2 or fences[0] != 0:
        faults.add(
            Where(name, 1, 1), "the front matter is missing", "Put it between two lines `---`"
        )
        return None
    body = _body(lines, fences[1] + 1, name, known.filler, faults)
    front = "\n".join(lines[1 : fences[1]]) + "\n"
    root = as_table(parse(front, name, faults, lines=lines, skipped=1), faults, "the front matter")
    if root is None:
        return None
    form = Form(root, faults)
    passage = Passage(
        id=identifier,
        topic=topic,
        title=known.filler.text(form, "title"),
        answers=_answers(form, topic, known, faults),
        short=_short(form, known.filler, faults),
        body=body,
        basis=form.text("basis"),
        reviewed=_reviewed(form, faults) or Reviewed(_NEVER, ""),
        applies=_applies(form, known, faults),
        see=_see(form, links, faults),
        path=name,
    )
    form.close()
    for key in ("title", "short"):
        node = root.entries.get(key)
        if isinstance(node, Scalar):
            _check_markup([node.text], node.where, 0, faults)
    return passage


_NEVER = date.min  # stands in for a date that has its fault already


def _answers(form: Form, topic: str, known: Known, faults: Faults) -> tuple[str, ...]:
    node = form.node("answers")
    if node is None:
        return ()
    answers = texts(node, faults, "`answers`")
    if len(answers) > MOST_NEEDS:
        faults.add(
            node.where,
            f"`answers` names {len(answers)} needs, but 1 to {MOST_NEEDS} are allowed",
            "Keep those it answers in full",
        )
    entries = node.entries if isinstance(node, Items) else ()
    for entry in entries:
        if not isinstance(entry, Scalar) or entry.text not in answers or known.needs is None:
            continue
        if entry.text not in known.needs:
            faults.add(
                entry.where, f"there is no need `{entry.text}`", nearest(entry.text, known.needs)
            )
    if answers and not any(answer.startswith(f"{topic}.") for answer in answers):
        faults.warn(node.where, f"no need it answers belongs to its folder `{topic}`")
    return answers


def _short(form: Form, filler: Filler, faults: Faults) -> str:
    short = filler.text(form, "short")
    sentences = len(_SENTENCE_END.findall(short))
    if short and not sentences:
        faults.warn(form.where("short"), "`short` is not a full sentence")
    if sentences > SHORT_SENTENCES:
        faults.warn(form.where("short"), f"`short` has {sentences} sentences, more than two")
    return short


def _reviewed(form: Form, faults: Faults) -> Reviewed | None:
    table = as_table(form.node("reviewed"), faults, "`reviewed`")
    if table is None:
        return None
    inner = Form(table, faults)
    node = inner.node("date")
    on = as_date(node, faults, "`date`") if node else None
    role = inner.text("role")
    inner.close()
    return Reviewed(on, role) if on else None


def _applies(form: Form, known: Known, faults: Faults) -> Applies:
    table = as_table(form.node("applies", required=False), faults, "`applies`")
    if table is None:
        return Applies()
    inner = Form(table, faults)
    sleeve = optional_key(inner, "sleeve", known.sleeves)
    part = optional_key(inner, "part", known.parts)
    stages = inner.texts("stages", required=False)
    node = inner.table.entries.get("stages")
    for entry in node.entries if isinstance(node, Items) else ():
        if known.stages is None or not isinstance(entry, Scalar) or entry.text not in stages:
            continue
        if entry.text not in known.stages:
            faults.add(
                entry.where, f"`{entry.text}` is not a stage", nearest(entry.text, known.stages)
            )
    days = _days(inner, faults)
    inner.close()
    return Applies(sleeve, part, stages, days)


def _days(form: Form, faults: Faults) -> tuple[int, int | None] | None:
    node = form.node("days", required=False)
    if node is None:
        return None
    entries = as_items(node, faults, "`days`")
    if isinstance(node, Items) and len(entries) not in {1, 2}:
        faults.add(node.where, "`days` is a first and a last day", "Write [1, 10] or [11]")
        return None
    if not entries:
        return None
    first = as_integer(entries[0], faults, "the first day", 1)
    if len(entries) == 1 or (isinstance(entries[1], Scalar) and entries[1].kind == "null"):
        return (first, None) if first else None
    last = as_integer(entries[1], faults, "the last day", first or 1)
    return (first, last) if first and last else None


def _see(form: Form, links: list[tuple[str, Where]], faults: Faults) -> tuple[str, ...]:
    node = form.node("see", required=False)
    if node is None:
        return ()
    found = texts(node, faults, "`see`")
    for entry in node.entries if isinstance(node, Items) else ():
        if isinstance(entry, Scalar) and entry.text in found:
            links.append((entry.text, entry.where))
    return found


def _body(lines: list[str], start: int, name: str, filler: Filler, faults: Faults) -> str:
    """The cleaned body with its numbers filled in; `start` is the index of its first line."""

    def find(piece: str) -> Where:
        head = piece.split("\n")[0]
        for number in range(start, len(lines)):
            column = lines[number].find(head)
            if column >= 0:
                return Where(name, number + 1, column + 1)
        return Where(name, start + 1, 1)

    _check_markup(lines[start:], Where(name, start + 1), 0, faults)
    written = "\n".join(lines[start:])
    body = clean(filler.fill(written, find)).text
    words = len(body.split())
    if not words:
        faults.add(Where(name, start + 1, 1), "the passage has no text below its front matter")
    elif not BODY_WORDS[0] <= words <= BODY_WORDS[1]:
        faults.warn(
            Where(name, start + 1, 1),
            f"the text has {words} words, and {BODY_WORDS[0]} to {BODY_WORDS[1]} are asked for",
        )
    return body


def _check_markup(lines: list[str], where: Where, offset: int, faults: Faults) -> None:
    """Note markup that not every face can show; `where` is the place of the first line."""
    for number, line in enumerate(lines):
        for pattern, what in _NOT_ALLOWED:
            match = pattern.search(line)
            if match:
                column = (where.column or 1) + match.start() + offset
                faults.add(
                    Where(where.path, (where.line or 1) + number, column, where.key),
                    f"{what} is not allowed in a passage",
                    "Use paragraphs, lists and emphasis only",
                )
