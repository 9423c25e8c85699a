"""What is said of a stop that is bonded on a shaft, of which nobody told how long it is."""

from __future__ import annotations

from binder.api import Design, Joint, exact, shown_length
from binder_solid.outer_stop import OuterStop, outer_stop


def stop_at(joint: Joint, design: Design) -> str:
    """`the stepped pulley is set 64.15 mm from its inner face` for the first of two outer stops.

    Only where the other one can still be moved; '' for what is no stop.
    """
    found = outer_stop(joint, design)
    if found is None:
        return ""
    apart = shown_length(exact(round(found.apart, 3)), design.units)
    where = _at(found, design) or "anywhere on its seat"
    return f"{where}; the {found.other.title} is set {apart} from its inner face"


def _at(found: OuterStop, design: Design) -> str:
    """Where the inner face comes along the shaft, by the line that the leaf of the shaft marks."""
    if found.face.at is None:
        return ""
    at, give = (
        shown_length(exact(round(mm, 2)), design.units) for mm in (found.face.at, found.face.give)
    )
    return (
        f"its inner face on the line {at} from the left end of the "
        f"{design.parts[found.shaft].title}, {give} more or less at the most, so that "
        f"{'it stays on its seat and ' if found.face.is_by_seat else ''}the screw of the "
        f"{found.other.title} lands on its flat"
    )
