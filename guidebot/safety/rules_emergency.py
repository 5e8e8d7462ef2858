"""Rules for signs of tier `emergency`; notation in `rules.read`."""

EMERGENCY = """
bleeding-heavy:
blood & heavy|nonstop @7 !notblood
crimescene|redfloor @10 !notblood
soakthrough & limbpart|redstuff|blood|open|pressing|cutword @10
redstuff & heavy & limbpart|open|cutword @8 !notblood
open|cutword & flow & stillgoing @9
pressing & stillgoing & flow|blood|redstuff|cloth @10
cloth & clothfull & pressing|cutword|limbpart|stillgoing|redstuff @8
flow & stillgoing & flow|cutword|limbpart @8
flow & stillgoing & limbpart|cutword @8
pressing & cutword & stillgoing @9
pressend & bleedon & stillgoing|flow|cutword|limbpart @12 !notblood
blood & bleedon @6 !notblood

breathing:
breathphrase @0
windlost @0
breathe & breathbad @5
coughgag & nonstop @6
gums & bluecol|palecol|redcol|cold @5
breathe & bluecol @8
soundsword & throatnoise & nonstop|breathe|coughgag @8

blood-inside:
blood & nose|mouth|bum|pee|poo|vomit|runs|coughgag|drool @6
pee|poo|vomit|runs|drool & redstuff @5
poo|runs & bluecol @4
tarry @0
coughgag & redstuff @7
nose & redstuff & flow @7

cannot-pass:
cantpass @0
strain & nothingout @7
strain & pee|poo|cantpass & nothingout|yelp|nonstop @8
pee|poo & yelp @5
strain & yelp & pee|poo|strain @6
passwater & passnot & sincelong & strain|yelp @12
strain & sincelong & passnot @8
drylift & dryout @6

eye:
eye & eyebad @4 !fur
mouthacid & eye @6
eyespot & ingesteye @6
eyeact & oneside @6

poison:
ate & poisonfood|poisonthing @7
gonepack & poisonfood|poisonthing @6
medpoison @0
poisonfood|poisonthing & amount @6

medicine-taken:
ate & medicine @6 !own
gave & painkiller @7
gave & medicine & human|otherpet @8
gonepack & medicine @6
double & own @6
gave|ate & own & double @8
ate & own & gonepack|double @8
pillthing & pillgone & human|otherpet @8
pillthing & pillgone & double|ate @8
gavehuman & gave|ate|pillthing|sincelong @10
pillthing|painkiller & dogend @6

seizure:
fitsure @0
fit & drool|nonstop|frantic|weak|body @6 !device
drunk & leg|backlegs|head|body @4 !easyday
walkdrunk|headtilt|headside @0
backlegs & legsfail @4
eye & fit @4
fitlook & fitlook & nowstart @8
wobble & nowstart @6 !device
legsgone & legsfail & nowstart @8
stiffword & stiffwith @6

limb-broken:
leg|ankle|foot|knee|legmove & wrongangle @5
leg|foot & dangles @4 !strapword
bone & seebone @5
leg|foot|ankle & broken @4 !device
leg & cantmove @4
legmove & legwrong & suddenday @8 !easyday !strapword
lowerleg & floppybad @4 !strapword

severe-pain:
scream & nonstop @6
scream & frantic @8
frantic & nonstop|pant|yelp @8
screamlike @0
cantrest & yelp|scream|nonstop @9

heat:
heatsure @0
heatcause & heatsign @10
pant & nonstop @5
pant & drool|frantic|weak|drunk @8
heatword & heatbad @10

gut-severe:
vomit|runs & many @6
vomit & runs @12
vomit|runs & weak|drool|noeat @8
emesis & emmany & emmany @8
tummyout & emesis @6
goes @0

not-drinking:
nodrink & longday @10
waterword & waternot & longday @9

collapse:
collapsed|dropdown|wontanswer @0
cantgetup @0
weak & suddenly @4

bloat:
retch & nothingup @6
belly & belltight @3
bellphrase @0
airbelly & bellyword @4
airbelly & uneasy @9

accident:
hit & vehicle @6
hit & body|chest|back @6
fell & height @6
shock|wentdown @0
animalhit & hitword @4 !easyday
zapword & zapdo @5

wound-deep:
deep & skin|limbpart|belly|chest|back|blood|open|neckish @6
bittenby|snakey @0
seebone & bone|meat @4
seeword & flesh @3
spiky & spikedo @4
bigwound @0
dogfight & fightdo & limbpart|blood|open|neckish|bigwound|deep @10

allergy-severe:
face & swollen|faceballoon|lumps @4
sting & swollen|lumps @10
lumps & body & swollen|lumps @6
faceword & facebig @3
hivesword & allover @5

swallowed-distress:
part & chewed|missingpart & distress @12
partany & inside & distress @10

foot-no-blood:
foot|pawpads|footword & bluecol|palecol|icy|numb @5 !nailtrim
foot & cold & bluecol|palecol|numb @8

labour:
labourword & labourbad @10
birth & birthpush & pregword|labourbad|birthpush @8
pregword & birthpush @6
"""
