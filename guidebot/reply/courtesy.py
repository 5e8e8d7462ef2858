"""Thanks and greetings: answered in kind, never searched for."""

from __future__ import annotations

from guidebot.linear.features import words
from guidebot.search.engine import Found

_THANKS = frozenset(
    """thank thanks thankyou thx ty ta cheers appreciated appreciate grateful great good perfect
    brilliant lovely super fab fantastic wonderful excellent awesome amazing cool nice sweet ace
    ok okay okey alright right k kk fine yes yep yeah yup no nope nah sure got gotcha understood
    noted clear makes sense helpful help helped helps bye goodbye night morning evening afternoon
    day weekend hi hello hey hiya yo hallo greetings dear well done kind regards best wishes
    welcome sorry oops button mistake nothing thats all everything else question questions moment
    sorted phew relief relieved ah oh aha will do lifesaver star legend much so very many lots
    really truly a an the again you youre your u i im ill my we us it its is was be been for to of
    and that this now then have has had hope see later soon take care me him her them team guys
    folks everyone all both just wrong pressed sent""".split()
)
_GREETINGS = frozenset("hi hello hey hiya morning afternoon evening yo hallo greetings".split())
_OPENERS = frozenset("thank thanks thankyou thx ty ta cheers great perfect brilliant bye".split())
_LONGEST = 12


def is_courtesy(text: str, found: Found) -> bool:
    """Is the message nothing but thanks, a greeting or an acknowledgement?

    Either all its words are words of courtesy, or it is short, the scorer puts the authored
    courtesy lines clearly before every need, and it asks nothing.
    """
    tokens = words(text)
    if not tokens:
        return False
    if len(tokens) <= _LONGEST and all(token in _THANKS for token in tokens) and "?" not in text:
        return True
    linear = found.scores.linear
    courtesy = linear.get("courtesy", -1.0)
    best = linear[found.scores.ranked[0][0]]
    opens = any(token in _OPENERS for token in tokens[:2])
    return (
        len(tokens) <= _LONGEST
        and "?" not in text
        and courtesy > best + (0.1 if opens else 0.4)
        and courtesy > (-0.6 if opens else 0.0)
        and courtesy > linear.get("off-topic", -1.0)
    )


def is_greeting(text: str) -> bool:
    """Does the message open with a greeting and hold no thanks?"""
    tokens = words(text)
    return (
        bool(tokens) and tokens[0] in _GREETINGS and not any(t.startswith("thank") for t in tokens)
    )
