"""The fixed sentences round the guide's own: nothing else is ever said."""

from __future__ import annotations

UNSURE = "The guide has more than one passage that may be meant. Which of these is it?"
NOT_IN_GUIDE = "The guide does not answer this. Please ask the clinic: {contact}."
ALERT_FIRST = "First do what the alert says; what follows is for afterwards."
ALERT_ONLY = "First do what the alert says. The guide has nothing to add to it."
AFTER_ALERT = "First do what the alert says. For afterwards, which of these is it?"
OTHER_LANGUAGE = (
    "This guide answers in English only. Please write in English, or ask the clinic: {contact}."
)
EMPTY = "There is no question in the message. Please write what you would like to know."
COURTESY = "You are welcome. Ask whenever something about the device is unclear."
GREETING = "Hello. Ask anything about the device: wearing it, skin, walks, cleaning, parts."
WHICH_SLEEVE = "Which sleeve does the device have, {names}? The steps differ."
FAILED = "Something went wrong while searching. Please ask the clinic: {contact}."
IF_NOW = "If you see this now ({name}): {do}"
VET_FIRST = "What your veterinarian told you for your dog comes before this guide."
VET_ORDERED = (
    "You tell what your veterinarian ordered. That comes before this guide: keep to it, and ask "
    "your veterinarian before you do more."
)
SEARCHED_FOR = 'Searched for "{meant}" in place of "{typed}".'
ALSO_ASKED = "You also asked about this: {title} [{id}]: {short}"
