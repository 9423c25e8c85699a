"""Bent wire with its ends hammered flat for their eyes, and what the drawing says there."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from binder.api import Part, exact, shown_length
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.locating import Made
from binder_plugins.shapes.forming.told import note_at
from binder_solid.facts import Located
from binder_solid.flat_eyes import FlatEye, flat_eye, flattened
from binder_solid.forms import Bent, Form
from binder_solid.space import plus


def flat_eyes(body: Body, made: Iterable[Made]) -> Iterator[FlatEye]:
    """The flats that the holes of bent wire need."""
    if isinstance(body.form, Bent):
        for one in made:
            found = flat_eye(body.form, one.located)
            if found is not None:
                yield found


def hammered_flat(body: Body, eyes: Sequence[FlatEye]) -> Form:
    """The body with those flats; all other bodies as they are."""
    form = body.form
    if isinstance(form, Bent):
        wire = form.wire
        for one in eyes:
            form = flattened(form, wire, one)
    return form


def eye_notes(part: Part, eyes: Sequence[FlatEye], units: str) -> Iterator[Located]:
    """`flat 6.2 long, 2.2 thick, 3.2 wide` at each."""
    for number, one in enumerate(eyes, 1):
        long, thick, wide = (
            shown_length(exact(round(mm, 1)), units) for mm in (one.long, one.thick, one.wide)
        )
        spot = plus(one.end, one.inwards, one.long)
        words = f"flat {long} long, {thick} thick, {wide} wide"
        name = f"flat {number}"
        yield note_at(part, name, spot, words, (name,))
