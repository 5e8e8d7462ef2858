"""The table of signs and the fixed stop-and-call text."""

from __future__ import annotations

from types import MappingProxyType

from guidebot.domain.sign import Alert, Sign, Tier
from guidebot.safety.signs_emergency import EMERGENCY
from guidebot.safety.signs_other import CLINIC, VET_TODAY

SIGNS: tuple[Sign, ...] = EMERGENCY + VET_TODAY + CLINIC
"""Every sign, most urgent tier first; inside a tier the order breaks ties."""

BY_KEY = MappingProxyType({sign.key: sign for sign in SIGNS})
ORDER = MappingProxyType({sign.key: place for place, sign in enumerate(SIGNS)})

HEADLINE = MappingProxyType(
    {
        Tier.EMERGENCY: "Emergency: call an emergency vet clinic now",
        Tier.VET_TODAY: "Call your vet today",
        Tier.CLINIC: "Pause wear and call the fitter",
    }
)

# Tier emergency, not vet-today: a message that could not be checked may hold the worst there is,
# and a call too many costs a minute.
STOP_AND_CALL = Alert(
    tier=Tier.EMERGENCY,
    sign="stop-and-call",
    headline="Stop and call: this message could not be checked for signs of injury",
    quote="",
    do=(
        "If your dog bleeds, breathes hard, collapsed, ate something harmful or is in bad pain: "
        "call an emergency vet clinic now.",
        "Take the device off. If a leg may be broken, leave it on and keep your dog still.",
        "If you saw anything else that worries you, call your vet or the fitter today.",
    ),
)
