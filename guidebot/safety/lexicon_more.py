"""Wider concepts that only count beside others in a rule, and whole comparisons."""

MORE: dict[str, str] = {
    "tarry": (
        "tarry, like tar, black poo, black poop, black stool, coffee grounds ~ vomit, vomit ~ "
        "coffee grounds, looks like coffee grounds, like coffee grounds, nosebleed, nose bleed, "
        "shoe polish, melena"
    ),
    "medpoison": ("poisoned, toxic dose, overdose, overdosed, poisoning"),
    "walkdrunk": (
        "walks like drunk, like ~ drunk, walking like ~ drunk, looks drunk, acting drunk, acts "
        "drunk, seems drunk, drunk sailor, wobbling about, wobbling all over, staggering, "
        "stagger, lost ~ balance, cant walk straight, cant keep ~ balance, keeps falling over, "
        "falls over, falling over, tips over, tipping over, walks into walls, walking into "
        "walls, walks into things, walking in circles, swaying, keeps toppling, wobbly on ~ "
        "feet, wobbly on ~ legs, unsteady"
    ),
    "seebone": (
        "see, seeing, sticking, showing, shows, visible, poking, white, through, exposed, peeking"
    ),
    "meat": ("meat, muscle, tendon, fat, sinew, steak"),
    "neckish": ("neck, throat, ear, chest, shoulder, bum, rump"),
    "suddenly": ("suddenly, sudden, all at once, all of a sudden, out of nowhere, from one minute"),
    "nailtrim": ("nail polish, paint, snow boots, socks"),
    "sorefind": (
        "limp, sore, stiff, hurt, wobbly, wobble, swollen, trembling, trembles, gives way, gave "
        "way, gave out, given way, giving way, buckle, buckles, buckled, buckling, collapse, "
        "weak, shaky, shaking, playing up, dodgy, bad, painful, pain, favouring, favoring, "
        "limping, gone, went, dragging, wont put, funny, wonky, giving out, click, pop, popped, "
        "bothering, not right, isnt right, holding up, lifts, lame"
    ),
    "cloth": (
        "cloth, towel, rag, tissue, bandage, gauze, t shirt, tea towel, dishcloth, plaster, "
        "kitchen roll, kitchen paper, paper towel, sheet, blanket, sock, pad, flannel, nappy, "
        "diaper, napkin, swab, skirt, sleeve, jumper, shirt, duvet, bedding, wad, dressing, "
        "compress, hanky, handkerchief, serviette, loo roll, cotton wool"
    ),
    "clothfull": (
        "soaked, soaked through, through, full, red, dark red, saturated, sodden, fill, "
        "filling, drenched, crimson, scarlet, ruined, wringing, third, fourth, second, another, "
        "one after another, next one, straight through, pink, sopping, claret"
    ),
    "pressing": (
        "pressed, pressing, pressure, squeezing, squeezed, held a, holding a, lean on it, "
        "leaning on it, wrapped, clamping, tied, push on it, pushing on it, however hard, no "
        "matter how hard, cold water, flour, styptic, cornflour"
    ),
    "stillgoing": (
        "still, wont stop, not stopping, keeps, doesnt stop, comes and comes, keeps coming, "
        "hasnt slowed, hasnt eased, no slower, cant stop, isnt slowing, wont close, ages, "
        "minutes, half an hour, an hour, since, not clotting, wont clot, hasnt stopped, wont "
        "quit, starts again, starts over, again, faster"
    ),
    "flow": (
        "drip, dripping, run, runs, running, pour, pouring, pump, pumping, stream, streaming, "
        "spurt, squirt, gush, spray, sprayed, trickle, leak, flow, patter, pattering, tap left "
        "on, welling, spatter, ooze, jetting"
    ),
    "cutword": (
        "cut, nick, gash, slice, sliced, claw, dewclaw, dew claw, nail, quick, tear, tore, "
        "split, snipped, glass, tin lid, barbed wire, wound, blade, scissors, razor, fence, "
        "wire, snagged, opened"
    ),
    "redfloor": (
        "all red, gone crimson, gone red, red trail, trail of red, red drops, red spots on ~ "
        "floor, red splashes, splashes of red, red prints, red paw, red footprint, floor ~ red, "
        "tiles ~ red, sofa ~ red, bed ~ red, snow ~ red, straw ~ red, bath ~ red, butchered, "
        "killed a pig, butchering, murder mystery, stabbing, dripping red"
    ),
    "gumword": ("=gums, gum line, tongue, inside ~ mouth, inside ~ lips, lips"),
    "throatnoise": (
        "donkey, bellows, diver, train whistle, kettle, saw, sawing, goose, seal, pig, snorkel, "
        "accordion, bagpipe, steam, hoover, vacuum, hee haw, foghorn, trumpet, frog, broken "
        "toy, bark, barking like, duck, squeaky toy, straw, tractor, chainsaw"
    ),
    "soundsword": ("sounds, sounding, noise, like a, like an, honks, makes"),
    "windlost": (
        "get ~ wind, lost ~ wind, get her wind, cant get a breath, get a breath, for breath, "
        "for air, short of breath, breathless, stuck down him, stuck down her, something stuck, "
        "bone stuck, caught in ~ throat, in ~ windpipe, in ~ gullet, ribs ~ going, ribs going, "
        "sides ~ heaving, sides heaving, sides going, flanks ~ heaving, flanks going, blue "
        "tongue, tongue ~ blue"
    ),
    "passwater": (
        "pee, wee, poo, poop, toilet, passed water, pass water, spend a penny, spent a penny, "
        "loo, business, cock ~ leg, go, drop, motion, number two, bowels, bathroom, tinkle, "
        "widdle, piddle, make water, ease himself, relieve, walkies, lamppost, lamp post, tree, "
        "gatepost, grass, litter, garden"
    ),
    "passnot": (
        "cant, cannot, hasnt, not, nothing, no, never, unable, nothing comes, nothing came, "
        "nothing there, barely, hardly, not once, only a, thimble, doesnt, wont, without "
        "result, for nothing, in vain, dry"
    ),
    "sincelong": (
        "since yesterday, since last night, since dawn, since monday, since tuesday, since "
        "wednesday, since thursday, since friday, since saturday, since sunday, all day, all "
        "night, two days, three days, for ages, many times, again and again, five times, ten "
        "minutes, since this morning, hours, every tree, 24 hours, since teatime, overnight, "
        "days"
    ),
    "ingesteye": (
        "splashed, splash, sprayed, got in, went in, blew in, flew in, squirted, up in, poked, "
        "scratched, caught, hit, flicked, whipped, jabbed, stuck in, thorn, smacked, threw, "
        "went for, dust, sand, lime, bleach, dip"
    ),
    "eyespot": ("eye, =eyes, eyeball, in ~ face, up in ~ face"),
    "pillthing": (
        "pill, tablet, capsule, medicine, meds, medication, blister, patch, drops, gel, cream, "
        "syrup, paste, dose, inhaler, antidepressant, sleeping, blood pressure, drench, wormer, "
        "worm, organiser, ointment, thyroid, painkiller, chews, prescription, suppository, "
        "injection"
    ),
    "pillgone": (
        "empty, gone, crunched, chewed, licked, licked it off, licked off, eaten, ate, "
        "swallowed, missing, on the floor, all over, wrong bowl, wrong dog, wrong one, twice, "
        "double, mistake, by accident, accidentally, mixed up, got hold, got into, hoovered, "
        "off the floor, licked clean, whole lot, ate the lot, neither of us, both gave, instead "
        "of his, instead of hers, had the, had my, shared, snaffled, found in ~ mouth, stole, "
        "gobbled, knocked over, spilled, i dropped, lid off, lids off"
    ),
    "gavehuman": (
        "what the doctor gives me, what i take, one of mine, one of my, some of mine, two of "
        "mine, some of my, half of mine, half of my, my sciatica, let him have, let her have, "
        "one of her own, one of his own, one of hers, from my own, my prescription"
    ),
    "legsgone": (
        "back legs, both back, hind legs, hind end, back end, rear end, both hind, behind"
    ),
    "wobble": (
        "wobble, wobbling, wobbly, sway, swaying, stagger, staggering, stumble, stumbling, "
        "drunk, ten pints, on a ship, on ship, on a boat, sailor, crashing into, bumping into, "
        "in circles, circling, falls over, falling over, falls to one side, tips over, listing, "
        "cant walk straight, jelly, like a foal, lurching, tilted, tilt, off balance, whisky, "
        "pub, pints, crosses ~ legs, crossing ~ legs, newborn, unsteady, roundabout, high as a "
        "kite, stoned, wasted, merry go round, spinning"
    ),
    "nowstart": (
        "since, started, suddenly, today, now, this morning, hour, all of a sudden, new, always "
        "to the left, always to the right, always left, keeps, this evening, tonight, dinner, "
        "lunch, breakfast, minutes"
    ),
    "headside": (
        "head ~ one side, head ~ tilted, head stuck, heads stuck, head leaning, head held, head "
        "~ crooked, head ~ cocked, ear to the floor, tilted head, head ~ lopsided, holding ~ "
        "head ~ side, head hangs to, lost ~ balance"
    ),
    "fitlook": (
        "gone stiff, went stiff, went rigid, gone rigid, jaw champing, champing, chomping air, "
        "chewing air, toffee in ~ mouth, all four legs going, legs going, froth, foam, soiled, "
        "wet himself, peed himself, peed herself, glassy, funny turn, took a turn, having a "
        "turn, blank, not there, doesnt know me, didnt know where, didnt know who, didnt "
        "recognise, didnt recognize, eyes rolled, eyes rolling, snapping at nothing, star "
        "gazing, stargazing, cycling, running in ~ sleep, thrashing, jerk, jerked, twitch, "
        "twitching, tremble, trembling, shaking, tremor, vibrating, shudder, quaking, spasm, "
        "shiver, convulse, buzzing, tail spinning"
    ),
    "legmove": (
        "leg, paw, foot, limb, shin, thigh, lower half, bottom half, lower part, bottom part"
    ),
    "legwrong": (
        "cant shift, cannot shift, dangles, just swings, swings, hanging, hangs, wrong way, "
        "turned round, points, faces, facing, turns around free, crunched, crunches, grinds, "
        "grates, grating, corner in, bend in, bent, kink, snapped, in two, dead thing, folded "
        "under, new joint, elbow where, wobbles, poking through, sticking out, sticks out, "
        "bone, useless, doll, a step in, dent in, loose end, backwards, sideways, zigzag, "
        "angle, spins, twisted round, twists round, back to front, like a banana, gave in the "
        "middle, swivels, shorter than, looks shorter, broken, separate, no use than a sock, "
        "swings free, free, l shape, crooked, twisted, turned out, kinked, askew, like a z"
    ),
    "screamlike": (
        "fox in a trap, fox caught, caught in a trap, stuck pig, pig being, being killed, being "
        "murdered, being skinned, baby crying, woman screaming, like a siren, banshee, smoke "
        "alarm, car alarm, blue murder, house down, the place down, at the top of ~ voice, fire "
        "engine, in agony, agony, beside himself, beside herself, tortured, hes in bits, shes "
        "in bits"
    ),
    "cantrest": (
        "cant lie, cant sit, cant settle, wont settle, hasnt laid down, not laid down, up down "
        "up down, up and down, throws himself, throws herself, throwing himself, throwing "
        "herself, flinging himself, flinging herself, flings, hurls himself, hurls herself, "
        "pacing, paces, walking the walls, climbing the walls, nowhere comfortable, not a "
        "moment, cant be still, cant get comfortable, cant get comfy, wont lie down, cant lie "
        "down, panting, eyes ~ fear, eyes out on, wild eyed, shaking, trembling, running round, "
        "frantic, frantically"
    ),
    "heatword": (
        "too hot, so hot, hot day, heat wave, heatwave, warm spell, sun, in this weather, in "
        "the ute, windows up, left in, locked in, horsebox, car, degrees, steam room, sauna, "
        "oven, greenhouse, sunny, heat, boiled, cooked, roasting, boiling, scorching, weather, "
        "conservatory, baking, stuffy, midday, noon, jogging, shearing, tin shed, trailer, van, "
        "caravan, polytunnel, sunbathing, balcony, tent, beach, terrace, midsummer, humid"
    ),
    "heatbad": (
        "wont cool, not cooling, cant cool, panting, pant, drool, dribble, ropes, froth, flaked "
        "out, draped, blank eyed, glassy, staring, wont come off ~ slate, wont get up, limp, "
        "stagger, floppy, gasping, wont stop, red tongue, puffing, wobbly, hot water bottle, "
        "radiator, spit, dazed, out of it, unfocused, far away, slow his breathing, tongue, "
        "collapsed, boiling, sway, zombie, doesnt react, doesnt answer, weak, slumped"
    ),
    "tummyout": (
        "both ends, front and back, front and the back, top and tail, top and bottom, up and "
        "down all night, out of both, either end, each end, one end, hosepipe, hose, fountain, "
        "tap, like a tap, volcano, rocket, projectile, mucky bum, squirts, water comes out, "
        "brown water, pure water, lost count, mopped, mop, cleaned up, puddles"
    ),
    "emesis": (
        "@vomit, @runs, boke, boking, boked, ill on, been ill, was ill, leaked, heaved, "
        "retched, brought up, up it comes, up again, cant keep, wont stay down, doesnt stay "
        "down, comes straight back, sick, runny, liquid, squatting, gone every, piles, stomach "
        "bug, gastro, water down, upset stomach"
    ),
    "emmany": (
        "times, three, four, five, six, seven, eight, nine, ten, dozen, every hour, every half "
        "hour, every ten minutes, every twenty, all night, all day, dusk till dawn, since "
        "midnight, after every, lost count, then, again and again, constant, nonstop, endless, "
        "non stop, keeps, again, 3, 4, 5, 6, 7, 8, 9, 10, repeatedly, fourth, fifth, third, "
        "sixth, seventh, since yesterday, still"
    ),
    "waterword": (
        "water, drink, drank, drunk, sup, sip, lap, lapped, bowl, trough, bucket, lick, "
        "swallow, thirst, thirsty"
    ),
    "waternot": (
        "not, hasnt, havent, nothing, no, never, untouched, full, same, brimful, turns from, "
        "turns away, walks off, walks away, passed it by, ignored, refuses, refused, dust on, "
        "still at, marked, dry, wont, doesnt, didnt, zero, isnt, none, same level"
    ),
    "dropdown": (
        "dropped like, went down like, sank on the spot, sank down, slumped, slumped over, "
        "keeled, crumpled, passed out, fell in a heap, hit the floor, hit the deck, buckled "
        "under, legs went, legs gave, legs just went, legs just gave, legs folded, tipped over, "
        "toppled over, went over sideways, couldnt pick himself up, couldnt pick herself up, "
        "cant pick himself up, draped over, carry him home, wheeled home, carried him home, "
        "carried her home, dead faint, swooned, gone over, blacked out, flopped over, spark "
        "out, just folded up, folded up on ~ lane, folded up on ~ floor, was a heap"
    ),
    "wontanswer": (
        "cant rouse, couldnt rouse, wont answer, not answer, doesnt answer, doesnt respond, not "
        "responding, wont respond, no response, wont come round, not with us, wont open ~ eyes, "
        "eyes ~ open ~ nothing, eyes stayed open, no power in ~ body, no strength, try to stand "
        "and fall, tries to stand, tried to stand, falls back down, cant hold ~ up, cant lift ~ "
        "head, doesnt hear, deep asleep, rattled ~ tin, wont stir, doesnt stir, like a bolster, "
        "like shaking a, out for the count, dead to the world, sleeping really deeply, didnt "
        "move when, lights on but nobody home, nobodys home"
    ),
    "airbelly": (
        "blown up, swollen up, swelled up, swelling up, puffed up, come up like, came up like, "
        "big as, round as, hard as, tight as, stuck out on both sides, sticks out ~ both sides, "
        "goes tonk, tonk, drum, ripe watermelon, keg, barrel, cow with gas, dead sheep, frothy "
        "gas, bloated, rock hard, hard like a, like a table, like a drum, beach ball, football, "
        "balloon, belly strap wont reach, wont reach round, distended, pregnant, pumped up, "
        "like a barrel, like a ball, double ~ size, twice ~ size, huge, going to burst, about "
        "to burst, ready to pop"
    ),
    "bellyword": (
        "belly, tummy, stomach, sides, abdomen, ribs, flank, waist, guts, girth, undercarriage, "
        "midsection"
    ),
    "uneasy": (
        "pacing, groaning, groan, burp, burping, cant get comfortable, wont lie, restless, "
        "drool, drooling, dribbling, gagging, gag, retch, heaving, moaning, nothing up, nothing "
        "comes up, pawing at me, hunched, stares at ~ belly, looks at ~ side, gulping, walking "
        "in circles, spit, tight, cant lie down, only spit, only foam"
    ),
    "wentdown": (
        "end over end, down all fourteen, all the stairs, down the stairs, flight of stairs, "
        "down the escalator, off the roof, off the balcony, off the deck, over the wall, over "
        "the edge, off the pier, one storey, off the sea wall, off the cliff, off the trailer, "
        "off the hay, off the bales, out of the loft, from the loft, into the ditch, out of the "
        "truck, off the back of"
    ),
    "animalhit": (
        "horse, cow, bull, bullock, ram, pony, stag, sheep, ewe, mule, goat, car, van, bike, "
        "scooter, tractor, quad, taxi, lorry, truck, wheel, wheels, tyre, bumper, train, tram, "
        "door, gate, wardrobe, shelf, branch, swing, trolley, drawer, piano, fridge, ladder, "
        "beam, log, brick, boulder, skateboard, sledge, sled, car door, postbox, lift doors, "
        "elevator, shutter, caravan, trailer, tree fell"
    ),
    "hitword": (
        "hit, struck, kicked, kick, booted, trampled, rolled on, rolled over, went over, ran "
        "over, run over, knocked, knock, clipped, caught, pinned, crushed, squashed, squeezed, "
        "trod, trodden, stood on, landed on, dropped on, tipped onto, toppled on, came down on, "
        "charged, had him up against, had her up against, got him, got her, went under, under "
        "the, slammed, shut on, closed on, bumped, collided, whacked, dragged, thrown, flung, "
        "flew, jumped from, reversed, reversing, backed, butted, gored, thumped, rammed, side "
        "swiped, sat on, belted, walloped, bashed, hooves, both barrels, smacked into, ran "
        "into, rear ended, crashed, stepped on, fell on"
    ),
    "zapword": (
        "electric, electrics, flex, mains, live, cable, cord, plug, charger, socket, spark, "
        "fence, wire, zap, shock, bang and, singed, current, buzz"
    ),
    "zapdo": (
        "chewed, chewed through, bit, bit through, bitten, licked, shock, spark, bang, thrown, "
        "zapped, jumped, electrocuted, took a belt, belt off, flew back, flew backwards, "
        "yelped, singed, sparks, biting"
    ),
    "flesh": (
        "meat, flesh, muscle, tendon, fat, insides, white stringy, ribs, sinew, gut, guts, "
        "things moving, bone"
    ),
    "seeword": (
        "see, seeing, look inside, showing, shows, exposed, visible, hanging out, poking out, "
        "bulging, look in, sticking out"
    ),
    "spiky": (
        "stick, stake, fence, rail, railing, nail, fishhook, fish hook, wire, glass, rebar, "
        "branch, spike, thorn, horn, skewer, tusk, rod, splinter, antler, pole, arrow, knife, "
        "fork, needle, tooth, teeth, spear, twig, bamboo, cane, screwdriver, barb, iron"
    ),
    "spikedo": (
        "gone in, went in, gone in ~ chest, goes in, sticking out, sticking in, still in, in "
        "his chest, in her chest, impaled, embedded, pierced, into his, into her, in his side, "
        "in her side, under ~ tongue, in deep, quite far, skewered, lodged in, in his neck, in "
        "her neck, in his thigh, in her thigh, in his belly, in her belly, in his paw, in her "
        "paw, speared, stabbed, out the other, stuck in"
    ),
    "bigwound": (
        "lump of him missing, lump of her missing, lump missing, chunk out, chunk missing, "
        "piece of him missing, piece of her missing, bit of him missing, strip of ~ skin, hand "
        "long, size of ~ hand, hand sized, opened ~ neck, opened ~ side, opened up, open like "
        "a, hanging off, hangs off, half ~ ear, ear ~ hanging, torn off, ripped off, tear in, "
        "big gash, long gash, gash, gouge, gored, horned, peeled back, skinned alive, unzipped, "
        "unzips, laid open, split wide, to the bone, deep cut, deep gash, deep hole, deep "
        "wound, hole in ~ chest, hole in ~ side, hole in ~ neck, hole in ~ belly, bite hole, "
        "four holes, puncture, like a mouth, ripped open, tore open, torn open, slashed, slash, "
        "huge hole, gaping wound, gaping hole, a dog bite, dog bite wound"
    ),
    "dogfight": (
        "other dog, another dog, staffie, staffy, husky, shepherd, lurcher, terrier, mastiff, "
        "akita, rottweiler, doberman, pitbull, pit bull, boxer, labrador, collie, fox, badger, "
        "boar, rat, cat, greyhound, malinois, bulldog, alsatian, dogs, neighbours dog, loose "
        "dog, off lead dog, cockerel, rooster, swan, coyote"
    ),
    "fightdo": (
        "bit, bitten, bite, attacked, attack, fight, fought, scrap, scuffle, got hold, shook, "
        "ripped, tore, went for, teeth, mauled, grabbed, savaged, set on, jumped, had him by, "
        "had her by, ragged, prise, snapped at, punched holes, latched, had a go"
    ),
    "snakey": (
        "snakebite, snake bite, snake got, bitten by a snake, snake bit, bit by a snake, adder, "
        "viper, rattlesnake, rattler, brown snake, copperhead, cottonmouth, cobra, fang marks, "
        "two fang"
    ),
    "facebig": (
        "like a camel, camel, bloodhound, boxer, shar pei, turnip, teapot, pumpkin, potato, "
        "football, melon, balloon, pillow, jaw like, hippo, hamster, round, puffed, puffy, fat, "
        "thick, huge, swollen, swelling, blown up, blew up, blow up, doubled, double, hanging, "
        "bulging, bulge, lantern, enormous, sausage, filled out, fill out, bee sting lips, "
        "botox, fillers, chipmunk, wont fit in ~ mouth, twice, three times, bigger, closing up, "
        "closed up, slits, inflated, ballooned, lumpy, moon, bulldog, drooping, droop"
    ),
    "faceword": (
        "face, muzzle, lips, lip, jowl, snout, cheeks, cheek, chin, eyelid, head on her, head "
        "on him, tongue, round the eyes, around the eyes, mouth, nose, throat, neck, ears, "
        "eyes, head"
    ),
    "hivesword": (
        "hives, welts, welt, lumps, lumpy, bumps, bumpy, weals, wheals, bag of marbles, quilt, "
        "bubble wrap, raised coins, coins, topographic, blotches, mosquito bites, spots, nettle "
        "rash, blisters, mattress"
    ),
    "allover": (
        "all over, everywhere, neck to tail, head to tail, ears to tail, down ~ sides, on ~ "
        "sides, from neck, in minutes, within minutes, popping up, coming up, came up, whole "
        "body, body, back, all along, within the hour, half an hour, spreading, belly, tummy, "
        "flanks, rising, head to toe, in ten minutes, under the fur"
    ),
    "partany": (
        "@part, webbing, fastener, fluffy strip, fluffy bit, sponge, cover, washer, hinge cap, "
        "elastic, sleeve, stuffing, innards, brace, orthosis, strip, edge trim, hook side, peg, "
        "rubber strip, rubber bit, rubbery, velcro, foam bit, chin strap, d ring, piece of "
        "rubber, cushion, metal bit, little bolt"
    ),
    "inside": (
        "inside the dog, ate, eaten, swallowed, gulped, scoffed, gobbled, slurped, munched, "
        "wolfed, snack, down the hatch, went down, go down, gone down, starter, dessert, "
        "dinner, breakfast, lunch, down him, inside him, in his belly, in her belly, in his "
        "tummy, in his stomach, in her tummy, in her stomach, had it in ~ mouth, hoovered, pass "
        "through, pass it, come out the other, in his dirt, through his dirt, going through "
        "his, bite out, chunk out, chewed off, bitten off, toothmarks, tooth marks, burped, he "
        "had the last, devoured, chewing it, crunch, crunched, swallow, downed, consumed, "
        "polished off, guilty, looks guilty, suspect, poop patrol, poo patrol, culprit, picked "
        "clean, in the dog"
    ),
    "partless": (
        "short by, one short, account for three, cant find, unaccounted, no trace, missing, "
        "minus, gone, only find, found only, left in pieces, not all of it, rest of it, the "
        "rest, no half moon, vanished, disappeared, piece out of, bit out of, chunk out of, "
        "corner off, wheres the, where is the, strap short, screw short, pad short, only found, "
        "only half, isnt there, wasnt there, an empty hole, one left, no sign of it, looked "
        "everywhere, searched"
    ),
    "chewcue": (
        "chew, chewed, chewing, gnaw, gnawed, gnawing, tear, tore, ripped, destroyed, shredded, "
        "bit, bitten, teeth, toothmarks, tooth marks, guilty, dog, mouth, guts, beagle, lab, he "
        "had been, she had been, puppy, licking ~ lips, suspect, burped"
    ),
    "askmed": (
        "ok for a dog, okay for a dog, alright for a dog, all right for a dog, fine for a dog, "
        "safe for a dog, ok for dogs, safe for dogs, alright for a, hurt him any, hurt her any, "
        "wont hurt, any use, any good, would it do any harm, yes or no, would a crumb, could he "
        "have, could she have, can he have, can she have, ok for her, ok for him, fine for his, "
        "fine for her, what would you use, which is safer, how many drops, how much, possible "
        "to give, is it possible, ask first, wanted to ask, before i do, before i give, could "
        "i, can i, may i, should i, use those, use them up, wondered, wondering, take the edge "
        "off, thought of trying, thinking of, what dose, amount of, to settle, calm him, calm "
        "her, work on dogs, works for dogs, works on dogs, can dogs, could we, can we, is it "
        "ok, is it alright, is it safe, same thing, got one at home, spare him, shame to waste, "
        "crush, tempted, offers, offered, safe to, is that ok, is that alright, will one do, do "
        "for him, do for her, half a, quarter of a, would half, till the vet opens, until the "
        "vet opens, until monday, til monday, till monday, til mon"
    ),
    "medhuman": (
        "@painkiller, nerve tablet, sleeping pill, sleeping tablet, gout pill, headache pill, "
        "headache tablet, fever syrup, baby syrup, childrens syrup, bathroom shelf, bathroom "
        "cabinet, medicine cabinet, medicine chest, my drawer, from my drawer, knee gel, hip "
        "gel, joint gel, wisdom tooth, old dogs pills, last dogs pills, dogs pills, dogs "
        "tablets, left from ~ operation, left over, leftover, leftovers, my own tablets, my "
        "tablets, my pills, my own pills, human ones, human pain, strong ones, what we take, "
        "stuff we take, for headaches, for cramps, cramp tablet, soluble aspirin, cbd oil, cbd, "
        "my heat rub, tiger balm, muscle relaxant, calming tablet, antihistamine, human "
        "tablets, human pills, human medicine, human meds, human medication, gout, cats drops, "
        "cat drops, adult syrup, her own tablets, first aid box, horse powder, horse bute, "
        "bute, dachshunds, arthritis pills, arthritis tablets, strong co, my wifes, my "
        "husbands, my mums, my moms, grandmas, grans, what they gave the last, drawer full"
    ),
    "footfat": (
        "turnip, balloon, bun, buns, bread, loaf, sausage, puffed, bulge, bulges, bulging, "
        "doughy, dough, dimple, thumb leaves, fat, thick, swollen, swelling, blown up, jelly, "
        "mitten, padded, bigger, half as big again, twice, double, squashy, filled, spills "
        "over, spilling over, packed together, tight shoes, ladys foot, marshmallow, squidgy, "
        "wont fit, water, potato, glove, ballooned, chubby, plump, pudgy, pudding, muffin, ham, "
        "bear paw, clown, inflated, boot wont fit, grown, stuffed, pillowy, wider, enlarged, "
        "spongy, ballooning, cant get ~ boot, puffy"
    ),
    "footword": (
        "foot, paw, toe, toes, feet, below the strap, below the brace, below the sleeve, below "
        "the cuff, under the sleeve, below it, under it, bit below, ankle down, from the ankle "
        "down, between her toes, between his toes, pads, everything under, below the last"
    ),
    "skinlook": (
        "raw, pit, hole, open, weep, seep, ooze, oozing, moist, wet, pus, gunk, goo, scab, "
        "blister, burst, rubbed through, worn through, skin gone, skin ~ gone, top is gone, "
        "layer, peeled, graze, sore, ulcer, gall, collar gall, rug burn, carpet burn, friction "
        "burn, egg white, yellow, greeny, green, smell, stink, whiff, pong, reek, rotten, "
        "cheese, crater, bubble, sticky, crust, crusty, matted, blood, bleeding, bloody, bled, "
        "skinned, broken skin, exposed, mince, steak, raw meat, meat, slimy, pink and wet, "
        "tender, split, tear, cut, cracked, weeping, stuck to, sticks to, glued, glistening, "
        "pulp, mushy, scraped, chafed"
    ),
    "skinwhere": (
        "@limbpart, @groin, @skin, skin, heel, under the strap, under the brace, under the "
        "sleeve, under the pad, under it, underneath, beneath, armpit of ~ leg, top edge, took "
        "it off, took ~ off, lifted ~ off, brace off, peeled ~ off, inside of ~ sleeve, inside "
        "of the brace, where the strap, where the pad, where the brace, where the sleeve, where "
        "the buckle, where it rubs, where it sits, behind ~ heel, strap area, edge of the, "
        "spot, patch, place, inside of the sleeve"
    ),
    "legup": (
        "carry, carries, carrying, carried, hold up, holds up, holding up, held up, lifts, "
        "lifted, in the air, tucked, tuck, up off, off the floor, off the ground, off the deck, "
        "doesnt meet ~ ground, doesnt step down, wont put down, not trusted, wont trust, no "
        "weight, doesnt touch, hopalong, hop, hops, hopping, three beat, tripod, three legs, "
        "three legged, on three, 3 legs, along for the ride, wont stand, wont use, not using, "
        "stopped using, doesnt use, refuses to use, dangling"
    ),
    "suddenday": (
        "suddenly, since, today, this morning, this afternoon, this evening, tonight, just now, "
        "after, all of a sudden, at all, now, yesterday, overnight, an hour, fell, slipped, "
        "jumped, yelped, park, ball, landed, when he, came in, came back, woke, even when, not "
        "even, lunch, breakfast, dinner"
    ),
    "gaitbad": (
        "limp, limpy, limps, lame, hobble, hitch, head nod, nods, nodding, stiff, stiffer, "
        "short step, crooked, leans, leaning, shuffle, gammy, gammier, hirple, hirpling, lamer, "
        "sore, slow, slower, rocking, rolling along, favouring, favoring, dot and carry, tap "
        "tap, drags, lopsided, uneven, old man, takes an age, bobbing, wonky, stumpy, like an "
        "old man, rickety, stumbling, walking worse, walks worse"
    ),
    "gaitworse": (
        "worse, more, going backwards, gone backwards, backwards, downhill, again, than before, "
        "lost ground, lost, by the day, every day, each walk, every walk, after a walk, after "
        "walks, next day, used to, was nearly right, was better, was walking, back to square, "
        "never does, getting, gets, increasing, stiffer, lamer, week by week, now, cant hide, "
        "since we, since sunday, since, even after, third week, half way, turn back, dropped "
        "from, shorter, wrong direction, deteriorating, not improving, wasnt like"
    ),
    "popnoise": (
        "pop, popped, snap, snapped, crack, cracked, clunk, clunked, thunk, click, clicked, "
        "twang, crunch, cap gun, stick breaking, rope had parted, carrot, cork, twig, gun, "
        "knuckles, bang, ping, thud, celery, elastic band, gave way"
    ),
    "popwhere": (
        "leg, knee, in there, inside, hip, thigh, joint, when he, when she, as he, as she, "
        "turned, jumped, landed, stopped, stopped dead, sat, heard, felt, hear, feel, went, "
        "stair, ball, pivoted, looked at, sharp, loud, twisted"
    ),
    "handback": (
        "flinch, flinches, yelp, yelps, yelped, cry, cries, cried, scream, screams, growl, "
        "growls, growled, snarl, bared, teeth, tooth, every tooth, tried to bite, tries to "
        "bite, bit me, bit my, nipped, snapped, snaps, pulled away, jerks, jerked, whimper, "
        "whimpers, squeal, squeals, squeak, squeaked, winces, crocodile, ouch, hates it when, "
        "wont let, wouldnt let, shoots off, hides ~ leg, grumbles, cringe, moan, moans, groan, "
        "groans, lip, warns, warned, shies, ducks away, turns and, hurts, pain, painful, sore, "
        "tender, agony, electrocuted, jumps out of ~ skin, leaps, howl, howls, howled, twists "
        "away, whips round, whipped round, mouthed, nip"
    ),
    "handto": (
        "touch, touched, touching, press, pressed, pressing, when i, when we, if i, towel, "
        "brushed, handle, handling, bend, bent, stroke, put the brace on, put it on, putting it "
        "on, near, do up, close the strap, strap, get the sleeve on, sleeve on, lift, lifted, "
        "pick up, picked up, the leg, his leg, her leg, the knee, his knee, her knee, thigh, "
        "hip, heel, ankle, gets up, stands up, getting up, sits down, lies down, turn over, "
        "every step, moves, as soon as, the moment, rub, dry, wipe, look at it, goes on, "
        "squeeze, hand, finger, stairs, brace on"
    ),
    "jointfat": (
        "swollen, swelling, puffy, puffed, thicker, stout, hot, warm, heat, bulge, balloon, "
        "melon, ball, cankle, squishy, fluid, lump, bigger, double, hot water bottle, jelly, "
        "egg, grapefruit, orange, bouncy, apple, pulse in, throbbing, wont go round, barely "
        "reach, barely the first, cant find the bone, no bone, boiled, radiator, ballooned, "
        "boggy, puff, tennis ball, spongy, enlarged, inflamed, size of, got thick, gone thick, "
        "thicker than, filled with, fatter than, filled up"
    ),
    "jointword": ("knee, ankle, hock, heel, joint, leg, stifle, shin, thigh, hip, elbow"),
    "opword": (
        "stitch, stitches, staple, staples, suture, incision, seam, clip, clips, knot, knots, "
        "the cut, cut line, operated, operation, op, surgeon, surgery, sewed, sewn, scar, "
        "threads, wound, tplo, zipper, where they cut, where they went in, metal clip, glue, "
        "cone, spay, sewing, vets line"
    ),
    "opbad": (
        "open, opened, gap, gaping, apart, out, red, angry, weep, weeping, ooze, oozing, wet, "
        "chewed, chewing, licked, licking, teeth, hanging, hole, pink, smell, smelly, puffy, "
        "swollen, swelling, sinking, curling, split, came undone, undone, parted, missing, "
        "gone, took them out, took out, did it himself, pulled, popped, burst, bleeding, blood, "
        "pus, straw coloured, nasty colour, frayed, crust, leaking, on the floor, on the "
        "pillow, had a go, at it, stuff comes, lump, slid, torn, yellow, green, buttonhole, "
        "soaked, dripping, warm, infected, sausage"
    ),
    "illsure": (
        "fever, feverish, has a temperature, high temperature, running a temperature, "
        "temperature ~ high, temperature of, lethargic, listless, not himself, not herself, not "
        "~ usual self, off color, under the weather, unwell, off form, off his form, off her "
        "form, off ~ food, off ~ oats, peaky, out of sorts, no bounce, no spark, hangdog, lost "
        "~ spark, lost ~ sparkle, lost ~ bounce, no energy, zero energy, lifeless, off ~ game, "
        "wont play, curled up in ~ corner, keeps to himself, keeps to herself, stays in ~ bed, "
        "wont leave ~ bed, wont get out of ~ bed, wont come out, hiding under, hiding behind, "
        "sleeps all day, sleeping all day, slept all day, just lies there, just sleeps, wont "
        "greet, didnt greet, doesnt greet, meh, just meh, something is off, acting strange, "
        "acting weird, acting odd, acting off, very quiet, so quiet, gone quiet, awfully quiet, "
        "too quiet, really tired, very tired, so tired, tail hasnt, not wagging, doesnt wag, "
        "flat as, really flat, very flat, seems flat, seems down, a bit down, gone downhill, "
        "withdrawn, shivery, shivers, phone on 2 percent, low battery, 2 percent, hot ears, hot "
        "nose, ears ~ hot, nose ~ hot, glazed eyes, drinking less, not drinking much, doesnt "
        "want to know, wants to be alone, wants to be left, hides in, hiding in, mopes, moping, "
        "mopey, ignores ~ treats, refuses ~ biscuit, refuses ~ dinner, leaves ~ dinner, off ~ "
        "dinner, off ~ breakfast, off ~ tea, subdued, sickly, rough night, under weather, "
        "wilted, half asleep all day, poorly, off colour, lost interest in ~ food, lost "
        "interest in everything, off ~ grub, refused ~ biscuits"
    ),
    "itchy": (
        "itch, itching, itchy, scratch, scratching, scratches, rash, rashy, hives, bumps, "
        "bumpy, spots, spotty, dotty, welts, lumpy, blotch, blotched, blotchy, red, scarlet, "
        "flushed, fiery, lobster, beetroot, speckled, chickenpox, nettles, sandpaper, "
        "sandpapery, grainy, inflamed, eczema, hot pink, midges, rubbing along, rubs along, "
        "rubbing himself, rubbing herself, nibbling at, at it with ~ teeth, corned beef, boiled "
        "lobster, strawberry, pimples, thumps, drives him mad, hot, flaky, dots"
    ),
    "itchcause": (
        "powder, talc, new sleeve, the sleeve, sleeve, rubber, neoprene, washing powder, "
        "detergent, softener, fabric softener, soap, shampoo, lavender, liner, lining, cuff, "
        "suspension, wash, material, latex, under it, beneath, along the line, edge of the "
        "sleeve, stocking, all up the inside, new pads, cream, groin, belly, tummy, all night, "
        "night and day, nonstop, whole body, all over, where the rubber"
    ),
    "barefold": (
        "no brace, brace off, without ~ brace, without the device, without it, bare, barefoot, "
        "nothing on, with nothing on, naked, off hours, isnt wearing, not wearing, took ~ off, "
        "took the thing off, taken off, hanging on the hook, off since, bare leg, bare toes, "
        "device off, even off"
    ),
    "footnumb": (
        "fell asleep, not a flicker, no flicker, hasnt noticed, didnt notice, doesnt notice, "
        "couldnt care less, never looked, nothing had happened, doesnt feel, cant feel, no "
        "feeling, not draw it up, doesnt pull, pull away, dont pull, leaves it there, someone "
        "elses, doesnt seem to own, dentist, clothes peg, tap the foot, tickle, tickled, thorn, "
        "stood on his toes, stood on her toes, pinch, pinched, squeeze, squeezed, no reaction, "
        "reacts, doesnt react, numb, foot ~ asleep"
    ),
    "stayred": (
        "red, pink, rosy, blush, mark, stripe, groove, dent, ring, rim, imprint, print, stamp, "
        "line, band, smudge, crescent, sock marks, strap line, tomato, lipstick, indent, spot, "
        "ridge, purple, coin, sofa lines, crease, pattern, halo, flush, rose coloured, bruise, "
        "outline"
    ),
    "staytime": (
        "still, hasnt gone, not gone, wont go, doesnt go, doesnt leave, never goes, not faded, "
        "hasnt faded, isnt fading, doesnt fade, wont fade, two hours, three hours, half an "
        "hour, 45 minutes, forty five minutes, forty minutes, 40 minutes, 50 minutes, hour "
        "later, at bedtime, by bedtime, next morning, since noon, since lunch, since dinner, "
        "since breakfast, since morning, all afternoon, all evening, long after, at supper, at "
        "tea, days running, in the evening, last night and, doesnt bounce back, doesnt fill, "
        "there yet, overnight, still there, 60 minutes, 90 minutes, an hour after, still see, "
        "hadnt gone, after an hour, stays, stayed, been there since, fifty minutes, for hours, "
        "hours later"
    ),
    "baldword": (
        "@bald, no hair, not a hair, without hair, fluffless, furless, cardigan, teddy bear, "
        "old teddy, broken hairs, hairs ~ broken, hairs ~ short, freckles, see ~ skin, see the "
        "skin, razor, tan line, brazilian, fuzz, worn thin, worn away, thin as, shaved look, "
        "moth eaten, plucked, mange, peach fuzz"
    ),
    "baldwhere": (
        "strap, belt, cuff, sleeve, ankle, shin, thigh, heel, leg, elastic, knee, groin, where, "
        "patch, lining, liner, edge, brace, achilles, spot, rubs, hock, skin"
    ),
    "toebad": (
        "fold, folds, folding, folded, knuckle, knuckles, knuckling, drag, drags, dragging, "
        "scrape, scrapes, scraping, scuff, scuffs, scuffing, trips, trip, stubs, catches, "
        "catching, turned in, turned under, flips, rolls under, rolling under, upside down, "
        "curl, curls, plough, plow, hauls, filed, worn, lines, line in, sandpaper, moonwalks, "
        "misses, buckles, tips over, shuffling, slides the top, toe caps, sanding, squeaks "
        "along, tsshk, hook under, tuck under, tucks under, clackety"
    ),
    "toeword": ("toe, toes, foot, paw, knuckles, claw, claws, nail, nails, feet, toenail"),
    "longtime": (
        "days, week, weeks, all week, eight days, ten days, five days, six days, day five, day "
        "six, day seven, day eight, fortnight, since last, since monday, since tuesday, since "
        "wednesday, since thursday, since friday, since saturday, always has, still, no "
        "improvement, every step, every few steps, every day, each time, every time, by itself, "
        "of it and counting, since the first, in it, in the brace, doesnt correct, months, "
        "keeps, since we began, since we got"
    ),
    "brokepart": (
        "adrift, come adrift, split, crack, snapped, broken, bent, warped, seized, sharp, "
        "jagged, tin lid, hanging by, hangs by, parted company, half out, wobbly, fell out, "
        "fell off, came away, torn, ripped, tore, wont close, wont stick, wont hold, doesnt "
        "hold, doesnt click, wont click, given way, gave way, worked out, unscrewed, turns "
        "freely, peeled away, two parts, in half, saw blade, cut bread, snags, catches on, "
        "empty hole, mended it, cable tie, bootlace, duct tape, gaffer tape, sewed it, fencing "
        "wire, went crack, chewed into, killed the, saloon door, doesnt fold straight, "
        "flattened, melted, screw ~ gone, screw missing, screw ~ lost, frayed, shredded, worn "
        "out, lost a screw, cracked, broke, burr"
    ),
    "brokeword": (
        "hinge, shell, buckle, screw, rivet, strap, edge, rim, velcro, plastic, pivot, pin, "
        "stitching, loop, ring, bolt, metal, padding, cuff, frame, closure, fastener, clip, "
        "corner, bracket, brace, device, side bar, d ring, hook strip, hinge plates, seam, "
        "sleeve, elastic, pad"
    ),
    "slideword": (
        "slip, slips, slipped, slides, slid, sliding, twist, twists, twisting, turns, rotate, "
        "rotates, swivel, swivels, spin, spins, creep, creeps, crept, sink, sinks, drop, drops, "
        "dropped, falls down, hitching, travel, travels, wanders, wander, works its way, works "
        "~ down, works south, round his ankle, round her ankle, round ~ ankle, backwards, "
        "sideways, crooked, wont stay up, doesnt stay up, stay up, wont stay put, doesnt stay "
        "put, wont stay in place, on his foot, on the side, hangs off, loose skirt, baggy, "
        "baggy pants, quarter turn, inside out, two fingers lower, down at his, down to his, "
        "steps out of it, digs, digging, dig in, bites, rubs, rubbing, presses, pressing, "
        "chafing, cuts in, pinches, wellington, jeans, skew, fiddlers elbow, moves, pull it up, "
        "pulled it up, lift it"
    ),
    "slideagain": (
        "again, every time, every walk, all day, all week, all morning, each time, keeps, "
        "however, whatever, no matter, ten times, six times, twenty times, re seat, reseat, "
        "reseated, redo, redone, re do, i fix, re strap, restrap, done up, as soon as, by the "
        "time, without fail, whichever way, still, every few minutes, within minutes, in twenty "
        "minutes, after stairs, wont, doesnt, over and over, every, times, back again, twice a "
        "day, start anew, tighter, however tight, five minutes, any more than, times a walk, on "
        "all of us, constantly, always"
    ),
    "lickword": (
        "lick, licks, licking, licked, chew, chews, chewing, gnaw, gnaws, gnawing, nibble, "
        "nibbles, nibbling, suck, sucking, slurp, slurping, tongue, mouth on, worries at, "
        "worrying at, teeth at, lollipop, cleans, soggy, slop, obsessed, at the same, same "
        "spot, on the one place, same patch, same bit, goes for, back on, back at, grooming, "
        "licky, leave ~ alone, alone"
    ),
    "licklong": (
        "all night, all day, all evening, night after night, evening after evening, day after "
        "day, days, week, every night, every evening, every day, keeps, constantly, nonstop, "
        "hours, cant stop, wont stop, wont leave, cant leave, still at it, wont, always, never "
        "off, lollipop, fifth night, each time, minute its off, whenever, since the weekend, "
        "since, again, even so, obsessed, until bed, at 4 am, waits till, as soon as, forever"
    ),
    "refuse": (
        "freezes, freeze, frozen, statue, stone, bolts, bolt, runs off, scarpers, hides, "
        "panics, panic, fights, fighting, fight, rodeo, bucks, buck, wont move, wont walk, "
        "refuses, refuse, wont take a step, not one step, no steps, not take one step, digs ~ "
        "heels, plays dead, protest, ironing board, goes stiff, terrified, shakes, shaking, "
        "trembles, screams, pees, pipi, under the bed, behind the sofa, under the dresser, "
        "under the table, throws himself, throws herself, wildcat, crocodile, mule, floor is "
        "lava, lava, hates it, hates the, reverses, stays put, stands where, head hung, "
        "wrestling, wriggles, jelly, away up the field, two of us, eyes out on, wont budge, "
        "doesnt move, hasnt taken a step, doesnt lift, dog off, shuts down, sulks, rips, tears "
        "at, tantrum"
    ),
    "refusewhen": (
        "brace, device, orthosis, it on, in it, its on, sees it, see it, sees the, comes out, "
        "bring it, comes off the shelf, open the cupboard, open the drawer, that thing, "
        "contraption, the bag, the box, velcro, on him, on her, splint, on the leg, wear it, "
        "wears it, all week, straps"
    ),
    "refuselong": (
        "days, week, all week, every day, every morning, each time, day six, day seven, day 6, "
        "day 7, day 5, day 8, five days, six days, eight days, second week, since monday, since "
        "tuesday, since wednesday, since thursday, since friday, still, no better, hasnt got "
        "any better, not getting used, daily, in a row, always, whenever, the moment, as soon "
        "as, by now, never, since it came, since we got, again, every time"
    ),
    "birth": (
        "puppy, puppies, pup, pups, babies, baby, litter, buns, whelping, birth, labour, labor, "
        "contraction, contracting, waters, born, bag, tail, nose, due, number three, number "
        "two, last one, foot"
    ),
    "birthpush": (
        "push, pushing, strain, straining, squeezing, bearing down, heaves, shoving, "
        "contracting, contraction, waters broke, waters went, her waters, in labour, in labor, "
        "whelping, giving birth, panting in the box, nesting, born, stuck, half out, half "
        "outside, hanging out, hanging from, out then, one out, came out, green, greenish, "
        "black green, breech, overdue, past ~ due, due date, scan said, on the scan, no "
        "progress, getting nowhere, wont budge, no pup, no puppy, no puppies, no babies, "
        "nothing to show, not a single, still full, without a single, exhausted, tired, dead, "
        "calving, lambed"
    ),
    "pregword": (
        "puppy, puppies, pups, whelping, birth, labour, labor, contractions, contracting, "
        "waters broke, waters went, babies, litter"
    ),
    "notblood": (
        "beetroot, ketchup, dye, dyed, hair dye, paint, painted, in the wash, colour run, "
        "juice, syrup, jam, cordial, film, movie, show, fake, emulsion, rust, tomato, tomatoes, "
        "red wine, wine, squash, blackcurrant, bled colour, bled color, mine, my shirts, white "
        "shirts, white towels, blueberry, lipstick, butcher days, stain remover"
    ),
    "eyeact": (
        "squint, squinting, squints, winking, winks, wink, half shut, half closed, squeezed "
        "shut, keeps it shut, clamped shut, glued shut, sealed shut, bulges, bulging, sticking "
        "out, popping out, watering, weeping, streaming, cloudy, milky, opens the right one, "
        "opens the left one, third eyelid, rubbing ~ face, rubs ~ face, scrubbing ~ face, "
        "dragging ~ cheeks, pawing at ~ face"
    ),
    "oneside": (
        "one side, one eye, other one, left side, right side, since, wont open, hasnt opened, "
        "like a frog, like a marble, further than, hit, bush, branch, twig, thorn, rose, "
        "bramble, hedge, cat, stick, ball, spray, sun cream, dart, block, grass seed, won, "
        "swiped, only the right, only the left"
    ),
    "amount": (
        "whole bag, entire bag, the entire, whole packet, half a bag, half a bunch, whole bulb, "
        "jug of, a jug, handful, fewer now, had forty, all gone, licked clean, tipped over, "
        "whole tin, whole box, whole cake, lapped, chomped, gone from, empty, none left, none "
        "remaining, only stumps, bite marks, teeth marks, in bits, in tiny pieces, all over ~ "
        "nose, on ~ whiskers, burped, breath smells, green mouth, blue mouth, blue beard, "
        "polished clean, looks guilty, missing, the lot, half of it, a few of them, nine of "
        "them, crunched, regrets nothing, asleep beside, dog grinning, very pleased, looking "
        "pleased"
    ),
    "dogend": (
        "in the dog, down him, down her, dog asleep, dog grinning, dog burped, dog is asleep, "
        "dog had, dog has had, went down him, went down her, in his breakfast, in her "
        "breakfast, in his bowl, in her bowl, in ~ dinner, looks guilty, empty one, is empty, "
        "flat and silver, bag torn, lid off, nothing left"
    ),
    "lowerleg": (
        "lower half, bottom half, lower part, bottom part, lower leg, lower bit, bit below ~ "
        "knee, below the hinge, below the knee, the paw, the foot, the shin, the arm, her arm, "
        "his arm, front leg, back leg, hind leg, the leg, his leg, her leg, foots, paws"
    ),
    "floppybad": (
        "swings, swings loose, swinging, dangles, dangling, just hangs, hangs down, hanging, "
        "goes round, turns any way, spins round, wobbles, wobbly in two, flops, stayed hanging, "
        "stayed behind, like a dolls, like a doll, like a bell rope, a z in it, got a z, points "
        "at the, pointing at the, pointed at the, pointing to the, points to the, pointing "
        "backwards, grate, grates, grating, grinding, crunches, folded outwards, folded "
        "inwards, halfway down, shouldnt be, no resistance, like a pepper mill, chicken "
        "drumstick, empty sleeve, camping chair, loose tap, any direction, like rubber, inside "
        "out, other way round, back to front, no say in where"
    ),
    "stiffword": (
        "stiff, rigid, stiff as wood, ironing board, stiff legged, legs rigid, flopped, keeled, "
        "went hard, all hard, swimming on, paddling on, buzzing, vibrating, twitched, "
        "twitching, jerking, snapping at, rattle on the floor, chomping, chomping at nothing, "
        "jaw chomping, teeth chattering, eyes wide open, shivering without"
    ),
    "stiffwith": (
        "drool, drooling, foam, foaming, wet himself, wet herself, wee, weed, bumps into, "
        "blank, came round, confused, minutes, ninety, seconds, not there, didnt know, like a "
        "fish, on the carpet, on the floor, on the rug, on the tiles, like a phone, silent "
        "phone, wont quit, two blankets, jaw, chomping, twitching, jerking, trembling, eyes "
        "open, eyes wide open, number four, again"
    ),
    "goes": (
        "gone the way of custard, way of custard, nothing solid, nothing ~ solid, eleven bags, "
        "lost count, out of her like a tap, out of him like a tap, returning it, in "
        "instalments, up and up, breakfast up, water up, foam up, runny runny, now just water, "
        "fourth time, fifth time, sixth time, third time this, four times since, five times "
        "since, six times since, keeps returning, comes straight back up, straight through him, "
        "straight through her, hosing, firehose, burst pipe"
    ),
    "pressend": (
        "pressed, pressing, pressed twenty minutes, held it, holding it, squeezing, sat on it, "
        "wrapped it, wrap, towel, towels, nappy, nappies, kitchen roll, washing up bowl, thumb, "
        "cloth, bandage, sheet, sock, socks"
    ),
    "bleedon": (
        "wont stop, doesnt stop, didnt stop, cant get it to stop, isnt stopping, keeps coming, "
        "pulsing out, pumping, sodden, soaking, soaked, dripping, drips every, filled the, "
        "puddles, pooling, sprays, maroon, crimson, on the ceiling, up the walls, up the "
        "fridge, painting the hallway, repainting, trail, leaking, red, fountain, gone through "
        "the whole, going through"
    ),
    "drylift": (
        "leg up, lifting left, lifts his leg, lifting his leg, leg lifting, squats, squatting, "
        "squat, crouches, crouching, pushing, groaning, strains, straining, lamp post, "
        "lamppost, tree, every tree, each tree, doggy position, on the lawn, on the grass, "
        "tries, tried, in position"
    ),
    "dryout": (
        "not a drop, dry pavement, bone dry, nothing, nothing came, nothing comes, stays dry, "
        "wee none, none, a single drop, single drop, one drop, only a dot, unwatered, without "
        "doing anything, zero, today zero, only groaning, squealing, yelps on, trembles, gives "
        "up, no drop, nothing happens, nothing comes out, not one drop"
    ),
}
