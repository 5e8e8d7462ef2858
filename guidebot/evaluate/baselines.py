"""Two plain ways to notice injury signs, to measure the safety layer against."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from guidebot.search.split import sentences
from guidebot.text import plain

_KEYWORDS = {
    "emergency": """bleeding blood choking breathe breathing gums seizure fit tremors collapse
        collapsed unconscious poison poisoned chocolate grapes raisins xylitol ibuprofen aspirin
        paracetamol heatstroke bloat vomiting diarrhoea diarrhea broken fracture screaming eye
        swallowed hit car fell snake""",
    "vet-today": """swollen swelling wound sore blister pus raw oozing limping lame lameness pain
        painful yelp yelps stitches fever lethargic rash hives pop""",
    "clinic": """redness red bald knuckling cracked crack sharp screw torn slipping slides licking
        rubbing""",
}
_TIER_OF = {word: tier for tier, words in _KEYWORDS.items() for word in words.split()}
_ORDER = ("none", "clinic", "vet-today", "emergency")
_WORD = re.compile(r"[a-z]+")
_NEGATION = re.compile(r"\b(?:no|not|never|without|isn't|hasn't|doesn't|didn't|nor)\b")


def _highest(text: str) -> str:
    tiers = [_TIER_OF[word] for word in _WORD.findall(plain(text)) if word in _TIER_OF]
    return max(tiers, key=_ORDER.index, default="none")


def keywords(text: str) -> str:
    """The highest tier of any keyword in the text, `none` without one."""
    return _highest(text)


def keywords_negated(text: str) -> str:
    """The same, leaving out sentences that hold a negation (after NegEx: Chapman et al. 2001)."""
    tiers = [_highest(part) for part in sentences(text) if not _NEGATION.search(plain(part))]
    return max(tiers, key=_ORDER.index, default="none")


BASELINES: Mapping[str, Callable[[str], str]] = {
    "a plain keyword list": keywords,
    "keywords with sentence negation": keywords_negated,
}
