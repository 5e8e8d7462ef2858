"""Owners' words for findings: what they see, hear, smell, feel and compare with."""

LOOK: dict[str, str] = {
    "swollen": "swollen, swell, swole, puffy, puff, fat, fatter, thick, thicker, ballooned,"
    " balloon, bloated, chunky, chubby, huge, enormous, bigger, twice ~ size, double ~ size,"
    " doubled, double, two sizes, three sizes, size bigger, blown up, blew up, blow up, blowing up,"
    " puffed, lump, bulge, bulging, puffier, inflated, like ~ grapefruit, grapefruit, melon,"
    " tennis ball, golf ball, orange, football, cushion, tree trunk, elephant, sausage, marshmallow,"
    " bratwurst, hot dogs, cocktail sausage, michelin, doughy, squishy, squashy, fluid in, fills up,"
    " spongy, rounder, sausages, pillows, plump, plumped, water balloon, bread roll, bun, dumpling,"
    " jelly, mitten, boxing glove, oven mitt, stuffed, overstuffed, bear paw, bear, hippo, hamster,"
    " widened, wider, broad, ball of dough, egg under, size of ~ egg, size of ~ apple, peach, apple,"
    " swelled, pumped up, ham, chipolata, edema, oedema, filled up, bagel, potato, duck, clown shoe,"
    " tight skin, cant see ~ toes apart, cant tell ~ toes apart, no gaps between, splayed,"
    " spread apart, expanded, tight and shiny, tight as ~ drum, taut, club, grown, watermelon,"
    " puffiness, swelling, bubble wrap, fluidy, squidgy, ballooning, jumbo, mango, avocado sized",
    "cold": "cold, icy, ice, freezing, frozen, chilly, chill, fridge, freezer, stone cold, cool,"
    " no warmth, colder, clammy, like ~ fish, corpse, snowball, ice cube, popsicle, icicle, frosty,"
    " cooler, like marble, morgue, stone, iceblock",
    "icy": "icy, ice, freezing, frozen, stone cold, ice cold, fridge, freezer, no warmth, icicle,"
    " popsicle, ice cube, stay cold, wont warm up, wont get warm, wont warm, dead fish, corpse,"
    " freezer, marble, colder than, cold as, really cold, very cold, so cold, stay ~ cold, snowball,"
    " cold beer, beer can, fish finger, frosty, polar, cold like",
    "bluecol": "blue, bluish, bluey, purple, purplish, violet, lilac, plum, lavender, indigo,"
    " aubergine, eggplant, smurf, dusky, navy, grape coloured, blueberry, mauve, slate, black,"
    " maroon, black and blue, dark, darker, bruised, inky, periwinkle, avatar, beetroot",
    "palecol": "white, whitish, pale, paler, grey, gray, greyish, grayish, ash, ashen, ashy, waxy,"
    " wax, candle, chalk, chalky, porcelain, putty, colourless, colorless, no colour, no color,"
    " no pink, lost ~ colour, lost ~ color, bloodless, paper, marble, ghost, blanched, milky, putty,"
    " pasty, cement, not pink, isnt pink, arent pink, bleached, washed out, mozzarella, off white",
    "redcol": "bright red, brick red, very red, super red, dark red, deep red, brick, tomato,"
    " fire engine, beetroot, really red, too red, cherry red",
    "numb": "numb, no feeling, cant feel it, cant feel ~ toes, doesnt feel, doesnt notice, not feel,"
    " doesnt react, no reaction, doesnt flinch ~ pinch, doesnt pull ~ away, gone dead, gone to sleep,"
    " pins and needles, without feeling, lost feeling, no response, lets me pinch, not react,"
    " dead, lifeless, lets me do anything, didnt react, didnt notice, not notice, didnt feel,"
    " cant feel, no sensation, nothing when i pinch, doesnt care ~ pinch, pinch ~ nothing,"
    " squeeze ~ nothing, wont react, isnt reacting, doesnt register, not pull, didnt pull, doesnt seem to feel",
    "open": "open, raw, hole, sore, wound, cut, gash, ulcer, blister, graze, scrape, abrasion, chafed, chafe, broken skin, skin broken, skin is broken, skin broke, skin is gone, skin gone, skin came off, skin off, skin has come off, rubbed raw, rub raw, crater, carpet burn, rug burn, friction burn, road rash, peeled, peel, peeling, flayed, raw meat, mince, minced, steak, hamburger, burger, salami, bacon, skinless, ulcerated, torn, lesion, nick, scratched open, red raw, skinned, like ~ peach without skin, weeping, tender spot, blistered, popped blister, fluid filled, scab, scabby, skinned knee, pepperoni, crevice, dent with, top layer, layer of skin, underlayer, pressure sore, bedsore, bed sore, sores, hot spot, hotspot, eroded, worn through, wore through, gouge, flap, sliced, lasagne, tartare, fillet, prosciutto, ground beef, uncooked, chicken breast, like a burst, burst, tear in, skin tear, scalded, scald, pit, opening, like tomato, skinned tomato, sliced tomato, shoe blister, heel blister",
    "redskin": "red, redness, pink, pinkish, purple, reddish, rosy, angry, flushed, mark, ring, stripe, band, groove, dent, indent, imprint, ridge, crease, furrow, pressure mark, blotch, lobster, sunburn, strawberry, welt, redder, magenta, crimson, sock mark, red spot, dint, blush, hickey, impression, print, outline, dented, stamp, bruise, red patch, halo, pattern, tramline, trench, racing stripe, tattoo, rosé, salmon, maroon, scarlet",
    "bald": "bald, balding, hairless, furless, bare patch, bare spot, bare skin, bald spot, hair loss, fur loss, hair missing, fur missing, hair is missing, fur is missing, thin ~ fur, thin ~ hair, thinning, fur ~ gone, hair ~ gone, no hair, no fur, fur ~ worn, hair ~ worn, fur ~ rubbed, hair ~ rubbed, rubbed off ~ fur, rubbed off ~ hair, rubbed ~ fur, rubbed ~ hair, fur ~ coming off, hair ~ coming off, fur ~ coming out, hair ~ coming out, hair ~ falling out, fur ~ falling out, losing hair, losing fur, losing ~ fur, losing ~ hair, lost ~ fur, lost ~ hair, moth eaten, threadbare, plucked, smooth patch, stubble, naked, bare strip, bare stripe, bare ring, bare band, missing fur, missing hair, patch without, fur wont grow, skin shows, see ~ skin through, skin showing, monk, tonsure, receding, clipped look, worn away, peach fuzz, worn patch, shiny patch, thinned, bare as, fur is going, hair is going, like a plucked, coat ~ worn, coat ~ gone, coat ~ thin, hair ~ snapped, broken hairs, bare area, patch of ~ pink skin, patchy, mangy, crop circle, mown, rubbed away, fur rub, bare bit, fur off, hair off, worn thin, fur ~ thinner, hair ~ thinner, baldness",
    "hot": "hot, warm, burning, heat, boiling, radiator, toasty, hotter, warmer, hot water bottle,"
    " on fire, oven, stove, kettle, roasting, baking, feverish, glowing, baked potato, toast",
    "lumps": "hives, welt, bump, bumpy, rash, pimple, spots, weal, wheal, lump, rashy, itchy, itch, scratching, scratch himself, scratch herself, bubble wrap, goosebump, goose bump, dots, braille, nodule, raised, mosquito bites, nettle, acne, plucked chicken, chicken skin, eczema, dandruff, flaky, red dots, red spots, pinprick, speckled, speckles, blotchy, blotches, inflamed, pustule, topographic map, zit, measles, spotty, pox, itching, scaly, strawberry skin, orange peel, sandpaper, peppered, prickly, allergic, allergy, reaction, contact dermatitis",
    "faceballoon": "balloon, pillow, hippo, hamster, shar pei, sharpei, lip filler, fillers,"
    " puffer fish, boxer after ~ fight, pumped up, chipmunk, bulldog, bloodhound, duck lips, botox,"
    " moon, football, twice ~ size, double ~ size, three sizes, cartoon, elephant man, sumo, bullfrog",
    "wrongangle": "wrong angle, wrong way, angle, crooked, bent, bend, sideways, backwards, twisted,"
    " pointing, points, facing, faces, z shape, like a z, dislocated, out of joint, out of socket,"
    " misshapen, deformed, hockey stick, banana, boomerang, turned out, askew, wonky, unnatural,"
    " isnt straight, not straight, kink, extra corner, two directions, extra joint, at right angle,"
    " folded ~ wrong, odd angle, strange angle, weird angle, funny angle, stick out ~ side, zigzag,"
    " sticking out ~ side, not where it should, shouldnt bend, no joint, l shape, flamingo, popped out,"
    " kinked, step in ~ bone, hip ~ out, knee ~ out, out of place, isnt in line",
    "dangles": "dangle, dangly, hang, hanging, swing, flop, floppy, flops, flapping, flail, loose,"
    " limp, pendulum, like jelly, jelly, wet sock, noodle, rag, swinging, spaghetti, trailing,"
    " wobbly, wobble, wobbles, string, wind chime, broken branch, hinge on a gate, goes round in,"
    " marionette, puppet, ribbon, unscrewed, unattached, not attached, detached, like a sock, gate",
    "bone": "bone, bone showing, bone sticking",
    "broken": "broken, broke, fracture, fractured, snapped, shattered, break",
    "crackdevice": "crack, cracked, cracking, split, snapped, broke, broken, sharp, jagged, bent, loose, wobbly, fell off, fell out, fallen out, fallen off, torn, tore, ripped, frayed, fraying, wont close, wont stick, wont stay shut, wont stay closed, doesnt close, doesnt stick, not stick, cant close, cant be closed, cant do up, wont do up, wont hold, doesnt hold, not hold, splinter, chipped, chip, hairline, fracture, popped off, popped out, pop off, rattle, clunk, grinding, seized, jammed, wont bend, wont open, wont move, dropped off, pulled out, pulled off, hanging by, unravelled, unravelling, unraveled, come apart, came apart, coming apart, falling apart, fell apart, in two, in half, in pieces, two pieces, snapping, snap, sticking out, poking out, pokes, stripped, worn out, busted, buggered, knackered, kaput, given up, wonky, gaping, delaminating, chewed through, chewed off, bitten off, bit off, burr, splintered, razor, wont click, doesnt click, wont fasten, wont latch, misaligned, shattered, ripped off, no longer closes, no longer holds, no longer sticks, no longer stick, wont grip, doesnt grip, lost its grip, given out, gave out, gave up, snagged, came away, come away, broken off, snapped off, cracked off, warped, melted, dented, crushed, bends, flaps, off its, unscrewed, working loose, work loose, worked loose, came loose, come loose, wobbles, wobbling, doesnt stay, wont stay, wont lock, doesnt lock, squeaks and, unglued, peeling, peel off, peeled off, separated, ungluing, sheared, dangling, squashed, flattened, ran over, run over, drove over, nothing to hold, hanging off, comes undone, popping open, pops open, springs open, opens by itself, keeps opening, opens itself, like a knife, like glass",
    "cutting": "sharp, jagged, cut me, cut my finger, cut myself, scratched me, razor, knife, snag,"
    " sawtooth, splinter, spike",
    "slides": "slide, slid, slip, slips, slipped, twist, rotate, turn, spin, spun, ride down, ride up,"
    " rides, migrate, creep, crept, drop, droop, sag, sink, sinks, sank, move around, shift, travel,"
    " wander, swivel, work ~ way down, works ~ way down, end up ~ ankle, ends up, ended up, inside out,"
    " round his ankle, round her ankle, around his ankle, around her ankle, on the floor, off again,"
    " fall down, falls down, pulled up, pull it up, slither, skew, skewed, lopsided, wonky, walks down,"
    " spins, tubesock, too big, comes off, steps out, concertina, bunch, bunches, bunching, sits on"
    " ~ ankle, on his ankle, on her ankle, southward, south, slump, wriggle, crooked, sideways, gravity,"
    " walks out of, fell off, out of place, dig in, digs in, digging in, dig into, digs into, digging"
    " into, press, presses, pressing, pinch, pinches, pinching, rub, rubs, rubbing, poke, pokes, bite"
    " into, bites into, biting into, gape, gaping, chafes, chafing, jab, jabs, push into, pushes into,"
    " scrape, scrapes, knock, knocks, bang, bangs, saws, ankle bracelet, like a sock",
    "cutin": "cut in, cut into, cuts in, cuts into, cutting in, cutting into, dug in, dug into, digging into, sunk in, sunk into, sunken into, buried in, embedded, disappeared into, grown into, bitten into, strangling, strangled, sinking into, sits in ~ groove, deep groove, too tight, cutting off, cheese wire, tourniquet, elastic band, deep furrow, sausage string, tied sausage, muffin top, roast tied, rolled roast, spilling over, bulging over, bulges over, bulges out, vanished into, swallowed by ~ skin, like a tied",
}

DO: dict[str, str] = {
    "limp": "limp, lame, lameness, hobble, hobbly, gimpy, hitch, hop along, favour, favor, favouring,"
    " favoring, stiff, lopsided, wonky walk, hip hop, limpy, limpier, stiffer, uneven, sore, nodding,"
    " peg leg, pirate, pegleg, bunny hop, dot and carry, off on, short on, limping, limped, gammy,"
    " waddle, shuffling, ouchy, hirple, creaky, rocking horse, skip, skips, skipping, wince, shorter step,"
    " shorter steps, dip, bobs, head bob, old man, hitching, dipping, rickety, rusty gate, tin man",
    "worse": "worse, worsening, more than before, more than last week, more than usual, backwards,"
    " going the wrong way, going downhill, downhill, getting bad, back to, again, got bad, deteriorate,"
    " every day more, bad again, much more, even more, stronger, increased, increasing, not better,"
    " no better, isnt better, was better, was doing better, undone, regress, square one, started over,"
    " more each, stronger than, longer each, day by day, more every day, lamer, limpier, stiffer,"
    " slower, relapse, setback, backslide, gone back, more and more, wrong direction, wasnt like this,"
    " rougher, steeper, did before, week one, day one again, back where, behind where, more lame,"
    " more limp, than last week, than yesterday, than before, than monday, than the first, used to",
    "nofoot": "three legged, threelegged, three legs, 3 legs, three legger, 3 legged, 3legged, tripod, three wheeler, on three, on 3, holds ~ up, hold ~ up, holding ~ up, held up, held ~ up, holding up, carries ~ leg, carry ~ leg, carrying ~ leg, carries it, carrying it, tucked up, tuck ~ up, tucks ~ up, tucked under, not touching ~ floor, not touching ~ ground, doesnt touch, wont touch ~ floor, wont touch ~ ground, in the air, up in ~ air, off ~ ground, off ~ floor, no weight, not ~ weight, wont ~ weight, doesnt ~ weight, not put ~ down, wont put ~ down, doesnt put ~ down, wont stand on, doesnt stand on, wont step on, refuses to step on, not using ~ leg, not using it, wont use ~ leg, wont use it, doesnt use ~ leg, not use ~ leg, stopped using, stops using, quit using, wont put it, wont put ~ foot, wont put ~ paw, wont put ~ leg, keeps ~ lifted, keeps it lifted, keeps it up, leg ~ lifted, not putting ~ down, isnt putting, isnt using, stork, flamingo, heron, pogo, kangaroo, three out of four, wont let ~ foot touch, retired ~ leg, not bear, wont bear, non weight bearing, nonweight, toe touch, tricycle, milking stool, doesnt lean on, wont lean on, hovering, hovers, hover, wont set ~ down, set it down, lifted leg, leg is up, levitating, ballerina, hasnt put ~ down, glued to ~ belly, wont load, doesnt load, landing gear, three of four",
    "yelp": "yelp, yip, scream, cry, cried, cries, whimper, whine, squeal, shriek, growl, snarl, bit me, bares ~ teeth, bared ~ teeth, shows ~ teeth, showed ~ teeth, showing ~ teeth, flinch, wince, jerk away, jerks away, pull away, pulls away, pulls ~ away, pulled away, jumps when, jump when, snatches ~ away, snatch ~ away, yank ~ away, yanks ~ away, moan, groan, wail, shies, turns ~ head, whips ~ round, whips ~ around, whip ~ round, lip curl, curls ~ lip, curled ~ lip, hates me, air snap, went for me, goes for my hand, grabs my hand, mouths my hand, mouthing, stiffens, recoil, cringe, ow, ouch, hiss, shudder, quiver, hurting, pain, painful, tender, agony, ache, aches, touchy, side eye, warning, hits the roof, hit the roof, through the roof, hit the ceiling, yowl, squealed, whips, shot away, shoots away, gasps, squeaky toy, went for, tried to bite, tries to bite, flinches, whipped",
    "touch": "touch, press, stroke, handle, pick up, lift, put ~ on, putting ~ on, hold, squeeze, rub,"
    " brush, pat, pet, bend, move, stand up, stands up, get up, gets up, getting up, lie down, lies down,"
    " reach for, near, close, fasten, do up, strap, tighten, buckle, step, sit, sits, examine, feel,"
    " when i, whenever, each time, every time, as soon as, the moment, when we, when my, when anyone,"
    " on the stairs, jump, stretch, pull ~ over, over ~ heel, over ~ foot, go near, come near, palpate,"
    " poke, prod, straighten, finger, hand, fingers, towel, wipe, dry",
    "scream": "scream, shriek, howl, wail, yell, screech, cry, cries, crying, yowl, whimper, whine,"
    " whining, whimpering, moaning, groaning, smoke alarm, siren, air raid, yelping, shrieking, agony,"
    " car alarm, banshee, keening, sobbing, howling, screaming, torture, murdered, burglar alarm",
    "nonstop": "nonstop, non stop, wont stop, doesnt stop, not stop, cant stop, never stops, constant,"
    " constantly, all night, all day, all morning, all evening, for hours, an hour, two hours, hours,"
    " continuously, on and on, again and again, over and over, without stopping, hasnt stopped,"
    " hasnt quit, wont quit, keeps on, since midnight, since last night, endless, every few seconds,"
    " every few minutes, straight, whole night, whole day, minutes, forever, ages, keeps going, no"
    " break, no pause, cant calm, wont calm, nothing helps, nothing works, relentless, still going,"
    " wont let up, isnt stopping, not stopping, didnt stop, until, hasnt let up, every ten seconds,"
    " every minute, every ~ seconds, third night, half an hour, one after another, whatever i do,"
    " no matter what, keeps coming, keep coming, still at it, at it since, never ending, unstoppable,"
    " wont end, doesnt end, starts ~ again, starts over",
    "frantic": "frantic, frantically, cant settle, wont settle, cant lie down, wont lie down, cant get"
    " comfortable, cant get comfy, pacing, pace, paces, out of ~ mind, going insane, going mad, going"
    " crazy, berserk, climbing ~ walls, up down up down, up and down, hysterical, beside himself, beside"
    " herself, throwing himself, throwing herself, spins and, panicking, terrified, climb up me, manic,"
    " possessed, thrash, thrashing, not still, like a caged, bouncing off, trapped, tears at, freaking"
    " out, losing ~ mind, wild, meltdown, cant calm, inconsolable, restless, running in circles, biting"
    " the, claws at, clawing at, digging at, cant keep still, cant stay still, cant stand still",
    "pant": "pant, panting, puffing, huffing, huff, steam train, puff, out of breath, breathing fast,"
    " breathing super fast, tongue hanging, tongue out, tongue to ~ floor, tongue on ~ floor, puffed,"
    " steam engine, panted",
    "breathe": "breath, breathe, breathing, air, respiration, inhale, exhale, breaths, lungful",
    "breathbad": "hard, heavy, heave, heaving, fast, quick, shallow, short, rapid, labored, laboured,"
    " difficulty, trouble, struggle, struggling, noisy, loud, wheezy, whistling, whistle, raspy, rattle,"
    " rattly, rattling, fight, fighting, catch, gasp, weird, funny, strange, odd, crackle, crackly,"
    " bubbly, gurgly, through ~ mouth, cant, properly, effort, sucking, rough, snort, grunt, wet, belly"
    " going, neck stretched, stretched out, panicky, raggedy, ragged, harsh, squeaky, hitching, saw,"
    " scared, marathon, work, working, straw, stops, stopped, pause",
    "breathphrase": "cant breathe, cant breath, struggling to breathe, gasping, gasp, gasps, choke, choking, choked, chokes, suffocating, wheeze, wheezing, wheezes, wheezy, darth vader, cant catch ~ breath, cant get ~ breath, cant get air, cant get enough air, fighting for ~ breath, fighting for air, asthma, stopped breathing, not breathing, isnt breathing, isnt getting air, no air, air isnt going, suck in air, sucking in air, sucking air, pulling air, pulls air, gulping air, gulps air, gulping for, honking like, honking, goose honk, rasp, rasping, rasps, rattling breath, broken accordion, accordion, stuck in ~ throat, stuck in ~ windpipe, went down wrong, went down the wrong, crowing, snorkel, death rattle, fish out of water, lodged in ~ throat, something in ~ throat, seal bark, bagpipe, kazoo, whistling noise, cant finish a breath, stridor, gurgling, drowning, sounds like ~ kettle, sounds like ~ saw, sounds like ~ engine, old kettle, sounds like ~ pig, stuck ~ throat, down ~ wrong way, elbows ~ out, neck ~ out, throat ~ closing, cheyne, heimlich, pawing at ~ mouth, paws at ~ mouth, pawing ~ mouth, clawing at ~ mouth, squeaky breath, breathing ~ mouth, out of air, airway, trouble breathing, drinking straw, blocked ~ throat",
    "coughgag": "cough, gag, hack, hacking, honk, splutter, hairball, furball, clearing ~ throat, retch,"
    " kennel cough, sputter, gagging, cough cough, coughing fit",
    "retch": "retch, dry heave, heave, heaving, dry heaving, gag, trying to ~ vomit, tries to ~ vomit, trying to"
    " puke, tries to puke, trying to throw up, tries to throw up, trying to be sick, tries to be sick,"
    " bring something up, bring ~ up, trying to vomit, tries to vomit, gagging, fake vomiting, puking"
    " movement, vomiting motion, going through the motions, sick motion, hunching, wretch, wretching,"
    " vomit motion, puke motion, wants to be sick, wants to throw up, wants to puke, hack, hacking,"
    " acting like ~ throw up, acting like ~ puke, about to be sick, hurl, keeps heaving, convulsing stomach,"
    " wants to vomit, attempt ~ sick, tried ~ sick, tried to throw up, tried to puke, tried to be sick",
    "nothingup": "nothing comes, nothing comes up, nothing came, nothing coming, only air, just air, its only"
    " air, only spit, just spit, only foam, just foam, white foam, nothing up, nothing out, zero comes,"
    " only slime, white slime, without result, nothing appears, no vomit, no result, nothing there,"
    " unproductive, dry, empty, but nothing, nothing happens, bit of foam, strings of, bit of spit,"
    " nothing but, and nothing, only froth, just froth, doesnt come up, wont come up, isnt coming, not a"
    " thing, nada, zilch, false alarm vomit, no food, nowt, not coming, fails, shaving foam, blank",
    "belltight": "tight, hard, big, huge, drum, tense, swollen, bloated, bloat, distended, blown, round,"
    " rounder, basketball, football, beach ball, balloon, barrel, doubled, firm, hollow, fat, stretched,"
    " pregnant, puffed, solid, rigid, rock, bulging, gas, swelling, taut, watermelon, keg, stick out,"
    " sticks out, bigger, enormous, inflated, pumped, kettledrum, tom tom, bowling ball, burst, explode,"
    " zeppelin, tyre, tire, swell, massive, like a board, thump, expanding, medicine ball, bouncy castle",
    "bellphrase": "bloat, gdv, twisted stomach, stomach twist, gastric torsion, puffer fish, look pregnant,"
    " looks pregnant, belly ~ drum, beach ball, looks like he swallowed, looks like she swallowed,"
    " like he swallowed a, like she swallowed a, looks like ~ going to burst, going to burst, about to pop",
    "strain": "strain, push, squat, squats, squatting, hunch, lift ~ leg, lifts ~ leg, cocks ~ leg, leg up,"
    " leg cocked, trying, tries, tried, keeps asking, asks out, begging to go, effort, bear down, crouch,"
    " pose, position, poses, goes into position, circles, circling on, arches, needs to go, attempt,"
    " attempts, wants out",
    "cantpass": "cant pee, cant poo, cant poop, cant wee, cant urinate, cant pass, cant go, hasnt peed, hasnt pooped, hasnt pood, hasnt pooed, hasnt been able, hasnt urinated, hasnt weed, no pee, no wee, no poo, no poop, no urine, not peed, not pooped, not peeing, not pooping, not urinated, not pooed, not weed, not had a poo, not had a wee, havent seen ~ pee, havent seen ~ poop, didnt pee, didnt poop, isnt peeing, isnt pooping, wont pee, wont poop, constipated, constipation, bunged up, blocked up, unable to pee, unable to go, no number two, nothing in ~ bladder, couple of drops, couple drops, only drips, just drips, only dribbles, just dribbles, drop by drop, hasnt been to ~ toilet, no number 2, hasnt emptied, hasnt had a poo, hasnt had a wee, no toilet, hasnt been since, bladder ~ full, full bladder, bladder ~ hard, not a dribble, hasnt passed, not passed, nothing passes, nothing leaves, not gone since, no bowel, not produced, only a drop",
    "nothingout": "nothing, nothing comes, zero, not a drop, few drops, no result, nada, zilch, barely,"
    " hardly anything, little drops, drops, dribbles, nope, none, without, blank, empty, dry, trickle,"
    " no pee, no poo, nowt, not a thing, not a bean, squat all, tiny smear, smear, marble",
    "fit": "fit, fits, fitting, seizure, seize, seizing, convulsion, convulse, convulsing, epileptic,"
    " epilepsy, paddling, twitch, twitching, jerk, jerking, spasm, tremor, trembling, tremble, shaking all"
    " over, shakes all over, foaming at ~ mouth, stiff as a plank, stiff as a board, went stiff, rigid,"
    " vibrating, shiver, shivering, shaky, shaking, shakes, quivering, chattering, teeth clacking, snapping"
    " at flies, snapping at nothing, jaw ~ chatter, jerky, electric, electrocuted, breakdancing, swimming"
    " on ~ side, running on ~ side, swimming on land, vibrate, washing machine on spin, head bobbing",
    "fitsure": "seizure, seizing, had a fit, having a fit, convulsion, convulsing, convulse, epileptic, had fits, having fits, paddling, foaming at ~ mouth, shaking all over, shakes all over, stiff as a plank, stiff as a board, snapping at invisible, twitching all over, jerking all, trembling all over, whole body ~ shaking, whole body ~ twitching, body ~ jerking, legs ~ jerking, jerking ~ legs, swimming on ~ side, running on ~ side, legs ~ running, face ~ twitching, teeth clacking, another fit, full body ~ shake, fit lasted, a fit, legs ~ paddling, eyes ~ rolled, eyes rolling",
    "drunk": "drunk, drunken, tipsy, wobbly, wobble, stagger, sway, swaying, sailor, on a boat, off balance,"
    " lost ~ balance, no balance, losing ~ balance, stumble, tipping over, tipped over, falls over, falling"
    " over, fell over, keels over, like bambi, bambi, ataxic, uncoordinated, dizzy, walks into, walking"
    " into, walked into, bump into, bumping into, bumps into, crossing ~ legs, pinball, weaving, zigzag,"
    " circling, in circles, jelly legs, legs like jelly, topple, lurch, lurching, reeling, tilts, zombie,"
    " cross legged, list to, lists to, leaning, leans, drifts, sea legs, hammered, bender, pub crawl,"
    " last orders, closing time, plastered, legless, spaced out, newborn foal, foal, giraffe, high as",
    "headtilt": "head tilt, tilted head, head is tilted, head on one side, head to one side, tilting ~ head,"
    " tilts ~ head, head ~ sideways, head ~ tilted, head cocked, head ~ crooked, head ~ wonky, eyes"
    " flicking, eyes flick, eyes darting, eyes ~ left right, eyes bouncing, nystagmus, head hanging"
    " sideways, head ~ lopsided, eyes ~ side to side, eyes are going back and forth, head stays",
    "backlegs": "back legs, both legs, hind legs, rear legs, both back, back end, rear end, both hind,"
    " hind end, back half, rear half, behind his ribs, hindquarters, back feet, hind feet, bum end,"
    " both rear, his rear, her rear, bottom half, back part, legs",
    "legsfail": "stopped working, dont work, doesnt work, not working, arent working, isnt working, dragging,"
    " drag, drags, paralysed, paralyzed, paralysis, gave way, give way, given way, giving way, gives way,"
    " gave out, giving out, gives out, collapse, collapsing, went out, wont work, wont move, cant move,"
    " dont move, not moving, useless, trail, trailing, trails, ribbons, seal, mermaid, pulling himself,"
    " pulling herself, gone dead, buckled, buckle, buckling, nothing behind, splay, splays, sploot, melted,"
    " wont hold, fold under, dead weight, cant use, not respond, lost ~ use, no power, quit, conked,"
    " on strike, army crawl, commando, slug, cant lift, sliding apart, gone to jelly, jelly, spaghetti",
    "cantmove": "cant move, doesnt move ~ leg, cannot move, cant bend, wont bend, doesnt move it, cant use,"
    " not moving ~ leg, wont move, not moving, no movement, cant lift ~ leg, locked",
    "collapsed": "collapse, collapsed, collapsing, faint, fainted, passed out, pass out, passes out, passing out, unconscious, out cold, blacked out, black out, unresponsive, not responding, doesnt respond, wont wake, wont wake up, cant wake, not waking, doesnt wake, didnt wake, keeled over, keel over, keels over, sack of potatoes, dropped mid, rag doll, ragdoll, limp noodle, limp as, comatose, coma, doesnt stir, wont stir, not stirring, isnt stirring, hasnt stirred, lifeless, nobodys home, nobody home, cant rouse, just dropped, cant be woken, wont respond, legs melted, hit the deck, went down like, lights out, lights went out, like a rug, fell over sideways, doesnt lift ~ head, wont lift ~ head, cant lift ~ head, cant hold ~ head, cant hold ~ chin, cant raise ~ head, no reaction, sank down, sank to, someone pulled the plug, pulled the plug, unplugged, switched off, toppled, crumpled, flat out on, not conscious, keeps fainting, isnt waking, folded up like, deckchair, not reacting, no strength, suddenly weak, weak all at once, weak all of a sudden, went weak, gone weak, gone floppy, gone all floppy, all floppy, gone limp, went limp, all limp, completely limp, so weak, too weak, floppy, puppet with ~ strings, strings cut, cut the strings, plugged out, slid down the wall, doesnt react to ~ name, went floppy, body is limp, like a dishrag, felled",
    "cantgetup": "cant get up, cant stand, cant stand up, wont get up, not getting up, isnt getting up,"
    " doesnt get up, didnt get up, hasnt got up, hasnt gotten up, unable to stand, unable to get up, not"
    " able to stand, not able to get up, cant rise, cant raise, cant get to ~ feet, wont stand, wont stand"
    " up, struggles to stand, fails to stand, refuses to get up, cant climb off, legs ~ under him,"
    " cant hold himself, cant hold herself, refuses to stand, refusing to stand, refusing to get up",
    "heatcause": "hot car, in the car, in the van, left in ~ car, heat, heatwave, heat wave, sun, sunny,"
    " sunshine, degrees, hot day, summer, asphalt, pavement at noon, noon, beach, aircon, air con, hot out,"
    " so hot, boiling, boiling hot, roasting, conservatory, greenhouse, sauna, tent, balcony, agility, fetch,"
    " ran after, bike, overheated, overheating, overheat, heatstroke, heat stroke, sunstroke, sun stroke,"
    " humid, scorching, midday, radiator, burning up, stuffy, windows up, windows shut, parked, heating,"
    " jog, jogging, hike, hiking, sweltering, hose, warm day, hot weather, 30c, 32c, 34c, 35c, the car",
    "heatsure": "heatstroke, heat stroke, sunstroke, sun stroke, overheated, overheating, heat exhaustion,"
    " boiling hot, burning up, cooked, cooking alive, like touching a radiator, too hot to touch, steaming",
    "heatsign": "@pant, @drool, glassy, glazed, floppy, wobbly, stagger, drunk, weak, collapse, cant cool,"
    " wont cool, not cooling, staring through, unfocused, red gums, gums, tongue, wont get up, gasping, limp,"
    " sway, vomit, dizzy, out of it, dazed, unsteady, zonked, lies flat, doesnt respond, jelly",
    "weak": "weak, floppy, wobbly, faint, lethargic, shaky, limp, listless, flat, sleepy, wiped out, dull,"
    " trembling, shaking, no energy, hunched, cold, wont get up, wont lift, lying, wont walk, pale, quiet,"
    " depressed, feeble, sad, miserable, not himself, not herself",
    "unwell": "fever, feverish, lethargic, listless, not himself, not herself, not his self, not her self, not ~ usual self, not right, isnt right, off colour, off color, under the weather, poorly, unwell, ill, mopey, mopes, no energy, no spark, wiped out, droopy, subdued, withdrawn, sleeps all day, sleeping all day, just sleeps, just lies there, just lying there, only lies, wont play, wont greet, doesnt greet, not greeting, no tail wag, tail down, tail between, hot ears, ears ~ hot, nose ~ hot, apathetic, out of sorts, miserable, not interested, lost interest, doesnt care about, wont come out, stays in ~ bed, gloomy, wilted, deflated, not with it, battery ~ empty, battery ~ flat, half speed, ghost of, shadow of, ears down, weird mood, lost ~ sparkle, shivery, doesnt want to do anything, doesnt come when, flu, like a flat tyre, like a rag, depressed, isnt himself, isnt herself, running hot, burning up, wont go for ~ walk, wont go for walk, knackered, wouldnt greet, off today, been off, bit off, not wagging, didnt get up to greet, down in the dumps",
    "noeat": "not eating, wont eat, doesnt eat, not eaten, hasnt eaten, didnt eat, isnt eating, off ~ food, off food, refusing food, refuses food, refused food, refuses ~ dinner, refused ~ dinner, refused ~ breakfast, refuses ~ breakfast, no appetite, lost ~ appetite, wont touch ~ food, wont touch ~ dinner, wont touch, doesnt touch ~ food, not touched ~ food, hasnt touched ~ food, hasnt touched ~ breakfast, hasnt touched, didnt touch, doesnt want ~ food, doesnt want ~ breakfast, doesnt want ~ dinner, wont take ~ treat, wont take ~ ham, wont take treats, not taking treats, not interested in food, not interested in ~ dinner, left ~ breakfast, left ~ dinner, leaves ~ food, leaves ~ breakfast, leaves ~ dinner, turns down, turning down, turned down, turns away from, turned away from, turns ~ nose up, turned ~ nose up, sniffs ~ walks away, walks away from ~ bowl, walked away from ~ bowl, hunger strike, bowl ~ full, full bowl, bowl untouched, skipped ~ meals, skipped breakfast, skipped dinner, skipped ~ breakfast, skipped ~ dinner, dinner ~ still in ~ bowl, food ~ still in ~ bowl, breakfast ~ still, ignores ~ bowl, ignored ~ breakfast, ignored ~ dinner, even chicken, not even chicken, not even ham, not even cheese, nothing ~ tempts, spits ~ out, wont even eat, wouldnt eat, off breakfast, couldnt eat, not hungry, isnt hungry, pushes ~ bowl away, picking at, picks at ~ food, barely ate, barely eating, barely eats, hardly eats, hardly eating, hardly ate, said no to, says no to, no to ~ food, no breakfast, no dinner, refusing ~ dinner, refusing ~ breakfast, refusing to eat, refused to eat, refuses to eat, refusing treats, refuses treats, refused treats",
    "nodrink": "not drinking, wont drink, hasnt drunk, hasnt drank, doesnt drink, not drunk, not drank, didnt"
    " drink, isnt drinking, not had ~ drink, hasnt had ~ drink, hasnt had ~ sip, hasnt had ~ water, refuses"
    " water, refusing water, refused water, not a drop, not a sip, not one sip, not one lick, no water, water"
    " bowl untouched, water ~ untouched, water ~ full, water ~ same level, bowl ~ same level, bowl ~ still"
    " full, not touched ~ water, hasnt touched ~ water, wont touch ~ water, water bowl ~ full, ignores ~"
    " water, drunk nothing, drank nothing, drunk a thing, hasnt lapped, no drinking, thirst strike, not lapped,"
    " stopped drinking, nothing to drink, not drinking anything, gone near the water, near ~ water, havent"
    " refilled, not refilled, hasnt gone down, not gone down, water level, off water, off ~ water, not been"
    " drinking, not swallowed, nothing swallowed, wouldnt drink, still on the line, water ~ hasnt, camel,"
    " hasnt been drinking, doesnt want ~ water, no sip, without ~ drink, without drinking, without water,"
    " seen ~ drink, sip",
    "drinkless": "drinking less, drinks less, barely drinks, barely drinking, hardly drinks, hardly drinking,"
    " drinks hardly, drinking half, drinks half, much less water, not drinking much, not drinking as, not"
    " drinking like, few licks, barely drank, drinks almost nothing, drinking almost nothing",
    "longday": "24 hours, 24h, 24 hrs, 26 hours, 30 hours, 36 hours, 48 hours, since yesterday, day and a half,"
    " two days, 2 days, since monday, since tuesday, since wednesday, since thursday, since friday, since"
    " saturday, since sunday, three days, 3 days, day before yesterday, all day and, whole weekend, the"
    " weekend, thirty hours, all day and night, for days, couple of days, over a day, more than a day, a full"
    " day, whole day, day two, day 2, 28 hours, 40 hours, yesterday morning, yesterday lunch, since last"
    " night, night before last, all yesterday, second day, twenty four, a day and, 1 day, one day, =days",
    "many": "three, four, five, six, seven, eight, nine, ten, eleven, dozen, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 3x, 4x, 5x, 6x, third, fourth, fifth, sixth, seventh, eighth, again and again, over and over, all night, every hour, every half, hourly, nonstop, non stop, constantly, lost track, lost count, so many, many times, several, loads, repeatedly, keeps, keep, kept, everywhere, fountain, volcano, both ends, projectile, wont stop, cant stop, endless, every ten, every few, cant keep, couldnt keep, after every, each time, more times, 3 times, x3, x4, x5, another, twice an hour, in a row, still going, then foam, then yellow, then bile, severe, violent, since midnight, all morning, bucket, hose, tap, umpteen, whole night, four times, multiple, relentless, round the clock",
    "once": "once, one time, twice, a little, bit of, 1x, 2x, two times, couple of times",
}

HURT: dict[str, str] = {
    "heavy": "gush, gushing, spurt, squirt, pump, pumping, pour, pouring, stream, streaming, running down, heavy,"
    " heavily, profuse, everywhere, all over, soak, soaked, soaking, saturated, drench, pool, puddle, pools,"
    " loads of, lots of, so much, a lot of, tons of, wont stop, doesnt stop, not stop, cant stop, hasnt stopped,"
    " still dripping, keeps dripping, isnt stopping, not stopping, dripping like, drip, dripping, tap, hose,"
    " fountain, spray, spraying, murder scene, crime scene, horror film, horror movie, massacre, slaughter,"
    " slaughterhouse, abattoir, butcher, towel, towels, tea towel, kitchen roll, bandage, through the, bucket,"
    " buckets, keeps coming, flows, flowing, flowed, fast, spattered, splattered, trail of, trail, drenched, still"
    " coming, keeps filling, starts again, starts ~ again, starts over, opens again, pressing, pressed, pressure,"
    " fifteen minutes, ten minutes, twenty minutes, half an hour, an hour, stop the, minutes, walls, carpet, floor,"
    " sofa, sheets, bath, bathtub, leaking, nonstop, constantly, soaks, wont clot, puddles, waterfall, jet, ruined",
    "crimescene": "crime scene, murder scene, horror film, horror movie, blood bath, bloodbath, massacre, slaughter,"
    " slaughterhouse, abattoir, butchers shop, butcher shop, jackson pollock, texas chainsaw, dexter, halloween"
    " set, red footprints, red paw prints, red pawprints, red everywhere, csi, red puddle, red trail, tarantino",
    "soakthrough": "soaked through, soaks through, soaking through, towel soaked, towels soaked, tea towel, soaked ~"
    " towel, soaked ~ towels, through ~ bandage, through ~ towel, through ~ towels, through ~ gauze, second towel,"
    " third towel, kitchen roll, kitchen paper, bath towel, completely saturated, keeps filling, spurts, squirting,"
    " spurting, gushing, gushes, pumping out, tourniquet, pressing ages, pressing on it, arterial, pads soaked",
    "deep": "deep cut, gaping, gape, gapes, flap, to the bone, can see bone, see bone, see muscle, see meat, see fat, see tendon, tendon, impaled, impale, skewer, stabbed, stab, puncture, punctured, went in, goes in, gone in, goes all the way, all the way in, stuck in, sticking out of, embedded, ripped open, tore open, torn open, split open, opened up, laid open, like a zip, took a chunk, chunk out, bit through, bitten through, hanging open, fillet, wide open, big cut, huge cut, long cut, gash, slash, slashed, sliced, stringy, pinkish ~ bulging, guts, intestine, inside out, deep gash, barbed wire, fishhook, fish hook, nail through, glass in, shard, rebar, thorn through, stick went, pierced, flayed, degloved, skin ~ hanging, needs stitches, stitches needed, shark bite, peeled ~ orange, see inside, look inside, like a mouth, right through, straight through, clean through, put ~ finger in, to the muscle, see the white, arrow, pitchfork, tore a hole, ripped a hole, hole ~ size, two holes, four holes, holes, see right in, grill skewer, kebab skewer, wire through, hook through, stake, splinter in, unzipped",
    "bittenby": "dog bite, bitten by, bit by, got bitten, been bitten, was bitten, dog fight, dogfight, got into a fight, in a fight, got in a fight, attacked by, got attacked, was attacked, been attacked, mauled, snakebite, adder, viper, rattlesnake, copperhead, got hold of him, got hold of her, another dog ~ bit, shook him, shook her, fight with, scrap with, fang, teeth went, sank ~ teeth, bite marks, bite mark, fox bite, rat bite, cat bite, savaged, set upon, boar, badger, coyote, tusk, ripped into, laid into, punch up, had a go at him, had a go at her, jumped him, went for him, went for her, tore into, teeth in, bit him, bit her, grabbed him by, grabbed her by, fight over",
    "hit": "hit by, ran over, run over, ran him over, ran her over, knocked down, knocked over, knocked by, clipped,"
    " hit him, hit her, got hit, was hit, been hit, struck by, went over him, went over her, bumper, crashed into,"
    " collided, kicked by, kicked him, kicked her, got kicked, was kicked, been kicked, booted, trampled, stepped"
    " on him, stepped on her, stood on him, stood on her, trod on, crushed, squashed, pinned, trapped under, trapped"
    " between, fell on him, fell on her, landed on him, landed on her, came down on, dropped on, rolled over him,"
    " rolled over her, backed over, reversed over, reversed into, drove over, dragged by, under ~ wheels, sat on"
    " him, sat on her, toppled onto, tipped over on, shut on, closed on, slammed on, caught in ~ door, whacked, car"
    " got him, car got her, into him, into her, rammed, bowled over, bulldozed, jammed in, got shut in, t boned,"
    " thrown from, flew off, got him on ~ bumper, under a car, under the car, nudged by, bumped by, sent ~ flying,"
    " flung, hurled, dropped him, dropped her, slipped out of my arms, slid out of my arms, out of my arms",
    "vehicle": "car, van, truck, lorry, bike, bicycle, scooter, escooter, e scooter, motorbike, moped, bus, taxi, tram,"
    " cyclist, tractor, golf cart, quad, suv, train, mower, lawnmower, skateboard, longboard, horse, cow, delivery,"
    " vehicle, wheel, wheels, postman, courier, driver, wagon, uber, forklift, door, wardrobe, shelf, gate, jeep",
    "fell": "fell, fall, falls, fallen, falling, tumble, tumbled, plunged, rolled down, roll down, slid off, dropped"
    " from, came off, went over, jumped off, jumped from, leapt off, leapt from, slipped off, slipped down, crashed"
    " down, toppled, slipped on, landed, dived off, nose dived, bounced down, thumped down, went head over, cartwheel,"
    " somersault, tipped off, sailed off, launched, flew, went down, skidded off, slinky, went flying, pitched",
    "height": "stairs, stair, steps, staircase, balcony, window, floor, roof, wall, cliff, ladder, metres, meters, feet,"
    " deck, loft, bunk, escalator, landing, storey, story, stairwell, terrace, ledge, bridge, top step, flight, height,"
    " pier, quarry, banister, bannister, tailgate, boot of ~ car, truck bed, table, off ~ bed, sofa, bed, embankment,"
    " second floor, third floor, down the hole, ditch, manhole, pit, hayloft, porch, jetty, rocks, balustrade",
    "shock": "electric shock, electrocuted, electrocute, live wire, live cable, chewed ~ cable, chewed ~ cord, chewed"
    " ~ wire, bit ~ cable, bit ~ cord, bit ~ wire, charger cable, spark, socket, zapped, extension cord, power cord,"
    " lamp cord, phone charger, got a shock, electric fence, christmas lights, plugged in",
    "sting": "sting, stung, bee, wasp, hornet, bitten by something, insect, spider, ant, mosquito, jab, vaccine,"
    " vaccination, shot, new food, new treat, peanut, shrimp, flea drops, new chew, cricket, yellowjacket, horsefly",
    "pop": "pop, popped, popping, snap, snapped, crack, cracked, crunch, crunched, click, clunk, twang, cracking, pinged,"
    " ping, knuckle crack, bang, celery, twig, carrot, breaking ~ stick, gunshot, bubble wrap, cork, thud",
    "heard": "heard, hear, hears, felt, feel, sound, sounded, noise, audible, loud, went, made a, came from, distinct,"
    " could hear, could feel, like a, sounds",
    "stitches": "stitch, suture, staple, incision, surgical wound, surgery wound, operation wound, op wound, scar, surgery"
    " site, op site, surgical site, operation scar, tplo, surgical cut, surgery cut, operation site, zipper, post op,"
    " surgical line, surgery line, seam ~ surgery, wound ~ surgery, wound from ~ op, the op, operation, cut line, railway"
    " track, vets sewing, sewn, sewed, glue line, stitched, spay wound, spay scar, neuter wound, biopsy, drain, lump removal",
    "stitchbad": "open, opened, opening, red, weep, weeping, ooze, oozing, pus, gap, gaping, chewed, chew, licked, licking,"
    " licks, came out, come out, coming out, pulled out, missing, burst, popped, swollen, wet, smell, smells, hot, leaking,"
    " infected, bleeding, bled, blood, undone, unzipped, torn, ripped, angry, puffy, hole, yellow, green, separating,"
    " parted, split, sticky, lump, seeping, apart, gone, gaped, drip, crusty, loose, come apart, broke, pink, sore, bulge",
    "tore": "tore, torn",
    "fold": "knuckle, knuckling, knuckled, fold under, folds under, folding under, fold over, folds over, folding over, curl"
    " under, curls under, curling under, top of ~ foot, top of ~ paw, top of ~ toes, tops of ~ toes, tops of ~ feet, on the"
    " tops, on his knuckles, on her knuckles, drag ~ toes, drags ~ toes, dragging ~ toes, dragging ~ foot, drags ~ foot,"
    " drag ~ foot, dragging ~ paw, drags ~ paw, toes drag, toes dragging, foot drags, paw drags, foot dragging, toes curl,"
    " toes curled, toes fold, toes folding, foot turns under, paw turns under, turned under, turns under, foot flips, paw"
    " flips, flips under, scuff, scuffs, scuffing, scuffed, scrape ~ toes, scrapes ~ toes, scraping ~ toes, toes scrape,"
    " trips over ~ toes, trips over ~ foot, upside down, ballerina, ballet, on point, en pointe, nails worn, nail worn,"
    " worn nails, nails ~ worn, nails ~ filed, nails ~ stubs, nails ~ down to, scratching sound, scratchy sound, toe drag,"
    " toe dragging, foot like ~ flipper, flipper, walks on ~ knuckles, walking on ~ knuckles, bends under, bent under, tucked"
    " under, tucks under, rolls under, rolled under, folded under, folded, flop over, flops over, sandpaper sound, catching"
    " ~ toes, catches ~ toes, toes under, foot under, wrong side of ~ foot, wrong side of ~ paw, nails ~ floor, roll over",
    "withoutdev": "without ~ brace, without it, brace off, brace is off, device off, off too, even off, even without, when"
    " its off, out of ~ brace, also off, not wearing, isnt wearing, doesnt have it on, also without, bare foot, barefoot,"
    " without ~ device, with or without, off or on, on or off, took it off, taken it off, off the brace, naked leg, is off",
    "lick": "lick, licking, chew, chewing, nibble, nibbling, gnaw, gnawing, worry at, bother, mouthing, nibbles, gnaws,"
    " tongue, lollipop, ice cream, slurp, slurping, chewing gum, obsessed, lollypop, grooming, chomping, pestering",
    "cantleave": "wont leave ~ alone, cant leave ~ alone, wont stop, keeps, keep, kept, constantly, nonstop, non stop, all day,"
    " all night, every night, every evening, obsessive, obsessed, days, same spot, one spot, that spot, since, always, for"
    " hours, day three, third day, again and again, goes back to, returns to, back at it, whenever, again, every time, still,"
    " week, cant stop, forever, nights, same place, the same, hours",
    "fightsit": "hates it, hates the, fights, fight, fighting, panics, panic, freeze, freezes, frozen, statue, wont move,"
    " refuses to move, wont walk, refuses to walk, not walk, doesnt move, hides, hide, hid, runs away, runs off, ran off, bolts,"
    " bolt, shakes, trembles, trembling, planks, plank, pancake, lies down, wont budge, thrashes, bucks, bronco, rodeo, like a"
    " mule, stands there, terrified, goes mad, sulks, goes flat, statues, petrified, shuts down, wedge himself, wedges himself,"
    " under the bed, under the sofa, under the table, behind the sofa, rigid, trying to get it off, tries to get it off, trying"
    " to rip, tries to rip, tears it, rips it, tears at, rips at, throws himself, throws herself, wont accept, doesnt accept,"
    " not accept, never accepted, wont tolerate, tantrum, wont take a step, wont take one step, not a step, wont step, stuck to,"
    " roots, rooted, stone, garden gnome, wont have it, refuses, refuse, dead weight, wrestling, wrestle, dread, dreads, scared,"
    " frightened, vanishes, disappears, cowers, cower, squirm, drama, pees himself, pees herself, melts, escape, kicks off, barricades",
    "devicecue": "brace, device, orthosis, it comes out, comes out, bring it out, bring out, get it out, see it, sees it, sees the,"
    " put it on, with it on, its on, straps on, on him, on her, velcro, contraption, boot, orthotic, the bag, wearing, wear, in it,"
    " the box, the splint, harness, goes on, strapped",
    "daysstill": "days, day three, day four, day five, day six, day seven, day eight, day nine, day ten, day 3, day 4, day 5, day 6,"
    " day 7, day 8, day 9, day 10, week, weeks, still, every time, every single, always, never, months, fortnight, each time, no"
    " improvement, not improved, same as, third day, fourth day, fifth day, sixth day, by now, since monday, since tuesday, since"
    " wednesday, since thursday, since friday, since saturday, since sunday, day 11, day 12, day 14, ten days, nothing changed,"
    " not getting better, isnt getting better, every day, daily, 2nd week, second week, third week, whenever, a week, keeps",
    "staysmark": "still, stay, stays, stayed, wont go, wont go away, doesnt go away, doesnt go, not go away, not fade, wont fade, doesnt fade, not fading, isnt fading, didnt fade, hasnt faded, hasnt gone, hours, an hour, two hours, half an hour, next morning, overnight, 40 minutes, 45 minutes, an hour later, later, after an hour, since last night, all evening, not gone, not going, isnt going, permanent, there all, until bedtime, by bedtime, at bedtime, next day, for hours, day after, after two hours, lasting, lasts, remains, linger, lingers, lingering, two films, whole film, whole movie, episode, episodes, since lunch, since dinner, since breakfast, refuses to fade, 50 minutes, 35 minutes, 90 minutes, 60 minutes, fifty minutes, forty minutes, three quarters, not disappear, doesnt disappear, didnt disappear, hasnt disappeared, persist, still visible, still see, still there, wont budge, doesnt leave, wont leave, stuck around, not left",
}

ACTION: dict[str, str] = {
    "ate": "=ate, eat, eaten, swallow, swallowed, gulped, gulp, wolfed, scoffed, gobbled, hoovered, chewed, chewed up, lick, licked, licked up, drank, drunk, got into, got at, got hold of, got his paws on, helped himself, helped herself, demolished, munched, nicked, stole, pinched, snaffled, nibbled, devoured, inhaled, had a, had the, had some, had two, had three, consumed, ingested, bit into, bitten, crunched, polished off, snatched, eats, finished off, raided, chomped, tasted, taste, slurped, lapped up, lapping, down the hatch, guzzled, scarfed, vacuumed, tucked into, wolfs, got my, got a, gnawed, shredded, ripped open, tore open, in his mouth, in her mouth, out of ~ mouth, dug up, snacked, counter surfed, wolfing, sampled, knocked back, woofed down, he got, she got, fished out, had been at, been at the, beak, half eaten, licking, drinks, eating, sniffed up, grabbed, snarfed, necked, swiped, chewing, pigged out, cleaned out, got through, got one",
    "gonepack": "empty, gone, missing, ripped open, torn open, chewed open, chewed up, wrapper, wrappers, packet, packets, box ~ empty,"
    " bag ~ empty, pack ~ empty, foil, where is, where are, only the, cant find, a hole in, licked clean, licked spotless, bitten in half,"
    " tipped over, shredded, all over ~ floor, knocked over, vanished, disappeared, powder all over, crumbs, on his nose, on her nose,"
    " on his beard, on her beard, on his face, round his mouth, around his mouth, two short, open on the floor, spilled, spilt, ransacked",
    "gave": "gave, give, given, giving, gives, slipped him, slipped her, fed him, fed her, popped him, got him to take, dosed, dose, had"
    " his, had her, put ~ in ~ food, put ~ in ~ dinner, put ~ in ~ breakfast, put ~ in ~ bowl, hid ~ in, crushed ~ in, mixed ~ in, snuck,"
    " sneaked, mixed up, administered, treated him with, treated her with, took, taken, wrapped in, in cheese, in ham, in peanut butter,"
    " rubbed, rubbed ~ on, smeared, applied, spread, fed",
    "askgive": "can i give, could i give, may i give, should i give, ok to give, okay to give, safe to give, alright to give, give him,"
    " give her, give it, can he have, can she have, could he have, may he have, may she have, could she have, can he take, can she"
    " take, allowed to give, allowed, can i use, could i use, can dogs have, can dogs take, do dogs, for dogs, how much, how many, how"
    " often, what dose, dosage, which painkiller, what painkiller, would it be ok, is it ok, is it safe, is it okay, are they ok,"
    " are they safe, any harm, instead, tempted, thinking of giving, thinking of, thinking about giving, want to give, wanted to give,"
    " about to give, going to give, planning to give, would like to give, lend, share, try him on, try her on, mind if, i have some,"
    " weve got some, ive got some, i have got some, work for dogs, work on dogs, ok for dogs, okay for dogs, ok if i, okay if i, can we"
    " give, could we give, should we give, shall i give, shall we give, might give, good for dogs, what can i give, anything i can give,"
    " something for the pain, something for pain, cant i just, can i just, will it hurt, would half, is half, half of, could half, would a,"
    " would one, will one, quarter of, break ~ half, suitable, slip him, slip her, pop him, harm, use up, does ~ work, do the trick,"
    " tide him over, tide her over, take the edge off, helps me, works for me, do i dare, fine for dogs, allowed to have, a go",
    "double": "twice, double, two doses, second dose, again, already given, too much, too many, extra, overdose, overdosed, whole tub,"
    " full tub, whole pack, whole bottle, whole box, both gave, neither of us, two instead, wrong dose, mixed up, entire, all of them, all"
    " of it, double dosed, doubled, both of us, two of them, whole strip, whole tube, extra dose, whole jar, days worth, weeks worth",
    "own": "his tablet, her tablet, his pill, her pill, his meds, her meds, his medicine, her medicine, his medication, her medication,"
    " his anti, her anti, his dose, her dose, prescribed, his chew, her chew, joint chew, joint tablet, chewable, his own, her own, his pain,"
    " her pain, from the vet, vet gave, vet prescribed, vet says, his antibiotic, her antibiotic, glucosamine, as prescribed, dog meds",
    "missingpart": "missing, gone, vanished, disappeared, cant find, nowhere, not there, isnt there, no longer there, where is, looked"
    " everywhere, lost, minus, one short, short on, two short, not on the floor, not in ~ bed, no trace, half of it, chunk out, bite out,"
    " piece out, bitten off, chewed off, bit off, cant be found, searched, nowhere to be, absent, hasnt turned up, not turned up, isnt"
    " anywhere, unaccounted, wheres, a hole where, a chunk, a piece, chunk, piece",
    "chewed": "chewed, chew, eaten, ate, eat, swallow, swallowed, bit off, bitten off, gnawed, gulped, devoured, destroyed, munched, shredded,"
    " ripped, tore, nibbled, chomped, scoffed, wolfed, snack, snacked, snacking, hoovered, dinner, lunch, breakfast, inside him, inside her,"
    " in him, in her, down his throat, down her throat, went down, in his mouth, in her mouth, spaghetti, dessert, in his belly, in her belly,"
    " in his stomach, in her stomach, in his tummy, in her tummy, poop it out, poo it out, pass it, come out the other end, digest, gobbled,"
    " appetiser, appetizer, had it, inhaled, bitten, chewing, crunched, taken a bite, took a bite",
    "distress": "@vomit, @retch, @noeat, @coughgag, @cantpass, strain, straining, whining, whimper, hunched, hunch, yelp, moan, groan,"
    " belly ~ sore, tummy ~ sore, drool, drooling, choking, gulping, swallows and, pacing, wont settle, curled, tense, belching, bum in the"
    " air, prayer, praying, bow, lethargic, not himself, not herself, foam, restless, pain, crying, shaking, regrets, lip licking, eating grass,"
    " tight belly, hard belly, unwell, poorly, burping, uncomfortable, retching, sad, miserable, wont poop, no poo, puking, barfing, slimy, drools",
    "labourword": "labour, labor, contractions, whelping, whelp, giving birth, puppy coming, puppies coming, in labour, in labor, due date, having her pups, having pups, her pups, litter, puppy stuck",
    "labourbad": "nothing, no puppy, no pup, no puppies, stuck, hours, pushing, straining, an hour, green, black, stopped, exhausted, hard,"
    " not coming, wont come, no more, half out, overdue, since, tired, two hours, contractions, panting, hanging out, bag, gave up, help",
    "mouthacid": "acid, chemical, shampoo, spray, cleaner, soap, bleach, powder, dust, sand, perfume, deodorant, lime, vinegar, pepper, chili,"
    " sunscreen, washing liquid, cement, ammonia, hairspray, splash, splashed, squirted, disinfectant",
    "eyebad": "shut, closed, wont open, cant open, doesnt open, not open, not opening, half closed, half shut, squint, squinting, wink, winking,"
    " bulge, bulging, popped, sticking out, stuck out, cloudy, clouded, milky, blue, bleeding, blood, red, scratched, scratch, poked, hit, bitten,"
    " weepy, weeping, watering, running, runny, goo, gunk, glued, swollen, puffy, fat, rubbing, pawing, rubs, paws at, injured, hurt, sore, bloodshot,"
    " film, haze, hazy, cut, cat scratch, thorn, poke, in the eye, into ~ eye, stick, blinking, blinks, teary, tears, clamped, screwed up, pirate,"
    " cyclops, streaming, stuck, wont look, weird, white, foggy, marble, out of ~ socket, socket, dangling, punctured, pupil ~ big, bigger, doesnt see,"
    " cant see, blind, flicked, caught, thwacked, smacked, whipped, discharge, sticky, one side, opaque, popeye, grape, crusted, dented",
}
