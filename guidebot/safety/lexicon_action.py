"""Owners' words for eating, giving, losing and chewing; notation in `lexicon_body`."""

ACTION: dict[str, str] = {
    "ate": (
        "=ate, eat, eaten, swallow, swallowed, gulped, gulp, wolfed, scoffed, gobbled, "
        "hoovered, chewed, chewed up, lick, licked, licked up, drank, drunk, got into, got at, "
        "got hold of, got his paws on, helped himself, helped herself, demolished, munched, "
        "nicked, stole, pinched, snaffled, nibbled, devoured, inhaled, had a, had some, had "
        "two, had three, consumed, ingested, bit into, bitten, crunched, polished off, "
        "snatched, eats, finished off, raided, chomped, tasted, taste, slurped, lapped up, "
        "lapping, down the hatch, guzzled, scarfed, vacuumed, tucked into, wolfs, got my, got "
        "a, gnawed, shredded, ripped open, tore open, in his mouth, in her mouth, out of ~ "
        "mouth, dug up, snacked, counter surfed, wolfing, sampled, knocked back, woofed down, "
        "he got, she got, fished out, had been at, been at the, beak, half eaten, licking, "
        "drinks, eating, sniffed up, grabbed, snarfed, necked, swiped, chewing, pigged out, "
        "cleaned out, got through, got one"
    ),
    "gonepack": (
        "empty, gone, missing, ripped open, torn open, chewed open, chewed up, wrapper, "
        "wrappers, packet, packets, box ~ empty, bag ~ empty, pack ~ empty, foil, where is, "
        "where are, only the, cant find, a hole in, licked clean, licked spotless, bitten in "
        "half, tipped over, shredded, all over ~ floor, knocked over, vanished, disappeared, "
        "powder all over, crumbs, on his nose, on her nose, on his beard, on her beard, on his "
        "face, round his mouth, around his mouth, two short, open on the floor, spilled, spilt, "
        "ransacked"
    ),
    "gave": (
        "gave, given, gives, slipped him, slipped her, fed him, fed her, popped him, got him to "
        "take, dosed, had his, had her, put ~ in ~ dinner, put ~ in ~ breakfast, put ~ in ~ "
        "bowl, hid ~ in, crushed ~ in, mixed ~ in, snuck, sneaked, mixed up, administered, "
        "treated him with, treated her with, taken, wrapped in, in cheese, in ham, in peanut "
        "butter, rubbed, rubbed ~ on, smeared, applied, spread, fed, put ~ in ~ food, been "
        "giving, was giving, keep giving, we give him, we give her, giving him my, giving her "
        "my, =gives"
    ),
    "askgive": (
        "can i give, could i give, may i give, should i give, ok to give, okay to give, safe to "
        "give, alright to give, give him, give her, give it, can he have, can she have, could "
        "he have, may he have, may she have, could she have, can he take, can she take, allowed "
        "to give, allowed, can i use, could i use, can dogs have, can dogs take, do dogs, for "
        "dogs, how much, how many, how often, what dose, dosage, which painkiller, what "
        "painkiller, would it be ok, is it ok, is it safe, is it okay, are they ok, are they "
        "safe, any harm, instead, tempted, thinking of giving, thinking of, thinking about "
        "giving, want to give, wanted to give, about to give, going to give, planning to give, "
        "would like to give, lend, share, try him on, try her on, mind if, i have some, weve "
        "got some, ive got some, i have got some, work for dogs, work on dogs, ok for dogs, "
        "okay for dogs, ok if i, okay if i, can we give, could we give, should we give, shall i "
        "give, shall we give, might give, good for dogs, what can i give, anything i can give, "
        "something for the pain, something for pain, cant i just, can i just, will it hurt, "
        "would half, is half, half of, could half, would a, would one, will one, quarter of, "
        "break ~ half, suitable, slip him, slip her, pop him, harm, use up, does ~ work, do the "
        "trick, tide him over, tide her over, take the edge off, helps me, works for me, do i "
        "dare, fine for dogs, allowed to have, a go"
    ),
    "double": (
        "twice, double, two doses, second dose, again, already given, too much, too many, "
        "extra, overdose, overdosed, whole tub, full tub, whole pack, whole bottle, whole box, "
        "both gave, neither of us, two instead, wrong dose, mixed up, entire, all of them, all "
        "of it, double dosed, doubled, both of us, two of them, whole strip, whole tube, extra "
        "dose, whole jar, days worth, weeks worth"
    ),
    "own": (
        "his tablet, her tablet, his pill, her pill, his meds, her meds, his medicine, her "
        "medicine, his medication, her medication, his anti, her anti, his dose, her dose, "
        "prescribed, his chew, her chew, joint chew, joint tablet, chewable, her own, his pain, "
        "her pain, from the vet, vet gave, vet prescribed, vet says, his antibiotic, her "
        "antibiotic, glucosamine, as prescribed, dog meds"
    ),
    "missingpart": (
        "missing, gone, vanished, disappeared, cant find, nowhere, not there, isnt there, no "
        "longer there, where is, looked everywhere, lost, minus, one short, short on, two "
        "short, not on the floor, not in ~ bed, no trace, half of it, chunk out, bite out, "
        "piece out, bitten off, chewed off, bit off, cant be found, searched, nowhere to be, "
        "absent, hasnt turned up, not turned up, isnt anywhere, unaccounted, wheres, a hole "
        "where, a chunk, a piece, chunk, piece"
    ),
    "chewed": (
        "chewed, chew, eaten, ate, eat, swallow, swallowed, bit off, bitten off, gnawed, "
        "gulped, devoured, destroyed, munched, shredded, ripped, tore, nibbled, chomped, "
        "scoffed, wolfed, snack, snacked, snacking, hoovered, dinner, lunch, breakfast, inside "
        "him, inside her, in him, down his throat, down her throat, went down, in his mouth, in "
        "her mouth, spaghetti, dessert, in his belly, in her belly, in his stomach, in her "
        "stomach, in his tummy, in her tummy, poop it out, poo it out, pass it, come out the "
        "other end, digest, gobbled, appetiser, appetizer, had it, inhaled, bitten, chewing, "
        "crunched, taken a bite, took a bite"
    ),
    "distress": (
        "@vomit, @retch, @noeat, @coughgag, @cantpass, strain, straining, whining, whimper, "
        "hunched, hunch, yelp, moan, groan, belly ~ sore, tummy ~ sore, drool, drooling, "
        "choking, gulping, swallows and, pacing, wont settle, curled, tense, belching, bum in "
        "the air, prayer, praying, bow, lethargic, not himself, not herself, foam, restless, "
        "pain, crying, shaking, regrets, lip licking, eating grass, tight belly, hard belly, "
        "unwell, poorly, burping, uncomfortable, retching, sad, miserable, wont poop, no poo, "
        "puking, barfing, slimy, drools"
    ),
    "labourword": (
        "labour, labor, contractions, whelping, whelp, giving birth, puppy coming, puppies "
        "coming, in labour, in labor, due date, having her pups, having pups, her pups, litter, "
        "puppy stuck"
    ),
    "labourbad": (
        "nothing, no puppy, no pup, no puppies, stuck, hours, pushing, straining, an hour, "
        "green, black, stopped, exhausted, hard, not coming, wont come, no more, half out, "
        "overdue, since, tired, two hours, contractions, panting, hanging out, bag, gave up, "
        "help"
    ),
    "mouthacid": (
        "acid, chemical, shampoo, spray, cleaner, soap, bleach, powder, dust, sand, perfume, "
        "deodorant, lime, vinegar, pepper, chili, sunscreen, washing liquid, cement, ammonia, "
        "hairspray, splash, splashed, squirted, disinfectant"
    ),
    "eyebad": (
        "shut, closed, wont open, cant open, doesnt open, not open, not opening, half closed, "
        "half shut, squint, squinting, wink, winking, bulge, bulging, popped, sticking out, "
        "stuck out, cloudy, clouded, milky, blue, bleeding, blood, red, scratched, scratch, "
        "poked, hit, bitten, weepy, weeping, watering, running, runny, goo, gunk, glued, "
        "swollen, puffy, fat, rubbing, pawing, rubs, paws at, injured, hurt, sore, bloodshot, "
        "film, haze, hazy, cut, cat scratch, thorn, poke, in the eye, into ~ eye, stick, "
        "blinking, blinks, teary, tears, clamped, screwed up, pirate, cyclops, streaming, "
        "stuck, weird, white, foggy, marble, out of ~ socket, socket, dangling, punctured, "
        "pupil ~ big, bigger, blind, flicked, caught, thwacked, smacked, whipped, discharge, "
        "sticky, one side, opaque, popeye, grape, crusted, dented, gone blind"
    ),
}
