"""Words that are read past, left as they are, or named in turns of phrase that mean nothing here."""

LIGHT = frozenset(
    """
a an the his her my our its their your some any that this these those
""".split()
)
"""Articles and possessives: they may stand between the words of an activity."""

NO_TYPO = frozenset(
    """
waking working talking walls stare staring stars start starts started seeping sweeping string
spring times files smiles title towel trail train brain drain crate create plays place plane
bench batch watch match teach peach reach shake snake smoke broke brake stick stuck stock socks
ridge bridge sleeve sleeves slept steps stops swing swims bones tires tired lakes looks learn
leash lease least lower floor flour fight light right night might weeks wears years boast roast
later front still heading easing lines liner pulls easier older other cover clear clean tight
second third stage state stairwell water wider winter tests rests sweet sheet sweat heart heard
board stand sound round house horse horns beach bleach strap straps scrap treats treat trees loosen loosens redirect boast
longer lounger really walled rally slicker flicks shade shades crisp pools spool
""".split()
)
"""Words one letter away from an activity that are no slip of the pen."""

_IDIOMS = """
next step, skip a step, skip steps, take a step, take steps, single step, step by step, step
back, step up in, one step, baby step, every step, first step, ramp up, each step, step of,
steps of, run my hand, run out, run a finger, run over, run through, in the long run, run low,
play up, play safe, stick to, stick with, stick at, jump to, jump from, jump him, jump her, jump
straight, jump ahead, jump by, jump in hours, too loose, loose strap, loose screw, loose enough,
loose end, loose hair, come loose, gone loose, it loose, strap loose, walk away, walk me
through, stretch it, stretch strap, stretch the time, stretch out, stretch the hours, elastic
stretch, it sits, device sits, brace sits, thing sits, sits higher, sits lower, sits low, should
it sit, sit right, sit on the ankle, sit over, sit higher, leave it alone, leave the straps
alone, leaves it alone, leave alone, drives me, drive me, give it a rest, long hair, hair clip,
video clip, clips of, film clip, in the field, chair leg, field trip, ramp is done, speed up the
ramp, ramp up increment, hot spot, cold toes, wear out, worn out, go to bed, going to bed, in
training, how many hours can i walk, hours of the night, walk normally, walks normally, walk as
usual, walks like, walk like, walks funny, walk funny, walks well, walk well, walks fine, walk
fine, walks better, walking funny, walking fine, walking well, walking normally, walk properly,
made to walk, video of him walking, walking video, film him walking, walking towards, walk by,
kennel nurse, kennel manager, sitter here, round the lake, round the river, round the canal, round the pond, round the sea,
round the reservoir, around the lake, around the river, around the canal, around the pond,
around the sea, around the reservoir, along the lake, along the river, along the canal, along
the pond, along the sea, along the reservoir, by the lake, by the river, by the canal, by the
pond, by the sea, by the reservoir, beside the lake, beside the river, beside the canal, beside
the pond, beside the sea, beside the reservoir, past the lake, past the river, past the canal,
past the pond, past the sea, past the reservoir, delicate cycle, spin cycle, play in the bit, play in the hinge, some play, hinge play, side to
side, funny walk, odd walk, normal steps, few steps and, ball of the foot, ball joint, ball park, gauge,
trot out, run down the, run along the, jump out at, jump in price, sprung open, spring open, in the car
park, play it safe, play by ear, catch on, catches on, catch the skin, pool of, wave form, wade through,
stand up, stick out, sticks out, stick up, stick on, stick together, water and soap, soap and water, soapy
water, warm water, lukewarm water, cold water, running water, rinse water, hot water
"""
IDIOMS = tuple(_IDIOMS.replace("\n", " ").strip().split(", "))
"""Turns of phrase that hold a word of an activity but name none."""

IRREGULAR = {
    "ran": "run", "swam": "swim", "swum": "swim", "slept": "sleep", "ate": "eat", "eaten": "eat",
    "leapt": "leap",
}  # fmt: skip
"""Past forms that no stemmer leads back."""
