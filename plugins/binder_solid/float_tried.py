"""An end float to what it is tried with, one answer for leaf, assembly, inspection and lists."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from binder.api import ChainFact, Design, Joint, Located, ShaftFact, exact, shown_length
from binder_solid.float_mended import remedies

FEELERS = "feeler gauges"
RIVETED = "riveted"
_OWNED = re.compile(r"\bfeelers?\b", re.IGNORECASE)
_SHOULDERS, _LONG = "shoulders", "length of the "
_LOCATED = frozenset({Located.INSIDE, Located.OUTSIDE, Located.ONE})


@dataclass(frozen=True, slots=True)
class EndFloat:
    """What is left along an axis: `least` to `most` mm are wanted, `joints` are those it frees.

    `little` and `much` say what is done where it comes out under or over that.
    """

    subject: str
    title: str
    least: float
    most: float
    joints: frozenset[str]
    little: str
    much: str


def end_floats(design: Design) -> Iterator[EndFloat]:
    """The float of what turns between two shoulders, then of each row on a shaft."""
    for chain in design.facts.all(ChainFact):
        if chain.kind == _SHOULDERS:
            yield _between(chain, design)
    for shaft in design.facts.all(ShaftFact):
        if shaft.located in _LOCATED and shaft.most > 0:
            yield _along(shaft, design)


def float_wanted(one: EndFloat, design: Design) -> str:
    """`'handle on arm' has 0.1 mm to 0.3 mm of end float (dial indicator, push and pull)`."""
    least, most = (shown_length(exact(round(mm, 3)), design.units) for mm in (one.least, one.most))
    name = one.title if one.title.startswith("'") else f"the {one.title}"
    tried = float_tried(one.least, one.most, design)
    return f"{name} has {least} to {most} of end float ({tried})"


def shut_by(joint: Joint, design: Design) -> Iterator[EndFloat]:
    """The floats that a joint shuts for good: nothing is shortened once the tail is spread."""
    if joint.kind == RIVETED:
        yield from (one for one in end_floats(design) if joint.name in one.joints)


def owns_feelers(design: Design) -> bool:
    """Whether the workshop names feeler gauges."""
    entry = design.workshop.entry
    return any(_OWNED.search(str(one)) for one in (*entry.hand_tools, *entry.measuring))


def float_tool(most: float, design: Design) -> str:
    """The name of the instrument: feelers that are owned, an indicator, or feelers to be had.

    `most` is the largest float in mm. Common practice, no source.
    """
    if owns_feelers(design):
        return FEELERS
    found = design.workshop.finest(Fraction(0), exact(round(most, 6)), "run-out")
    return found.name if found is not None else FEELERS


def float_tried(least: float, most: float, design: Design) -> str:
    """How a float in mm is tried: `dial indicator, push and pull`, or which leaf goes in."""
    tool = float_tool(most, design)
    if tool == FEELERS:
        low, high = (shown_length(exact(round(mm, 3)), design.units) for mm in (least, most))
        return f"{tool}: {low} goes in, {high} does not"
    return f"{tool}, push and pull"


def _between(chain: ChainFact, design: Design) -> EndFloat:
    """The float on a journal; what is riveted on its pin, at one end or both, shuts it as well."""
    pin = chain.items[0]
    shut = {one.name for one in design.joints.values() if one.kind == RIVETED and pin in one.items}
    joint = chain.subject.partition(": ")[0]
    opens = next((one.name for one in chain.links if one.factor > 0), "")
    closes = next((one.name for one in chain.links if one.factor < 0), "")
    return EndFloat(
        chain.subject,
        f"'{joint}'",
        chain.least,
        chain.most,
        frozenset({joint, chain.closed_by, *shut} - {""}),
        f"shorten the {closes.removeprefix(_LONG)}",
        f"shorten the {opens.removeprefix(_LONG)}",
    )


def _along(shaft: ShaftFact, design: Design) -> EndFloat:
    item = design.item(shaft.subject)
    little, much = remedies(shaft, design)
    return EndFloat(
        f"{shaft.subject}: end float",
        item.title if item is not None else shaft.subject,
        float(shaft.least),
        float(shaft.most),
        frozenset(piece.joint for piece in shaft.pieces if piece.joint),
        little,
        much,
    )
