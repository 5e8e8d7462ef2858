"""The turns of phrase by which a question of permission or amount is known."""

from __future__ import annotations

import re

from guidebot.lazy import lazy

_WHO = (
    r"(?:he|she|they|we|i|it|you|pt|the (?:dog|pup|patient|boy|girl|client|owner)|my \w+|our \w+|"
    r"owner|dog|client|patient|one|someone|a dog|both|the (?:two|kids|children)|[a-z]+)"
)
_MODAL = r"(?:can|cans|may|could|might|shall|should|must|would|dare|ought|am|are|is|does|do|will)"
_OK = (
    r"(?:ok|okay|k|fine|alright|all right|safe|allowed|permitted|acceptable|bad|dangerous|harmful|"
    r"too [a-z]+(?= for (?:him|her|them|my|our)| ?\?|$| yet| now)|too (?:early|soon|much|long|far|risky|late)|possible|wise|unwise|advisable|good|good idea|"
    r"bad idea|sensible|wrong|risky|forbidden|off limits|out of the question|contraindicated|"
    r"recommended|enough|a problem|a no|a no-?no|no go|verboten|reasonable|realistic|right|"
    r"out|ready|cleared|advised|acceptable|on the cards|legal|al+o?w?[eu]?d|aloud|alowd|permissible|too (?:tired|risky|"
    r"cruel|mean|wild|far|fast)|terrible|mad|crazy|silly|daft|stupid|reckless|cheating|pushing (?:it|"
    r"our luck)|overdoing it|asking (?:for trouble|too much)|worth the risk|better not|okey|oke|in order|a bad thing|"
    r"the end of the world|time|dangerous|doable|feasible|a good thing|a bit much|too big|too high|too rough)"
)
_QUANTITY = r"how (?:long|far|much|many|often|soon|early|high|fast|hard|late|big)"
_POINT = r"(?:what|which) (?:day|week|month|stage|point|age|time)"

_PERMITS = tuple(
    lazy(pattern)
    for pattern in (
        # can he, may we, should she (not "how can I", "why can't he")
        r"(?<!\bhow )(?<!\bwhy )(?<!\bwhat )(?<!\bwhere )(?<!\bwhich )(?<!\bwho )"
        r"\b(?:can|cans|may|could|might|shall|should|must|dare|ought|can't|couldn't|shouldn't) "
        rf"(?!you (?:tell|explain|send|help|give|show|say|remind|please|advise|let me know))"
        rf"(?!i (?:see|tell|feel|hear|ask|expect|call|ring|know|book|worry|be worried|phone|"
        rf"contact|"
        rf"bring|send|wash|clean|dry|loosen|buy|order|check|look|get him to|"
        rf"get her to))(?:not )?{_WHO}\b",
        rf"\b(?:am|are|is) {_WHO} (?:\w+ )?(?:allowed|permitted|supposed|meant|ok|okay|fine|safe|"
        r"able|cleared|ready|free|permitted)\b",
        rf"\b(?:is|are|would|isn't|aren't|wouldn't|will)\b(?: \S+){{0,12}}? {_OK}\b",
        rf"\b{_OK} (?:to|if|for (?:him|her|them|my|us|the|a)|on|in|at|with|yet|now|or not|"
        rf"please|by)\b",
        rf"\b{_OK}(?: yet| now| or not| at all| already| still)? *(?:\?|$)",
        r"\b(?:allowed|permitted|contraindicated|forbidden|banned|off limits|permissible)\b",
        r"\b(?:when|how soon|how early|from when|at what (?:point|stage|age)|"
        rf"{_POINT}) (?:is|are|can|may|could|will|would|do|does|should|might|am)\b",
        r"\bhow (?:long|many (?:weeks|months|days)|much longer)\b.{0,24}\b(?:until|till|"
        r"before|without|no|off|"
        r"banned|not|keep|have to|must|do we|does|can't)\b",
        # one throw surely; any harm; what if he does it once; how long until he may
        r"\b(?:surely|bad idea|good idea|any (?:harm|danger|risk|problem|objections?|chance)|dare (?:i|we)|"
        r"(?:fit|ready|time|cleared|safe|old enough|strong enough|far enough along|settled enough) "
        r"(?:enough )?(?:for|to|yet)|aloud|al+owd|allowd|alowed|is (?:it|that|this) (?:too )?"
        r"(?:soon|early|much|risky|wise|safe)|too (?:soon|early) (?:for|to)|"
        r"(?:does|would|will) (?:that|this|it) (?:suit|work|do|sound (?:ok|right|about right|good))|(?:the )?green light|go[- ]ahead|thumbs up|(?:your|the clinic's) (?:blessing|permission|ok)|all[- ]clear|what do you reckon|off the menu|on the menu|off limits|out of bounds|still banned|"
        r"still off|is there (?:any )?(?:harm|danger|reason not)|would you (?:let|allow|advise|risk)|"
        r"(?:do|would|will) you (?:let|allow|permit)|get away with|"
        r"what if (?:he|she|i|we|they|it)\b[^.?!]*\b(?:once|just|bit|little|only|quick|short|minute|"
        r"gently|carefully|tiny)\b)",
        r"\b(?:how (?:soon|long|many (?:days|weeks|months)|much longer) (?:until|till|before|must|do we|"
        r"does (?:he|she)|should))\b",
        r"\b(?:when|how soon) (?:'s|would|might|are|is|can|could|may|will|do|does|should|he|she|we|"
        r"they)\b[^.?!]*\b(?:again|allowed|ok|okay|safe|start|begin|resume|go back|get back|let|ready|try)\b",
        r"\b(?:the )?(?:vet|fitter|clinic|guide|sheet|leaflet|booklet) (?:said|says) [^.?!]*\b(?:really|right|"
        r"true|correct)\b[^.?!]*\?",
        r"\b(?:until|till|for how long|since) ?(?:when)?\?",
        r"\bfor how long\b|\buntil when\b|\bwhen (?:again|then)\b|\bwhen ?\?|, when$|"
        r"\bwhen do we get\b",
        r"\b(?:does|do|must|need|needs|has|have|did you say) \w+(?: \w+){0,2}? (?:have|need|"
        r"really have|"
        r"really need|got) to\b",
        rf"\b(?:if|whether) {_WHO} (?:\w+ )?(?:can|may|could|should|might|must|is allowed|"
        rf"are allowed|"
        r"is ok|is able|needs to|has to)\b",
        r"\b(?:wonder(?:ed|ing)?|ask(?:s|ed|ing)?|know|unsure|sure) (?:if|whether)\b",
        r"\b(?:yes or no|y/n|ok or not|or not\?|yay or nay|yea or nay|still a no|still not|"
        r"too soon|too early|do you (?:mind|advise|recommend|allow)|does (?:that|this|it) count|"
        r"permission|do i let|do we let|let (?:him|her|them)\b[^.?!]*\?|"
        r"would it (?:hurt|harm|be|do|matter)|will it (?:hurt|harm)|does it (?:hurt|matter|harm)|"
        r"any harm|harm in|what about|how about|hurt (?:him|her|it|the)\b[^.?!]*\?)",
        r"\byet ?\?|\b(?:yet|already|again|now|soon)\??$(?<=\?)",
        rf"\bdo(?:es)? {_WHO} (?:get to|sleep|wear|keep|go|stay|swim|run|walk)\b",
        rf"\bis {_WHO} (?:still )?(?:on|in|to)\b",
    )
)
# A short call with the activity in it and a question mark: "stairs?", "swimming with it?".
_BARE_MOST = 6
_OPENERS = lazy(
    r"^(?:(?:hi|hello|hey|hiya|morning|please|pls|so|and|also|but|ok|okay|thanks|thank you|"
    r"sorry|quick q(?:uestion)?|question|um|just|dear \w+|good \w+)[ ,:.!-]+)*"
)


def permits(sentence: str, *, bare: bool) -> int | None:
    """Where a turn of permission starts in the sentence; None if it holds none.

    Args:
        sentence: plain text of one sentence.
        bare: it names an activity, so that a short call with a question mark will do.
    """
    starts = [m.start() for p in _PERMITS if (m := p.search(sentence))]
    if starts:
        return min(starts)
    words = len(sentence.split())
    if bare and sentence.endswith("?") and words <= _BARE_MOST and not _WH.match(sentence):
        return 0
    if bare and sentence.endswith("?") and re.search(r"\b(?:can|may|allowed|ok|okay)\b", sentence):
        return 0
    return None


_WH = lazy(r"(?:how|why|what|where|which|who|whose|did|was|were|has|had)\b")
_INSTRUCTS = lazy(
    rf"^(?!{_QUANTITY}|how about)(?:.{{0,40}}\b(?:know|ask|asks|asking|tell me|explain|"
    rf"wonder(?:ing)?|"
    r"and|so|but|well|please|advise|show me)[ ,:]+)?"
    r"(?:how (?!long|far|much|many|often|soon|early|about)(?:do|does|can|could|should|to|would|"
    r"best|exactly|on earth|am|is|are|shall|might|will|did|come)?|why\b|what(?:'s|"
    r" is) the (?:best|right|"
    r"proper|correct|safest|reason|trick|point)|what (?:do|should|can|could|would|shall|must|"
    r"else) (?:i|we|"
    r"one|you|they|owner)|what (?:happens|if(?!.{0,60}\b(?:once|just|only|quick|little|bit|short|gently)\b)|kind|sort|type|exactly|to do)|where (?:do|should|"
    r"can|does)|"
    r"which (?!day|week|month|stage)|who\b|any (?:tips|advice|ideas|tricks|suggestions)|"
    r"tips\b|what for)"
)
_TELL = lazy(
    r"\b(?:how do (?:i|we|you)|how (?:can|could|should) (?:i|we|you)|how to|why (?:is|are|do|"
    r"does|can't|must|should|not|shouldn't|mustn't|no|would))\b"
)
_PAST = lazy(
    r"\b(?:he|she|they|we|i|it|dog|pup|who|and|just|\w+) (?:just |then |has |had |accidentally )*"
    r"(?:jumped|ran|swam|climbed|went|played|slept|fell|leapt|bolted|escaped|slipped|chased|did|"
    r"landed|raced|tore|rolled|wrestled|waded|dashed|hopped|galloped|got|snuck|sneaked|left)\b"
)
_LATER = lazy(r"\b(?:can|may|could|should|must|when|allowed|ok to|okay to|safe to|shall)\b")


_BEFORE_COULD = lazy(
    r"\b(?:before|when|than|as (?:fast|quick|soon) as) (?:i|we|he|she|anyone) (?:could|can)\b"
)


def instructs(sentence: str) -> bool:
    """Asks how or why, not whether: no verdict."""
    text = sentence[_OPENERS.match(sentence).end() :] if _OPENERS.match(sentence) else sentence  # type: ignore[union-attr]
    return bool(_INSTRUCTS.match(text) or _TELL.search(text))


def past(sentence: str) -> bool:
    """Tells what happened."""
    return bool(_PAST.search(sentence))


def reports(sentence: str) -> bool:
    """Tells what happened and asks for no leave: no verdict."""
    if not past(sentence):
        return bool(re.match(r"(?:did|was|were|has|had)\b", sentence))
    return not _LATER.search(_BEFORE_COULD.sub(" ", sentence))


def points_back(sentence: str) -> bool:
    """Asks about something named before: "is that ok?"."""
    return bool(re.search(r"\b(?:it|that|this|them|those|so|when)\b", sentence)) and (
        len(sentence.split()) <= 12
    )


SET_ASIDE = lazy(
    r"\b(?:not|no|without|apart from|except|instead of|rather than|besides|other than|don't mean|"
    r"after|before|never mind|avoid(?:ing)?)(?: (?:the|a|any|his|her|our|my|for|on|going))* *$"
)
ASKS_LENGTH = lazy(r"\b(?:how long|until|till|when|how many|how much longer)\b")

_UNHURT = lazy(
    r"\b(?:no|not|never|without|hasn't|isn't|doesn't|didn't|don't|aren't|wasn't|nor|zero|free of|neither|"
    r"barely any|nothing|hardly any|less|doesnt|isnt|avoid|prevent|in case|nowhere)\b(?: [\w']+){0,4}?,? "
    r"(?:(?:any|a|the|more|or|and|sign|signs|of) )*"
    r"(?:limp\w*|lame\w*|red\w*|pink|rub\w*|chaf\w+|sores?|wounds?|blister\w*|rash|marks?|swollen|stiff\w*|"
    r"irritat\w+|bleed\w*|scab)\b(?:,? (?:and|or|nor) (?:\w+ ){0,2}?(?:limp\w*|lame\w*|red\w*|sores?|marks?|"
    r"rub\w*|chaf\w+|blister\w*))*"
)


def no_trouble(text: str) -> str:
    """The text without the troubles it denies: "no limp at all", "never red"."""
    return _UNHURT.sub(" ", text)


SORE = lazy(
    r"\b(?:blister(?:s|ed)?|raw\b(?! (?:food|meat|diet|hide|bones?))|open (?:\w+ )?(?:sore|wound|skin|patch|spot|"
    r"place|area|bit)|wet (?:patch|spot|place)|broken skin|weeping|bleed\w*|(?:a|the|that|his|her|open) "
    r"(?:sore|wound|scab|ulcer)|sore (?:has |have )?opened|sores|wound)\b"
)
FLAG = lazy(
    r"\b(?:red|redness|pink|rub(?:bed|bing)?|chaf\w+|flared?|irritat\w+|rash|limp(?:s|ed|ing|"
    r"ier|y)?|"
    r"lame(?:r)?|sore|setback|set back|marks? (?:on|that|appeared)|swollen|stiff(?:er)?)\b"
)
MISSED = lazy(
    r"\b(?:sat in (?:the|a)|off it for|out of action|in the (?:cupboard|drawer|box) for|weeks? without|days without|"
    r"(?:was|were|been) off it|skipped|skipping|missed|(?:no|not|without) (?:the )?(?:brace|wear|device) yesterday|"
    r"didn'?t (?:get|have) (?:it|her|him) (?:in|into|on)|left (?:it|the \w+) (?:off|at home)|miss(?:ing)? (?:a|one|two)|(?:days?|week|weekend|time) off|without it|"
    r"out of it|a (?:week|day|weekend|break) (?:off|without)|day off|had a break|"
    r"start(?:ing)? again|"
    r"restart|resume|pick(?:ing)? (?:it )?up (?:again|where)|forgot (?:it|to put)|after (?:a|"
    r"our|the) (?:break|"
    r"holiday|gap)|didn'?t (?:wear|put))\b"
)

OUTRIGHT = lazy(r"\b(?:may|can|could|might|shall|should|must|is) (?:he|she)\b|\blet (?:him|her)\b")

WEARISH = lazy(
    r"\b(?:wear|wears|wearing|worn|brace|device|orthosis|orthotic|splint|boot|contraption|"
    r"keep (?:it|that|this|her|him) (?:on|in)|(?:leave|have|put|stay|stays|keep|be|"
    r"on) (?:it )?(?:on|in)\b|"
    r"in it|have it on|it on|it stay|hours (?:of|today|tomorrow)|leg thing|knee thing|"
    r"(?:support|contraption|gadget) on)\b"
)
WALKISH = lazy(r"\b(?:walk(?:s|ed|ing|ies)?|stroll|outings?|round the block|leash time)\b")
NOT_WEAR = lazy(
    r"\b(?:process|whole (?:thing|course|treatment|business)|treatment|recovery|heal\w*|dry|"
    r"fade|recheck|appointment|visit|cost|price|warranty|last (?:before|until)|"
    r"finger|fingers|deliver\w*|replace\w*|months? (?:does|will|do)|rest of (?:his|her) life|"
    r"for (?:life|good|ever)|forever|tight|strap|straps|powder|clean\w*|wash\w*|sleeve|screw|order|"
    r"inch(?:es)?|licking|lick|limp(?:ing)? last|swell\w*|gap|stop (?:the|wearing)|wean|"
    r"tablets?|pills?|medicine|dose of (?:pain|anti)|food|feed|until|before (?:he|she|we|they|i)|"
    r"(?:will|does) (?:it|this) (?:all )?take|take to|to (?:get used|adjust|settle|arrive))\b"
)
_TODAY = (
    r"(?:today|tomorrow|tonight|a day|per day|each day|every day|at a time|in one go|in total|"
    r"the first|first (?:day|time|go|session)|day one|now|to start|to begin|at first|total|"
    r"before bed\w*|"
    r"this morning|straight|at once|for today|daily)"
)
_PUT = r"(?:wear|have|keep|leave|put|stay|be|spend|go|use|do)(?:s|ing)?"
HOW_MUCH_WEAR = lazy(
    rf"\bhow (?:long|many (?:hours?|hrs?|minutes?|mins?)|much (?:time|wear|more|longer)?)\b"
    rf"[^.?!]*\b(?:wear\w*|worn|on\b|in it|brace|device|orthosis|splint|boot|{_TODAY})"
    rf"|\bhow many (?:hours?|hrs?)\b(?! (?:does|will|until|before|after|ago))"
    rf"|\b(?:limit|max(?:imum)?|most|cap|allowance|quota|total)\b[^.?!]{{0,30}}\b(?:{_TODAY}|"
    rf"hours?|wear\w*|brace|"
    rf"minutes|session|day)\b"
    rf"|\b(?:hours?|time|minutes)\b[^.?!]{{0,16}}\b(?:limit|max(?:imum)?|allowed|allowance|"
    rf"for today|today\?)"
    rf"|\bhow long (?:can|may|should|do|does|is|shall|must|could) {_WHO} (?:\w+ )?{_PUT}\b"
    rf"|\b(?:today's|tomorrow's|daily) (?:hours|limit|max\w*|wear|time|total|quota)\b"
    rf"|\bhow long (?:for )?(?:{_TODAY})"
)
HOW_LONG_BARE = lazy(
    r"\b(?:how (?:long|many|much)|limit|max(?:imum)?|hours\??|what(?:'s| is) (?:allowed|"
    r"the (?:number|"
    r"figure|amount)))\b"
)
HOW_MUCH_WALK = lazy(
    r"\bhow (?:long|far|many|much|often)\b|\b(?:limit|max(?:imum)?|length|duration)\b"
)
TOO_MUCH = lazy(
    r"\b(?:too (?:much|long|many|little)|ok|okay|enough|allowed|alright|fine|safe)\b|\?$"
)
KEEP_ON = lazy(
    r"\b(?:keep|leave|stay|wear|have|has|put)\b[^.?!]*\b(?:on|till|until|longer|today|it|in)\b"
)

ASKS_AMOUNT = lazy(r"\b(?:how|what(?:'s)?|which|limit|max(?:imum)?)\b")
PLAN_WORDS = lazy(r"\b(?:steps?|double (?:it|the)|ramp|schedule|plan|hours?)\b")

UNHELPED = lazy(
    r"\b(?:(?:skip|drop|forget|leave|lose|ditch|no|without a|without the) (?:the )?(?:lead|leash)|"
    r"(?:as (?:often|oft?en|much) as|whenever|when) (?:he|she|they) (?:wants?|likes?|pleases?|fancies|feels?)|freely|by (?:him|her|it)self|on (?:his|her|its) own|alone|unaided|unassisted|without (?:any )?"
    r"(?:help|support|me|us)|off (?:the )?(?:lead|leash)|loose|solo|independently)\b"
)

DEVICE_OFF = lazy(
    r"\b(?:(?:brace|device|it|that|this|splint|boot|thing|orthosis|contraption|gear|everything) "
    r"(?:is |comes |goes |taken |being |all )?off|(?:without|off) (?:the |his |her |its )?"
    r"(?:brace|device|splint|orthosis|boot|thing)|(?:take|took|taking|takes|get|slip|strip|peel)"
    r"(?: it| the \w+| that)? off|bare (?:leg|knee))\b"
)
"""The device is off while it is done."""
FAR = lazy(
    r"\b(?:\d+ ?k|\d+ ?(?:km|kms|miles?)|(?:five|ten|six|eight|twelve|many) (?:k|kilomet\w+|miles)|"
    r"park ?run|marathons?|races?|canicross|bikejor\w*|skijor\w*|sled\w*|mushing|long (?:run|jog|ride))\b"
)
"""A run over a distance."""
PRESCRIBED = lazy(
    r"\b(?:vet|vets|veterinarian|surgeon|physio\w*|therapist|rehab|hydro\w*|specialist|hospital)(?:'?s)?\b"
    r"[^.?!]{0,40}\b(?:gave|given|gives|set|sets|wrote|written|prescribed|showed|shown|sheet|plan|"
    r"programme?|homework|list|handout|ordered|says?|said|told|taught|wants)\b"
    r"|\b(?:prescribed|set|given|shown|written|taught) (?:\w+ ){0,3}by (?:\w+ ){0,2}(?:vet|physio\w*|"
    r"therapist|surgeon|veterinarian)\b"
)
"""Somebody who may set exercises has set them."""
NIGHT = lazy(r"\b(?:overnight|at night|all night|through the night|the whole night|nights)\b")
_ON_LEAD = lazy(
    r"\b(?:on|with) (?:the|a|his|her|its|my|our)? ?(?:\w+ )?(?:lead|leash|harness)\b|\bleashed\b|"
    r"\bon[- ](?:lead|leash)\b"
)
_OFF_LEAD = lazy(
    r"\b(?:off|without|no|un\w+|loose|free|drop\w*|slip\w*|lose)\b(?: \w+){0,3} (?:lead|leash)\b|"
    r"\b(?:loose|unclip\w*|unleash\w*|free)\b|\b(?:lead|leash) off\b"
)


def on_lead(text: str) -> bool:
    """Is the dog said to be on its lead?"""
    return _ON_LEAD.search(text) is not None and not _OFF_LEAD.search(text)


WET = lazy(
    r"\b(?:wet|damp|soaked|soaking|soggy|dripping|wringing|moist|towel dried|half dry)\b.{0,90}\b(?:(?:leave|keep|"
    r"put|pop|stick|strap|slip|get) (?:it|that|the \w+|them)? ?(?:straight |right |back )*on|back on|put it back)\b"
    r"|\b(?:put|pop|leave|keep|wear)\b.{0,50}\bon\b.{0,60}\b(?:wet|damp|soaked|soggy|moist)\b",
    re.DOTALL,
)
"""The device on a wet leg, or wet itself."""
BROKEN = lazy(
    r"\b(?:crack\w*|split|broken?|snapped|torn|tear|sharp|hairline|chipped|burst|ripped|hanging off|"
    r"in two)\b"
)
"""The device is broken."""
CARRIED = lazy(
    r"(?<!or )\b(?:can|may|could|shall|should|to|i) (?:\w+ )?carry (?:him|her|the|my|our|them)\b|"
    r"\bin (?:my|our) arms\b"
)
"""The dog is carried."""
