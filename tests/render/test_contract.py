"""The machine interface and the plain text: keys, types, order, what stands first."""

from __future__ import annotations

import io
import json
from collections.abc import Iterable
from typing import Any

import pytest
from made_answers import GOLDEN, MADE

from guidebot.cli.ask import answer_batch
from guidebot.domain.answer import Answer
from guidebot.render import FORMATS
from guidebot.render.as_json import as_plain, render
from guidebot.reply.pipeline import Assistant
from guidebot.safety.signs import BY_KEY

TEXT, NUMBER, NONE = (str,), (int, float), type(None)
# What the contract names, and no less. Keys may be added, none may go or change its type.
ANSWER = {
    "schema": (int,),
    "id": (str, int, NONE),
    "text": TEXT,
    "read_as": (str, NONE),
    "outcome": TEXT,
    "alert": (dict, NONE),
    "verdict": (dict, NONE),
    "lead": TEXT,
    "passages": (list,),
    "asks_back": (str, NONE),
    "caution": TEXT,
    "guide": (dict,),
    "rules": (dict,),
}
ALERT = {"tier": TEXT, "sign": TEXT, "quote": TEXT, "do": (list,)}
VERDICT = {"say": TEXT, "text": TEXT, "day": (int, NONE), "stage": (str, NONE)}
PASSAGE = {"id": TEXT, "title": TEXT, "needs": (list,), "quote": TEXT, "score": NUMBER}
STAMP = {"version": TEXT, "hash": TEXT}


def hold(plain: dict[str, Any], schema: dict[str, tuple[type, ...]]) -> None:
    for key, kinds in schema.items():
        assert key in plain
        assert isinstance(plain[key], kinds), key
        assert not isinstance(plain[key], bool), key


def texts(values: Iterable[Any]) -> bool:
    return all(isinstance(value, str) and value for value in values)


def hold_answer(plain: dict[str, Any]) -> None:
    hold(plain, ANSWER)
    assert plain["schema"] == 1
    assert plain["outcome"] in {"answered", "unsure", "not-in-guide", "courtesy"}
    assert plain["caution"]
    for stamp in (plain["guide"], plain["rules"]):
        hold(stamp, STAMP)
        assert stamp["version"]
        assert stamp["hash"]
    if plain["alert"] is not None:
        hold(plain["alert"], ALERT)
        assert plain["alert"]["tier"] in {"emergency", "vet-today", "clinic"}
        assert plain["alert"]["do"]
        assert texts(plain["alert"]["do"])
    if plain["verdict"] is not None:
        hold(plain["verdict"], VERDICT)
        assert plain["verdict"]["say"] in {"yes", "yes-with-limits", "not-yet", "no", "ask-first"}
    for passage in plain["passages"]:
        hold(passage, PASSAGE)
        assert passage["needs"]
        assert texts(passage["needs"])
    scores = [passage["score"] for passage in plain["passages"]]
    assert scores == sorted(scores, reverse=True)
    if plain["outcome"] == "answered":
        assert plain["passages"]


@pytest.mark.parametrize("name", MADE)
def test_keys_and_types(name: str) -> None:
    line = render(MADE[name], "7")
    assert "\n" not in line
    hold_answer(json.loads(line))
    assert json.loads(line)["id"] == "7"


QUESTIONS = [
    "can she do stairs yet",
    "can she do stairs yet, it's day 6",
    "how tight should the straps be",
    "blood is pouring from his leg",
    "there is a sore under the strap. may he still wear it, day 20",
    "what is the capital of portugal",
    "thanks!",
    "",
    "wie lange darf mein hund das tragen",
    "asdf qwer zxcv",
]


@pytest.mark.parametrize("question", QUESTIONS)
def test_real_answers_hold_the_contract(assistant: Assistant, question: str) -> None:
    plain = json.loads(FORMATS["json"](assistant.answer(question)))
    hold_answer(plain)
    assert plain["text"] == question


def batch(assistant: Assistant, *rows: dict[str, Any]) -> list[dict[str, Any]]:
    raw = io.BytesIO(b"".join(json.dumps(row).encode() + b"\n" for row in rows))
    out = [json.loads(line) for line in answer_batch(assistant, raw, None, None, None, None)]
    for plain in out:
        hold_answer(plain)
    return out


def test_a_batch_keeps_order_and_ids(assistant: Assistant) -> None:
    ids: list[Any] = ["b", "a", 7, None, "a", "\ud800"]
    rows = [{"id": key, "text": QUESTIONS[n]} for n, key in enumerate(ids)]
    out = batch(assistant, *rows)
    assert [plain["id"] for plain in out] == ids
    assert [plain["text"] for plain in out] == QUESTIONS[: len(ids)]


def test_a_batch_row_is_answered_as_a_single_question(assistant: Assistant) -> None:
    for question, plain in zip(
        QUESTIONS, batch(assistant, *({"text": q} for q in QUESTIONS)), strict=True
    ):
        assert plain == as_plain(assistant.answer(question))


def test_day_and_sleeve_of_a_row(assistant: Assistant) -> None:
    early, late = batch(
        assistant,
        {"text": "can she do stairs yet", "day": 2},
        {"text": "can she do stairs yet", "day": 60},
    )
    assert (early["verdict"]["day"], late["verdict"]["day"]) == (2, 60)
    assert early["verdict"]["say"] != late["verdict"]["say"]
    for kind in assistant.guide.device.sleeves:
        (plain,) = batch(assistant, {"text": "how do i put the sleeve on", "sleeve": kind.key})
        assert plain == as_plain(assistant.answer("how do i put the sleeve on", sleeve=kind.key))


def test_rows_of_a_conversation_are_turns_and_conversations_do_not_mix(
    assistant: Assistant,
) -> None:
    first, follow = "can she do stairs yet on day 6", "and in month four?"
    out = batch(
        assistant,
        {"id": "1", "conversation": "x", "text": first},
        {"id": "2", "conversation": "y", "text": "how do i wash the sleeve"},
        {"id": "3", "conversation": "x", "text": follow},
        {"id": "4", "conversation": "y", "text": follow},
        {"id": "5", "text": follow},
    )
    assert out[2]["verdict"]["activity"] == out[0]["verdict"]["activity"]
    assert out[2]["verdict"]["day"] > 90
    assert out[3]["verdict"] is None
    alone = as_plain(assistant.answer(follow), "5")
    assert out[4] == alone


# ------------------------------------------------------------------------------ what stands first


def test_a_second_sign_is_named(assistant: Assistant) -> None:
    answer = assistant.answer("blood is pouring from his leg. his gums are blue")
    assert answer.alert
    assert answer.alert.also
    shown = " ".join(FORMATS["text"](answer).split())
    for key in (answer.alert.sign, *answer.alert.also):
        assert BY_KEY[key].name in shown


@pytest.mark.parametrize("name", [name for name, made in MADE.items() if made.alert])
@pytest.mark.parametrize("form", FORMATS)
def test_an_alert_stands_first(form: str, name: str) -> None:
    answer = MADE[name]
    assert answer.alert
    shown = FORMATS[form](answer)
    at = shown.index(answer.alert.headline)
    for line in answer.alert.do:
        assert first_words(shown, line) > at
    last = max(first_words(shown, line) for line in answer.alert.do)
    for later in parts(answer):
        if first_words(shown, later) >= 0:
            assert first_words(shown, later) > last, later
    assert "EMERGENCY" in shown or "emergency" in shown or answer.alert.tier.key != "emergency"


def first_words(shown: str, text: str) -> int:
    """Where a text starts; its first words, for formats wrap lines."""
    return shown.find(" ".join(text.split()[:4]))


def parts(answer: Answer) -> list[str]:
    """All that could be taken for the answer."""
    found = [answer.lead, answer.caution, *answer.notes]
    found += [p.title for p in answer.passages] + [p.quote for p in answer.passages]
    found += [answer.asks_back or "", answer.read_as or ""]
    found += [answer.verdict.text] if answer.verdict else []
    return [part for part in found if part]


@pytest.mark.parametrize("name", MADE)
def test_in_json_the_alert_comes_before_the_answer(name: str) -> None:
    keys = list(json.loads(render(MADE[name])))
    for later in ("outcome", "read_as", "verdict", "lead", "passages", "asks_back", "caution"):
        assert keys.index("alert") < keys.index(later)


@pytest.mark.parametrize("form", FORMATS)
@pytest.mark.parametrize("name", MADE)
def test_every_format_says_caution_and_stamps(form: str, name: str) -> None:
    answer = MADE[name]
    shown = FORMATS[form](answer)
    assert first_words(shown, answer.caution) >= 0
    for stamp in (answer.guide, answer.rules):
        assert stamp.version in shown
        assert stamp.hash in shown


@pytest.mark.parametrize("form", FORMATS)
def test_every_format_is_reached(form: str) -> None:
    assert FORMATS[form](MADE["answered"])


# ------------------------------------------------------------------------------------ golden texts


@pytest.mark.parametrize("name", MADE)
def test_golden(name: str) -> None:
    """After a wanted change: run made_answers.py and read the difference."""
    wanted = (GOLDEN / f"{name}.txt").read_text(encoding="utf-8")
    assert FORMATS["text"](MADE[name]) + "\n" == wanted


def test_every_golden_file_has_its_answer() -> None:
    assert {path.stem for path in GOLDEN.glob("*.txt")} == set(MADE)


@pytest.mark.parametrize("name", MADE)
def test_lines_are_short(name: str) -> None:
    assert max(map(len, FORMATS["text"](MADE[name]).splitlines())) <= 78


def test_an_unbreakable_word_is_kept_whole() -> None:
    from dataclasses import replace

    link = "https://example.org/" + "a" * 100
    assert link in FORMATS["text"](replace(MADE["answered"], lead=f"See {link} first."))
