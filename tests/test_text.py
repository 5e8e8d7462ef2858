"""The door for foreign text: nothing dangerous gets in, no word gets lost."""

from __future__ import annotations

import time
import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebot.text import MAX_CHARS, clean, one_line, plain

# Sequences of ECMA-48 (control functions) and xterm's control sequences document.
ESCAPES = [
    "\x1b[31m",
    "\x1b[0;1;38;5;196m",
    "\x1b[2J",
    "\x1b[?1049h",
    "\x1b[1 q",
    "\x1b]0;own title\x07",
    "\x1b]0;own title\x1b\\",
    "\x1b]8;;https://example.org\x1b\\",
    "\x1b]52;c;cm0gLXJm\x07",
    "\x1bP1$tq\x1b\\",
    "\x1b_application\x1b\\",
    "\x1b^private\x1b\\",
    "\x1bXstart\x1b\\",
    "\x1bc",
    "\x1b(B",
    "\x1b7",
    "\x9b31m",
    "\x9d0;own title\x07",
]
INVISIBLE = [
    *(chr(code) for code in range(0x20) if chr(code) not in "\t\n\r\x0b\x0c\x1b"),
    *(chr(code) for code in range(0x7F, 0xA0) if code != 0x85),
    *"\u00ad\u034f\u061c\u115f\u3164\u180e\u200b\u200c\u200d\u200e\u200f\ufeff\ufffa\ufe0f",
    *"\u202a\u202b\u202c\u202d\u202e\u2060\u2066\u2067\u2068\u2069",
    "\ud800",
    "\udfff",
    "\U000e0041",
]


@pytest.mark.parametrize("escape", ESCAPES, ids=ascii)
def test_a_terminal_sequence_goes_whole(escape: str) -> None:
    assert clean(f"she is blee{escape}ding").text == "she is bleeding"


@pytest.mark.parametrize("sign", INVISIBLE, ids=ascii)
def test_an_invisible_character_goes_alone(sign: str) -> None:
    assert clean(f"she is blee{sign}ding").text == "she is bleeding"


@pytest.mark.parametrize("opening", ["\x1b]0;", "\x1bP", "\x1b_", "\x90", "\x98", "\x9d", "\x9f"])
def test_an_endless_sequence_takes_no_word_with_it(opening: str) -> None:
    text = clean(f"he fell {opening}now he is bleeding\nand limps").text
    assert "is bleeding\nand limps" in text


def test_text_in_the_wrong_encoding_keeps_its_words() -> None:
    typed = "the vet said \u201cfine\u201d but she is bleeding and very \u201cweak\u201d"
    misread = typed.encode("utf-8").decode("latin-1")  # as old mail programs do
    assert "but she is bleeding and very" in clean(misread).text


def test_an_end_of_another_sequence_does_not_close_over_words() -> None:
    assert "is bleeding" in clean("a\x1b]0;t\nshe is bleeding\x07 now").text


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r", "\x0b", "\x0c", "\x85", "\u2028", "\u2029"])
def test_line_ends_are_line_feeds(end: str) -> None:
    assert clean(f"one{end}two").text == "one\ntwo"


@pytest.mark.parametrize("space", ["\t", "\u00a0", "\u2003", "\u3000"])
def test_spaces_are_plain(space: str) -> None:
    assert clean(f"one{space}two").text == "one two"


def test_bytes() -> None:
    assert clean(b"caf\xe9 \xff").text == "caf\ufffd \ufffd"
    assert clean("is it ok".encode("utf-16")).text.endswith("is it ok")


def test_accents_are_composed() -> None:
    assert clean("cafe\u0301").text == "caf\u00e9"


def test_length() -> None:
    assert clean("a" * MAX_CHARS) == clean(b"a" * MAX_CHARS)
    assert not clean("a" * MAX_CHARS).too_long
    assert clean("a" * (MAX_CHARS + 1)).too_long
    assert len(clean("a" * 1_000_000).text) == MAX_CHARS


@pytest.mark.parametrize(
    "piece",
    ["\x1b", "\x1b]", "\x1b[", "\x1b[0", "\x90", "\x9d", "\x9b", "\x9b0", "\x9da", "\x1b]a", "0 ",
     "\x1b]" + "a" * 4095, "\x9d" + "a" * 4097, "e\u0301", "\u0301", "\r", "\u200b", "<", "\ud800"],
    ids=lambda p: ascii(p[:4]),
)  # fmt: skip
@pytest.mark.parametrize("size", [100_000, 1_000_000])
def test_long_input_takes_no_long_time(piece: str, size: int) -> None:
    raw = piece * (size // len(piece))
    start = time.process_time()
    cleaned = clean(raw)
    plain(cleaned.text)
    # Far above what linear work takes, far below what quadratic work would.
    assert time.process_time() - start < 3
    assert len(cleaned.text) <= MAX_CHARS


ANY = st.text(
    st.one_of(
        st.characters(),
        st.sampled_from([*"\x1b\x9b\x9d\x9c\x07[]0;m\\ \n\r\t\x00\u0301\u200b\u202e\ud800"]),
    )
)


@given(ANY)
@settings(deadline=None)
def test_nothing_dangerous_comes_out(raw: str) -> None:
    text = clean(raw).text
    for char in text:
        assert char == "\n" or unicodedata.category(char) not in ("Cc", "Cs", "Zl", "Zp"), ascii(
            char
        )
        assert unicodedata.bidirectional(char) not in (
            "LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI",
        )  # fmt: skip
    text.encode("utf-8")
    assert text == text.strip()


@given(ANY)
@settings(deadline=None)
def test_cleaning_twice_is_cleaning_once(raw: str) -> None:
    once = clean(raw).text
    assert clean(once).text == once


@given(st.binary())
@settings(deadline=None)
def test_any_bytes_are_read(raw: bytes) -> None:
    once = clean(raw).text
    assert clean(once).text == once


WORDS = st.text(st.characters(min_codepoint=0x20, max_codepoint=0x7E), max_size=12)
# What stands between words: whole sequences, and controls that are no part of one.
BETWEEN = st.sampled_from([*ESCAPES, *(s for s in INVISIBLE if s not in "\x07\x9b"), "\n", "\r\n"])


@given(st.lists(st.tuples(WORDS, BETWEEN)))
@settings(deadline=None)
def test_every_letter_outside_sequences_stays(parts: list[tuple[str, str]]) -> None:
    raw = "".join(word + between for word, between in parts)
    # A C1 string opener directly before a sequence's end would be a sequence of its own.
    wanted = "".join(char for word, _ in parts for char in word if char.isalpha())
    found = "".join(char for char in clean(raw).text if char.isascii() and char.isalpha())
    assert found == wanted


@given(ANY)
@settings(deadline=None)
def test_offsets_stay_true_in_plain(raw: str) -> None:
    text = clean(raw).text
    folded = plain(text)
    assert len(folded) == len(text)
    for typed, low in zip(text, folded, strict=True):
        if typed.isascii() and typed.isalpha():
            assert low == typed.lower()


@pytest.mark.parametrize("text", ["İstanbul", "ΑΣ", "ẞ", "\u201cIt\u2019s\u201d", "ﬁ", "Ǆ"])
def test_plain_keeps_length(text: str) -> None:
    assert len(plain(text)) == len(text)


def test_plain_straightens_quotes() -> None:
    assert plain("She\u2019s \u201cFine\u201d") == 'she\'s "fine"'


@given(ANY, st.integers(min_value=1, max_value=40))
@settings(deadline=None, max_examples=50)
def test_one_line_is_one_short_line(raw: str, limit: int) -> None:
    line = one_line(clean(raw).text, limit)
    assert "\n" not in line
    assert len(line) <= limit
