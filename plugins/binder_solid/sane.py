"""A form looked at before the kernel sees it, which takes nonsense without a word."""

from __future__ import annotations

import math
from dataclasses import fields
from itertools import pairwise

from .faults import Unbuildable
from .forms import (
    Bent,
    Coil,
    Cone,
    Cut,
    Form,
    Frame,
    Joined,
    Mirrored,
    Outline,
    Placed,
    Raised,
    Revolved,
    Ring,
    Shared,
    Vector,
    Wire,
)
from .lines import least_and_most
from .outline_sense import LARGEST, check_number, check_outline, check_size
from .space import dot, length, minus, unit

MOST_FORMS = 5_000
DEEPEST = 40
MOST_TURNS = 200.0
MOST_POINTS = 5_000


def check(form: Form) -> None:
    """Raises Unbuildable, with its place in the form, for what is no body at all."""
    left = [MOST_FORMS]
    _check(form, "form", 0, left)


def _check(form: Form, where: str, depth: int, left: list[int]) -> None:
    left[0] -= 1
    if left[0] < 0:
        raise Unbuildable(f"more than {MOST_FORMS} forms", where)
    if depth > DEEPEST:
        raise Unbuildable(f"forms within forms more than {DEEPEST} deep", where)
    for field in fields(form):
        _check_field(getattr(form, field.name), f"{where}.{field.name}", field.name)
    _check_own(form, where)
    for name, child in _children(form):
        _check(child, f"{where}.{name}", depth + 1, left)


def _check_field(value: object, where: str, name: str) -> None:
    if isinstance(value, Frame):
        _check_frame(value, where)
    elif isinstance(value, Outline):
        check_outline(value, where)
    elif name in _MAY_BE_NOUGHT and isinstance(value, (int, float)):
        check_number(value, where)
        if value < 0:
            raise Unbuildable("less than nothing", where)
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        check_size(value, where)


_MAY_BE_NOUGHT = frozenset({"end_radius", "draft", "closed", "bend"})


def _children(form: Form) -> list[tuple[str, Form]]:
    match form:
        case Joined(forms):
            return [(f"forms[{n}]", child) for n, child in enumerate(forms)]
        case Cut(whole, tools):
            return [("form", whole), *((f"tools[{n}]", tool) for n, tool in enumerate(tools))]
        case Shared(one, other):
            return [("one", one), ("other", other)]
        case Placed(child, _) | Mirrored(child, _):
            return [("form", child)]
        case _:
            return []


def _check_own(form: Form, where: str) -> None:
    match form:
        case Revolved():
            _check_revolved(form, where)
        case Raised() if form.draft >= 80.0:
            raise Unbuildable("sides that lean 80° or more", f"{where}.draft")
        case Cone() if form.radius == form.end_radius:
            raise Unbuildable("a cone with equal ends is a cylinder", where)
        case Ring() if form.section >= 2.0 * form.radius:
            raise Unbuildable("a ring thicker than its own hole", where)
        case Joined(()):
            raise Unbuildable("nothing to join", where)
        case Coil():
            _check_coil(form, where)
        case Bent() | Wire():
            _check_rod(form, where)
        case _:
            pass


def _check_frame(frame: Frame, where: str) -> None:
    for name in ("origin", "z", "x"):
        for number in getattr(frame, name):
            check_number(number, f"{where}.{name}")
    for name, direction in (("z", frame.z), ("x", frame.x)):
        if abs(length(direction) - 1.0) > 1e-6:
            raise Unbuildable("a direction whose length is not 1", f"{where}.{name}")
    if abs(dot(frame.z, frame.x)) > 1e-6:
        raise Unbuildable("x and z are not at right angles", where)


def _check_revolved(form: Revolved, where: str) -> None:
    if form.turn > 360.0:
        raise Unbuildable("turned by more than 360°", f"{where}.turn")
    if least_and_most(form.outline)[0][1] < -1e-6:
        raise Unbuildable("the outline crosses the axis", f"{where}.outline")


def _check_coil(form: Coil, where: str) -> None:
    if form.turns > MOST_TURNS:
        raise Unbuildable(f"more than {MOST_TURNS:g} turns", f"{where}.turns")
    if form.wire >= 2.0 * form.radius:
        raise Unbuildable("wire thicker than its own coil", f"{where}.wire")
    if form.pitch < form.wire * (1.0 - 1e-9) and form.turns > 1.0:
        raise Unbuildable("turns nearer than the wire is thick", f"{where}.pitch")
    if 2.0 * form.closed >= form.turns:
        raise Unbuildable("all turns closed", f"{where}.closed")


def _check_rod(form: Bent | Wire, where: str) -> None:
    _check_path(form.points, where)
    if isinstance(form, Bent):
        _check_bends(form, where)


def _check_path(points: tuple[Vector, ...], where: str) -> None:
    if not 2 <= len(points) <= MOST_POINTS:
        raise Unbuildable(f"a path of fewer than 2 or more than {MOST_POINTS} points", where)
    for number, point in enumerate(points):
        for value in point:
            check_number(value, f"{where}.points[{number}]")
        if number and length(minus(point, points[number - 1])) < 1e-4:
            raise Unbuildable("two points in one place", f"{where}.points[{number}]")


def _check_bends(form: Bent, where: str) -> None:
    if len(form.points) > 2 and form.bend <= form.wire / 2.0:
        raise Unbuildable("a bend tighter than the rod is thick", f"{where}.bend")
    legs = [minus(b, a) for a, b in pairwise(form.points)]
    taken = [0.0, *(bend_tangent(a, b, form.bend) for a, b in pairwise(legs))]
    taken.append(0.0)
    for number, leg in enumerate(legs):
        if taken[number] + taken[number + 1] > length(leg) + 1e-9:
            raise Unbuildable("a leg too short for its bends", f"{where}.points[{number + 1}]")


def bend_tangent(before: Vector, after: Vector, radius: float) -> float:
    """Gives how far before its corner a bend begins; very far where the path turns back."""
    cosine = max(-1.0, min(1.0, dot(unit(before), unit(after))))
    if cosine < -1.0 + 1e-9:
        return LARGEST
    return radius * math.tan(math.acos(cosine) / 2.0)
