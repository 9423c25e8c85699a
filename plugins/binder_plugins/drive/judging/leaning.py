"""Do the blanks of helical, bevel and worm gears have the sizes that their teeth want."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, LeaningFact, exact, shown_length
from binder_plugins.drive import gear_codes as codes
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_solid.facts import Stretch

# The sizes of a blank are written to a hundredth; along a cone they need not be so near.
_NEAR_MM, _ALONG_MM = 0.011, 0.051


def check_leaning(design: Design) -> Iterator[Diagnostic]:
    """Each part whose teeth lean, by the steps that it is turned with."""
    for fact in design.facts.all(LeaningFact):
        form = design.facts.about(FormFact, fact.subject)
        if form is None or not form.stretches or any(_suits(one, fact) for one in form.stretches):
            continue
        part = design.parts[fact.subject]
        if design.joints[fact.joint].kind == "meshes" and part.shape_kind != "gear":
            continue  # Told with the plain gears.
        yield codes.BLANK_WRONG.at(
            part.at,
            f"{_teeth(fact, design)} of '{fact.joint}' want a blank of {_wanted(fact, design)}; "
            f"no step of '{part.name}' has that",
            help=_way(fact, design, is_gear=part.shape_kind == "gear"),
        )


def _suits(step: Stretch, fact: LeaningFact) -> bool:
    if fact.kind != "bevel":
        is_round = abs(step.across - step.end_across) < _NEAR_MM
        return is_round and any(abs(step.across - size) <= _NEAR_MM for size in fact.outside)
    small, large = sorted((step.across, step.end_across))
    return (
        abs(large - fact.outside[0]) <= _NEAR_MM
        and abs(small - fact.inner) <= _ALONG_MM
        and abs(step.end - step.start - fact.long) <= _ALONG_MM
    )


def _teeth(fact: LeaningFact, design: Design) -> str:
    if fact.kind == "worm":
        return f"{fact.count} start{'s' if fact.count > 1 else ''} of the worm"
    lean = f" at {fact.angle:g}°" if fact.kind == "helical" else ""
    return f"{fact.count} {fact.kind} teeth of module {_size(fact.module, design)}{lean}"


def _wanted(fact: LeaningFact, design: Design) -> str:
    if fact.kind == "bevel":
        ends = f"{_size(fact.outside[0], design)} to {_size(fact.inner, design)}"
        return f"{ends}, {_size(fact.long, design)} long"
    return " or ".join(_size(one, design) for one in fact.outside)


def _way(fact: LeaningFact, design: Design, *, is_gear: bool) -> str:
    start = "leave `gear:` out, whose teeth are straight, and turn it" if is_gear else "turn it"
    if fact.kind == "bevel":
        ends = f"{_size(fact.outside[0], design)} to {_size(fact.inner, design)}"
        return f"{start} with a step `{{taper: {ends}, length: {_size(fact.long, design)}}}`"
    return f"{start} to {_size(fact.outside[-1], design)}"


def _size(mm: float, design: Design) -> str:
    return shown_length(exact(round(mm, 2)), design.units)
