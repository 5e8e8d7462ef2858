"""Rules for signs of tier `vet-today`; notation in `rules.read`."""

VET_TODAY = """
swallowed-part:
part & chewed & missingpart|ate @6

medicine-asked:
askgive & painkiller @8
askgive & medicine & human|otherpet @9

foot-swollen:
foot|pawpads & swollen|cold @5
strapword & cutin @5

skin-open:
skin|spot|limbpart|groin|belly & open @5 !fur
spot|limbpart|groin|skin & pus|smell @5
blood & spot|limbpart|groin|skin|strapword @7
open & smell|pus|blood @5

no-weight:
nofoot @0 !easyday

lameness-worse:
limp & worse @6

pop:
pop & knee|leg|ankle & heard @7
pop & knee & nofoot|limp|yelp @8

other-leg:
otherleg & limp|sorefind|nofoot|legsfail|yelp|swollen @6

pain-touch:
yelp & touch @5

joint-swollen:
knee|ankle|leg & swollen|hot @4

surgical-wound:
stitches & stitchbad @6

unwell:
unwell @0
noeat @0 !part !poisonfood !medicine
vomit|runs @0
drinkless @0

allergy-skin:
skin|limbpart|spot|belly|groin|body & lumps @5

nerve-foot:
fold & withoutdev @8
"""
