"""Rules for signs of tier `clinic`; notation in `rules.read`."""

CLINIC = """
redness-stays:
redskin & staysmark @6 !easyday

hair-worn:
bald @0

knuckling-stays:
fold & daysstill @8 !easyday

device-broken:
shell|part & crackdevice @4

device-slides:
strapword|device & slides & daysstill|cantleave @8

licking-stays:
lick & cantleave & spot|limbpart|skin|groin @8

not-tolerated:
fightsit & devicecue & daysstill @8 !easyday
"""
