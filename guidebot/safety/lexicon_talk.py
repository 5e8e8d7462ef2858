"""Words that say how a finding is meant: denied, past, supposed, about someone else."""

TALK: dict[str, str] = {
    "negword": "no, not, never, none, without, zero, neither, nor, isnt, arent, wasnt, werent, doesnt,"
    " dont, didnt, hasnt, havent, hadnt, wont, cant, cannot, couldnt, wouldnt, aint, free of, free from,"
    " nothing, nobody, no sign of, no signs of, hardly any, absence of, clear of, nope, nil, minus, nowhere",
    "negfake": "not only, not just, not sure, not kidding, not joking, not certain, not gonna lie, not going to lie,"
    " not to be, not to worry, not lying, not exaggerating, not the usual, not usual, not usually, not normal,"
    " not normally, not right, not himself, not herself, not good, not ok, not okay, not happy, not great, not"
    " long, not much, not a scratch, not sure if, dont know, dont think, doesnt know, not know, dont want,"
    " dont mind, dont dare, dont like, dont judge, dont understand, dont worry, dont laugh, dont get it,"
    " dont even, no idea, no question, no clue, no doubt, no matter, no joke, no rush, no wonder, cant tell,"
    " not because, never seen, never heard, never used to, never been, never had, never did, why not, not yet, nothing but, probably nothing,"
    " its nothing, maybe nothing, not urgent, not an emergency, didnt know, didnt realise, didnt realize,"
    " didnt mean, didnt want, didnt think, didnt notice, didnt see, havent a clue, not dramatic, not exactly, wasnt sure,"
    " not a big, not the end, not a lot, not too, not that, not really, not very, not entirely, not quite, cant believe,"
    " no big deal, not a fan, not funny, not ideal, not there yet, no answer, no one, nobody told, wasnt there,"
    " not fun, not nice, not pretty, not from, not on, not going to, not better, isnt better, no better, no clinical,"
    " wasnt there yesterday, wasnt like, not like, not the, hasnt changed, no change, no improvement, no difference,"
    " doesnt help, didnt help, not help, not helping, not in heat, no longer, cant bear, cant help, cant remember,"
    " couldnt care, cant keep, cant come, cant get hold, cant reach, cant work, cant afford, cant find out, not my,"
    " doesnt look, dont look, doesnt seem happy, not eat, nothing helps, nothing works, nothing in, not home, not at",
    "butword": "but, however, although, though, except, yet, only, apart from, instead, its just, just that, other than, aside from, besides, until, till",
    "restart": "he, she, it, his, her, its, hes, shes, there, theres, they, theyre, the, this, now, then, i, im, my, we, that, thats, today, since, because, so, when",
    "ifword": "if, whether, unless",
    "hypoword": "what if, what happens, what would, what counts, what does, what do sores, in case, should i worry,"
    " how do i know, how would i, how will i, how can i tell, how do i tell, how do i spot, how do i recognise,"
    " how do i recognize, how do you know, how do you tell, how does one, how would one, how could i, how would we,"
    " how do vets, how do people, how can you tell, how can one, how fast would, how soon would, how quickly would,"
    " how long can a, how long could, how do dogs, sign of, symptom, can a dog, can dogs, could a dog, do dogs, does a dog,"
    " do braces, does a brace, can a brace, could a brace, can the brace, could the brace, can the device, could the"
    " device, can this, can it cause, could it cause, can it ever, could it ever, can he ever, would it ever, do any, are"
    " there, is there a risk, risk of, chance of, chances of, odds of, prevent, avoid, is it possible, how likely, how"
    " common, are sores, are blisters, common, say my, suppose, supposing, imagine if, explain, teach me, difference between, would a, would an,"
    " would he, would she, would it, would i, would the, would you, would his, would her, would that, might, were he to,"
    " were she to, should he ever, should she ever, should it ever, should i ever, if ever, if he ever, if she ever,"
    " if i ever, if it ever, did he ever, look out for, watch for, watch out for, what to look for, what should i look,"
    " keep an eye out, worried about, worry about, worrying about, afraid of, scared of, scared he, scared she, fear of,"
    " nervous about, nightmare about, dream about, dreamt, imagine him, imagine her, read about, reading about, read that,"
    " heard that, some lady online, online that, on a forum, forum, leaflet says, booklet says, sheet says, hypothetically,"
    " theoretically, in theory, general question, asking for, just curious, out of curiosity, curious, for a school,"
    " school project, what are the, which signs, what signs, what symptoms, list of, give me the, tell me about, learn, learning, to be prepared, be prepared, first aid, plan for, planning for, before it happens, so that he doesnt, so"
    " he doesnt, so she doesnt, when would, when should i, when do i, at what point, what point, do you treat, dogs who,"
    " some dogs, any dogs, most dogs, other dogs, is it true, myth, does it hurt, do they, could he, could she, could they,"
    " could that happen, can they, can he hurt, can she hurt, can he get, can she get, can it, might he, might she, would they,"
    " may he get, could strap, could the strap, can straps, can strap, can a strap, do straps, stop him from, stop her from, keep him from, keep her from, without hurting, protect",
    "pastword": "last year, last summer, last winter, last spring, last autumn, last fall, last month, last season, last christmas, last easter, last january, last february, last march, last april, last may,"
    " last june, last july, last august, last september, last october, last november, last december, years ago, year"
    " ago, yrs ago, months ago, month ago, ages ago, long ago, as a puppy, as a pup, as a baby, as a youngster, when he was little, when she was little, when he was a,"
    " when she was a, when he was young, when she was young, in january, in february, in march, in april, in june, in july, in august, in september, in october,"
    " in november, in december, in spring, in autumn, in winter, in the fall, in the spring, last week and, back in, back then, back when, used to, once upon,"
    " healed, has healed, cleared up, all cleared, resolved, recovered, history of, before the brace, before surgery, before we got,"
    " old scar, seasons ago, summers ago, winters ago, since healed, in the past, previously, formerly, decade, original injury,"
    " first injured, injured it, that is how, thats how, thats why we, which is why we got, which is why he wears, which is why she wears, hence the brace, reason for the brace, diagnosed, before i adopted, adopted,"
    " rescue said, shelter said, first owner, previous owner, vet treated, vet said it was, all good since, fine since, good since, never since, not since, no repeat,"
    " long gone, since then fine, ok since, well since, never again, happened once, over christmas, over easter, before easter, before christmas, early on, at the start, in the beginning, weeks ago,"
    " had been, years back, year old scar, behind us, over now, old injury, during covid, the previous, in week one, first week, back to normal, all normal again, is gone now, gone now, has gone, were gone, was gone, went away,"
    " faded within, faded in, fades in, gone in, fades within, gone within, gone after, fades after, faded after, faded before, gone before, gone by",
    "nowword": "now, today, tonight, this morning, this afternoon, this evening, just, again, still, since yesterday, since this,"
    " yesterday, last night, right now, an hour ago, minutes ago, hours ago, currently, suddenly, new, all of a sudden, started",
    "othersubj": "my cat, the cat, our cat, cats, kitten, hamster, goldfish, guinea pig, parrot, rabbit, budgie, tortoise, horse, neighbour, neighbor, neighbours,"
    " neighbors, my back, my own, my knee, my hand, my hands, my finger, my fingers, my wrist, my wrists, my eye, my eyes, my heart, my leg, my foot, my ankle, my shoulder,"
    " my stomach, my skin, my nose, my head, my arm, my thumb, my hip, my nerves, my wallet, my toe, my toes, my nail, my arms, my knees, my blood, my face, my ears, my brain, my neck,"
    " my husband, my wife, my mum, my mom, my dad, my son, my daughter, my sister, my brother, my partner, my friend, my boss, my gran, my grandma, my granny, my grandad, my grandpa, my nan, grandad, grandpa, grandma, granny,"
    " my aunt, my uncle, my cousin, my kid, my kids, my toddler, toddler, the baby, my colleague, my neighbour, my neighbor, my flatmate, my roommate, flatmate, roommate, his brother, her sister, our other dog, other dog, my other dog, the puppy, friends dog,"
    " neighbours dog, neighbors dog, mates dog, another dog, a friends, the lady, postman, courier, washing machine, dishwasher, laptop, phone, printer, tyre, tire, the sofa, the couch, the table, the carpet,"
    " the car, the fridge, the freezer, the plant, the stroller, teddy, toy, roomba, robot, vacuum, hoover, stroller, pram, bag, the box, parcel, screen, boiler, kettle, the wall, our other, the internet, website, computer, tumble dryer, chair, crate",
    "selfsubj": "i, im, ive, we, weve, id, ill, were, me, myself, our",
    "dogword": "he, she, him, her, his, hes, shes, dog, pup, boy, girl, lad, pooch, doggo, mutt, hers, himself, herself, old man, old lady, baby girl, it",
    "denyword": "no, none, nope, nah, never, not, zero, nothing, neither, negative, nil",
    "fixed": "fine, normal, perfect, healed, gone, clear, ok, okay, great, good, all clear, faded, same as, resolved",
    "easyday": "first day, day one, day 1, first time, first session, day two, day 2, first steps, first minute, first minutes, first walk, first go, second session, third session, first few, brand new, newbie, new to it, at first, for a minute, then walked, then normal, a few seconds, thirty seconds, for ten seconds, then forgot, first afternoon, first evening, first wear, ten minutes later, within ten, in ten minutes, ten min, five minutes later, after ten minutes, rights itself, rights himself, rights herself, puts it right, corrects, corrected, flips it back, flips back, sets it right, fluffs, once or twice, settled, only once",
}
