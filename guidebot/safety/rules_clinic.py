"""Rules for signs of tier `clinic`; notation in `rules.read`."""

CLINIC = """
redness-stays:
redskin & staysmark @6 !easyday
stayred & staytime @7

hair-worn:
bald @0
baldword & baldwhere @6

knuckling-stays:
fold & daysstill @8 !easyday
toebad & toeword & longtime @8 !easyday

device-broken:
shell|part & crackdevice @4
brokeword & brokepart @4

device-slides:
strapword|device & slides & daysstill|cantleave @8
slideword & slideagain & slideword|strapword|device @8

licking-stays:
lick & cantleave & spot|limbpart|skin|groin @8
lickword & licklong & limbpart|spot|lickword @8

not-tolerated:
fightsit & devicecue & daysstill @8 !easyday
refuse & refusewhen & refuselong @9 !easyday
"""
