"""Owners' words for what they see on the dog and on the device; notation in `lexicon_body`."""

LOOK: dict[str, str] = {
    "swollen": (
        "swollen, swell, swole, puffy, puff, fatter, thicker, ballooned, balloon, bloated, "
        "chunky, chubby, huge, enormous, bigger, twice ~ size, double ~ size, doubled, double, "
        "two sizes, three sizes, size bigger, blown up, blew up, blow up, blowing up, puffed, "
        "lump, bulge, bulging, puffier, inflated, like ~ grapefruit, grapefruit, tennis ball, "
        "golf ball, orange, football, tree trunk, elephant, sausage, marshmallow, bratwurst, "
        "hot dogs, cocktail sausage, michelin, doughy, squishy, squashy, fluid in, fills up, "
        "spongy, rounder, sausages, pillows, plumped, water balloon, bread roll, bun, dumpling, "
        "jelly, mitten, boxing glove, oven mitt, stuffed, overstuffed, bear paw, hippo, "
        "hamster, widened, wider, broad, ball of dough, egg under, size of ~ egg, size of ~ "
        "apple, peach, apple, swelled, pumped up, chipolata, edema, oedema, filled up, bagel, "
        "potato, duck, clown shoe, tight skin, cant see ~ toes apart, cant tell ~ toes apart, "
        "no gaps between, splayed, spread apart, expanded, tight and shiny, tight as ~ drum, "
        "taut, club, grown, watermelon, puffiness, swelling, bubble wrap, fluidy, squidgy, "
        "ballooning, jumbo, mango, avocado sized, gone fat, really fat, fat and, got fat, so "
        "fat, all fat"
    ),
    "cold": (
        "cold, icy, ice, freezing, frozen, chilly, chill, fridge, freezer, stone cold, cool, no "
        "warmth, colder, clammy, like ~ fish, corpse, snowball, ice cube, popsicle, icicle, "
        "frosty, cooler, like marble, morgue, iceblock"
    ),
    "icy": (
        "icy, ice, freezing, frozen, stone cold, ice cold, fridge, freezer, no warmth, icicle, "
        "popsicle, ice cube, stay cold, wont warm up, wont get warm, wont warm, dead fish, "
        "corpse, marble, colder than, cold as, really cold, very cold, so cold, stay ~ cold, "
        "snowball, cold beer, beer can, fish finger, frosty, polar, cold like"
    ),
    "bluecol": (
        "blue, bluish, bluey, purple, purplish, violet, lilac, plum, indigo, aubergine, "
        "eggplant, smurf, dusky, navy, grape coloured, blueberry, mauve, slate, black, maroon, "
        "black and blue, dark, darker, bruised, inky, periwinkle, avatar, beetroot"
    ),
    "palecol": (
        "white, whitish, pale, paler, grey, gray, greyish, grayish, ash, ashen, ashy, waxy, "
        "wax, candle, chalk, chalky, porcelain, putty, colourless, colorless, no colour, no "
        "color, no pink, lost ~ colour, lost ~ color, bloodless, paper, marble, ghost, "
        "blanched, milky, pasty, cement, not pink, isnt pink, arent pink, bleached, washed out, "
        "mozzarella, off white"
    ),
    "redcol": (
        "bright red, brick red, very red, super red, dark red, deep red, brick, tomato, fire "
        "engine, beetroot, really red, too red, cherry red"
    ),
    "numb": (
        "no feeling, cant feel it, cant feel ~ toes, doesnt feel, doesnt notice, not feel, "
        "doesnt react, no reaction, doesnt flinch ~ pinch, doesnt pull ~ away, gone dead, gone "
        "to sleep, pins and needles, without feeling, lost feeling, no response, lets me pinch, "
        "not react, dead, lifeless, lets me do anything, didnt react, didnt notice, not notice, "
        "didnt feel, cant feel, no sensation, nothing when i pinch, doesnt care ~ pinch, pinch "
        "~ nothing, squeeze ~ nothing, wont react, isnt reacting, doesnt register, not pull, "
        "didnt pull, doesnt seem to feel"
    ),
    "open": (
        "raw, hole, sore, wound, cut, gash, ulcer, graze, scrape, abrasion, chafed, chafe, "
        "broken skin, skin broken, skin is broken, skin broke, skin is gone, skin gone, skin "
        "came off, skin off, skin has come off, rubbed raw, rub raw, crater, carpet burn, rug "
        "burn, friction burn, road rash, peeled, peel, peeling, flayed, raw meat, mince, "
        "minced, steak, hamburger, burger, salami, bacon, skinless, ulcerated, lesion, nick, "
        "scratched open, red raw, skinned, like ~ peach without skin, weeping, tender spot, "
        "blistered, popped blister, fluid filled, scab, scabby, skinned knee, pepperoni, "
        "crevice, dent with, top layer, layer of skin, underlayer, pressure sore, bedsore, bed "
        "sore, sores, hot spot, hotspot, eroded, worn through, wore through, gouge, sliced, "
        "lasagne, tartare, fillet, prosciutto, ground beef, uncooked, chicken breast, like a "
        "burst, burst, tear in, skin tear, scalded, scald, like tomato, skinned tomato, sliced "
        "tomato, shoe blister, heel blister, skin is torn, torn skin, pink pit"
    ),
    "redskin": (
        "red, redness, pink, pinkish, purple, reddish, rosy, angry, flushed, mark, ring, "
        "stripe, band, groove, dent, indent, imprint, ridge, crease, furrow, pressure mark, "
        "blotch, lobster, sunburn, strawberry, welt, redder, magenta, crimson, sock mark, red "
        "spot, dint, blush, hickey, impression, print, outline, dented, stamp, bruise, red "
        "patch, halo, pattern, tramline, trench, racing stripe, tattoo, rosé, salmon, maroon, "
        "scarlet"
    ),
    "bald": (
        "bald, balding, hairless, furless, bare patch, bare spot, bare skin, bald spot, hair "
        "loss, fur loss, hair missing, fur missing, hair is missing, fur is missing, thin ~ "
        "fur, thin ~ hair, thinning, fur ~ gone, hair ~ gone, no hair, no fur, fur ~ worn, hair "
        "~ worn, fur ~ rubbed, hair ~ rubbed, rubbed off ~ fur, rubbed off ~ hair, rubbed ~ "
        "fur, rubbed ~ hair, fur ~ coming off, hair ~ coming off, fur ~ coming out, hair ~ "
        "coming out, hair ~ falling out, fur ~ falling out, losing hair, losing fur, losing ~ "
        "fur, losing ~ hair, lost ~ fur, lost ~ hair, moth eaten, threadbare, plucked, smooth "
        "patch, stubble, naked, bare strip, bare stripe, bare ring, bare band, missing fur, "
        "missing hair, patch without, fur wont grow, skin shows, see ~ skin through, skin "
        "showing, monk, tonsure, receding, clipped look, worn away, peach fuzz, shiny patch, "
        "thinned, bare as, fur is going, hair is going, like a plucked, coat ~ worn, coat ~ "
        "gone, hair ~ snapped, broken hairs, bare area, patch of ~ pink skin, patchy, mangy, "
        "crop circle, mown, fur rub, bare bit, hair off, worn thin, fur ~ thinner, hair ~ "
        "thinner, baldness"
    ),
    "hot": (
        "hot, warm, burning, heat, boiling, radiator, toasty, hotter, warmer, hot water bottle, "
        "on fire, oven, stove, kettle, roasting, baking, feverish, glowing, baked potato"
    ),
    "lumps": (
        "hives, welt, bump, bumpy, rash, pimple, spots, weal, wheal, lump, rashy, itchy, itch, "
        "scratching, scratch himself, scratch herself, bubble wrap, goosebump, goose bump, "
        "dots, braille, nodule, raised, mosquito bites, nettle, acne, plucked chicken, chicken "
        "skin, eczema, dandruff, flaky, red dots, red spots, pinprick, speckled, speckles, "
        "blotchy, blotches, inflamed, pustule, topographic map, zit, measles, spotty, pox, "
        "itching, scaly, strawberry skin, orange peel, sandpaper, peppered, prickly, allergic, "
        "reaction, contact dermatitis"
    ),
    "faceballoon": (
        "balloon, pillow, hippo, hamster, shar pei, sharpei, lip filler, fillers, puffer fish, "
        "boxer after ~ fight, pumped up, chipmunk, bulldog, bloodhound, duck lips, botox, moon, "
        "football, twice ~ size, double ~ size, three sizes, cartoon, elephant man, sumo, "
        "bullfrog"
    ),
    "wrongangle": (
        "wrong angle, wrong way, backwards, z shape, like a z, dislocated, out of joint, out of "
        "socket, misshapen, deformed, hockey stick, boomerang, unnatural, isnt straight, not "
        "straight, extra corner, two directions, extra joint, at right angle, folded ~ wrong, "
        "odd angle, strange angle, weird angle, funny angle, stick out ~ side, zigzag, sticking "
        "out ~ side, not where it should, shouldnt bend, no joint, l shape, flamingo, popped "
        "out, kinked, step in ~ bone, hip ~ out, knee ~ out, out of place, isnt in line, points "
        "the wrong, facing the wrong, bends the wrong, points backwards, points sideways, "
        "facing backwards, pointing sideways, faces backwards, bent wrong, bent the wrong, "
        "twisted round, twisted right round, horrible angle, right angle, ninety degrees, "
        "shaped like ~ z, letter z, like a banana, wrong direction, twisted backwards, sticks "
        "out sideways, sticking out sideways"
    ),
    "dangles": (
        "dangle, dangly, flop, floppy, flops, flapping, flail, limp, pendulum, like jelly, "
        "jelly, wet sock, noodle, rag, spaghetti, trailing, wobbly, wobble, wobbles, string, "
        "wind chime, broken branch, hinge on a gate, goes round in, marionette, puppet, ribbon, "
        "unscrewed, unattached, not attached, detached, like a sock, hanging off, hanging limp, "
        "hangs limp, just hangs, hanging loose, hangs loose, just swings"
    ),
    "bone": ("bone, bone showing, bone sticking"),
    "broken": ("broke, fracture, fractured, snapped, shattered"),
    "crackdevice": (
        "crack, cracking, split, snapped, broken, sharp, jagged, bent, wobbly, fell off, fell "
        "out, fallen out, fallen off, torn, tore, ripped, frayed, wont close, wont stick, wont "
        "stay shut, wont stay closed, doesnt close, doesnt stick, not stick, cant close, cant "
        "be closed, cant do up, wont do up, wont hold, doesnt hold, not hold, splinter, "
        "chipped, chip, hairline, fracture, popped off, popped out, rattle, clunk, grinding, "
        "seized, jammed, wont move, dropped off, pulled out, pulled off, unravelled, "
        "unravelling, unraveled, come apart, came apart, coming apart, falling apart, fell "
        "apart, in pieces, two pieces, snapping, snap, sticking out, poking out, pokes, "
        "stripped, worn out, busted, buggered, knackered, kaput, wonky, delaminating, chewed "
        "through, chewed off, bitten off, bit off, splintered, razor, wont click, doesnt click, "
        "wont fasten, wont latch, misaligned, shattered, ripped off, no longer closes, no "
        "longer holds, wont grip, doesnt grip, lost its grip, given out, gave out, gave up, "
        "snagged, came away, broken off, snapped off, cracked off, warped, melted, dented, "
        "crushed, unscrewed, working loose, work loose, worked loose, came loose, come loose, "
        "doesnt stay, wont stay, wont lock, doesnt lock, squeaks and, unglued, peel off, peeled "
        "off, separated, ungluing, sheared, squashed, flattened, ran over, run over, drove "
        "over, nothing to hold, hanging off, popping open, pops open, springs open, opens by "
        "itself, keeps opening, opens itself, like a knife, like glass"
    ),
    "cutting": (
        "sharp, jagged, cut me, cut my finger, cut myself, scratched me, razor, knife, snag, "
        "sawtooth, splinter, spike"
    ),
    "slides": (
        "slid, slips, slipped, twist, rotate, turn, spin, spun, ride down, ride up, rides, "
        "migrate, creep, crept, drop, droop, sag, sink, sinks, sank, move around, shift, "
        "travel, wander, swivel, work ~ way down, works ~ way down, end up ~ ankle, ended up, "
        "inside out, round his ankle, round her ankle, around his ankle, around her ankle, on "
        "the floor, off again, fall down, falls down, pulled up, pull it up, slither, skew, "
        "skewed, lopsided, wonky, walks down, spins, tubesock, too big, steps out, concertina, "
        "bunch, bunches, bunching, sits on ~ ankle, on his ankle, on her ankle, southward, "
        "south, slump, wriggle, crooked, sideways, gravity, walks out of, fell off, out of "
        "place, digging in, dig into, digs into, digging into, press, presses, pressing, pinch, "
        "pinches, pinching, rub, rubs, rubbing, poke, pokes, bite into, bites into, biting "
        "into, gape, gaping, chafes, chafing, jab, jabs, push into, pushes into, scrape, "
        "scrapes, knock, knocks, bang, bangs, saws, ankle bracelet, like a sock"
    ),
    "cutin": (
        "cut in, cut into, cuts in, cuts into, cutting in, cutting into, dug in, dug into, "
        "digging into, sunk in, sunk into, sunken into, buried in, embedded, disappeared into, "
        "grown into, bitten into, strangling, strangled, sinking into, sits in ~ groove, deep "
        "groove, cutting off, cheese wire, tourniquet, elastic band, deep furrow, sausage "
        "string, tied sausage, muffin top, roast tied, rolled roast, spilling over, bulging "
        "over, bulges over, bulges out, vanished into, swallowed by ~ skin, like a tied"
    ),
}
