"""Blind holes to findings: too little metal behind their floor, before a slot or the far face."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, ThreadFact
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import Bore, Look, looks
from binder_plugins.shapes.judging.hollows import Hollow, hollows

# The point of a 118° drill is so long in its own diameters, and the least metal before it, in mm;
# common practice, no source.
POINT, LEAST_BEFORE = 0.3, 0.5
# A centre hole with its pilot is so many pilots deep (ISO 6411 form A, ISO 866; from memory).
_CENTRE = 2.2
_SAME = 1e-6
POINTED = ("drilled", "reamed", "tapped", "centred")
_HOLLOWS = ("slotted", "pocketed")


def check_behind(design: Design) -> Iterator[Diagnostic]:
    """Of each blind hole in a block the nearest thing behind its floor."""
    for look in looks(design):
        if not look.is_box:
            continue
        cuts = [cut for one in look.form.located for cut in hollows(one, _HOLLOWS)]
        said: set[str] = set()
        for bore in look.bores:
            if bore.feature.name in said or bore.located.kind not in POINTED:
                continue
            for finding in _behind(look, bore, cuts, _drilled(look, bore, design)):
                said.add(bore.feature.name)
                yield finding


def _drilled(look: Look, bore: Bore, design: Design) -> tuple[float, float]:
    """How deep the drill of a blind thread goes, and its radius, in mm; else the hole's own."""
    thread = design.facts.about(ThreadFact, f"{look.part.name}.{bore.feature.name}")
    deep = bore.end - bore.start
    if thread is None or not bore.located.is_thread or thread.drill_depth is None:
        return deep, bore.radius
    return max(thread.drill_depth, deep), thread.drill_mm / 2


def _behind(
    look: Look, bore: Bore, cuts: list[Hollow], drilled: tuple[float, float]
) -> Iterator[Diagnostic]:
    if bore.located.depth is None and bore.located.kind != "centred":
        return
    floor, start = (bore.start, bore.end) if bore.side > 0 else (bore.end, bore.start)
    deep = abs(start - floor)
    if bore.located.kind == "centred":
        deep = _CENTRE * 2 * bore.radius
    point = POINT * 2 * bore.radius
    tip = max(deep + point, drilled[0] + POINT * 2 * drilled[1])
    for hollow in cuts:
        if not _is_over(bore, hollow):
            continue
        low, high = hollow.spans[bore.axis]
        wall = start - high if bore.side > 0 else low - start
        is_blind = deep <= wall + _SAME or bore.located.kind == "centred"
        if wall > _SAME and is_blind and wall - tip < LEAST_BEFORE - _SAME:
            yield _thin(look, bore, wall - tip, f"'{hollow.name}'")
            return
    wall = look.form.size[bore.axis]
    is_tapped = bore.located.kind == "tapped"  # Its drill and its floor are judged as a thread.
    if not is_tapped and deep < wall - _SAME and wall - deep - point < -_SAME:
        yield _thin(look, bore, wall - deep - point, "the far face")


def _is_over(bore: Bore, hollow: Hollow) -> bool:
    """Whether a hole looks at a hollow, when it is followed along its own axis."""
    sides = [span for axis, span in enumerate(hollow.spans) if axis != bore.axis]
    return all(
        low - bore.radius < place < high + bore.radius
        for place, (low, high) in zip(bore.middle, sides, strict=True)
    )


def _thin(look: Look, bore: Bore, left: float, behind: str) -> Diagnostic:
    metal = f"{left:.2f} mm of metal is" if left > _SAME else "no metal is"
    return form_codes.WALL_TOO_THIN.at(
        bore.feature.at,
        f"{metal} left between the point of '{bore.feature.name}' and {behind} on "
        f"'{look.part.name}'; {LEAST_BEFORE:g} mm is the least",
        help=f"make it {LEAST_BEFORE - left:.2f} mm shallower, or the metal so much deeper",
    )
