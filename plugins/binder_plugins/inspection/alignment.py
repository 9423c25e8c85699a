"""Joints to what must be in line, square or parallel, with how far off it may be.

What a joint leaves as clearance is all that it bears: half of it between two bores in line, the
whole of it over the length of one that stands askew. Source of the shares and of the figures
below: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    FitFact,
    Joint,
    ThreadFact,
)
from binder_plugins.inspection.true_bores import in_line, standing
from binder_plugins.inspection.trueness import BAR_MM, Alignment, spare_mm
from binder_solid.facts import FormFact

# A screw beside its slide, over their whole length; grooves of a belt over 100 mm: mm.
_SLIDE_MM = 0.05
_GROOVES_MM = 0.5


def alignments(design: Design) -> Iterator[Alignment]:
    """All that follow from the joints: bores in line, then square or parallel, then the rest."""
    yield from in_line(design)
    yield from standing(design)
    yield from _slides(design)
    yield from _throws(design)
    yield from _grooves(design)


def _slides(design: Design) -> Iterator[Alignment]:
    """A screw that moves a slide lies along it."""
    for joint in design.joints.values():
        if joint.kind != "leads":
            continue
        for way in design.joints.values():
            if _is_way(way, joint, design):
                yield Alignment(
                    f"along {joint.name}",
                    f"'{joint.name}' parallel to '{way.name}'",
                    _SLIDE_MM,
                    0.0,
                    "an indicator on the slide, run along the screw's outside in both planes",
                    "run-out",
                    "the handle turns as lightly at both ends of the travel as in the middle",
                    "slack the nut, run it up to it, and screw it down there",
                    joint.at,
                )
                break


def _is_way(way: Joint, screw: Joint, design: Design) -> bool:
    """Whether a joint guides what the nut of a screw moves."""
    if way.kind == "dovetailed":
        return bool(set(way.items) & set(screw.items))
    threads = [design.facts.about(ThreadFact, str(end)) for end in screw.ends]
    nuts = {one.item for one in threads if one is not None and one.is_internal}
    return way.kind == "slides" and bool(set(way.items) & nuts)


def _throws(design: Design) -> Iterator[Alignment]:
    """Pins that are set off the axis of their shaft."""
    for form in design.facts.all(FormFact):
        part = design.parts.get(form.subject)
        for one in form.located if part is not None else ():
            if one.kind != "throw" or part is None:
                continue
            fit = _fit_on(form.subject, one.name, design)
            spare = spare_mm(fit) if fit is not None else 0.02
            long = one.length or 0.0
            if spare:
                yield Alignment(
                    f"throw {form.subject} {one.name}",
                    f"{one.name.replace('_', ' ') or 'pin'} of the {part.title} parallel to its "
                    "journals",
                    spare,
                    long,
                    "the journals in vee blocks: an indicator along the pin, uppermost and at the "
                    "side",
                    "run-out",
                    "",
                    "bend it true between the webs; a pressed pin is pressed again",
                    part.at,
                )


def _fit_on(item: str, place: str, design: Design) -> FitFact | None:
    at = f"{item}.{place}"
    return next((one for one in design.facts.all(FitFact) if one.shaft == at), None)


def _grooves(design: Design) -> Iterator[Alignment]:
    """Pulleys of one belt stand in one plane."""
    for joint in design.joints.values():
        if joint.kind == "belted" and not getattr(joint.entry, "quarter_turn", False):
            yield Alignment(
                f"grooves {joint.name}",
                f"the grooves of '{joint.name}' in one plane",
                _GROOVES_MM,
                BAR_MM,
                "held across the faces of both pulleys, a light behind it",
                "",
                "it runs a minute at each step and does not climb",
                "move a pulley along its shaft",
                joint.at,
            )
