"""Signs of tier `emergency`: an emergency veterinary clinic now."""

from __future__ import annotations

from guidebot.domain.sign import Sign, Tier
from guidebot.safety import sources as s

_GO = "Go to an emergency vet clinic now. Call them on the way."
_OFF = "Take the device off if that is quick and does not hurt."


def _sign(
    key: str, name: str, source: str, said: tuple[str, ...], do: tuple[str, ...], settles: str
) -> Sign:
    return Sign(key, Tier.EMERGENCY, name, source, said, do, settles)


EMERGENCY: tuple[Sign, ...] = (
    _sign(
        "bleeding-heavy",
        "heavy bleeding, or bleeding that does not stop",
        f"{s.AVMA}, item 1",
        ("blood everywhere", "it's still dripping after ten minutes", "soaked three towels"),
        (
            "Press a clean cloth on the spot and keep pressing. Do not lift it to look.",
            _GO,
            "Take the device off only if the blood comes from under it.",
        ),
        "Is there blood now that does not stop when you press on it for five minutes?",
    ),
    _sign(
        "breathing",
        "choking, hard or noisy breathing, gums of a wrong colour",
        f"{s.AVMA}, item 2; {s.PRACTICES}",
        ("he can't catch his breath", "her gums are blue", "keeps coughing and gagging"),
        (_GO, "Keep your dog calm and cool. Let him stand or lie as he likes.", _OFF),
        "Is it hard for your dog to breathe, or are the gums blue, white, grey or very red?",
    ),
    _sign(
        "blood-inside",
        "blood from the nose, mouth or bottom, or in vomit, urine or stool",
        f"{s.AVMA}, item 3; {s.FDA_NSAID}",
        ("red pee", "poo like tar", "nosebleed", "threw up something like coffee grounds"),
        (_GO, "Take a photo or a sample with you.", "Take the device off."),
        "Is there blood in what comes out, or is the stool black like tar?",
    ),
    _sign(
        "cannot-pass",
        "cannot pass urine or stool, or strains in pain",
        f"{s.AVMA}, item 4",
        ("squats and nothing comes", "hasn't peed since yesterday"),
        ("Take the device off, so that it cannot be the reason.", _GO),
        "Has your dog tried to pee or poo and nothing, or almost nothing, came?",
    ),
    _sign(
        "eye",
        "an injured eye",
        f"{s.AVMA}, item 5",
        ("won't open one eye", "strap flicked into her eye", "the eye bulges"),
        (
            "Do not let your dog rub or scratch the eye.",
            "If something splashed in, rinse with clean water for some minutes.",
            _GO,
        ),
        "Is an eye shut, red, cloudy, bulging or hurt?",
    ),
    _sign(
        "poison",
        "ate or may have eaten something poisonous",
        f"{s.AVMA}, item 6; {s.ASPCA}; {s.FDA_XYLITOL}",
        ("ate a bar of chocolate", "got into the raisins", "rat bait is gone"),
        (
            _GO,
            "Take the pack along and say what, how much and when.",
            "Do not make your dog vomit unless a vet tells you to.",
        ),
        "Could your dog have eaten or licked something poisonous?",
    ),
    _sign(
        "medicine-taken",
        "was given or ate a medicine not meant for this dog, or too much of its own",
        f"{s.FDA_PAIN}; {s.AVMA}, item 6",
        ("gave her an ibuprofen", "he ate my tablets", "had his pill twice"),
        (
            _GO,
            "Any amount counts. Take the pack along and say how much and when.",
            "Give nothing more. Do not make your dog vomit unless a vet tells you to.",
        ),
        "Did your dog get any medicine that your vet did not prescribe, or too much of it?",
    ),
    _sign(
        "seizure",
        "fits, tremors, staggering, or back legs that suddenly fail",
        f"{s.AVMA}, item 7; {s.PRACTICES}",
        ("shaking all over and drooling", "walks like he's drunk", "drags both back legs"),
        (
            "Move things away so that your dog cannot get hurt. Keep hands off the mouth.",
            _GO,
            "Take the device off when the fit is over.",
        ),
        "Does your dog shake, jerk, stagger or drag the back legs?",
    ),
    _sign(
        "limb-broken",
        "a leg that may be broken or out of joint",
        f"{s.AVMA}, item 8",
        ("leg dangles", "paw points the wrong way", "I can see bone"),
        (
            "Keep your dog still. Carry him flat on a board or a blanket.",
            "Leave the device as it is. Do not take it off and do not straighten the leg.",
            _GO,
        ),
        "Does the leg hang loose, bend at a wrong place, or not move at all?",
    ),
    _sign(
        "severe-pain",
        "severe pain or extreme fear",
        f"{s.AVMA}, item 9",
        ("won't stop screaming", "can't settle at all, panting and pacing"),
        ("Mind your hands: a dog in pain may bite.", _OFF, _GO),
        "Does your dog scream, cry or pace and cannot be calmed?",
    ),
    _sign(
        "heat",
        "overheated",
        s.HEAT,
        ("panting won't stop after the park", "was left in the hot car"),
        (
            "Take the device off. Move to shade and wet your dog with cool water. Use a fan.",
            "Offer small sips of water.",
            _GO,
        ),
        "Was your dog in the heat, and is he still panting hard, drooling or weak?",
    ),
    _sign(
        "gut-severe",
        "vomiting or diarrhoea again and again, or with other signs",
        f"{s.AVMA}, item 11",
        ("fifth puke since morning", "coming out both ends"),
        ("Take the device off.", _GO, "Let your dog sip water. Give no food and no medicine."),
        "Did your dog vomit or have diarrhoea more than twice in the last 24 hours?",
    ),
    _sign(
        "not-drinking",
        "has not drunk for a day",
        f"{s.AVMA}, item 12",
        ("water bowl untouched since yesterday",),
        ("Take the device off.", _GO, "Offer fresh water, but do not force it in."),
        "Has your dog drunk nothing for 24 hours?",
    ),
    _sign(
        "collapse",
        "collapsed, fainted, suddenly weak, or will not wake",
        f"{s.AVMA}, item 13; {s.MISSOURI}",
        ("won't wake up", "legs gave way and he can't get up", "passed out"),
        ("Check that your dog breathes. Lay him on his side.", _OFF, _GO),
        "Did your dog collapse or faint, or can he not get up?",
    ),
    _sign(
        "bloat",
        "retches with nothing coming up, or a belly suddenly big and tight",
        s.MISSOURI,
        ("tries to puke, only spit", "belly like a drum"),
        ("Take the device off.", _GO, "Give no food and no water on the way."),
        "Does your dog try to vomit with nothing coming, or is the belly big and hard?",
    ),
    _sign(
        "accident",
        "hit, fallen, kicked, crushed or shocked",
        f"{s.AVMA_OLD}; {s.MISSOURI}",
        ("a car clipped him", "fell down the stairs", "chewed a live cable"),
        (
            "Keep your dog still and warm, even if he seems fine.",
            "If a leg may be broken, leave the device as it is.",
            _GO,
        ),
        "Did your dog have a hard fall, a knock, a kick or a shock?",
    ),
    _sign(
        "wound-deep",
        "a deep or large wound, a bite, or something stuck in the body",
        f"{s.AVMA_OLD}; {s.MISSOURI}",
        ("a dog bit through his thigh", "a flap of skin hangs open", "a stick went in"),
        (
            "Cover the wound with a clean cloth. Do not pull out what is stuck in it.",
            "Leave the device off the wound.",
            _GO,
        ),
        "Is there a deep, wide or bitten wound?",
    ),
    _sign(
        "allergy-severe",
        "swollen face or lumps all over",
        s.PRACTICES,
        ("face like a balloon", "bumps popping up everywhere after a sting"),
        ("Take the device, sleeve and powder off.", _GO, "Watch the breathing on the way."),
        "Is the face, mouth or neck swelling, or are there lumps all over the body?",
    ),
    _sign(
        "swallowed-distress",
        "swallowed a part of the device and is unwell",
        f"{s.MISSOURI}; {s.NONE}",
        ("ate the strap and keeps gagging", "a screw is gone and he won't eat"),
        (_GO, "Take the rest of the device along.", "Do not make your dog vomit."),
        "Could a part have been swallowed, and does your dog gag, vomit, strain or not eat?",
    ),
    _sign(
        "foot-no-blood",
        "toes blue, white, grey, icy or without feeling",
        f"{s.BANDAGE}; {s.CASTS}",
        ("paw is blue", "toes are ice cold", "he doesn't notice when I pinch the toes"),
        (
            "Take the device and the sleeve off now.",
            "Keep the foot warm in your hand. Do not rub it and use no hot water.",
            _GO,
        ),
        "Are the toes below the device blue, white, grey, icy or without feeling?",
    ),
    _sign(
        "labour",
        "a hard birth",
        s.AVMA_OLD,
        ("pushing for an hour and no puppy",),
        ("Take the device off.", _GO, "Keep her warm and calm."),
        "Is she in labour and pushing without a puppy coming?",
    ),
)
