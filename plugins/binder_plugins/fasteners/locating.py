"""Bearings that nothing but screws in clearance holes holds in line, to findings."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, Labelled, NumberOff
from binder_plugins.fasteners import hole_codes

_SCREWED = ("screwed", "bolted", "studded")
_RUNS = ("runs_in",)
_CARRIES = ("pressed", "shrunk", "retained", "glued", "soft_soldered", "silver_soldered")
_LOCATES = (*_CARRIES, "dowelled", "seated", "tapered", "keyed", "pinned", "riveted", "dovetailed")
_IN_LINE = ("reamed in line", "drilled together", "lapped together")


def check_locating(design: Design) -> Iterator[Diagnostic]:
    """Each shaft once, at the first of its bearings that screws alone hold."""
    for runs in _by_shaft(design).values():
        supports = {one: joint for joint in runs for one in _supports(joint, design)}
        shafts = _off(runs[0].ends[0].item, design)
        if sum(_off(one, design) for one in supports) < 2 * shafts:
            continue
        for item, run in supports.items():
            screws = _held_by_screws_alone(item, run, design)
            if screws is not None:
                yield _finding(item, run, screws)
                break


def _by_shaft(design: Design) -> dict[str, list[Joint]]:
    """The running joints that are not made in line, by the shaft, which is named first."""
    found: dict[str, list[Joint]] = {}
    for joint in design.joints.values():
        if joint.kind in _RUNS and len(joint.ends) > 1 and not joint.entry.fixed:
            found.setdefault(joint.ends[0].item, []).append(joint)
    return found


def _supports(run: Joint, design: Design) -> list[str]:
    """What carries a bearing: the part with the bore, or the part that its bush sits in."""
    items = dict.fromkeys(end.item for end in run.ends[1:])
    return [carrier for item in items for carrier in _carriers(item, run.ends[0].item, design)]


def _carriers(item: str, shaft: str, design: Design) -> list[str]:
    found = [
        other
        for joint in design.joints.values()
        if joint.kind in _CARRIES and joint.ends[0].item == item
        for other in joint.items
        if other not in (item, shaft)
    ]
    return found or [item]


def _held_by_screws_alone(item: str, run: Joint, design: Design) -> Joint | None:
    """The joint that screws a support on, None where something locates it."""
    if run.made in _IN_LINE:
        return None
    bush = {end.item for end in run.ends}
    mine = [
        joint
        for joint in design.joints.values()
        if item in joint.items and set(joint.items) - {item} - bush
    ]
    if any(joint.kind in _LOCATES or joint.made in _IN_LINE for joint in mine):
        return None
    return next((joint for joint in mine if joint.kind in _SCREWED), None)


def _finding(item: str, run: Joint, screws: Joint) -> Diagnostic:
    return hole_codes.SCREW_LOCATES.at(
        screws.at,
        f"nothing but clearance holes keeps '{item}' in line for '{run.ends[0].item}'",
        related=(Labelled(run.at, "the shaft runs here"),),
        help="ream the bearings in line (`made: reamed in line`), give it a spigot (`seated:`), "
        "or dowel it (`dowelled:`) once the shaft turns freely",
    )


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return number.count if number is not None else 1
