"""Items to the copies of them that stand in the model, those of the opposite hand mirrored."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from binder.api import Bought, Design, NumberOff
from binder_solid.conventional import drawn_form
from binder_solid.facts import FormFact, Located, Stretch
from binder_solid.forms import TURNED, Cut, Cylinder, Form, Frame, Mirrored, Vector

MOST = 60
"""Copies of one item that are placed; more of them are shot, not parts."""
MOST_IN_ALL = 1200


@dataclass(frozen=True, slots=True)
class Copy:
    """One copy: `name` is `cheek 2`; `fact` tells its form as it is drawn on its leaf."""

    name: str
    item: str
    number: int
    fact: FormFact
    is_opposite: bool = False

    @property
    def corners(self) -> tuple[Vector, Vector]:
        """The least and most corner in the part's own axes."""
        x, y, z = self.fact.size
        if self.fact.stretches:
            return (0.0, -y / 2, -z / 2), (x, y / 2, z / 2)
        return (0.0, 0.0, 0.0), (x, y, z)

    @property
    def eight(self) -> tuple[Vector, ...]:
        """All corners of the box that the part lies in."""
        least, most = self.corners
        pairs = tuple(zip(least, most, strict=True))
        return tuple((a, b, c) for a, b, c in product(*pairs))

    @property
    def middle(self) -> Vector:
        """The centre of that box."""
        (a, b, c), (d, e, f) = self.corners
        return ((a + d) / 2, (b + e) / 2, (c + f) / 2)

    def point(self, at: Vector) -> Vector:
        """A point of the leaf's drawing on this copy: the opposite hand swaps front and back."""
        if not self.is_opposite:
            return at
        return (at[0], 2 * self.middle[1] - at[1], at[2])

    def vector(self, way: Vector) -> Vector:
        """A direction of the leaf's drawing on this copy."""
        return (way[0], -way[1], way[2]) if self.is_opposite else way

    def formed(self, form: Form) -> Form:
        """A form of the leaf's drawing on this copy."""
        if not self.is_opposite:
            return form
        return Mirrored(form, Frame((0.0, self.middle[1], 0.0), (0.0, 1.0, 0.0), (1.0, 0.0, 0.0)))

    @property
    def drawn(self) -> Form:
        """What is drawn of it: teeth and coils by convention."""
        return self.formed(drawn_form(self.fact) or self.fact.form)


def formed_items(design: Design) -> dict[str, FormFact]:
    """The items whose form is known, those that are bought behind the others."""
    facts = {fact.subject: fact for fact in design.facts.all(FormFact)}
    for item in design.bought.values():
        bought = bought_form(item)
        if bought is not None:
            facts[item.name] = bought
    return facts


def copies_of(design: Design) -> dict[str, tuple[Copy, ...]]:
    """The copies of each item that has a form, by its name; none past `MOST_IN_ALL` in all."""
    facts = formed_items(design)
    found: dict[str, tuple[Copy, ...]] = {}
    count = 0
    for name, fact in facts.items():
        found[name] = tuple(_copies(fact, design)) if count < MOST_IN_ALL else ()
        count += len(found[name])
    return {name: copies for name, copies in found.items() if copies}


def _copies(fact: FormFact, design: Design) -> Iterator[Copy]:
    off = design.facts.about(NumberOff, fact.subject)
    count = min(off.count if off is not None else 1, MOST)
    part = design.parts.get(fact.subject)
    is_handed = part is not None and part.handed
    for number in range(1, count + 1):
        name = f"{fact.subject} {number}" if count > 1 else fact.subject
        yield Copy(name, fact.subject, number, fact, is_handed and number % 2 == 0)


def bought_form(item: Bought) -> FormFact | None:
    """A bought item of which length and diameter are told, as a plain round piece."""
    sizes = {name: size.mm for name, size in item.sizes}
    across = sizes.get("diameter") or sizes.get("outside")
    long = sizes.get("length") or sizes.get("thickness") or sizes.get("width")
    bore = sizes.get("bore", 0.0)
    if not across or not long or bore >= across:
        return None
    body: Form = Cylinder(across / 2, long, TURNED)
    located: tuple[Located, ...] = ()
    if bore:
        hole = Cylinder(bore / 2, long + 2, Frame((-1.0, 0.0, 0.0), TURNED.z, TURNED.x))
        body = Cut(body, (hole,))
        mouth = Frame((long, 0.0, 0.0), TURNED.z, TURNED.x)
        located = (
            Located("bore", "bored", "axis", mouth, (mouth.origin,), (hole,), "", diameter=bore),
        )
    step = Stretch("outside", 0.0, long, across, across, 0, (), "", "")
    return FormFact(item.name, "bought", body, (long, across, across), (step,), located, at=item.at)
