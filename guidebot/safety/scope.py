"""How each word is meant: as a fact about this dog now, or denied, past, supposed, another's."""

from __future__ import annotations

from collections.abc import Iterator

from guidebot.safety.spans import Found


class Meant:
    """Why a word is not a report, one bit a reason; 0 means it is one. Plain numbers are quick."""

    FACT = 0
    DENIED = 1
    SUPPOSED = 2
    PAST = 4
    OTHERS = 8


DENIAL_REACH = 9
"""Words a denial reaches forward at most."""
OTHER_REACH = 8
"""Words another subject reaches forward at most."""


def scopes(found: Found) -> list[int]:
    """One value a word.

    Each scope ends with its sentence at the latest; a denial also at `but`, at a comma that
    begins a new thought, and at `and he`. Words inside a phrase of the lexicon (`won't stop`,
    `not eating`) deny nothing.
    """
    count = len(found.words.forms)
    meant = [Meant.FACT] * count
    _deny(found, meant)
    _deny_back(found, meant)
    _suppose(found, meant)
    _past(found, meant)
    _others(found, meant)
    _take_back(found, meant)
    for first, stop in found.spans.get("idiom", ()):
        _mark(meant, range(first, stop), Meant.OTHERS)
    return meant


def _starts(found: Found, name: str) -> set[int]:
    return {first for first, _ in found.spans.get(name, ())}


def _mark(meant: list[int], places: Iterator[int] | range, why: int) -> None:
    for at in places:
        meant[at] |= why


def _deny(found: Found, meant: list[int]) -> None:
    words = found.words
    fake = {at for first, stop in found.spans.get("negfake", ()) for at in range(first, stop)}
    but = _starts(found, "butword")
    restart = _starts(found, "restart")
    deniers = _starts(found, "negword")
    for first, stop in found.spans.get("negword", ()):
        if first in fake:
            continue
        helper = words.forms[first] not in _LISTING
        end = found.phrase_end.get(first, stop + DENIAL_REACH)
        for at in range(stop, min(end, len(meant))):
            if words.sentences[at] != words.sentences[first] or at in but:
                break
            if at > stop and at in deniers:
                break  # it denies, or fails, on its own
            if words.breaks[at]:
                if "-" in words.breaks[at] and len(words.breaks[at]) == 1:
                    pass
                elif helper or at in restart or any(c in ";()\u2014" for c in words.breaks[at]):
                    break
            if at > stop and words.forms[at - 1] in ("and", "so", "because") and at in restart:
                break
            meant[at] |= Meant.DENIED
            found.deniers.setdefault(at, first)


_LISTING = frozenset(("no", "not", "never", "none", "without", "zero", "neither", "nor", "nothing"))


def _deny_back(found: Found, meant: list[int]) -> None:
    """`Limping? None.`: a short denial right after a question or a colon denies what is before."""
    words = found.words
    deny = _starts(found, "denyword")
    fixed = _starts(found, "fixed")
    first_of: dict[int, int] = {}
    for at, sentence in enumerate(words.sentences):
        first_of.setdefault(sentence, at)
    for at, sentence in enumerate(words.sentences):
        if first_of[sentence] != at or sentence == 0:
            continue
        if "?" in words.breaks[at] and at in deny and at not in found.phrase_end:
            # `Swollen? Not sure` and `Normal? No, ...` leave the question open.
            if words.forms[at : at + 2] in (["not", "sure"], ["no", "idea"]):
                continue
            begin = first_of.get(sentence - 1, at)
            if at - begin <= 14:
                _mark(meant, range(begin, at), Meant.DENIED)
    for at in deny:
        ends = at + 1 == len(meant) or bool(words.breaks[at + 1])
        if ends and not words.breaks[at] and at not in found.phrase_end:
            begin = at  # `bleeding no, swelling no`
            while begin > 0 and words.clauses[begin - 1] == words.clauses[at]:
                begin -= 1
            _mark(meant, range(begin, at), Meant.DENIED)
    _deny_after(found, meant, first_of)
    for at in fixed | deny:
        if words.breaks[at] in (":", "-", "\u2013", "\u2014") and at not in found.phrase_end:
            follows = at + 1 < len(meant) and not words.breaks[at + 1] and at in deny
            if not follows or words.forms[at] in ("none", "nil", "zero", "gone", "fine"):
                begin = at - 1
                while begin > 0 and words.clauses[begin - 1] == words.clauses[at - 1]:
                    begin -= 1
                _mark(meant, range(begin, at), Meant.DENIED)


def _deny_after(found: Found, meant: list[int], first_of: dict[int, int]) -> None:
    """`Was there any swelling? There isn't.`: a bare short denial of the sentence before."""
    words = found.words
    for sentence, begin in first_of.items():
        size = 1
        while begin + size < len(meant) and not words.breaks[begin + size]:
            size += 1
        if sentence == 0 or size > 4 or words.forms[begin] not in _BARE:
            continue
        if any(at in found.phrase_end for at in range(begin, begin + size)):
            continue
        if any(words.forms[at] in _DENIES for at in range(begin, begin + size)):
            _mark(meant, range(first_of[sentence - 1], begin), Meant.DENIED)


_BARE = frozenset(("there", "theres", "it", "he", "she", "they", "none", "neither", "nothing"))
_DENIES = frozenset(
    "isnt arent wasnt werent hasnt havent didnt doesnt none nothing not neither".split()
)


def _take_back(found: Found, meant: list[int]) -> None:
    """`Thought it was cracked. Not cracked.`: a short denial takes the same word back."""
    words = found.words
    sizes: dict[int, int] = {}
    for sentence in words.sentences:
        sizes[sentence] = sizes.get(sentence, 0) + 1
    back: dict[str, int] = {}
    for at, form in enumerate(words.forms):
        if meant[at] & Meant.DENIED and sizes[words.sentences[at]] <= SHORT and len(form) > 3:
            back[form] = words.sentences[at]
    if back:
        for at, form in enumerate(words.forms):
            if words.sentences[at] < back.get(form, 0):
                meant[at] |= Meant.DENIED


SHORT = 5
"""Words a sentence may have to take back what was said before it."""


def _suppose(found: Found, meant: list[int]) -> None:
    words = found.words
    but = _starts(found, "butword")
    now = _starts(found, "nowword")
    done = 0  # a scope that runs on needs no second walk: time stays linear
    for first, _ in found.spans.get("hypoword", ()):
        if first < done:
            continue
        for at in range(first, len(meant)):
            done = at
            if words.sentences[at] != words.sentences[first] or at in but or at in now:
                break
            meant[at] |= Meant.SUPPOSED
    done = 0
    for first, stop in found.spans.get("ifword", ()):
        if first < done:
            continue
        for at in range(stop, len(meant)):
            done = at
            if words.sentences[at] != words.sentences[first] or at in but:
                break
            if words.breaks[at] and at - stop > 1:
                break
            meant[at] |= Meant.SUPPOSED


def _past(found: Found, meant: list[int]) -> None:
    words = found.words
    strong = {words.sentences[at] for at, form in enumerate(words.forms) if _is_year(form)}
    weak: set[int] = set()
    for first, stop in found.spans.get("pastword", ()):
        far = not _LONG_GONE.isdisjoint(words.forms[first:stop])
        (strong if far else weak).add(words.sentences[first])
    if strong or weak:
        now = {words.sentences[first] for first, _ in found.spans.get("nowword", ())}
        fresh = {words.sentences[at] for at, form in enumerate(words.forms) if form in _FRESH}
        past = (weak - now) | (strong - fresh)
        for at, sentence in enumerate(words.sentences):
            if sentence in past:
                meant[at] |= Meant.PAST
    done = 0
    for at, form in enumerate(words.forms[:-1]):
        if form == "used" and words.forms[at + 1] == "to" and at >= done:
            for after in range(at, len(meant)):
                done = after
                if words.sentences[after] != words.sentences[at] or words.breaks[after]:
                    break
                meant[after] |= Meant.PAST


_LONG_GONE = frozenset(
    (
        "year years yr yrs months month summer summers winter winters autumn spring fall season "
        "seasons christmas xmas easter puppy pup baby youngster youth decade ages healed january "
        "february april june july august september october november december moons covid adopted "
        "shelter teen"
    ).split()
)
_FRESH = frozenset("again today tonight yesterday morning suddenly".split())
"""Words by which even something long gone is said to be back."""


def _is_year(form: str) -> bool:
    return len(form) == 4 and form.isdigit() and form[:2] in ("19", "20")


def _others(found: Found, meant: list[int]) -> None:
    words = found.words
    dog = _starts(found, "dogword") | _names(found)
    for first, stop in found.spans.get("othersubj", ()):
        clause = words.clauses[first]
        begin = first
        while begin > 0 and words.clauses[begin - 1] == clause and first - begin < OTHER_REACH:
            begin -= 1
        end = stop
        while (
            end < len(meant)
            and end - stop < OTHER_REACH
            and (words.clauses[end] == clause or words.breaks[end] == "-")
        ):
            end += 1
        mine = words.forms[first] == "my" and words.forms[stop - 1] in _MY_BODY
        near = (at for at in range(begin, end) if not first <= at < stop)
        if not mine and any(at in dog or words.forms[at] in _TELLS for at in near):
            continue
        _mark(meant, range(first, end), Meant.OTHERS)
    for first, stop in found.spans.get("selfsubj", ()):
        reach = range(stop, min(stop + 3, len(meant)))
        if any(words.forms[at] in NOTICING or at in dog for at in reach):
            continue
        for at in reach:
            if words.sentences[at] != words.sentences[first] or words.breaks[at]:
                break
            meant[at] |= Meant.OTHERS


_MY_BODY = frozenset(
    (
        "back knee knees hand hands finger fingers wrist wrists eye eyes heart leg foot ankle "
        "shoulder stomach skin nose head arm arms thumb hip toe toes neck gums face ears blood"
    ).split()
)
_TELLS = frozenset(
    (
        "says said say thinks thought reckons told tells noticed found saw asks asked heard swears "
        "swore wants gave gives fed texted sent wrote"
    ).split()
)
"""Verbs by which somebody tells about the dog, or does something to it."""
NOTICING = frozenset(
    (
        "see saw seen hear heard feel felt find found notice noticed think guess know swear "
        "mean did do press pressed open opened put fix touch touched can could cant gave give "
        "bring carry lift bent bend pinch pinched squeeze took take try tried when if reckon "
        "mopped redo pull pulled say said counted count timed measured checked check look "
        "looked hold held tickle tickled "
    ).split()
)
"""Verbs by which an owner tells what the dog does or what was done to it."""


def _names(found: Found) -> set[int]:
    """Words that may be the dog's name: a capital inside a sentence that is not all capitals."""
    words = found.words
    if not words.capitals:
        return set()
    return {
        at
        for at in words.capitals
        if at > 0
        and words.sentences[at] == words.sentences[at - 1]
        and words.forms[at] not in _NOT_NAMES
    }


_NOT_NAMES = frozenset(
    "i im ive id ill monday tuesday wednesday thursday friday saturday sunday january february "
    "march april may june july august september october november december christmas easter".split()
)
