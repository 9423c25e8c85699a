"""The straight runs of a cord to what stands in their way."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import cord_codes as codes
from binder_plugins.drive.cords.runs import Run, runs_of
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.train.strength import rope_of
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, length, minus, plus

_TOUCH_MM = 0.05
_ROUND = frozenset({"disc", "gear", "pulley", "wheel", "sprocket", "ratchet", "tube"})
Line = tuple[Vector, Vector]


def check_cords(design: Design) -> Iterator[Diagnostic]:
    """A finding for each part that a run of a cord goes through, as the model stands."""
    for joint in design.joints.values():
        if joint.kind == "winds":
            yield from _runs(joint, design)


def _runs(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    told: set[str] = set()
    half = rope_of(joint, design) / 2
    for run in runs_of(joint, design):
        own = {*joint.items, *(one.copy.item for one in run.rounds)}
        for copy in design.facts.all(PlacedFact):
            if copy.item in own | told:
                continue
            hit = next((cut for line in run.lines if (cut := _cut(copy, line, half, design))), None)
            if hit is not None:
                told.add(copy.item)
                yield _finding(joint, run, copy, hit, design)


def _cut(copy: PlacedFact, line: Line, half: float, design: Design) -> Line | None:
    """The length of the line in the model that lies in a part, None where it goes clear of it."""
    own: Line = (_own(line[0], copy.frame), _own(line[1], copy.frame))
    form = design.facts.about(FormFact, copy.item)
    if form is None:
        return None
    reach = half - _TOUCH_MM
    for low, high, across, aside in _steps(form, copy):
        moved: Line = (plus(own[0], aside, -1.0), plus(own[1], aside, -1.0))
        inside = _in_cylinder(moved, low, high, across / 2 + reach)
        if inside is not None and not _in_hole(inside, half, form):
            return line
    if form.stretches or form.shape in _ROUND:
        return None
    inside = _in_box(own, copy.corners, reach)
    return line if inside is not None and not _in_hole(inside, half, form) else None


def _steps(form: FormFact, copy: PlacedFact) -> Iterator[tuple[float, float, float, Vector]]:
    for one in form.stretches:
        yield one.start, one.end, max(one.across, one.end_across), (0.0, *one.aside)
    if not form.stretches and form.shape in _ROUND:
        low, high = copy.corners
        yield low[0], high[0], high[1] - low[1], (0.0, 0.0, 0.0)


def _own(point: Vector, frame: Frame) -> Vector:
    arm = minus(point, frame.origin)
    return dot(arm, frame.x), dot(arm, frame_y(frame)), dot(arm, frame.z)


def _at(line: Line, share: float) -> Vector:
    return plus(line[0], minus(line[1], line[0]), share)


def _clipped(line: Line, bounds: tuple[tuple[int, float, float], ...]) -> Line | None:
    """What of a line lies between the bounds of each axis."""
    start, end = 0.0, 1.0
    for n, low, high in bounds:
        here, way = line[0][n], line[1][n] - line[0][n]
        if abs(way) < 1e-9:
            if not low < here < high:
                return None
            continue
        ends = sorted(((low - here) / way, (high - here) / way))
        start, end = max(start, ends[0]), min(end, ends[1])
    return (_at(line, start), _at(line, end)) if end - start > 1e-9 else None


def _in_box(line: Line, corners: tuple[Vector, Vector], reach: float) -> Line | None:
    low, high = corners
    return _clipped(line, tuple((n, low[n] - reach, high[n] + reach) for n in range(3)))


def _in_cylinder(line: Line, low: float, high: float, radius: float) -> Line | None:
    inside = _clipped(line, ((0, low, high),))
    if inside is None:
        return None
    a: Vector = (0.0, inside[0][1], inside[0][2])
    way: Vector = (0.0, inside[1][1] - a[1], inside[1][2] - a[2])
    square = dot(way, way)
    share = max(0.0, min(1.0, -dot(a, way) / square)) if square > 1e-12 else 0.0
    return inside if length(plus(a, way, share)) < radius else None


def _in_hole(inside: Line, half: float, form: FormFact) -> bool:
    """Whether the part is drilled through where the cord goes."""
    return any(_is_through(inside, half, one) for one in form.located)


def _is_through(inside: Line, half: float, hole: Located) -> bool:
    if hole.depth is not None or not hole.diameter or hole.adds:
        return False
    for spot in hole.spots:
        arms = [minus(point, spot) for point in inside]
        aside = [length(plus(arm, hole.frame.z, -dot(arm, hole.frame.z))) for arm in arms]
        if max(aside) + half <= hole.diameter / 2:
            return True
    return False


def _finding(joint: Joint, run: Run, copy: PlacedFact, hit: Line, design: Design) -> Diagnostic:
    one, other = (_title(end.copy.item, design) for end in run.rounds)
    item = design.item(copy.item)
    heights = " to ".join(size(point[2], design) for point in hit)
    return codes.CORD_IN_THE_WAY.at(
        joint.at,
        f"'{joint.name}': the cord runs from the {one} to the {other}, {heights} up, and goes "
        f"through '{item.title if item is not None else copy.subject}'",
        help=f"move or shorten '{copy.item}', move the drum or the sheave, or lead the cord round "
        "it over one more sheave and name that in `over:`",
    )


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
