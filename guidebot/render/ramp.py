"""The ramp as a picture: allowed hours against worn hours, setbacks marked; text and SVG.

Nothing is told by colour alone: allowed hours are bars, worn hours are dots (in text: a line of
their own sign), setbacks carry a mark and a word.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from html import escape

from guidebot.plan.said import said_date, said_number
from guidebot.plan.wear import Held, WearDay

LAST_DAYS = 21
"""How many days a chart shows at most: the latest ones."""
_FLAGS = {Held.SORE: "sore", Held.REDNESS: "redness stayed", Held.LIMPING: "more limping"}
_BAR, _DOT, _ASCII_BAR, _ASCII_DOT = "█", "●", "#", "o"


def shown_days(days: Sequence[WearDay], most: int = LAST_DAYS) -> Sequence[WearDay]:
    """The latest days of a ramp."""
    return days[-most:]


def mark(day: WearDay) -> str:
    """What happened on a day, in a word or two; "" for an ordinary day."""
    if day.flag is not None:
        return _FLAGS.get(day.flag, day.flag.value)
    held = {reason.held for reason in day.reasons}
    if Held.SORE in held:
        return "stopped: sore"
    if day.worn == 0:
        return "day off"
    if Held.RESTRICTED in held:
        return "veterinarian's limit"
    return ""


def as_text(days: Sequence[WearDay], *, unicode: bool = True, width: int = 24) -> str:
    """A chart for the terminal, one line a day.

    Args:
        days: the ramp; the latest `LAST_DAYS` are shown.
        unicode: block and dot signs; False keeps to ASCII.
        width: characters of the longest bar.
    """
    bar, dot = (_BAR, _DOT) if unicode else (_ASCII_BAR, _ASCII_DOT)
    days = shown_days(days)
    top = max([*(day.plain for day in days), *(day.worn or Fraction(0) for day in days)])
    lines = [f"Hours of wear ({bar} allowed, {dot} worn, ! setback)"]
    for day in days:
        allowed, worn = _cells(day.allowed, top, width), None
        row = [bar] * allowed + [" "] * (width - allowed)
        said = f"{said_number(day.allowed):>5} h"
        if day.worn is not None:
            worn = min(max(_cells(day.worn, top, width) - 1, 0), width - 1)
            row[worn] = dot
            said += f", worn {said_number(day.worn)} h"
        note = mark(day)
        end = f"  ! {note}" if note else ""
        lines.append(f"day {day.day:>4}  {day.on.isoformat()}  {''.join(row)} {said}{end}")
    return "\n".join(lines)


def _cells(hours: Fraction, top: Fraction, width: int) -> int:
    return round(float(hours / top) * width) if top else 0


_W, _H, _LEFT, _TOP, _BOTTOM = 720, 300, 44, 44, 56


def as_svg(days: Sequence[WearDay], dog: str = "") -> str:
    """The chart as one SVG picture (static, no script, no outside file).

    Args:
        days: the ramp; the latest `LAST_DAYS` are shown.
        dog: the dog's name as stored, "" for none.
    """
    days = shown_days(days)
    top = float(
        max([*(d.plain for d in days), *(d.worn or Fraction(0) for d in days), Fraction(1)])
    )
    step = (_W - _LEFT - 16) / len(days)
    floor, tall = _H - _BOTTOM, _H - _BOTTOM - _TOP

    def x(i: int) -> float:
        return _LEFT + step * (i + 0.5)

    def y(hours: Fraction) -> float:
        return floor - float(hours) / top * tall

    title = f"Hours of wear{f' of {dog}' if dog else ''}"
    span = f"{said_date(days[0].on)} to {said_date(days[-1].on)}"
    setbacks = [f"day {d.day}: {mark(d)}" for d in days if mark(d)]
    told = f"{span}. " + ("; ".join(setbacks) if setbacks else "No setbacks") + "."
    out = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {_W} {_H}" role="img" '
        'aria-labelledby="t d" font-family="sans-serif" font-size="12">',
        f'<title id="t">{escape(title)}</title>',
        f'<desc id="d">{escape(told)}</desc>',
        f'<rect width="{_W}" height="{_H}" fill="#ffffff"/>',
        f'<text x="{_LEFT}" y="18" font-size="14" fill="#1a1a1a">{escape(title)}</text>',
        f'<text x="{_LEFT}" y="34" fill="#1a1a1a">bars: allowed · dots: worn · '
        "triangles: setback</text>",
    ]
    for hours in range(0, int(top) + 1, max(1, int(top) // 4)):
        level = y(Fraction(hours))
        out.append(
            f'<path d="M{_LEFT} {level:.1f}H{_W - 16}" stroke="#c8c8c8"/>'
            f'<text x="{_LEFT - 6}" y="{level + 4:.1f}" text-anchor="end" fill="#1a1a1a">'
            f"{hours} h</text>"
        )
    every = max(1, len(days) // 10)
    for i, day in enumerate(days):
        out.append(
            f'<rect x="{x(i) - step * 0.38:.1f}" y="{y(day.allowed):.1f}" '
            f'width="{step * 0.76:.1f}" height="{floor - y(day.allowed):.1f}" '
            'fill="#bcd6ee" stroke="#2b5c8a"/>'
        )
        if i % every == 0:
            out.append(
                f'<text x="{x(i):.1f}" y="{floor + 16}" text-anchor="middle" fill="#1a1a1a">'
                f"{day.day}</text>"
            )
        if mark(day):
            out.append(
                f'<path d="M{x(i):.1f} {floor + 22}l6 11h-12z" fill="#a11d1d">'
                f"<title>{escape(f'day {day.day}: {mark(day)}')}</title></path>"
            )
    worn = [(x(i), y(d.worn)) for i, d in enumerate(days) if d.worn is not None]
    if worn:
        points = " ".join(f"{a:.1f},{b:.1f}" for a, b in worn)
        out.append(f'<polyline points="{points}" fill="none" stroke="#1a1a1a"/>')
        out += [f'<circle cx="{a:.1f}" cy="{b:.1f}" r="4" fill="#1a1a1a"/>' for a, b in worn]
    out.append(
        f'<text x="{_W - 16}" y="{_H - 8}" text-anchor="end" fill="#1a1a1a">day of wear</text>'
    )
    out.append("</svg>\n")
    return "\n".join(out)
