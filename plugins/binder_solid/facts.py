"""Facts about shapes: the form of a part, and where each of its features lies on it."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import NOWHERE, Fact, Span
from binder_solid.flats import Flat
from binder_solid.forms import Form, Frame, Outline, Vector
from binder_solid.views import View


@dataclass(frozen=True, slots=True)
class Told:
    """A size of the spec that a drawing shows: between two places along x, y or z.

    `id` is its place in the spec (`post.foot.at`), `text` the figure as printed. `tier` says
    how it is held: fit, tool or free.
    """

    id: str
    along: str
    start: float
    end: float
    text: str
    tier: str = "free"


@dataclass(frozen=True, slots=True)
class Located:
    """A feature on its part: `frame` lies on the surface, its z points out of the metal.

    `spots` are the places of all that are alike; `tools` what is cut away for them (or put
    on, where `adds`); empty for what is not drawn (a knurl, a shape filed by eye). `face` is
    the face, or `axis` and `across` of turned work. Sizes are in mm, `depth` None where the
    hole goes through. `note` is the callout, `core` what it says of one of them; `told` are the
    sizes that place it. `ids` names the size that opens the feature, `also` the further ones
    that its note tells.
    """

    name: str
    kind: str
    face: str
    frame: Frame
    spots: tuple[Vector, ...]
    tools: tuple[Form, ...]
    note: str
    told: tuple[Told, ...] = ()
    diameter: float | None = None
    depth: float | None = None
    length: float | None = None
    width: float | None = None
    circle: float | None = None
    adds: bool = False
    is_thread: bool = False
    is_dummy: bool = False
    ids: tuple[str, ...] = ()
    also: tuple[str, ...] = ()
    core: str = ""
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class Stretch:
    """A step of turned work along x: `across` is a diameter or a size across flats.

    `aside` are y and z of its own axis, where it is thrown off that of the work.
    """

    name: str
    start: float
    end: float
    across: float
    end_across: float
    corners: int
    ids: tuple[str, ...]
    text: str
    length_text: str
    aside: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Datum:
    """A line of the table of data on a drawing; `ids` names the sizes of the spec that it tells."""

    caption: str
    text: str
    ids: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FormFact(Fact):
    """The form of a part: `shape` is turned, block, plate, disc, board, cut or another kind.

    `size` is its envelope along x, y and z in mm. `told` are the sizes of the shape itself;
    `words` what is said of its form in words alone, and so is not drawn; `data` what a drawing
    tells in a table, since no dimension can: the teeth of a gear.
    """

    shape: str
    form: Form
    size: Vector
    stretches: tuple[Stretch, ...] = ()
    located: tuple[Located, ...] = ()
    told: tuple[Told, ...] = ()
    words: tuple[str, ...] = ()
    data: tuple[Datum, ...] = ()
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class ContourFact(Fact):
    """The contour that a drive gives a part which leaves it open; the subject is the part.

    The outline lies round the part's axis, in mm; `reach_mm` is its largest radius, `data` what
    a drawing tells of it in a table. `cutter` says how it is milled by a table of settings, ''
    where no cutter has the follower's form, `cutter_mm` how wide it must be, 0 for any.
    """

    outline: Outline
    reach_mm: float
    data: tuple[Datum, ...]
    joint: str
    cutter: str = ""
    cutter_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class JoinedFact(FormFact):
    """The form of a fabrication whose pieces have been joined, with what is cut in it then."""


@dataclass(frozen=True, slots=True)
class SolidFact(Fact):
    """A part as a solid: volume in mm³, mass in g (None without a density), centre in mm.

    `inertia` is the 3 × 3 tensor about the centre in g·mm², None without a density; `least`
    and `most` are the corners of its envelope.
    """

    volume: float
    mass: float | None
    centre: Vector
    inertia: tuple[Vector, Vector, Vector] | None
    least: Vector
    most: Vector
    pieces: int


@dataclass(frozen=True, slots=True)
class ViewsFact(Fact):
    """The views of a part that its drawing needs, and the sections through it."""

    views: tuple[View, ...]
    sections: tuple[View, ...] = ()


@dataclass(frozen=True, slots=True)
class FlatFact(Fact):
    """The faces of a part that are marked out full size: laid on paper, bends laid flat."""

    flats: tuple[Flat, ...]


@dataclass(frozen=True, slots=True)
class FlatViewsFact(Fact):
    """What the kernel cuts of each face of a `FlatFact`, None where it could not.

    `seen` is each face as it is looked at, for what does not go through; None where that was
    not asked for.
    """

    cut: tuple[View | None, ...]
    seen: tuple[View | None, ...]
