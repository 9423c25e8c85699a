"""The name of a drill, as makers write it, to the drill."""

from __future__ import annotations

import re
from collections.abc import Iterable
from fractions import Fraction
from functools import cache

from binder_trade.drills.drill import Drill, NoDrill
from binder_trade.drills.lists import all_drills, standard_drills

_MOST_CHARACTERS = 40
_NUMBER = re.compile(
    r"(?:no\.? ?|number ?(?:drill )?|# ?)(?P<no>[0-9]{1,2})(?: drill)?", re.IGNORECASE
)
_LETTER = re.compile(r"(?:letter (?:drill )?)?(?P<letter>[A-Z])(?: drill)?", re.IGNORECASE)
_INCHES = re.compile(r"(?:(?P<whole>[0-9]) )?(?P<part>[0-9]{1,2}/[0-9]{1,2}) ?(?:in|inch|\")?")
_METRIC = re.compile(r"(?P<mm>[0-9]{1,3}(?:\.[0-9]{1,3})?)(?: ?mm)?")
_LARGEST_FRACTION = Fraction(3)


def drill_named(name: str, drills: Iterable[Drill] | None = None) -> Drill:
    """The drill of a name: `3.3 mm`, `no. 34 drill`, `#34`, `F`, `letter F drill`, `7/64 in`.

    Looks through `drills`, or else through every standard list, where fractions of an inch by
    sixty-fourths are known up to 3 in. Raises `NoDrill` where there is none of that name.
    """
    plain = " ".join(name.split())[:_MOST_CHARACTERS]
    wanted = _canonical(plain)
    named = _standard_names() if drills is None else _names(drills)
    if wanted.casefold() in named:
        return named[wanted.casefold()]
    fraction = None if drills is not None else _larger_fraction(wanted)
    if fraction is None:
        raise NoDrill(f"there is no drill {plain!r}", _near(wanted))
    return fraction


@cache
def _standard_names() -> dict[str, Drill]:
    """Every drill that is sold by its names."""
    return _names(all_drills())


def _names(drills: Iterable[Drill]) -> dict[str, Drill]:
    """Each drill by its own name and by ours; the first of a name keeps it."""
    named: dict[str, Drill] = {}
    for drill in drills:
        named.setdefault(drill.name.casefold(), drill)
        named.setdefault(_canonical(drill.name).casefold(), drill)
    return named


def _canonical(text: str) -> str:
    """The name as our lists write it; a text that is none of theirs comes back as it is."""
    if found := _NUMBER.fullmatch(text):
        return f"no. {int(found['no'])} drill"
    if found := _LETTER.fullmatch(text):
        return f"letter {found['letter'].upper()} drill"
    if found := _INCHES.fullmatch(text):
        return _inches(found["whole"], found["part"]) or text
    if found := _METRIC.fullmatch(text):
        return f"{float(found['mm']):g} mm"
    return text


def _inches(whole: str | None, part: str) -> str | None:
    top, bottom = part.split("/")
    if not int(bottom):
        return None
    exact = Fraction(int(whole or 0)) + Fraction(int(top), int(bottom))
    units, rest = divmod(exact, 1)
    return f"{units} {rest} in" if units and rest else f"{rest or units} in"


def _larger_fraction(name: str) -> Drill | None:
    """Fractions beyond the half inch are sold too; each is exact."""
    found = _INCHES.fullmatch(name)
    if found is None or _inches(found["whole"], found["part"]) is None:
        return None
    inches = Fraction(int(found["whole"] or 0)) + Fraction(found["part"])
    if not 0 < inches <= _LARGEST_FRACTION or 64 % inches.denominator:
        return None
    return Drill(name, float(inches * Fraction("25.4")), "fraction")


def _near(name: str) -> str:
    if name.startswith("no. "):
        return "number drills run from no. 80 to no. 1"
    if found := _METRIC.fullmatch(name.removesuffix(" mm")):
        mm = float(found["mm"])
        near = min(standard_drills("metric as sold"), key=lambda drill: abs(drill.mm - mm))
        return f"the nearest that is sold is {near.name}"
    return "write it as 3.3 mm, no. 34 drill, letter F drill or 7/64 in"
