"""Owners' words for what the dog does, or cannot do; notation in `lexicon_body`."""

DO: dict[str, str] = {
    "limp": (
        "limp, lame, lameness, hobble, hobbly, gimpy, hitch, hop along, favour, favor, "
        "favouring, favoring, stiff, lopsided, wonky walk, hip hop, limpy, limpier, stiffer, "
        "uneven, sore, nodding, peg leg, pirate, pegleg, bunny hop, dot and carry, off on, "
        "short on, limping, limped, gammy, waddle, shuffling, ouchy, hirple, creaky, rocking "
        "horse, skip, skips, skipping, wince, shorter step, shorter steps, dip, bobs, head bob, "
        "old man, hitching, dipping, rickety, rusty gate, tin man"
    ),
    "worse": (
        "worse, worsening, more than before, more than last week, more than usual, backwards, "
        "going the wrong way, going downhill, downhill, getting bad, back to, again, got bad, "
        "deteriorate, every day more, bad again, much more, even more, stronger, increased, "
        "increasing, not better, no better, isnt better, was better, was doing better, undone, "
        "regress, square one, started over, more each, stronger than, longer each, day by day, "
        "more every day, lamer, limpier, stiffer, slower, relapse, setback, backslide, gone "
        "back, more and more, wrong direction, wasnt like this, rougher, steeper, did before, "
        "week one, day one again, back where, behind where, more lame, more limp, than last "
        "week, than yesterday, than before, than monday, than the first, used to"
    ),
    "nofoot": (
        "three legged, threelegged, three legs, 3 legs, three legger, 3 legged, 3legged, "
        "tripod, three wheeler, held up, carries ~ leg, carrying ~ leg, tucked up, tuck ~ up, "
        "tucked under, not touching ~ floor, not touching ~ ground, wont touch ~ floor, wont "
        "touch ~ ground, no weight, not put ~ down, wont put ~ down, doesnt put ~ down, wont "
        "stand on, doesnt stand on, wont step on, refuses to step on, not using ~ leg, wont use "
        "~ leg, doesnt use ~ leg, not use ~ leg, stopped using, stops using, quit using, keeps "
        "~ lifted, keeps it lifted, keeps it up, leg ~ lifted, isnt using, stork, flamingo, "
        "heron, pogo, kangaroo, three out of four, wont let ~ foot touch, retired ~ leg, "
        "nonweight, tricycle, milking stool, doesnt lean on, wont lean on, wont set ~ down, set "
        "it down, leg is up, levitating, hasnt put ~ down, glued to ~ belly, wont load, doesnt "
        "load, landing gear, three of four, holds ~ leg up, holds ~ paw up, holds ~ foot up, "
        "holding ~ leg up, holding ~ paw up, holding ~ foot up, held ~ leg up, leg in ~ air, "
        "foot in ~ air, leg off ~ ground, foot off ~ ground, paw off ~ ground, wont put ~ foot "
        "down, wont put ~ paw down, wont put ~ leg down, foot doesnt touch, paw doesnt touch, "
        "leg doesnt touch, wont bear weight, cant bear weight, not bearing weight, wont put it "
        "down, wont put weight, not putting weight, puts no weight, not bearing any weight, "
        "only three legs, on 3 legs"
    ),
    "yelp": (
        "yelp, yip, scream, cry, cried, cries, whimper, whine, squeal, shriek, growl, snarl, "
        "bit me, bares ~ teeth, bared ~ teeth, shows ~ teeth, showed ~ teeth, showing ~ teeth, "
        "flinch, wince, jerk away, jerks away, pull away, pulls away, pulls ~ away, pulled "
        "away, jumps when, jump when, snatches ~ away, snatch ~ away, yank ~ away, yanks ~ "
        "away, moan, groan, wail, shies, turns ~ head, whips ~ round, whips ~ around, whip ~ "
        "round, lip curl, curls ~ lip, curled ~ lip, hates me, air snap, went for me, goes for "
        "my hand, grabs my hand, mouths my hand, mouthing, stiffens, recoil, cringe, ow, ouch, "
        "hiss, shudder, quiver, hurting, pain, painful, tender, agony, ache, aches, touchy, "
        "side eye, warning, hits the roof, hit the roof, through the roof, hit the ceiling, "
        "yowl, squealed, whips, shot away, shoots away, gasps, squeaky toy, went for, tries to "
        "bite, flinches, whipped"
    ),
    "touch": (
        "touch, press, stroke, handle, pick up, lift, put ~ on, putting ~ on, hold, squeeze, "
        "rub, brush, pat, pet, bend, move, stand up, stands up, get up, gets up, getting up, "
        "lie down, lies down, reach for, near, close, fasten, do up, strap, tighten, buckle, "
        "step, sit, sits, examine, feel, when i, whenever, each time, every time, as soon as, "
        "the moment, when we, when my, when anyone, on the stairs, jump, stretch, pull ~ over, "
        "over ~ heel, over ~ foot, go near, come near, palpate, poke, prod, straighten, finger, "
        "hand, fingers, towel, wipe, dry"
    ),
    "scream": (
        "scream, shriek, howl, wail, yell, screech, cry, cries, crying, yowl, whimper, whine, "
        "whining, whimpering, moaning, groaning, smoke alarm, siren, air raid, yelping, "
        "shrieking, agony, car alarm, banshee, keening, sobbing, howling, screaming, torture, "
        "murdered, burglar alarm"
    ),
    "nonstop": (
        "nonstop, non stop, wont stop, doesnt stop, not stop, cant stop, never stops, constant, "
        "constantly, all night, all morning, all evening, for hours, an hour, two hours, hours, "
        "continuously, on and on, again and again, over and over, without stopping, hasnt "
        "stopped, hasnt quit, wont quit, keeps on, since midnight, since last night, endless, "
        "every few seconds, every few minutes, straight, whole night, whole day, minutes, "
        "forever, ages, keeps going, no break, no pause, cant calm, wont calm, nothing helps, "
        "nothing works, relentless, still going, wont let up, isnt stopping, not stopping, "
        "didnt stop, until, hasnt let up, every ten seconds, every minute, every ~ seconds, "
        "third night, half an hour, one after another, whatever i do, no matter what, keeps "
        "coming, keep coming, still at it, at it since, never ending, unstoppable, wont end, "
        "doesnt end, starts ~ again, starts over"
    ),
    "frantic": (
        "frantic, frantically, cant settle, wont settle, cant lie down, wont lie down, cant get "
        "comfortable, cant get comfy, pacing, pace, paces, out of ~ mind, going insane, going "
        "mad, going crazy, berserk, climbing ~ walls, up down up down, up and down, hysterical, "
        "beside himself, beside herself, throwing himself, throwing herself, spins and, "
        "panicking, terrified, climb up me, manic, possessed, thrash, thrashing, not still, "
        "like a caged, bouncing off, trapped, tears at, freaking out, losing ~ mind, wild, "
        "meltdown, cant calm, inconsolable, restless, running in circles, biting the, claws at, "
        "clawing at, digging at, cant keep still, cant stay still, cant stand still"
    ),
    "pant": (
        "pant, panting, puffing, huffing, huff, steam train, puff, out of breath, breathing "
        "fast, breathing super fast, tongue hanging, tongue out, tongue to ~ floor, tongue on ~ "
        "floor, puffed, steam engine, panted"
    ),
    "breathe": ("breath, breathe, breathing, air, respiration, inhale, exhale, breaths, lungful"),
    "breathbad": (
        "hard, heavy, heave, heaving, fast, quick, shallow, short, rapid, labored, laboured, "
        "difficulty, trouble, struggle, struggling, noisy, loud, wheezy, whistling, whistle, "
        "raspy, rattle, rattly, rattling, fight, fighting, catch, gasp, weird, funny, strange, "
        "odd, crackle, crackly, bubbly, gurgly, through ~ mouth, cant, properly, effort, "
        "sucking, rough, snort, grunt, wet, belly going, neck stretched, stretched out, "
        "panicky, raggedy, ragged, harsh, squeaky, hitching, saw, scared, marathon, work, "
        "working, straw, stops, stopped, pause"
    ),
    "breathphrase": (
        "cant breathe, cant breath, struggling to breathe, gasping, gasp, gasps, choking, "
        "suffocating, wheeze, wheezing, wheezes, wheezy, darth vader, cant catch ~ breath, cant "
        "get ~ breath, cant get air, cant get enough air, fighting for ~ breath, fighting for "
        "air, asthma, stopped breathing, not breathing, isnt breathing, isnt getting air, no "
        "air, air isnt going, suck in air, sucking in air, sucking air, pulling air, pulls air, "
        "gulping air, gulps air, gulping for, honking like, honking, goose honk, rasp, rasping, "
        "rasps, rattling breath, broken accordion, accordion, stuck in ~ throat, stuck in ~ "
        "windpipe, went down wrong, went down the wrong, crowing, snorkel, death rattle, fish "
        "out of water, lodged in ~ throat, something in ~ throat, seal bark, bagpipe, kazoo, "
        "whistling noise, cant finish a breath, stridor, gurgling, drowning, sounds like ~ "
        "kettle, sounds like ~ saw, sounds like ~ engine, old kettle, sounds like ~ pig, stuck "
        "~ throat, down ~ wrong way, elbows ~ out, neck ~ out, throat ~ closing, cheyne, "
        "heimlich, pawing at ~ mouth, paws at ~ mouth, pawing ~ mouth, clawing at ~ mouth, "
        "squeaky breath, breathing ~ mouth, out of air, airway, trouble breathing, drinking "
        "straw, blocked ~ throat, hes choking, shes choking, is choking, was choking, choking "
        "on, dog choked, choked on a, he choked, she choked, starts choking, keeps choking, "
        "been choking"
    ),
    "coughgag": (
        "cough, gag, hack, hacking, honk, splutter, hairball, furball, clearing ~ throat, "
        "retch, kennel cough, sputter, gagging, cough cough, coughing fit"
    ),
    "retch": (
        "retch, dry heave, heave, heaving, dry heaving, gag, trying to ~ vomit, tries to ~ "
        "vomit, trying to puke, tries to puke, trying to throw up, tries to throw up, trying to "
        "be sick, tries to be sick, bring something up, bring ~ up, trying to vomit, tries to "
        "vomit, gagging, fake vomiting, puking movement, vomiting motion, going through the "
        "motions, sick motion, hunching, wretch, wretching, vomit motion, puke motion, wants to "
        "be sick, wants to throw up, wants to puke, hack, hacking, acting like ~ throw up, "
        "acting like ~ puke, about to be sick, hurl, keeps heaving, convulsing stomach, wants "
        "to vomit, attempt ~ sick, tried ~ sick, tried to throw up, tried to puke, tried to be "
        "sick"
    ),
    "nothingup": (
        "nothing comes, nothing comes up, nothing came, nothing coming, only air, just air, its "
        "only air, only spit, just spit, only foam, just foam, white foam, nothing up, nothing "
        "out, zero comes, only slime, white slime, without result, nothing appears, no vomit, "
        "no result, nothing there, unproductive, dry, empty, but nothing, nothing happens, bit "
        "of foam, strings of, bit of spit, nothing but, and nothing, only froth, just froth, "
        "doesnt come up, wont come up, isnt coming, not a thing, nada, zilch, false alarm "
        "vomit, no food, nowt, not coming, fails, shaving foam, blank"
    ),
    "belltight": (
        "tight, hard, big, huge, drum, tense, swollen, bloated, bloat, distended, blown, round, "
        "rounder, basketball, football, beach ball, balloon, barrel, doubled, firm, fat, "
        "stretched, pregnant, puffed, solid, rigid, rock, bulging, gas, swelling, taut, "
        "watermelon, keg, stick out, sticks out, enormous, inflated, pumped, kettledrum, tom "
        "tom, bowling ball, burst, explode, zeppelin, tyre, tire, swell, massive, like a board, "
        "thump, expanding, medicine ball, bouncy castle"
    ),
    "bellphrase": (
        "bloat, gdv, twisted stomach, stomach twist, gastric torsion, puffer fish, look "
        "pregnant, looks pregnant, belly ~ drum, beach ball, looks like he swallowed, looks "
        "like she swallowed, like he swallowed a, like she swallowed a, looks like ~ going to "
        "burst, going to burst, about to pop"
    ),
    "strain": (
        "strain, push, squat, squats, squatting, hunch, lift ~ leg, lifts ~ leg, cocks ~ leg, "
        "leg up, leg cocked, trying, tries, tried, keeps asking, asks out, begging to go, "
        "effort, bear down, crouch, pose, position, poses, goes into position, circles, "
        "circling on, arches, needs to go, attempt, attempts, wants out"
    ),
    "cantpass": (
        "cant pee, cant poo, cant poop, cant urinate, cant pass, hasnt peed, hasnt pooped, "
        "hasnt pood, hasnt pooed, hasnt been able, hasnt urinated, hasnt weed, no pee, no wee, "
        "no poo, no poop, no urine, not peed, not pooped, not peeing, not pooping, not "
        "urinated, not pooed, not weed, not had a poo, not had a wee, havent seen ~ pee, havent "
        "seen ~ poop, didnt pee, didnt poop, isnt peeing, isnt pooping, wont pee, wont poop, "
        "constipated, constipation, bunged up, blocked up, unable to pee, unable to go, no "
        "number two, nothing in ~ bladder, couple of drops, couple drops, only drips, just "
        "drips, only dribbles, just dribbles, drop by drop, hasnt been to ~ toilet, no number "
        "2, hasnt emptied, hasnt had a poo, hasnt had a wee, no toilet, hasnt been since, "
        "bladder ~ full, full bladder, bladder ~ hard, not a dribble, hasnt passed, not passed, "
        "nothing passes, nothing leaves, not gone since, no bowel, not produced, only a drop, "
        "cant go to the toilet, cant go for a wee, cant wee"
    ),
    "nothingout": (
        "nothing, nothing comes, zero, not a drop, few drops, no result, nada, zilch, barely, "
        "hardly anything, little drops, drops, dribbles, nope, none, without, blank, empty, "
        "dry, trickle, no pee, no poo, nowt, not a thing, not a bean, squat all, tiny smear, "
        "smear, marble"
    ),
    "fit": (
        "fits, seizure, seize, seizing, convulsion, convulse, convulsing, epileptic, epilepsy, "
        "twitch, twitching, jerk, jerking, spasm, tremor, trembling, tremble, shaking all over, "
        "shakes all over, foaming at ~ mouth, stiff as a plank, stiff as a board, rigid, "
        "vibrating, shiver, shivering, shaky, shaking, shakes, quivering, chattering, teeth "
        "clacking, snapping at flies, snapping at nothing, jaw ~ chatter, jerky, electric, "
        "electrocuted, breakdancing, swimming on ~ side, running on ~ side, swimming on land, "
        "vibrate, washing machine on spin, head bobbing, went stiff"
    ),
    "fitsure": (
        "seizure, seizing, had a fit, having a fit, convulsion, convulsing, convulse, "
        "epileptic, had fits, having fits, shaking all over, shakes all over, stiff as a plank, "
        "stiff as a board, snapping at invisible, twitching all over, jerking all, trembling "
        "all over, whole body ~ shaking, whole body ~ twitching, body ~ jerking, legs ~ "
        "jerking, jerking ~ legs, swimming on ~ side, running on ~ side, legs ~ running, face ~ "
        "twitching, teeth clacking, another fit, full body ~ shake, fit lasted, legs ~ "
        "paddling, eyes ~ rolled, eyes rolling, took a fit, has a fit, foaming at ~ mouth"
    ),
    "drunk": (
        "drunk, drunken, tipsy, wobbly, wobble, stagger, sway, swaying, sailor, on a boat, off "
        "balance, lost ~ balance, no balance, losing ~ balance, stumble, tipping over, tipped "
        "over, falls over, falling over, fell over, keels over, ataxic, uncoordinated, dizzy, "
        "walks into, walking into, walked into, bump into, bumping into, bumps into, crossing ~ "
        "legs, pinball, weaving, zigzag, circling, in circles, jelly legs, legs like jelly, "
        "topple, lurch, lurching, reeling, tilts, zombie, cross legged, list to, lists to, "
        "leaning, drifts, sea legs, hammered, bender, pub crawl, last orders, closing time, "
        "plastered, legless, spaced out, newborn foal, foal, giraffe, high as"
    ),
    "headtilt": (
        "head tilt, tilted head, head is tilted, head on one side, head to one side, tilting ~ "
        "head, tilts ~ head, head ~ sideways, head ~ tilted, head cocked, head ~ crooked, head "
        "~ wonky, eyes flicking, eyes flick, eyes darting, eyes ~ left right, eyes bouncing, "
        "nystagmus, head hanging sideways, head ~ lopsided, eyes ~ side to side, eyes are going "
        "back and forth, head stays"
    ),
    "backlegs": (
        "back legs, both legs, hind legs, rear legs, both back, back end, rear end, both hind, "
        "hind end, back half, rear half, behind his ribs, hindquarters, back feet, hind feet, "
        "bum end, both rear, his rear, her rear, bottom half, back part, legs"
    ),
    "legsfail": (
        "stopped working, dont work, doesnt work, not working, arent working, isnt working, "
        "dragging, drag, drags, paralysed, paralyzed, paralysis, gave way, give way, given way, "
        "giving way, gives way, gave out, giving out, gives out, collapse, collapsing, went "
        "out, wont work, wont move, cant move, dont move, not moving, useless, trail, trailing, "
        "trails, ribbons, seal, mermaid, pulling himself, pulling herself, gone dead, buckled, "
        "buckle, buckling, nothing behind, splay, splays, sploot, melted, wont hold, fold "
        "under, dead weight, cant use, not respond, lost ~ use, no power, quit, conked, on "
        "strike, army crawl, commando, slug, cant lift, sliding apart, gone to jelly, jelly, "
        "spaghetti"
    ),
    "cantmove": (
        "cant move, doesnt move ~ leg, cannot move, cant bend, wont bend, doesnt move it, cant "
        "use, not moving ~ leg, wont move, not moving, no movement, cant lift ~ leg, locked"
    ),
    "collapsed": (
        "collapsing, faint, fainted, passed out, pass out, passes out, passing out, "
        "unconscious, out cold, blacked out, black out, unresponsive, not responding, doesnt "
        "respond, wont wake, wont wake up, cant wake, not waking, doesnt wake, didnt wake, "
        "keeled over, keel over, keels over, sack of potatoes, dropped mid, rag doll, ragdoll, "
        "limp noodle, limp as, comatose, coma, doesnt stir, wont stir, not stirring, isnt "
        "stirring, hasnt stirred, lifeless, nobodys home, cant rouse, just dropped, cant be "
        "woken, wont respond, legs melted, hit the deck, went down like, lights went out, like "
        "a rug, fell over sideways, doesnt lift ~ head, wont lift ~ head, cant lift ~ head, "
        "cant hold ~ head, cant hold ~ chin, cant raise ~ head, no reaction, sank down, sank "
        "to, someone pulled the plug, pulled the plug, unplugged, switched off, toppled, "
        "crumpled, not conscious, keeps fainting, isnt waking, deckchair, not reacting, no "
        "strength, suddenly weak, weak all at once, weak all of a sudden, went weak, gone weak, "
        "gone floppy, gone all floppy, all floppy, gone limp, went limp, all limp, completely "
        "limp, so weak, too weak, puppet with ~ strings, strings cut, cut the strings, plugged "
        "out, slid down the wall, doesnt react to ~ name, went floppy, body is limp, like a "
        "dishrag, felled, collapsed, collapse, =fainted, =fainting"
    ),
    "cantgetup": (
        "cant get up, cant stand, cant stand up, not getting up, isnt getting up, doesnt get "
        "up, didnt get up, hasnt got up, hasnt gotten up, unable to get up, not able to stand, "
        "not able to get up, cant rise, cant raise, cant get to ~ feet, wont stand up, "
        "struggles to stand, fails to stand, cant climb off, legs ~ under him, cant hold "
        "himself, cant hold herself, wont get up, unable to stand up"
    ),
    "heatcause": (
        "hot car, in the car, in the van, left in ~ car, heat, heatwave, heat wave, sun, sunny, "
        "sunshine, degrees, hot day, asphalt, pavement at noon, noon, beach, aircon, air con, "
        "hot out, so hot, boiling, boiling hot, roasting, conservatory, greenhouse, sauna, "
        "tent, balcony, agility, fetch, ran after, bike, overheated, overheating, overheat, "
        "heatstroke, heat stroke, sunstroke, sun stroke, humid, scorching, midday, radiator, "
        "burning up, stuffy, windows up, windows shut, parked, heating, jog, jogging, hike, "
        "hiking, sweltering, hose, warm day, hot weather, 30c, 32c, 34c, 35c, the car, summer"
    ),
    "heatsure": (
        "heat stroke, sunstroke, sun stroke, overheated, overheating, heat exhaustion, boiling "
        "hot, burning up, cooked, cooking alive, like touching a radiator, too hot to touch, "
        "steaming, heatstroke"
    ),
    "heatsign": (
        "@pant, @drool, glassy, glazed, floppy, wobbly, stagger, drunk, weak, collapse, cant "
        "cool, wont cool, not cooling, staring through, unfocused, red gums, gums, tongue, wont "
        "get up, gasping, limp, sway, vomit, dizzy, out of it, dazed, unsteady, zonked, lies "
        "flat, doesnt respond, jelly"
    ),
    "weak": (
        "weak, floppy, wobbly, faint, lethargic, shaky, limp, listless, flat, sleepy, wiped "
        "out, dull, trembling, shaking, no energy, hunched, cold, wont get up, wont lift, "
        "lying, wont walk, pale, quiet, depressed, feeble, sad, miserable, not himself, not "
        "herself"
    ),
    "unwell": (
        "fever, feverish, lethargic, listless, not himself, not herself, not his self, not her "
        "self, not ~ usual self, off color, under the weather, unwell, mopey, mopes, no energy, "
        "no spark, wiped out, droopy, subdued, withdrawn, sleeps all day, sleeping all day, "
        "just sleeps, just lies there, just lying there, only lies, wont play, wont greet, "
        "doesnt greet, not greeting, no tail wag, tail down, tail between, hot ears, ears ~ "
        "hot, nose ~ hot, apathetic, out of sorts, not interested, lost interest, doesnt care "
        "about, wont come out, stays in ~ bed, gloomy, wilted, deflated, battery ~ empty, "
        "battery ~ flat, half speed, ghost of, shadow of, ears down, weird mood, lost ~ "
        "sparkle, shivery, doesnt want to do anything, doesnt come when, like a flat tyre, like "
        "a rag, isnt himself, isnt herself, running hot, burning up, wont go for ~ walk, wont "
        "go for walk, knackered, wouldnt greet, off today, bit off, not wagging, didnt get up "
        "to greet, down in the dumps, ill"
    ),
    "noeat": (
        "wont eat, doesnt eat, didnt eat, off ~ food, off food, refusing food, refuses food, "
        "refused food, refuses ~ dinner, refused ~ dinner, refused ~ breakfast, refuses ~ "
        "breakfast, no appetite, lost ~ appetite, wont touch ~ food, wont touch ~ dinner, "
        "doesnt touch ~ food, hasnt touched ~ food, hasnt touched ~ breakfast, doesnt want ~ "
        "food, doesnt want ~ breakfast, doesnt want ~ dinner, wont take ~ treat, wont take ~ "
        "ham, wont take treats, not taking treats, not interested in food, not interested in ~ "
        "dinner, left ~ breakfast, left ~ dinner, leaves ~ food, leaves ~ breakfast, leaves ~ "
        "dinner, turns down, turning down, turned down, turns away from, turned away from, "
        "turns ~ nose up, turned ~ nose up, sniffs ~ walks away, walks away from ~ bowl, walked "
        "away from ~ bowl, hunger strike, bowl ~ full, full bowl, bowl untouched, skipped ~ "
        "meals, skipped breakfast, skipped dinner, skipped ~ breakfast, skipped ~ dinner, "
        "dinner ~ still in ~ bowl, food ~ still in ~ bowl, breakfast ~ still, ignores ~ bowl, "
        "ignored ~ breakfast, ignored ~ dinner, even chicken, not even chicken, not even ham, "
        "not even cheese, nothing ~ tempts, spits ~ out, wouldnt eat, off breakfast, couldnt "
        "eat, not hungry, isnt hungry, pushes ~ bowl away, picks at ~ food, barely ate, barely "
        "eating, barely eats, hardly eats, hardly eating, hardly ate, said no to, says no to, "
        "no to ~ food, no breakfast, no dinner, refusing ~ dinner, refusing ~ breakfast, "
        "refusing to eat, refused to eat, refuses to eat, refusing treats, refuses treats, "
        "refused treats, not eaten, hasnt eaten, didnt touch ~ food, not touched ~ food, didnt "
        "touch ~ dinner, didnt touch ~ breakfast, not eating, isnt eating, picking at ~ food, "
        "wont touch ~ breakfast, wont touch ~ chicken, wont touch ~ treat, hasnt touched ~ "
        "dinner"
    ),
    "nodrink": (
        "not drinking, wont drink, hasnt drunk, hasnt drank, doesnt drink, not drunk, not "
        "drank, didnt drink, isnt drinking, not had ~ drink, hasnt had ~ drink, hasnt had ~ "
        "sip, hasnt had ~ water, refuses water, refusing water, refused water, not a drop, not "
        "a sip, not one sip, not one lick, no water, water bowl untouched, water ~ untouched, "
        "water ~ full, water ~ same level, bowl ~ same level, bowl ~ still full, not touched ~ "
        "water, hasnt touched ~ water, wont touch ~ water, water bowl ~ full, ignores ~ water, "
        "drunk nothing, drank nothing, drunk a thing, hasnt lapped, no drinking, thirst strike, "
        "not lapped, stopped drinking, nothing to drink, not drinking anything, gone near the "
        "water, near ~ water, havent refilled, not refilled, hasnt gone down, not gone down, "
        "water level, off water, off ~ water, not been drinking, not swallowed, wouldnt drink, "
        "still on the line, water ~ hasnt, camel, hasnt been drinking, doesnt want ~ water, no "
        "sip, without ~ drink, without drinking, without water, seen ~ drink, sip"
    ),
    "drinkless": (
        "drinking less, drinks less, barely drinks, barely drinking, hardly drinks, hardly "
        "drinking, drinks hardly, drinking half, drinks half, much less water, not drinking "
        "much, not drinking as, not drinking like, few licks, barely drank, drinks almost "
        "nothing, drinking almost nothing"
    ),
    "longday": (
        "24 hours, 24h, 24 hrs, 26 hours, 30 hours, 36 hours, 48 hours, since yesterday, day "
        "and a half, two days, 2 days, since monday, since tuesday, since wednesday, since "
        "thursday, since friday, since saturday, since sunday, three days, 3 days, day before "
        "yesterday, all day and, whole weekend, the weekend, thirty hours, all day and night, "
        "for days, couple of days, over a day, more than a day, a full day, whole day, day two, "
        "day 2, 28 hours, 40 hours, yesterday morning, yesterday lunch, since last night, night "
        "before last, all yesterday, second day, twenty four, a day and, 1 day, one day, =days"
    ),
    "many": (
        "three, four, five, six, seven, eight, nine, eleven, dozen, 3, 4, 5, 6, 7, 8, 9, 10, "
        "12, 15, 20, 3x, 4x, 5x, 6x, third, fourth, fifth, sixth, seventh, eighth, again and "
        "again, over and over, all night, every hour, every half, hourly, nonstop, non stop, "
        "constantly, lost track, lost count, so many, many times, several, loads, repeatedly, "
        "keeps, keep, kept, everywhere, fountain, volcano, both ends, projectile, wont stop, "
        "cant stop, endless, every ten, every few, cant keep, couldnt keep, after every, each "
        "time, more times, 3 times, x3, x4, x5, another, twice an hour, in a row, still going, "
        "then foam, then yellow, then bile, severe, violent, since midnight, all morning, "
        "bucket, hose, tap, umpteen, whole night, four times, multiple, relentless, round the "
        "clock"
    ),
    "once": ("once, one time, twice, a little, bit of, 1x, 2x, two times, couple of times"),
}
