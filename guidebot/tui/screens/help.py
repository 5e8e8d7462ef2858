"""The help page."""

from __future__ import annotations

TEXT = """\
Ask in your own words. The answer is text of the guide, with its source, and what can be counted \
from the day your device was fitted. A sign of injury in your words is answered first, in a block \
with a heavy border. It stays until you press F8.

Everywhere
- F1 this page
- F2 Talk: ask and read
- F3 Today: the day of your dog, diary, ticks
- F4 Hands on: put on, take off, check the fit
- F5 Staff: today's dogs, answer as a mail
- F8 I have read the alert; later: show it again
- F9 choose or add a dog
- Ctrl+P find any passage, dog or action by its name
- Ctrl+Q quit
- Tab moves on, Shift+Tab moves back

In Talk
- Enter sends, Ctrl+J begins a new line; a paste keeps all its lines
- Page up and Page down move the answer while you write
- F6 opens the sources one after the other, then closes them
- When several passages may be meant: write the number and press Enter
- Ctrl+Up and Ctrl+Down look at earlier and later answers
- F7 copies the answer as a mail

In Today
- d diary for today, y for yesterday, p powder used, s skin check

In Hands on
- Space: done, next step. b: one step back. m: menu. Numbers choose.

If your terminal keeps a function key for itself, press Ctrl+P and write what you want. \
For a screen reader, start "guidebot chat" instead: the same, line by line. \
Colours: Ctrl+P, then write light, dark or colours. NO_COLOR is respected.
"""
