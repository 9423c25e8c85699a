"""Screws that carry what is struck, and that nothing locks."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, JointFact
from binder_plugins.threads import codes

_PIVOTS = ("hinged", "swivels", "runs_in")


def check_shaken(design: Design) -> Iterator[Diagnostic]:
    """Every thread whose screw is a pivot of a lever that a wheel trips."""
    blows = [one for one in design.joints.values() if one.kind == "trips"]
    for blow in blows:
        struck = _with(blow.ends[-1].item, design)
        carrying = {
            item
            for one in design.joints.values()
            if one.kind in _PIVOTS and struck & set(one.items)
            for item in one.items
        } - struck
        for joint in design.joints.values():
            is_free = joint.kind == "threaded" and not joint.held_by and not joint.entry.fixed
            if is_free and carrying & set(joint.items):
                yield codes.SCREW_SHAKES_LOOSE.at(
                    joint.ends[0].at,
                    f"'{joint.name}' holds what '{blow.name}' lifts and lets fall, and nothing "
                    "locks it",
                    help="add a lock nut and name it, `held_by: lock_nut`; or say `fixed: true` "
                    "where compound holds it for good",
                )


def _with(item: str, design: Design) -> set[str]:
    """What is fixed to an item for good, with itself."""
    lasting = [
        set(one.items)
        for one in design.joints.values()
        if (fact := design.facts.about(JointFact, one.name)) is not None and fact.is_lasting
    ]
    found, fresh = {item}, True
    while fresh:
        fresh = False
        for items in lasting:
            if items & found and not items <= found:
                found |= items
                fresh = True
    return found
