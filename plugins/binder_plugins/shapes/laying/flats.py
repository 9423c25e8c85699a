"""Parts to the faces of them that are worth marking out full size."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from binder.api import Contribution, Design, Part
from binder_plugins.shapes.forming.outline import fault_of, outline_of
from binder_plugins.shapes.forming.sheet import sheet_nodes
from binder_plugins.shapes.laying.datum import datum_of
from binder_plugins.shapes.laying.developed import developed_flat
from binder_plugins.shapes.laying.holes import circles_of, holes_of, is_hole
from binder_plugins.shapes.laying.seen import Face, box_face, end_faces, left_face
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_plugins.shapes.vocabulary.rods import Sheet
from binder_solid.facts import ContourFact, FlatFact, FormFact, Located
from binder_solid.flats import Flat
from binder_solid.forms import Outline
from binder_solid.outlines import flipped, moved, rectangle, turned
from binder_solid.views import Projection

_SHEETS = ("plate", "sheet")
_FACES: tuple[Projection, ...] = ("top", "underside", "front", "back", "left", "right")
# Fewer holes than these are marked out by hand sooner than a template is cut and stuck down.
MANY = 3
_SAME = 1e-4


def lay_flat(design: Design) -> Contribution:
    """A `FlatFact` for each part with a face that a template helps with."""
    facts = []
    for form in design.facts.all(FormFact):
        flats = tuple(_flats(form, design.parts[form.subject], design))
        if flats:
            facts.append(FlatFact(form.subject, flats))
    return Contribution(facts=facts)


def _flats(form: FormFact, part: Part, design: Design) -> Iterator[Flat]:
    if isinstance(part.shape, Sheet) and part.shape.bends:
        flat = developed_flat(form, part, part.shape, design)
        if flat is not None:
            yield flat
    elif isinstance(part.shape, Cam) and part.shape.contour is not None:
        yield _cam_flat(form, part, part.shape.contour, design)
    elif form.stretches:
        for face, located in end_faces(form):
            flat = _flat(form, part, face, located, design)
            if _many(flat):
                yield flat
    else:
        yield from _box_flats(form, part, design)


def _cam_flat(form: FormFact, part: Part, contour: ContourFact, design: Design) -> Flat:
    """The plain face of a cam, to be stuck on the blank by its bore."""
    face, located = left_face(form)
    reach = contour.reach_mm
    # Seen from the left what lies along the outline's x stands upwards, and its y to the right.
    outline = moved(turned(flipped(contour.outline), -90.0), (reach, reach))
    return _flat(form, part, replace(face, outline=outline), located, design)


def _box_flats(form: FormFact, part: Part, design: Design) -> Iterator[Flat]:
    told: set[str] = set()
    for name in _FACES:
        is_main = name == "top" and form.shape in _SHEETS
        located = [one for one in _shown(form, name) if one.name not in told]
        told |= {one.name for one in located} if name == "top" else set()
        face = box_face(name, form, is_sheet=form.shape != "block")
        flat = _flat(form, part, face, located, design)
        if _many(flat) or (is_main and _is_worth_it(form, part)):
            yield flat


def _shown(form: FormFact, face: str) -> Iterator[Located]:
    """Holes of a face; from the top also what goes through from below, and its other mouth."""
    holes = [one for one in form.located if is_hole(one)]
    through = [one for one in holes if one.depth is None and one.face in ("top", "underside")]
    for one in holes:
        is_under = face == "top" and one.face == "underside"
        if one.face == face or (is_under and (one in through or _is_mouth(one, through))):
            yield one


def _is_mouth(one: Located, through: list[Located]) -> bool:
    middles = [spot[:2] for mate in through for spot in mate.spots]
    return all(any(math.dist(spot[:2], at) < _SAME for at in middles) for spot in one.spots)


def _is_worth_it(form: FormFact, part: Part) -> bool:
    return any(one.tools for one in form.located) or _outline(part) is not None


def _many(flat: Flat) -> bool:
    return len(flat.holes) >= MANY


def _flat(form: FormFact, part: Part, face: Face, located: list[Located], design: Design) -> Flat:
    holes = holes_of(located, part, face, design)
    circles = circles_of(located, face)
    datum = datum_of(face, located, holes, circles)
    outline = face.outline or (face.name == "top" and _outline(part)) or None
    return Flat(
        face=face.name,
        size=face.size,
        outline=outline or rectangle(*face.size, (0.0, 0.0)),
        holes=tuple(sorted(holes, key=lambda hole: hole.at != datum.at)),
        datum=datum,
        form=form.form,
        cutting=face.cutting,
        corner=face.corner,
        thickness=face.thickness,
        circles=circles,
        grain="grain" if form.shape == "board" and face.name in ("top", "underside") else "",
    )


def _outline(part: Part) -> Outline | None:
    """The outline that a flat part is written by."""
    if not isinstance(part.shape, Sheet) or not part.shape.points:
        return None
    nodes = sheet_nodes(part.shape)
    return outline_of(nodes) if fault_of(nodes) is None else None
