"""Owners' words for injuries and accidents and how long they last; notation in `lexicon_body`."""

HURT: dict[str, str] = {
    "heavy": (
        "gush, gushing, spurt, squirt, pump, pumping, pour, pouring, stream, streaming, running "
        "down, heavy, heavily, badly, a lot, an awful lot, like mad, profuse, everywhere, "
        "all over, soak, soaked, soaking, saturated, "
        "drench, pool, puddle, pools, loads of, lots of, so much, a lot of, tons of, wont stop, "
        "doesnt stop, not stop, cant stop, hasnt stopped, still dripping, keeps dripping, isnt "
        "stopping, not stopping, dripping like, drip, dripping, tap, hose, fountain, spray, "
        "spraying, murder scene, crime scene, horror film, horror movie, massacre, slaughter, "
        "slaughterhouse, abattoir, butcher, towel, towels, tea towel, kitchen roll, bandage, "
        "bucket, buckets, keeps coming, flows, flowing, flowed, fast, spattered, splattered, "
        "trail of, trail, drenched, still coming, keeps filling, starts again, starts ~ again, "
        "starts over, opens again, pressing, pressed, fifteen minutes, ten minutes, twenty "
        "minutes, half an hour, an hour, stop the, minutes, walls, carpet, floor, sofa, sheets, "
        "bath, bathtub, leaking, nonstop, constantly, soaks, wont clot, puddles, waterfall, "
        "jet, ruined"
    ),
    "crimescene": (
        "crime scene, murder scene, horror film, horror movie, blood bath, bloodbath, massacre, "
        "slaughter, slaughterhouse, abattoir, butchers shop, butcher shop, jackson pollock, "
        "texas chainsaw, dexter, halloween set, red footprints, red paw prints, red pawprints, "
        "red everywhere, csi, red puddle, red trail, tarantino"
    ),
    "soakthrough": (
        "soaked through, soaks through, soaking through, towel soaked, towels soaked, tea "
        "towel, soaked ~ towel, soaked ~ towels, through ~ bandage, through ~ towel, through ~ "
        "towels, through ~ gauze, second towel, third towel, kitchen roll, kitchen paper, bath "
        "towel, completely saturated, keeps filling, spurts, squirting, spurting, gushing, "
        "gushes, pumping out, tourniquet, pressing ages, pressing on it, arterial, pads soaked"
    ),
    "deep": (
        "deep cut, gapes, to the bone, can see bone, see bone, see muscle, see meat, see fat, "
        "see tendon, impaled, impale, skewer, stabbed, stab, puncture, punctured, went in, gone "
        "in, goes all the way, all the way in, stuck in, sticking out of, embedded, ripped "
        "open, tore open, torn open, split open, opened up, laid open, like a zip, took a "
        "chunk, chunk out, bit through, bitten through, hanging open, fillet, big cut, huge "
        "cut, long cut, gash, slash, slashed, sliced, pinkish ~ bulging, guts, intestine, "
        "inside out, deep gash, barbed wire, fishhook, fish hook, nail through, glass in, "
        "shard, rebar, thorn through, stick went, pierced, flayed, degloved, skin ~ hanging, "
        "needs stitches, stitches needed, shark bite, peeled ~ orange, see inside, look inside, "
        "like a mouth, right through, clean through, to the muscle, see the white, arrow, "
        "pitchfork, tore a hole, ripped a hole, hole ~ size, two holes, four holes, holes, see "
        "right in, grill skewer, kebab skewer, wire through, hook through, stake, splinter in, "
        "unzipped, gaping wound, flap of skin, flap hanging"
    ),
    "bittenby": (
        "bitten by, been bitten, was bitten, dog fight, dogfight, got into a fight, in a fight, "
        "got in a fight, attacked by, got attacked, was attacked, been attacked, mauled, "
        "snakebite, adder, viper, rattlesnake, copperhead, got hold of him, got hold of her, "
        "another dog ~ bit, shook him, shook her, fight with, scrap with, fang, teeth went, "
        "sank ~ teeth, bite marks, bite mark, fox bite, rat bite, cat bite, savaged, set upon, "
        "boar, badger, coyote, tusk, ripped into, laid into, punch up, had a go at him, had a "
        "go at her, jumped him, went for him, went for her, tore into, teeth in, grabbed him "
        "by, grabbed her by, fight over, got bitten, a dog bite, dog bite wound, bitten by a "
        "dog, dog bit him, dog bit her, =bit him, =bit her, bad bite"
    ),
    "hit": (
        "hit by, ran over, run over, ran him over, ran her over, knocked down, knocked over, "
        "knocked by, clipped, hit him, hit her, got hit, was hit, been hit, struck by, went "
        "over him, went over her, bumper, crashed into, collided, kicked by, kicked him, kicked "
        "her, got kicked, was kicked, been kicked, booted, trampled, stepped on him, stepped on "
        "her, stood on him, stood on her, trod on, crushed, squashed, pinned, trapped under, "
        "trapped between, fell on him, fell on her, landed on him, landed on her, came down on, "
        "dropped on, rolled over him, rolled over her, backed over, reversed over, reversed "
        "into, drove over, dragged by, under ~ wheels, sat on him, sat on her, toppled onto, "
        "tipped over on, shut on, closed on, slammed on, caught in ~ door, whacked, car got "
        "him, car got her, into him, into her, rammed, bowled over, bulldozed, jammed in, got "
        "shut in, t boned, thrown from, flew off, got him on ~ bumper, under a car, under the "
        "car, nudged by, bumped by, sent ~ flying, flung, hurled, dropped him, dropped her, "
        "slipped out of my arms, slid out of my arms, out of my arms"
    ),
    "vehicle": (
        "car, van, truck, lorry, bike, bicycle, scooter, escooter, e scooter, motorbike, moped, "
        "taxi, tram, cyclist, tractor, golf cart, quad, suv, train, mower, lawnmower, "
        "skateboard, longboard, horse, cow, delivery, vehicle, wheel, wheels, postman, courier, "
        "driver, wagon, uber, forklift, door, wardrobe, shelf, gate, jeep"
    ),
    "fell": (
        "fell, fall, falls, fallen, falling, tumble, tumbled, plunged, rolled down, roll down, "
        "slid off, dropped from, came off, went over, jumped off, jumped from, leapt from, "
        "slipped off, slipped down, crashed down, toppled, slipped on, landed, dived off, nose "
        "dived, bounced down, thumped down, went head over, cartwheel, somersault, tipped off, "
        "sailed off, launched, flew, went down, skidded off, slinky, went flying, pitched"
    ),
    "height": (
        "stairs, stair, steps, staircase, balcony, window, floor, roof, wall, cliff, ladder, "
        "metres, meters, feet, deck, loft, bunk, escalator, landing, storey, story, stairwell, "
        "terrace, ledge, bridge, top step, flight, height, pier, quarry, banister, bannister, "
        "tailgate, boot of ~ car, truck bed, table, off ~ bed, bed, embankment, second floor, "
        "third floor, down the hole, ditch, manhole, pit, hayloft, porch, jetty, rocks, "
        "balustrade"
    ),
    "shock": (
        "electric shock, electrocuted, electrocute, live wire, live cable, chewed ~ cable, "
        "chewed ~ cord, chewed ~ wire, bit ~ cable, bit ~ cord, charger cable, spark, socket, "
        "zapped, extension cord, power cord, lamp cord, phone charger, got a shock, electric "
        "fence, christmas lights, plugged in"
    ),
    "sting": (
        "sting, stung, bee, wasp, hornet, bitten by something, insect, spider, ant, mosquito, "
        "jab, vaccine, vaccination, shot, new food, new treat, peanut, shrimp, flea drops, new "
        "chew, cricket, yellowjacket, horsefly"
    ),
    "pop": (
        "pop, popped, popping, snap, snapped, crack, cracked, crunch, crunched, click, clunk, "
        "twang, cracking, pinged, ping, knuckle crack, bang, celery, carrot, breaking ~ stick, "
        "gunshot, bubble wrap, cork, thud"
    ),
    "heard": (
        "heard, hear, hears, felt, feel, sound, sounded, noise, audible, loud, went, made a, "
        "came from, distinct, could hear, could feel, sounds"
    ),
    "stitches": (
        "stitch, suture, staple, incision, surgical wound, surgery wound, operation wound, op "
        "wound, scar, surgery site, op site, surgical site, operation scar, tplo, surgical cut, "
        "surgery cut, operation site, zipper, post op, surgical line, surgery line, seam ~ "
        "surgery, wound ~ surgery, wound from ~ op, the op, operation, cut line, railway track, "
        "vets sewing, sewn, sewed, glue line, stitched, spay wound, spay scar, neuter wound, "
        "biopsy, drain, lump removal"
    ),
    "stitchbad": (
        "open, opened, opening, red, weep, weeping, ooze, oozing, pus, gap, gaping, chewed, "
        "chew, licked, licking, licks, come out, coming out, pulled out, missing, burst, "
        "popped, swollen, wet, smell, smells, hot, leaking, infected, bleeding, bled, blood, "
        "undone, unzipped, torn, ripped, angry, puffy, hole, yellow, green, separating, parted, "
        "split, sticky, lump, seeping, apart, gone, gaped, drip, crusty, loose, come apart, "
        "broke, pink, sore, bulge, came out"
    ),
    "tore": ("tore, torn"),
    "fold": (
        "knuckle, knuckling, fold under, folds under, folding under, fold over, folds over, "
        "folding over, curl under, curls under, curling under, top of ~ foot, top of ~ paw, top "
        "of ~ toes, tops of ~ toes, tops of ~ feet, on the tops, on his knuckles, on her "
        "knuckles, drag ~ toes, drags ~ toes, dragging ~ toes, dragging ~ foot, drags ~ foot, "
        "drag ~ foot, dragging ~ paw, drags ~ paw, toes drag, toes dragging, foot drags, paw "
        "drags, foot dragging, toes curl, toes curled, toes fold, toes folding, foot turns "
        "under, paw turns under, turned under, turns under, foot flips, paw flips, flips under, "
        "scuff, scuffs, scuffing, scuffed, scrape ~ toes, scrapes ~ toes, scraping ~ toes, toes "
        "scrape, trips over ~ toes, trips over ~ foot, upside down, ballerina, ballet, on "
        "point, en pointe, nails worn, nail worn, worn nails, nails ~ worn, nails ~ filed, "
        "nails ~ stubs, nails ~ down to, scratching sound, scratchy sound, toe drag, toe "
        "dragging, foot like ~ flipper, flipper, walks on ~ knuckles, walking on ~ knuckles, "
        "bends under, bent under, tucked under, tucks under, rolls under, rolled under, folded "
        "under, folded, sandpaper sound, catching ~ toes, catches ~ toes, toes under, foot "
        "under, wrong side of ~ foot, wrong side of ~ paw, nails ~ floor, roll over"
    ),
    "withoutdev": (
        "without ~ brace, without it, brace off, brace is off, device off, off too, even off, "
        "even without, when its off, out of ~ brace, also off, not wearing, isnt wearing, "
        "doesnt have it on, also without, bare foot, barefoot, without ~ device, with or "
        "without, off or on, on or off, took it off, taken it off, off the brace, naked leg, is "
        "off"
    ),
    "lick": (
        "lick, licking, chew, chewing, nibble, nibbling, gnaw, gnawing, worry at, bother, "
        "mouthing, nibbles, gnaws, tongue, lollipop, ice cream, slurp, slurping, chewing gum, "
        "obsessed, lollypop, grooming, chomping, pestering"
    ),
    "cantleave": (
        "wont leave ~ alone, cant leave ~ alone, wont stop, kept, constantly, nonstop, non "
        "stop, all day, all night, every night, every evening, obsessive, obsessed, days, same "
        "spot, one spot, that spot, since, always, for hours, day three, third day, again and "
        "again, goes back to, returns to, back at it, whenever, again, every time, still, week, "
        "cant stop, forever, nights, same place, the same, hours, keeps"
    ),
    "fightsit": (
        "hates it, hates the, fights, fight, fighting, panics, panic, freeze, freezes, frozen, "
        "statue, wont move, refuses to move, wont walk, refuses to walk, not walk, doesnt move, "
        "hides, hide, hid, runs away, runs off, ran off, bolts, bolt, shakes, trembles, "
        "trembling, planks, plank, pancake, wont budge, thrashes, bucks, bronco, rodeo, like a "
        "mule, stands there, terrified, goes mad, sulks, goes flat, statues, petrified, shuts "
        "down, wedge himself, wedges himself, under the bed, under the sofa, under the table, "
        "behind the sofa, rigid, trying to get it off, tries to get it off, trying to rip, "
        "tries to rip, tears it, rips it, tears at, rips at, throws himself, throws herself, "
        "wont accept, doesnt accept, not accept, never accepted, wont tolerate, tantrum, wont "
        "take a step, wont take one step, not a step, wont step, stuck to, roots, rooted, "
        "stone, garden gnome, wont have it, refuses, refuse, dead weight, wrestling, wrestle, "
        "dread, dreads, scared, frightened, vanishes, disappears, cowers, cower, squirm, drama, "
        "pees himself, pees herself, melts, escape, kicks off, barricades"
    ),
    "devicecue": (
        "brace, device, orthosis, it comes out, comes out, bring it out, bring out, get it out, "
        "see it, sees it, sees the, put it on, with it on, its on, straps on, on him, on her, "
        "contraption, boot, orthotic, the bag, wearing, wear, in it, the box, the splint, "
        "harness, goes on, strapped"
    ),
    "daysstill": (
        "days, day three, day four, day five, day six, day seven, day eight, day nine, day ten, "
        "day 3, day 4, day 5, day 6, day 7, day 8, day 9, day 10, week, weeks, still, every "
        "single, always, never, months, fortnight, each time, no improvement, not improved, "
        "same as, third day, fourth day, fifth day, sixth day, by now, since monday, since "
        "tuesday, since wednesday, since thursday, since friday, since saturday, since sunday, "
        "day 11, day 12, day 14, ten days, nothing changed, not getting better, isnt getting "
        "better, every day, daily, 2nd week, second week, third week, whenever, a week, keeps"
    ),
    "staysmark": (
        "still, stay, stays, stayed, wont go, wont go away, doesnt go away, doesnt go, not go "
        "away, not fade, wont fade, doesnt fade, not fading, isnt fading, didnt fade, hasnt "
        "faded, hasnt gone, two hours, half an hour, next morning, overnight, 40 minutes, 45 "
        "minutes, an hour later, later, after an hour, since last night, all evening, not gone, "
        "not going, isnt going, permanent, there all, until bedtime, by bedtime, at bedtime, "
        "next day, for hours, day after, after two hours, lasting, lasts, remains, linger, "
        "lingers, lingering, two films, whole film, whole movie, episode, episodes, since "
        "lunch, since dinner, since breakfast, refuses to fade, 50 minutes, 35 minutes, 90 "
        "minutes, 60 minutes, fifty minutes, forty minutes, three quarters, not disappear, "
        "doesnt disappear, didnt disappear, hasnt disappeared, persist, still visible, still "
        "see, still there, wont budge, doesnt leave, wont leave, stuck around, not left, hours "
        "later, three hours, an hour after"
    ),
}
