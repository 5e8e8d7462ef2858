"""The guide as plain JSON values and back: what the compiled guide holds, read without YAML."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from fractions import Fraction
from typing import Any

from guidebot.domain.activity import Activity, Say, StageRule
from guidebot.domain.answer import Stamp
from guidebot.domain.device import Device, Part, SleeveKind
from guidebot.domain.guide import Clinic, FitStep, Guide, HandsOnStep
from guidebot.domain.passage import Applies, Need, Passage, Reviewed
from guidebot.domain.protocol import Protocol, Quantity, Stage

Plain = dict[str, Any]


def to_plain(guide: Guide) -> Plain:
    """Everything but the wordings, which only the compiler needs."""
    return {
        "needs": [[need.key, need.asks] for need in guide.needs.values()],
        "topics": list(guide.topics.items()),
        "passages": [_passage_out(p) for p in guide.passages.values()],
        "vocabulary": dict(guide.vocabulary),
        "numbers": [
            [q.key, str(q.value), q.unit, q.basis, q.line] for q in guide.protocol.numbers.values()
        ],
        "stages": [
            [s.key, s.name, s.from_day, s.from_month, s.says] for s in guide.protocol.stages
        ],
        "activities": [_activity_out(a) for a in guide.activities.values()],
        "device": [
            guide.device.name,
            guide.device.words,
            [[p.key, p.name, p.words, p.optional] for p in guide.device.parts],
            [[s.key, s.name, s.words, s.usual] for s in guide.device.sleeves],
            guide.device.skin_places,
        ],
        "clinic": [
            guide.clinic.name,
            guide.clinic.phone,
            guide.clinic.email,
            guide.clinic.hours,
            guide.clinic.emergency,
            guide.clinic.signature,
            guide.clinic.caution,
        ],
        "fit_check": [[s.key, s.ask, s.options] for s in guide.fit_check],
        "putting_on": [_step_out(s) for s in guide.putting_on],
        "taking_off": [_step_out(s) for s in guide.taking_off],
        "stamp": [guide.stamp.version, guide.stamp.hash],
    }


def _passage_out(p: Passage) -> list[Any]:
    a = p.applies
    return [
        p.id,
        p.topic,
        p.title,
        p.answers,
        p.short,
        p.body,
        p.basis,
        [p.reviewed.on.isoformat(), p.reviewed.role],
        [a.sleeve, a.part, a.stages, a.days],
        p.see,
        p.path,
    ]


def _activity_out(a: Activity) -> list[Any]:
    rules = {k: [r.say.value, r.why, r.now, r.line] for k, r in a.stages.items()}
    return [a.key, a.name, a.need, a.words, rules]


def _step_out(s: HandsOnStep) -> list[Any]:
    return [s.title, s.do, s.check, s.sleeve, s.part]


def from_plain(plain: Mapping[str, Any], wordings: Mapping[str, tuple[str, ...]]) -> Guide:
    """The guide back from `to_plain`'s values; KeyError or ValueError if they are not that."""
    device_name, device_words, parts, sleeves, places = plain["device"]
    name, phone, email, hours, emergency, signature, caution = plain["clinic"]
    return Guide(
        needs={key: Need(key, asks) for key, asks in plain["needs"]},
        passages={row[0]: _passage_in(row) for row in plain["passages"]},
        wordings=wordings,
        vocabulary=plain["vocabulary"],
        protocol=Protocol(
            {
                key: Quantity(key, Fraction(value), unit, basis, line)
                for key, value, unit, basis, line in plain["numbers"]
            },
            tuple(Stage(*row) for row in plain["stages"]),
        ),
        activities={row[0]: _activity_in(row) for row in plain["activities"]},
        device=Device(
            device_name,
            tuple(device_words),
            tuple(Part(key, n, tuple(w), optional) for key, n, w, optional in parts),
            tuple(SleeveKind(key, n, tuple(w), usual) for key, n, w, usual in sleeves),
            tuple(places),
        ),
        clinic=Clinic(name, phone, email, hours, emergency, tuple(signature), caution),
        fit_check=tuple(
            FitStep(key, ask, tuple((label, goes) for label, goes in options))
            for key, ask, options in plain["fit_check"]
        ),
        putting_on=tuple(HandsOnStep(*row) for row in plain["putting_on"]),
        taking_off=tuple(HandsOnStep(*row) for row in plain["taking_off"]),
        stamp=Stamp(*plain["stamp"]),
        topics=dict(plain.get("topics", ())),
    )


def _passage_in(row: list[Any]) -> Passage:
    key, topic, title, answers, short, body, basis, reviewed, applies, see, path = row
    sleeve, part, stages, days = applies
    return Passage(
        key,
        topic,
        title,
        tuple(answers),
        short,
        body,
        basis,
        Reviewed(date.fromisoformat(reviewed[0]), reviewed[1]),
        Applies(sleeve, part, tuple(stages), (days[0], days[1]) if days else None),
        tuple(see),
        path,
    )


def _activity_in(row: list[Any]) -> Activity:
    key, name, need, words, rules = row
    stages = {k: StageRule(Say(say), why, now, line) for k, (say, why, now, line) in rules.items()}
    return Activity(key, name, need, tuple(words), stages)
