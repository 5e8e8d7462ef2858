"""Signs of the tiers `vet-today` and `clinic`."""

from __future__ import annotations

from guidebot.domain.sign import Sign, Tier
from guidebot.safety import sources as s

_OFF = "Take the device off and leave it off."
_VET = "Call your vet today."
_FITTER = "Call the fitter."


def _vet(
    key: str, name: str, source: str, said: tuple[str, ...], do: tuple[str, ...], settles: str
) -> Sign:
    return Sign(key, Tier.VET_TODAY, name, source, said, do, settles)


def _clinic(
    key: str, name: str, source: str, said: tuple[str, ...], do: tuple[str, ...], settles: str
) -> Sign:
    return Sign(key, Tier.CLINIC, name, source, said, do, settles)


VET_TODAY: tuple[Sign, ...] = (
    _vet(
        "swallowed-part",
        "swallowed a part of the device, or a part is missing",
        s.NONE,
        ("he ate a piece of the strap", "a screw is gone and I can't find it"),
        (
            "Call your vet now, before your dog feels ill. Say what is missing and since when.",
            "Do not make your dog vomit.",
            "If he gags, vomits, strains or will not eat: go to an emergency clinic.",
        ),
        "Is a piece of the device missing that your dog may have swallowed?",
    ),
    _vet(
        "medicine-asked",
        "a medicine the vet did not prescribe for this dog",
        s.FDA_PAIN,
        ("can I give him an ibuprofen", "how much aspirin for a dog"),
        (
            "Give nothing that your vet did not prescribe for this dog.",
            "Common pain pills for people can poison a dog.",
            f"{_VET} Ask what may be given.",
        ),
        "Do you think of giving a medicine that your vet did not prescribe for this dog?",
    ),
    _vet(
        "foot-swollen",
        "swollen or cold toes, or a strap that has cut in",
        f"{s.BANDAGE}; {s.SPLINT}",
        ("toes like sausages", "the paw is puffy below the brace"),
        (_OFF, _VET, "If toes turn blue, white or icy: go to an emergency clinic."),
        "Are the toes or the foot thicker or colder than on the other side?",
    ),
    _vet(
        "skin-open",
        "open, raw, wet or smelling skin",
        f"{s.NPIAP}; {s.SPLINT}; {s.ROSEN}",
        ("a wet hole in her heel", "looks like a carpet burn", "it smells and oozes"),
        (_OFF, _VET, "Keep the spot clean and dry. No cream and no powder on it."),
        "Is the skin open, wet, blistered, bleeding or smelling anywhere?",
    ),
    _vet(
        "no-weight",
        "suddenly puts no weight on the leg",
        s.LAMENESS,
        ("a tripod since lunch", "holds the leg up since the park"),
        (
            "If the leg hangs loose or looks crooked, leave the device as it is and keep still.",
            "If not, take the device off. Carry your dog or keep him on one spot.",
            _VET,
        ),
        "Does your dog hold the leg up and put no weight on it?",
    ),
    _vet(
        "lameness-worse",
        "limps more than before",
        s.LAMENESS,
        ("limping worse than last week", "stiff and sore after every walk"),
        (_OFF, "Rest, with short trips on a lead only.", _VET),
        "Does your dog limp more now than before, also some hours after a walk?",
    ),
    _vet(
        "pop",
        "a pop, snap or crack from the leg",
        s.NONE,
        ("I heard a pop from her knee",),
        ("Keep your dog still and carry him.", "Leave the leg as it is.", _VET),
        "Did the leg pop or crack and is he different since?",
    ),
    _vet(
        "other-leg",
        "another leg is now lame or sore",
        s.OTHER_KNEE,
        ("now the other knee too", "front leg is limping since Sunday"),
        (_OFF, "Keep your dog quiet, on a short lead.", _VET),
        "Does your dog limp or give way on another leg?",
    ),
    _vet(
        "pain-touch",
        "hurts when touched, when moving or when the device goes on",
        f"{s.SPLINT}; {s.AVMA}, item 9",
        ("yelps when I put it on", "growls when I touch the knee"),
        (_OFF, "Mind your hands: a dog in pain may bite.", _VET),
        "Does your dog flinch, cry, growl or snap when the leg is touched or moved?",
    ),
    _vet(
        "joint-swollen",
        "a hot, thick or swollen joint or leg",
        s.SPLINT,
        ("knee like a melon", "ankle is hot and puffy"),
        (_OFF, _VET, "Use no ice or heat on it before you have called."),
        "Is a joint or the leg thicker or hotter than on the other side?",
    ),
    _vet(
        "surgical-wound",
        "an operation wound that is open, red or weeping",
        s.NONE,
        ("stitches have come out", "the incision is weeping"),
        (_OFF, "Stop your dog from licking or chewing it.", _VET),
        "Is the operation wound open, red, wet or chewed?",
    ),
    _vet(
        "unwell",
        "ill: fever, not eating, very tired, or an upset stomach",
        f"{s.FDA_NSAID}; {s.NONE}",
        ("won't eat and just lies there", "not himself today"),
        (_OFF, _VET, "If he vomits more than twice, or gets weak: go to an emergency clinic."),
        "Is your dog ill in himself: not eating, very tired, hot or sick?",
    ),
    _vet(
        "allergy-skin",
        "a rash, bumps or itching from the material",
        s.SPLINT,
        ("covered in little bumps under the sleeve",),
        (
            "Take the device, sleeve and powder off.",
            _VET,
            "If the face swells or breathing is hard: go to an emergency clinic.",
        ),
        "Is there a rash, bumps or itching where the device or powder was?",
    ),
    _vet(
        "nerve-foot",
        "toes fold or drag also without the device, or the foot is numb",
        s.NONE,
        ("drags the toes with the brace off too",),
        (_OFF, "Keep the toes from scraping: soft ground only.", _VET),
        "Do the toes fold under or drag with the device off, too?",
    ),
)

CLINIC: tuple[Sign, ...] = (
    _clinic(
        "redness-stays",
        "redness or dents that stay",
        f"{s.AFO}; {s.NPIAP}",
        ("still pink an hour later", "strap marks that stay"),
        (
            "Pause wear until the mark is gone and you have talked to the fitter.",
            f"{_FITTER} Say where it is and how long it stays.",
            "If the skin opens, gets wet or smells: vet today.",
        ),
        "Is there a red mark or a dent half an hour after the device came off?",
    ),
    _clinic(
        "hair-worn",
        "fur rubbed off, skin whole",
        f"{s.ROSEN}; {s.NONE}",
        ("bald patch under the strap",),
        ("Pause wear.", f"{_FITTER} Something rubs there.", "If the skin opens: vet today."),
        "Is fur worn off where the device sits?",
    ),
    _clinic(
        "knuckling-stays",
        "toes fold or drag in the device for days",
        s.NONE,
        ("still walking on the top of his foot after a week",),
        ("Pause wear.", _FITTER, "If it also happens without the device: vet today."),
        "Do the toes still fold under or drag after some days, and he does not right them?",
    ),
    _clinic(
        "device-broken",
        "the device is cracked, sharp, loose or cannot be closed",
        f"{s.SPLINT}; {s.ROSEN}",
        ("crack in the shell", "the buckle snapped", "a screw fell out"),
        ("Do not put it on until it is mended.", _FITTER, "Do not glue or bend it yourself."),
        "Is a part cracked, sharp, loose, lost or impossible to close?",
    ),
    _clinic(
        "device-slides",
        "slides, twists or digs in again and again",
        s.NONE,
        ("keeps slipping down to the ankle", "the edge digs into his thigh"),
        ("Pause wear.", f"{_FITTER} A device that moves will rub.", "Check the skin below it."),
        "Does it slide, twist or dig in again although you put it right?",
    ),
    _clinic(
        "licking-stays",
        "licks or chews one spot for days",
        s.NONE,
        ("won't leave that spot alone",),
        ("Pause wear and look at the spot in good light.", _FITTER, "If the skin is open: vet."),
        "Does your dog keep licking or chewing the same spot after it came off?",
    ),
    _clinic(
        "not-tolerated",
        "does not accept the device after days",
        f"{s.ROSEN}",
        ("hides and panics when it comes out", "won't move in it, day six"),
        ("Pause wear. Do not force it.", _FITTER, "If he cries or snaps when touched: vet today."),
        "Does your dog still fight it or refuse to move in it after some days?",
    ),
)
