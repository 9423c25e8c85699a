"""A chain to its whole links and the centres that they want."""

from __future__ import annotations

from math import degrees

from binder.api import Design, Joint, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.train.told import teeth_of
from binder_trade.chains.roller import chain_drive
from binder_trade.explained import NotDefined

# Of the centres, how far a chain may hang slack and how far it stretches: common practice.
_SLACK, _TIGHT = 0.02, 0.001


def chaining(joint: Joint, design: Design) -> Told:
    """The links of a chain over two wheels whose pitch and centres are told."""
    entry = joint.entry
    pitch, centres = getattr(entry, "pitch", None), getattr(entry, "centres", None)
    first, second = (teeth_of(joint, number, design) for number in (0, 1))
    if not isinstance(pitch, Size) or not isinstance(centres, Size) or not first or not second:
        return Told()
    is_bead = bool(getattr(entry, "bead", False))
    try:
        made = chain_drive(
            pitch.mm, first, second, centres.mm,
            even=not is_bead, links=getattr(entry, "links", None),
        )  # fmt: skip
    except NotDefined as refusal:
        finding = codes.CHAIN_LENGTH_WRONG.at(joint.at, refusal.reason, help=refusal.way_out)
        return Told(None, (finding,))
    cranked = ", with a cranked link" if made.needs_cranked_link and not is_bead else ""
    rows = (
        ("Links", f"{made.links}{cranked}; {made.links_exact:.2f} by the centres told"),
        ("Length", size(made.length_mm, design)),
        ("Centres for them", size(made.centres_mm, design)),
        ("Lies on the small wheel", f"{degrees(made.wrap_small_rad):.0f}°"),
    )
    duty = DutyFact(joint.name, "Chain", rows, made.steps)
    over = made.centres_mm / centres.mm - 1
    if -_TIGHT <= over <= _SLACK:
        return Told(duty)
    how = "too long" if over > 0 else "too short"
    finding = codes.CHAIN_LENGTH_WRONG.at(
        centres.span,
        f"{made.links} links are {how} at {size(centres.mm, design)}",
        help=f"set the wheels {size(made.centres_mm, design)} apart, or take up the chain "
        "with a jockey",
    )
    return Told(duty, (finding,))
