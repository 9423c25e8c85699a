"""A belt to a link: the running diameters of its pulleys, step by step."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import belt_codes, codes
from binder_plugins.drive.train.bodies import Body
from binder_plugins.drive.train.cones import Steps, cone_steps
from binder_plugins.drive.train.links import Link, ratio_link
from binder_plugins.drive.train.told import running_diameters, teeth_of

_MOST_SLIP = Fraction(1, 2)


def belt_link(
    joint: Joint, design: Design, of: Mapping[str, Body]
) -> tuple[Link | Diagnostic, ...]:
    """The driven pulleys all turn by the first; what slips is lost on the way."""
    steps = belt_steps(joint, design)
    if isinstance(steps, Diagnostic):
        return (steps,)
    entry = joint.entry
    slip = getattr(entry, "slip", None)
    if isinstance(slip, Size) and not 0 <= slip.exact < _MOST_SLIP:
        return (
            belt_codes.SLIP_IMPOSSIBLE.at(
                slip.span,
                f"a belt cannot slip by {float(slip.exact):g} of its speed",
                help="write it as a part of one, as `slip: 0.02`",
            ),
        )
    kept = 1 - slip.exact if isinstance(slip, Size) else Fraction(1)
    sign = -1 if getattr(entry, "crossed", False) else 1
    labels = tuple(f"step {n}" for n in range(1, len(steps) + 1)) if len(steps) > 1 else ("",)
    first = of[joint.ends[0].item].name
    found = []
    for number in range(1, len(joint.ends)):
        ratios = tuple(sign * kept * step[0] / step[number] for step in steps)
        found.append(ratio_link(joint, first, of[joint.ends[number].item].name, ratios, labels))
    return tuple(found)


def belt_steps(joint: Joint, design: Design) -> Steps | Diagnostic:
    """The running diameters in mm: a row for each step, in each the pulleys in order."""
    entry = joint.entry
    said = getattr(entry, "steps", None)
    if said is not None:
        return tuple(tuple(size.exact for size in step) for step in said)
    if getattr(entry, "ratios", None) is not None:
        return cone_steps(joint)
    diameters = getattr(entry, "diameters", None)
    if diameters is not None:
        return _as_many(joint, (tuple(size.exact for size in diameters),))
    if getattr(entry, "belt", None) == "toothed":
        teeth = [teeth_of(joint, number, design) for number in range(len(joint.ends))]
        if all(teeth):
            return (tuple(Fraction(one or 1) for one in teeth),)
        return codes.TEETH_MISSING.at(
            joint.at, f"how many teeth have the pulleys of '{joint.name}'?"
        )
    return _from_parts(joint, design)


def _as_many(joint: Joint, steps: Steps) -> Steps | Diagnostic:
    if len(steps[0]) == len(joint.ends):
        return steps
    return codes.BELT_DIAMETERS.at(
        joint.at, f"{len(joint.ends)} pulleys and {len(steps[0])} diameters"
    )


def _from_parts(joint: Joint, design: Design) -> Steps | Diagnostic:
    """The grooves of the pulleys, paired in the order in which each part lists them."""
    section = getattr(joint.entry, "section", None)
    thick = section.exact if isinstance(section, Size) else Fraction(0)
    found = [running_diameters(end, thick, design) for end in joint.ends]
    counts = {len(one) for one in found}
    if 0 in counts:
        end = joint.ends[[len(one) for one in found].index(0)]
        return codes.BELT_DIAMETERS.at(
            end.at,
            f"'{end}' tells no diameter for the belt",
            help="write `diameters: [24 mm, 40 mm]`, or give the part a groove",
        )
    if len(counts) > 1:
        words = " and ".join(str(len(one)) for one in found)
        return codes.BELT_DIAMETERS.at(
            joint.at,
            f"the pulleys of '{joint.name}' have {words} grooves",
            help="name the place that the belt runs on, or write `steps:`",
        )
    return tuple(zip(*found, strict=True))
