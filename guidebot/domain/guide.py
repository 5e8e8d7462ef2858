"""The whole guide as values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebot.domain.activity import Activity
from guidebot.domain.answer import Stamp
from guidebot.domain.device import Device
from guidebot.domain.passage import Need, Passage
from guidebot.domain.protocol import Protocol


@dataclass(frozen=True, slots=True)
class Clinic:
    """Who answers: invented contact lines and the signature.

    Attributes:
        name: the clinic.
        phone, email, hours: the clinic's contact line and when it is answered.
        emergency: whom to call for an emergency, one line.
        signature: closing lines of a mail.
        caution: the standing caution under every answer.
    """

    name: str
    phone: str
    email: str
    hours: str
    emergency: str
    signature: tuple[str, ...]
    caution: str


@dataclass(frozen=True, slots=True)
class FitStep:
    """A question of the guided fit check.

    Attributes:
        key: name of the step.
        ask: the question.
        options: what can be chosen: (label, goes) where goes is `next` (on the last step: the
            check is done), `step:KEY`, `need:KEY` (the passage that answers this need),
            `pictures:KEY` (send pictures; the passage of this need says more) or `alert:SIGN`.
    """

    key: str
    ask: str
    options: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class HandsOnStep:
    """One step of putting on or taking off.

    Attributes:
        title: two to six words.
        do: what to do, one or two sentences.
        check: the tension or position check that ends the step, "" if none.
        sleeve: only for this sleeve; None for every one.
        part: only if the device has this optional part; None for every one.
    """

    title: str
    do: str
    check: str = ""
    sleeve: str | None = None
    part: str | None = None


@dataclass(frozen=True, slots=True)
class Guide:
    """Everything that was read from one content folder.

    Attributes:
        needs: by key, in the order of the file.
        passages: by id, sorted.
        wordings: for each need key, the authored wordings; the key `off-topic` holds lines the
            guide does not answer, `courtesy` thanks and greetings.
        vocabulary: owners' word or phrase to the guide's word.
        stamp: version and hash over every file.
        topics: title by topic, in the order of the file.
        leave: authored questions of permission and amount by activity, under `wear` those for hours
            of wear, under `none` what asks no leave; like the wordings, for the compiler only.
        follow_ups: authored follow-ups, also for the compiler only: need of the turn before, need
            of the follow-up, the follow-up.
    """

    needs: Mapping[str, Need]
    passages: Mapping[str, Passage]
    wordings: Mapping[str, tuple[str, ...]]
    vocabulary: Mapping[str, str]
    protocol: Protocol
    activities: Mapping[str, Activity]
    device: Device
    clinic: Clinic
    fit_check: tuple[FitStep, ...]
    putting_on: tuple[HandsOnStep, ...]
    taking_off: tuple[HandsOnStep, ...]
    stamp: Stamp
    topics: Mapping[str, str] = field(default_factory=dict)
    leave: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    follow_ups: tuple[tuple[str, str, str], ...] = ()
