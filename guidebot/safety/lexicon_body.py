"""Owners' words for the dog's body, for what comes out of it, and for the device.

Entries are parted by commas. A word stands for its regular forms too (`toe` for `toes`) unless it
begins with `=`. `@name` stands for another concept, `~` for up to three words in between, `a/b`
for either word.
"""

BODY: dict[str, str] = {
    "toes": ("toe, toesie, digit, little piggies, =beans, toe bean, nail bed, nails bed, claw"),
    "foot": ("@toes, =foot, =feet, =paw, =paws, footpad, paw pad, pads of ~ paw, footsie, tootsie"),
    "pawpads": ("pads of his, pads of her, his pads, her pads, foot pad"),
    "ankle": ("ankle, hock, heel, achilles, tarsus, back of ~ foot, wrist, carpus, pastern"),
    "knee": ("knee, stifle, kneecap, patella, elbow, hip, shoulder, joint"),
    "leg": (
        "=leg, =legs, limb, shin, thigh, calf, hind, hindquarter, haunch, back end, back half, "
        "rear end, rear half, foreleg, hock, =thigh, forearm, tibia, femur, upper arm, front "
        "arm"
    ),
    "limbpart": ("@foot, @ankle, @knee, @leg"),
    "groin": (
        "groin, inner thigh, inside of ~ thigh, inside thigh, armpit, between ~ legs, crotch"
    ),
    "skin": ("skin, flesh"),
    "spot": (
        "spot, patch, place, area, bit, mark, underneath, under ~ strap, under ~ brace, under ~ "
        "sleeve, under ~ pad, under ~ device, below ~ strap, where ~ strap, where ~ pad, where "
        "~ brace, where ~ sleeve, where ~ sits, under it, under there, beneath"
    ),
    "eye": ("eye, =eyes, eyeball, eyelid, =lid, =lids, cornea, pupil, peeper"),
    "nose": ("nose, nostril, snout, =nosebleed"),
    "face": (
        "face, muzzle, snout, lip, cheek, chin, jowl, eyelid, head, mouth, neck, throat, jaw, "
        "nose, ear"
    ),
    "mouth": ("mouth, lip, tongue, gum, jaw, teeth, tooth, throat"),
    "gums": (
        "=gums, gum line, =gum, tongue, lips, =lip, inside ~ mouth, mouth inside, inside of his "
        "mouth, mouth lining"
    ),
    "belly": (
        "belly, tummy, stomach, abdomen, gut, flank, sides, tum, waist, midriff, middle, "
        "undercarriage"
    ),
    "bum": ("bum, bottom, rectum, anus, backside, butt, bumhole, rear end, behind, back passage"),
    "head": ("head, skull, brow"),
    "chest": ("chest, rib, ribcage, =sides, lung"),
    "back": ("spine, his back, her back, backbone"),
    "fur": ("fur, hair, coat, fluff, feather"),
    "body": ("body, all over, whole body, everywhere"),
    "otherleg": (
        "other leg, other knee, other back leg, other hind leg, opposite leg, good leg, good "
        "knee, good side, sound leg, unbraced leg, unbraced side, other side, other rear, "
        "opposite side, opposite knee, bare leg, naked leg, non brace leg, leg without ~ brace, "
        "front leg, front paw, front left, front right, left front, right front, front foot, "
        "second knee, second leg, healthy leg, healthy one, healthy side, other hind, elbow, "
        "shoulder, other hip, leg that was fine, non braced leg, one without ~ brace, spare "
        "leg, leg with no brace, other one, fore leg, forelimb, foreleg, front limb, other "
        "limb, both knees, both back legs, both hind legs, both legs, wrist, other stifle, free "
        "leg, never operated, front end, the good one, her good one, his good one, brace free "
        "leg, other three, opposite back leg, opposite hind leg, opposite hind, unaffected leg, "
        "=non affected"
    ),
}

FLUID: dict[str, str] = {
    "blood": (
        "blood, bleed, bled, bloody, haemorrhage, hemorrhage, bloodied, claret, bloodstain, "
        "hemorrhaging, haemorrhaging, clot, bleeder"
    ),
    "bleednow": (
        "is bleeding, hes bleeding, shes bleeding, its bleeding, are bleeding, started bleeding, "
        "started to bleed, keeps bleeding, bleeding again, now bleeding, bleeding from, bleeding "
        "now, bleeds when, bleeds a bit, bleeding a bit, bleeding a little, bleeds from"
    ),
    "redstuff": (
        "red, crimson, scarlet, pink, =rose, raspberry jam, strawberry sauce, red jelly, cola, "
        "coca cola, red wine, rust, rusty, ketchup, beetroot, cherry, pinkish, reddish, red "
        "streak, port wine, cranberry, red brown, brick, merlot, strawberry, raspberry"
    ),
    "pee": (
        "pee, wee, urine, urinate, piss, widdle, tinkle, puddle, wees, weeing, =peed, number "
        "one, water works, waterworks, bladder, =peeing, wee wee, pee pee, piddle"
    ),
    "poo": (
        "poo, poop, stool, feces, faeces, number two, number 2, poos, turd, crap, motion, "
        "=pooped, =pooping, bowel, =bm, dump, doings, business, droppings, shit"
    ),
    "vomit": (
        "vomit, puke, barf, throw up, threw up, thrown up, chuck up, being sick, been sick, was "
        "sick, got sick, =sick on, sick in, upchuck, spew, hurl, brought up, bring up, bringing "
        "up, brings up, regurgitate, came back up, comes back up, coming back up, sick again, "
        "sick up, sicked up, sicking up, lost ~ breakfast, lost ~ dinner, =puked, chundered, "
        "chucking up, chucked up, emptied ~ stomach, threw ~ up, throws ~ up, honk up, coughed "
        "up his dinner, coughed up her dinner, returns ~ dinner, comes right back, came right "
        "back, ralph, heaved up, sick twice, sick three, sick five, sick four, sick once, =sick "
        "everywhere, sick all, cant keep ~ down"
    ),
    "runs": (
        "diarrhea, diarrhoea, the runs, had runs, has runs, terrible runs, bad runs, =squits, "
        "squirts, loose poo, loose poop, runny poo, runny poop, runny stool, loose motion, "
        "liquid poo, watery poo, watery stool, watery poop, poop soup, brown water, pooping "
        "water, runny tummy, tummy upset, upset tummy, the trots, =loosey goosey, splatter, "
        "soft stool, soft poo, mushy poo, sloppy poo, runny mess, liquid from behind, runny "
        "stuff, squirting, coming out both ends, both ends, brown soup, liquid poop, runny bum, "
        "poo ~ liquid, poop ~ liquid, poo ~ soup, poo ~ runny, poop ~ runny, poo ~ water, stool "
        "~ liquid, stool ~ water"
    ),
    "drool": (
        "drool, dribble, slobber, salivate, foam, froth, ropes of spit, strings of spit, spit, "
        "slaver, saliva"
    ),
    "pus": (
        "pus, ooze, oozy, weep, weepy, seep, discharge, goo, gunk, gooey, yellow stuff, slime, "
        "slimy, leak, crusty, crust, scab, yellow liquid, ichor, stuck to, glued, clear liquid, "
        "clear fluid, yellow crust, yellowish, custard, glistening, matted, tacky, moisture, "
        "oozes, wet spot, wet patch, wet hole, always wet, wet and, greenish ooze, green stuff, "
        "green goo, green slime"
    ),
    "smell": (
        "smelly, stinky, whiff, odor, odour, rotten, cheesy, off meat, rank, funky, =stench, "
        "hum like, niff, stank, foul, rancid, putrid"
    ),
}

DEVICE: dict[str, str] = {
    "device": (
        "brace, device, orthosis, orthotic, splint, boot, contraption, gadget, gear, thing, "
        "knee thing, leg thing, apparatus, cast, kit, exoskeleton"
    ),
    "part": (
        "strap, pad, padding, screw, foam, velcro, hook, loop, buckle, rivet, bolt, elastic, "
        "sleeve, lining, liner, washer, hinge, tab, rubber, neoprene, trim, cushion, clip, "
        "stud, nut, edging, seam, wedge, cap, fastener, snap, ring, patch, plastic bit, bit of "
        "plastic, tongue, stitching, label, keeper, d ring, plastic piece, insert, shim, "
        "grommet, toggle, spacer, suspension, thread, piece of ~ brace, bit of ~ brace, chunk "
        "of ~ brace, corner of ~ brace"
    ),
    "shell": (
        "shell, hinge, plastic, frame, carbon, buckle, screw, rivet, bolt, upright, edge, cuff, "
        "strap, stitching, d ring, clip, fastener, velcro, brace, device, joint, metal, seam, "
        "pin, hook and loop, loop, closure, hardware, tab, elastic, sleeve, rim, thigh part, "
        "bar"
    ),
    "strapword": (
        "strap, sleeve, velcro, elastic, buckle, edge, shell, cuff, pad, hinge, rim, brace"
    ),
}

SUBSTANCE: dict[str, str] = {
    "poisonfood": (
        "chocolate, choc, cocoa, brownie, easter egg, coffee, espresso, caffeine, coffee "
        "grounds, energy drink, alcohol, wine, beer, vodka, whisky, whiskey, gin, rum, martini, "
        "prosecco, cocktail, grape, raisin, sultana, currant, fruitcake, fruit cake, mince pie, "
        "hot cross bun, christmas cake, macadamia, onion, garlic, chive, leek, shallot, "
        "xylitol, birch sugar, sugar free gum, sugarfree gum, chewing gum, sugar free mint, "
        "sugar free sweets, sugar free candy, keto, yeast dough, bread dough, pizza dough, raw "
        "dough, sourdough, =dough, playdough, play dough, salt dough, salt lamp, sea water, "
        "seawater, salt water, avocado, guacamole, guac, nutmeg, panettone, stollen, trail mix, "
        "tiramisu, advent calendar, baileys, sugar free, kahlua, sweetener, granola bar, malt "
        "loaf, cider, liqueur, champagne, hops, toblerone, truffle, fudge, baking chocolate, "
        "liquorice gum, breath mint, salt block, salt lick, pretzel salt, brine, christmas "
        "pudding, tequila, scone, dark choc, choc chip, mouthwash, toothpaste, nutella, cocoa "
        "mulch, cocoa powder, peanut butter ~ sugar free, grounds from ~ filter, coffee pod, "
        "apple pips, peach stone, peach pit, moldy, mouldy, compost heap"
    ),
    "poisonthing": (
        "rat bait, rat poison, mouse poison, mouse bait, rodent bait, rodenticide, poison, slug "
        "bait, snail pellet, snail bait, antifreeze, coolant, deicer, screen wash, windshield "
        "fluid, bleach, cleaner, detergent, dishwasher tablet, laundry pod, washing pod, drain "
        "cleaner, oven cleaner, descaler, disinfectant, mop bucket, mop water, toilet block, "
        "weed killer, weedkiller, pesticide, insecticide, ant bait, ant trap, fly spray, "
        "fertiliser, fertilizer, bone meal, plant food, lily, lilies, tulip, daffodil, "
        "hyacinth, oleander, azalea, rhododendron, foxglove, yew, ivy, sago palm, "
        "dieffenbachia, philodendron, poinsettia, mistletoe, holly berries, holly berry, lily "
        "of the valley, amaryllis, cyclamen, laburnum, conker, acorn, houseplant, house plant, "
        "pot plant, bulb, mushroom, toadstool, fungus, fungi, cannabis, weed, marijuana, "
        "edible, gummies, joint stub, hash, pot brownie, thc, spliff, shroom, nicotine, "
        "cigarette, cig, vape, e liquid, snus, tobacco, ashtray, fag end, cigar, battery, "
        "batteries, button cell, glow stick, paint, white spirit, turpentine, petrol, diesel, "
        "engine oil, lamp oil, lighter fluid, gorilla glue, superglue, nail polish remover, "
        "essential oil, tea tree oil, moth ball, mothball, toad, frog, algae, blue green algae, "
        "pellets, blue pellets, berries, berry, foil packet, silica, hair dye, acetone, "
        "varnish, ice pack, hand warmer, candle oil, potpourri, reed diffuser, castor bean, "
        "wild garlic, nightshade, hemlock, ragwort, =deadly, begonia, aloe vera, peace lily, "
        "crocus, wisteria, boxwood, laurel, dumb cane, monstera, snake plant, hydrangea, iris, "
        "geranium, bait station, bait box, dead rat, poisoned rat, rat block, blue block, green "
        "block, pool tablet, limescale remover, caustic, febreze, air freshener, kettle "
        "descaler, fabric softener, washing powder, dryer sheet, hand sanitiser, hand "
        "sanitizer, sanitiser, sanitizer, nail varnish, magnet, lead weight, zinc cream, nappy "
        "cream, sunscreen, deodorant, contact lens solution, firelighter, roach trap, joint "
        "end, =roach, butt ends, cig butt, dog end, stash, =e cig, psilocybin, cocaine, =coke, "
        "ketamine, mdma"
    ),
    "painkiller": (
        "painkiller, pain killer, pain reliever, pain pill, pain tablet, pain relief, "
        "ibuprofen, ibuprofin, ibuprophen, nurofen, advil, motrin, brufen, aspirin, asprin, "
        "paracetamol, paracetemol, panadol, tylenol, calpol, acetaminophen, naproxen, aleve, "
        "diclofenac, voltaren, voltarol, codeine, tramadol, cocodamol, co codamol, excedrin, "
        "anadin, solpadeine, midol, naprosyn, ketoprofen, indomethacin, celecoxib, celebrex, "
        "toradol, etoricoxib, meloxicam, percocet, oxycodone, morphine, fentanyl, gabapentin, "
        "pregabalin, lyrica, anti inflam, antiinflam, anti inflammatory, anti inflammatories, "
        "antiinflammatory, nsaid, ibu, ibus, ibuprofe, novalgin, metamizole, disprin, alka "
        "seltzer, lemsip, beechams, dayquil, nyquil, deep heat, muscle rub, muscle cream, "
        "muscle gel, arthritis cream, arthritis gel, pain gel, pain cream, pain patch, headache "
        "tablet, headache pill, period pill, cramp tablet"
    ),
    "medicine": (
        "@painkiller, medicine, medication, meds, med, tablet, pill, capsule, antibiotic, "
        "antihistamine, benadryl, piriton, cetirizine, zyrtec, claritin, loratadine, "
        "antidepressant, prozac, sertraline, xanax, valium, diazepam, sleeping tablet, sleeping "
        "pill, ambien, zopiclone, melatonin, adderall, ritalin, adhd, statin, blood pressure, "
        "beta blocker, heart tablet, thyroid, metformin, insulin, birth control, contraceptive, "
        "hormone patch, steroid, prednisone, prednisolone, cortisone, hydrocortisone, "
        "omeprazole, imodium, loperamide, pepto, vitamin d, iron tablet, iron pill, vitamin, "
        "supplement, multivitamin, inhaler, ventolin, cough syrup, cough sweet, cough drop, "
        "cold and flu, flu capsule, decongestant, sudafed, nasal spray, carprofen, rimadyl, "
        "previcox, metacam, galliprant, apoquel, librela, cream, ointment, wormer, worming "
        "tablet, flea tablet, flea drops, flea treatment, antacid, rennie, tums, gaviscon, "
        "laxative, senna, cbd, cbd oil, sedative, blister pack, pillbox, pill box, pill "
        "organiser, pill organizer, dosette, bottle of pills, nightstand, drops, syrup, "
        "methadone, eye drops, amitriptyline, citalopram, baclofen, warfarin, blood thinner, "
        "lithium, tamoxifen, lozenge, lozenges, =dose, doses, tab, tabs, script, prescription, "
        "epilepsy tablets, numbing"
    ),
    "human": (
        "human, my own, mine, =my, grandma, granny, gran, nan, nana, mums, moms, my husband, my "
        "wife, husbands, wifes, grandads, grandpa, dads, partners, boyfriends, girlfriends, "
        "kids, childrens, baby, roommates, flatmates, mother in law, people, from ~ pharmacy, "
        "pharmacy, chemist, drugstore, supermarket, over the counter, otc, medicine cabinet, "
        "bathroom cabinet, handbag, purse, backpack, first aid kit, neighbours, neighbors, "
        "sisters, brothers, father in law, sons, daughters, her own, his own, their own"
    ),
    "otherpet": (
        "=cats, cat, other dog, other dogs, old dog, old dogs, last dog, previous dog, late "
        "dog, horse, horses, neighbours dog, neighbors dog, sisters dog, mums dog, friends dog, "
        "his brother, our other, brothers dog, passed last year, died, another dog, parrot, "
        "rabbit, leftover, left over, old prescription, expired, out of date, from last year, "
        "my other, dads dog, sons dog, from before, from when, puppy, lab, collie, terrier, "
        "since passed, spaniel, still have some, still got some, have some left, had some left, "
        "some left from"
    ),
}
