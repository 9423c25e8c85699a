"""The names of wire gauges and drills as makers write them, read by their grammar."""

from __future__ import annotations

import re
from dataclasses import dataclass

from binder.units.designations import MOST_CHARACTERS, Misread

_LARGEST_NUMBER_DRILL = 80


@dataclass(frozen=True, slots=True)
class GaugeName:
    """A member of a series of gauges or drills: swg, awg, number_drill or letter_drill."""

    series: str
    member: str
    text: str


GAUGE_PATTERN = (
    r"(?P<wire>[2-7]/0|[0-9]{1,2}) ?(?P<series>swg|awg)\b"
    r"|(?:no\.? ?|\# ?)(?P<number>[0-9]{1,2}) ?drill\b"
    r"|letter ?(?P<letter>[A-Z]) ?drill\b"
)
_GAUGE = re.compile(GAUGE_PATTERN, re.IGNORECASE | re.ASCII)


def read_gauge(text: str) -> GaugeName | Misread:
    """The gauge or drill that a designation names, or why it names none."""
    plain = " ".join(text[:MOST_CHARACTERS].split())
    found = _GAUGE.fullmatch(plain)
    if found:
        return gauge_of(found)
    return Misread("write it as 12 swg, no. 34 drill or letter F drill")


def gauge_of(found: re.Match[str]) -> GaugeName | Misread:
    """The gauge in a match of GAUGE_PATTERN."""
    if found["letter"]:
        return GaugeName("letter_drill", found["letter"].upper(), found[0])
    if found["number"]:
        number = int(found["number"])
        if not 1 <= number <= _LARGEST_NUMBER_DRILL:
            return Misread(f"number drills run from no. 1 to no. {_LARGEST_NUMBER_DRILL}")
        return GaugeName("number_drill", str(number), found[0])
    wire = found["wire"]
    member = wire if "/" in wire else str(int(wire))
    return GaugeName(found["series"].lower(), member, found[0])
