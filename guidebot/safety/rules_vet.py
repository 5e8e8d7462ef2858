"""Rules for signs of tier `vet-today`; notation in `rules.read`."""

VET_TODAY = """
swallowed-part:
part & chewed & missingpart|ate @6
partany & inside @4
partany & partless & chewcue @8

medicine-asked:
askgive & painkiller @8
askgive & medicine & human|otherpet @9
askmed & medhuman @9

foot-swollen:
foot|pawpads & swollen|cold @5
strapword & cutin @5
footword & footfat @4

skin-open:
skin|spot|limbpart|groin|belly & open @5 !fur
bleednow @2 !notblood
spot|limbpart|groin|skin & pus|smell @5
blood & limbpart|groin|skin @6 !notblood
open & smell|pus|blood @5 !notblood
skinwhere & skinlook & skinlook @5

no-weight:
nofoot @8 !easyday
legup & leg|foot & suddenday @7 !easyday

lameness-worse:
limp & worse @6
gaitbad & gaitworse & gaitworse @8

pop:
pop & knee|leg|ankle & heard @7
pop & knee & nofoot|limp|yelp @8
popnoise & popwhere & popwhere @6 !device

other-leg:
otherleg & limp|sorefind|nofoot|legsfail|yelp|swollen @6

pain-touch:
yelp & touch @5
handback & handto & handto @6

joint-swollen:
knee|ankle|leg & swollen|hot @4
jointword & jointfat @3

surgical-wound:
stitches & stitchbad @6
opword & opbad @4

unwell:
unwell|illsure @0
noeat @4 !part !poisonfood !poisonthing !medicine
vomit|runs @0
drinkless @0

allergy-skin:
skin|limbpart|spot|belly|groin|body & lumps @5
itchy & itchcause @6

nerve-foot:
fold & withoutdev @8
toebad & toeword & barefold @8
footnumb & footword @5
"""
