"""Rules for signs of tier `emergency`; notation in `rules.read`."""

EMERGENCY = """
bleeding-heavy:
blood & heavy|nonstop @8
crimescene @0
soakthrough & limbpart|redstuff|blood|open|device @10
redstuff & heavy & limbpart|open @8
open & heavy & nonstop @8

breathing:
breathphrase @0 !device
breathe & breathbad @5
coughgag & nonstop @6
gums & bluecol|palecol|redcol|cold @5
breathe & bluecol @8

blood-inside:
blood & nose|mouth|bum|pee|poo|vomit|runs|coughgag|drool @7
pee|poo|vomit|runs|drool & redstuff @6
poo|runs & bluecol @5
tarry @0
coughgag & redstuff @7

cannot-pass:
cantpass @0 !easyday
strain & nothingout @7
strain & pee|poo|cantpass & nothingout|yelp|nonstop @8
pee|poo & yelp @5
strain & yelp & pee|poo|strain @6

eye:
eye & eyebad @4 !fur
mouthacid & eye @6

poison:
ate & poisonfood|poisonthing @7
gonepack & poisonfood|poisonthing @6
medpoison @0

medicine-taken:
ate & medicine @6 !own
gave & painkiller @7
gave & medicine & human|otherpet @8
gonepack & medicine @6
double & own @6
gave|ate & own & double @8
ate & own & gonepack|double @8

seizure:
fitsure @0
fit & drool|nonstop|frantic|weak|body @7 !device
drunk & leg|backlegs|head|body @4
walkdrunk @0
headtilt @0
backlegs & legsfail @4
eye & fit @4

limb-broken:
leg|ankle|foot|knee & wrongangle @5 !device
leg|foot & dangles @4 !device
bone & seebone @5
leg|foot|ankle & broken @4 !device
leg & cantmove @5

severe-pain:
scream & nonstop @6
scream & frantic @8
frantic & nonstop|pant|yelp @8

heat:
heatsure @0
heatcause & heatsign @10
pant & nonstop @6
pant & drool|frantic|weak|drunk @8

gut-severe:
vomit|runs & many @6
vomit & runs @12
vomit|runs & weak|drool|noeat @8

not-drinking:
nodrink & longday @10

collapse:
collapsed @0 !device
cantgetup @0
weak & suddenly @4

bloat:
retch & nothingup @6
belly & belltight @4
bellphrase @0

accident:
hit & vehicle @6
hit & body|chest|back @6
fell & height @6
shock @0

wound-deep:
deep & skin|limbpart|belly|chest|back|blood|open|neckish @6
bittenby @0
seebone & bone|meat @5

allergy-severe:
face & swollen|faceballoon|lumps @4
sting & swollen|lumps @10
lumps & body & swollen|lumps @6

swallowed-distress:
part & chewed|missingpart & distress @14

foot-no-blood:
foot|pawpads & bluecol|palecol|icy|numb @5 !nailtrim
foot & cold & bluecol|palecol|numb @8

labour:
labourword & labourbad @10
"""
