"""What parts leave to a drive: the steps of a pulley, the contour of a cam."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from binder.api import Contribution, Design, Diagnostic, Part, Size, StepSizeFact
from binder_plugins.shapes import codes
from binder_plugins.shapes.kinds import TurnedStep
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_plugins.shapes.vocabulary.wheels import Pulley
from binder_solid.facts import ContourFact

Sizes = Mapping[int, Size]


def settle_shapes(design: Design) -> Contribution:
    """The shapes with what their drives give them, and a finding for each that waits in vain."""
    shapes: dict[str, object] = {}
    findings: list[Diagnostic] = []
    given = design.facts.all(StepSizeFact)
    for part in design.parts.values():
        if isinstance(part.shape, Cam):
            contour = design.facts.about(ContourFact, part.name)
            findings += [] if contour is not None else [_no_contour(part)]
            shapes[part.name] = part.shape.cut_to(contour) if contour is not None else part.shape
        waiting = [number for number, size in enumerate(_diameters(part)) if _waits(size)]
        if not waiting:
            continue
        sizes = {one.number: one.size for one in given if one.item == part.name}
        findings += _in_vain(part, [number for number in waiting if number not in sizes])
        shapes[part.name] = _settled(part.shape, sizes)
    return Contribution(shapes=shapes, findings=findings)


def _no_contour(part: Part) -> Diagnostic:
    return codes.STILL_TO_SUIT.at(
        part.at,
        f"no drive gives '{part.name}' its contour",
        help=f"write what it moves: `{part.name}: {{cams: [{part.name}, follower], lift: 6 mm, "
        "base: 24 mm}` under `drive:`",
    )


def _diameters(part: Part) -> Sequence[Size | None]:
    if isinstance(part.shape, Pulley):
        return part.shape.diameters
    steps = part.shape if part.shape_kind == "turned" else ()
    return [step.diameter for step in steps]  # type: ignore[attr-defined]


def _waits(size: Size | None) -> bool:
    return size is not None and size.is_to_suit


def _in_vain(part: Part, numbers: Sequence[int]) -> Iterator[Diagnostic]:
    for number in numbers:
        size = _diameters(part)[number]
        yield codes.STILL_TO_SUIT.at(
            size.span if size is not None else part.at,
            f"no drive gives step {number + 1} of '{part.name}' its diameter",
            help="write the size, or a belt of several `ratios:` that names this pulley",
        )


def _settled(shape: object, sizes: Sizes) -> object:
    if isinstance(shape, Pulley):
        made = [sizes.get(number, size) for number, size in enumerate(shape.diameters)]
        return shape.model_copy(update={"diameters": made})
    steps: Sequence[TurnedStep] = shape  # type: ignore[assignment]
    return [
        step.model_copy(update={"diameter": sizes[number]}) if number in sizes else step
        for number, step in enumerate(steps)
    ]
