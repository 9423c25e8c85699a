"""Steps of turned work to a body about x: round runs as one profile, flats and webs raised."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from binder.api import Part, shown, shown_length, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.kinds import TurnedStep
from binder_plugins.shapes.turned import Measured
from binder_solid.facts import Located, Stretch, Told
from binder_solid.forms import (
    Arc,
    Cylinder,
    Form,
    Frame,
    Joined,
    Outline,
    Point,
    Raised,
    Revolved,
    Segment,
    Straight,
)
from binder_solid.outlines import moved, regular_polygon
from binder_solid.outlines import slot as obround

AXIS = Frame(z=(1.0, 0.0, 0.0), x=(0.0, 0.0, 1.0))


def turned_body(part: Part, steps: Sequence[Measured], units: str) -> Body:
    """Turned work from its steps, first face at x = 0."""
    stretches = tuple(_stretches(part, steps, units))
    forms = (*_forms(stretches, steps), *_off_axis(steps))
    radius = max(_radius(one, step.step) for one, step in zip(stretches, steps, strict=True))
    notes = tuple(note for one in steps for note in _throws(part, one, units))
    return round_body("turned", forms, stretches, radius, notes)


def round_body(
    shape: str,
    forms: tuple[Form, ...],
    stretches: tuple[Stretch, ...],
    radius: float,
    notes: tuple[Located, ...] = (),
) -> Body:
    """A body about x from its forms and stretches, of a radius over all."""
    form = forms[0] if len(forms) == 1 else Joined(forms)
    least, most = (0.0, -radius, -radius), (stretches[-1].end, radius, radius)
    return Body(shape, form, least, most, stretches, notes=notes)


def plain_round(
    shape: str, stretches: tuple[Stretch, ...], notes: tuple[Located, ...] = ()
) -> Body:
    """A body of round steps and steps with flats, all on the axis."""
    radius = max(over_corners(one) for one in stretches)
    return round_body(shape, tuple(_forms(stretches, None)), stretches, radius, notes)


def over_corners(one: Stretch) -> float:
    """The largest radius of a step: over the corners where it has any."""
    across = max(one.across, one.end_across)
    return across / 2 / math.cos(math.pi / one.corners) if one.corners else across / 2


def _radius(one: Stretch, step: TurnedStep) -> float:
    throw = step.throw.mm if step.throw is not None else 0.0
    return over_corners(one) + throw


def _stretches(part: Part, steps: Sequence[Measured], units: str) -> Iterator[Stretch]:
    for number, one in enumerate(steps, 1):
        name = str(one.step.name or "")
        key = f"{part.name}.{name or number}"
        start, end, corners = _section(one.step)
        length = "" if one.is_rest else f"{key}.length"
        yield Stretch(
            name,
            float(one.start),
            float(one.end),
            start,
            end,
            corners,
            tuple(filter(None, (f"{key}.section", length))),
            section_text(one.step, units),
            shown_length(one.length, units),
            _aside(one.step),
        )


def _aside(step: TurnedStep) -> tuple[float, float]:
    """Where the axis of a step lies that is thrown, at its clock from the top."""
    if step.throw is None or step.web is not None:
        return 0.0, 0.0
    clock = math.radians(float(step.clock.exact) if step.clock is not None else 0.0)
    return -step.throw.mm * math.sin(clock), step.throw.mm * math.cos(clock)


def _section(step: TurnedStep) -> tuple[float, float, int]:
    """Diameter at both ends, or the size across flats and the number of corners."""
    if step.taper is not None:
        return step.taper.start.mm, step.taper.end.mm, 0
    for size, corners in ((step.hexagon, 6), (step.square, 4)):
        if size is not None:
            return size.mm, size.mm, corners
    across = step.diameter or step.ball or step.web
    mm = across.mm if across is not None else 0.0
    return mm, mm, 0


def section_text(step: TurnedStep, units: str) -> str:
    """The section of a step as a drawing writes it."""
    if step.taper is not None:
        start, end = (size_text(one, units) for one in (step.taper.start, step.taper.end))
        return f"⌀{start} to ⌀{end}"
    for size, words in (
        (step.diameter, "⌀{}"),
        (step.ball, "S⌀{}"),
        (step.web, "web {} wide"),
        (step.hexagon, "hexagon {} A/F"),
        (step.square, "square {} A/F"),
    ):
        if size is not None:
            return words.format(size_text(size, units))
    return ""


def _forms(stretches: Sequence[Stretch], steps: Sequence[Measured] | None) -> Iterator[Form]:
    """Runs of round steps as one revolved outline each, flats as raised ones."""
    run: list[tuple[Stretch, TurnedStep | None]] = []
    for number, one in enumerate(stretches):
        step = steps[number].step if steps is not None else None
        is_off = step is not None and step.throw is not None
        if one.corners or is_off:
            yield from _turned(run)
            run = []
        if one.corners:
            yield _flats(one)
        elif not is_off:
            run.append((one, step))
    yield from _turned(run)


def _turned(run: Sequence[tuple[Stretch, TurnedStep | None]]) -> Iterator[Form]:
    if not run:
        return
    start: Point = (run[0][0].start, 0.0)
    segments: list[Segment] = []
    for n, (one, step) in enumerate(run):
        if step is not None and step.ball is not None:
            segments += _ball(one, is_first=n == 0, is_last=n == len(run) - 1)
        else:
            segments += _straight(one)
    segments.append(Straight((run[-1][0].end, 0.0)))
    yield Revolved(Outline(start, tuple(_unlike(start, segments))), AXIS)


def _straight(one: Stretch) -> list[Segment]:
    return [Straight((one.start, one.across / 2)), Straight((one.end, one.end_across / 2))]


def _ball(one: Stretch, *, is_first: bool, is_last: bool) -> list[Segment]:
    """A ball cut off by its neighbours: its pole at the end of the part, else in the middle."""
    radius = one.across / 2
    centre = (one.start + one.end) / 2
    if is_last and not is_first:
        centre = one.end - radius
    elif is_first and not is_last:
        centre = one.start + radius

    def at(turn: float) -> Point:
        return (centre + radius * math.cos(turn), abs(radius * math.sin(turn)))

    first, last = (
        math.acos(max(-1.0, min(1.0, (x - centre) / radius))) for x in (one.start, one.end)
    )
    return [Straight(at(first)), Arc(at((first + last) / 2), at(last))]


def _unlike(start: Point, segments: Sequence[Segment]) -> Iterator[Segment]:
    """Without lines of no length."""
    last = start
    for one in segments:
        to = one.to if isinstance(one, (Straight, Arc)) else last
        if isinstance(one, Arc) or math.dist(last, to) > 1e-9:
            yield one
        last = to


def _flats(one: Stretch) -> Form:
    """A hexagon or square with flats above and below, raised along x."""
    frame = Frame((one.start, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
    return Raised(regular_polygon(one.corners, one.across), one.end - one.start, frame)


def _off_axis(steps: Sequence[Measured]) -> Iterator[Form]:
    """Steps with a throw: an eccentric or crank pin off the axis, a web from the axis to it."""
    for one in steps:
        step = one.step
        if step.throw is None:
            continue
        long = float(one.length)
        if step.web is not None:
            clock = math.radians(float(step.clock.exact) if step.clock is not None else 0.0)
            out = (0.0, -math.sin(clock), math.cos(clock))
            frame = Frame((float(one.start), 0.0, 0.0), (1.0, 0.0, 0.0), out)
            outline = obround(step.throw.mm + step.web.mm, step.web.mm)
            yield Raised(moved(outline, (step.throw.mm / 2, 0.0)), long, frame)
        elif step.diameter is not None:
            origin = (float(one.start), *_aside(step))
            yield Cylinder(step.diameter.mm / 2, long, Frame(origin, AXIS.z, AXIS.x))


def _throws(part: Part, one: Measured, units: str) -> Iterator[Located]:
    """The throw of a step, told from the axis."""
    step = one.step
    if step.throw is None or step.web is not None:
        return
    x = float(one.start + one.end) / 2
    key = f"{part.name}.{step.name or 'throw'}"
    text = size_text(step.throw, units)
    turned_by = f", {shown(step.clock.quantity)} from the top" if step.clock is not None else ""
    told = () if step.clock is not None else (Told(f"{key}.throw", "z", 0.0, step.throw.mm, text),)
    yield Located(
        name=f"{step.name or 'step'} throw",
        kind="throw",
        face="across",
        frame=Frame((x, 0.0, step.throw.mm), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0)),
        spots=((x, 0.0, step.throw.mm),),
        tools=(),
        note=f"throw {text}{turned_by}" if turned_by else "",
        told=told,
        ids=(f"{key}.throw",),
        also=(f"{key}.clock",) if turned_by else (),
        at=step.throw.span,
    )
