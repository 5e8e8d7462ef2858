"""Is a message in another language than English? Only asked where the guide found nothing."""

from __future__ import annotations

import re

_WORD = re.compile(r"[^\W\d_]+")
_FOREIGN = frozenset(
    """der die das und ist nicht mein meine wie lange darf ich hund mit ein eine er sie es den dem
    le la les des est pas mon ma mes comment combien de temps chien avec un une il elle je peut que
    el los las mi perro cuanto tiempo puede con una es por que como lleva
    il lo gli mio cane quanto tempo può con una è per come posso devo
    de het een mijn hond hoe lang mag niet met kan ik
    o os meu cachorro cão quanto posso com uma não como
    mój pies jak długo czy może nie na
    köpeğim ne kadar mi
    min hund hur länge får inte med kan jag och är hvordan kan min ikke og
    koira kuinka kauan voiko""".split()
)
_ENGLISH = frozenset(
    """the a an is are was it he she his her my i we you to of in on and or not do does can how
    what when why which for with at be this that have has so if no off out up dog""".split()
)


def looks_foreign(text: str) -> bool:
    """More function words of other languages than of English, or mostly letters beyond Latin."""
    tokens = [token.lower() for token in _WORD.findall(text)]
    letters = [char for char in text if char.isalpha()]
    if letters and sum(ord(char) > 0x24F for char in letters) > len(letters) / 2:
        return True
    foreign = sum(token in _FOREIGN for token in tokens)
    english = sum(token in _ENGLISH for token in tokens)
    return foreign >= 2 and foreign > english
