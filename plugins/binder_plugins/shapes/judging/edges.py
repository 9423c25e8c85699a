"""Chamfers and rounds that are larger than their metal, and angles that nobody cuts."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Size, shown
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.cutting.box_edges import pairs_of
from binder_plugins.shapes.cutting.task import angles_of
from binder_plugins.shapes.forming.body import FACES, Body
from binder_solid.facts import FormFact, Located

_EDGES = ("chamfered", "rounded")


def check_edges(design: Design) -> Iterator[Diagnostic]:
    """Each edge that has no room."""
    for form in design.facts.all(FormFact):
        features = {one.name: one for one in design.parts[form.subject].features}
        for one in form.located:
            feature = features.get(one.name)
            if one.kind not in _EDGES or feature is None or one.diameter is None:
                continue
            size = getattr(feature.entry, one.kind, None)
            room = _room(form, one, str(getattr(feature.entry, "on", None) or "edges"))
            if room is not None and one.diameter > room + 1e-6 and isinstance(size, Size):
                yield form_codes.EDGE_TOO_LARGE.at(
                    size.span,
                    f"'{one.name}' takes {one.diameter:g} mm; '{form.subject}' has {room:g} mm "
                    "there",
                    help=f"make it {room:g} mm at the most",
                )


def check_angles(design: Design) -> Iterator[Diagnostic]:
    """Each angle of a feature that nobody can cut."""
    for feature in design.features():
        for name in ("angle", "lean"):
            size = getattr(feature.entry, name, None)
            if not isinstance(size, Size):
                continue
            least, most = angles_of(feature.kind, name)
            if not least <= float(size.exact) <= most:
                yield form_codes.ANGLE_NOT_CUT.at(
                    size.span,
                    f"'{feature.name}' cannot be cut at {shown(size.quantity)}",
                    help=f"from {least:g} to {most:g} degrees",
                )


def _room(form: FormFact, one: Located, on: str) -> float | None:
    """The most that an edge can be broken; None where it lies in a hole."""
    if form.stretches:
        return _on_turned(form, one, on)
    if on not in (*FACES, "edges", "corners", "all", "ends", "outside"):
        return None
    body = Body(form.shape, form.form, (0.0, 0.0, 0.0), form.size)
    pairs = pairs_of(on, body)
    faces = {face for pair in pairs for face in pair}
    found = [_side(form, face, pairs) for face in faces]
    return min(found, default=None)


def _side(form: FormFact, face: str, pairs: tuple[tuple[str, str], ...]) -> float:
    """How far a face's neighbours can be cut into it: half where both its ends are cut."""
    axis = next(n for n in range(3) if FACES[face].z[n])
    size = form.size[axis]
    opposite = next(name for name, frame in FACES.items() if name != face and frame.z[axis])
    beside = {next(f for f in pair if f != face) for pair in pairs if face in pair}
    across = {next(f for f in pair if f != opposite) for pair in pairs if opposite in pair}
    return size / 2 if beside & across else size


def _on_turned(form: FormFact, one: Located, on: str) -> float | None:
    """The length of the step, and its radius."""
    if one.face in ("across", "left", "right", "axis") and on not in _names(form):
        steps = [form.stretches[0 if one.face == "left" else -1]]
        if on not in ("top", "underside", "left", "right"):
            return None
    else:
        steps = [step for step in form.stretches if step.name == on]
    return min((min(s.end - s.start, max(s.across, s.end_across) / 2) for s in steps), default=None)


def _names(form: FormFact) -> set[str]:
    return {one.name for one in form.stretches if one.name}
