"""All routes to the tools that they name, and to how those are made that nobody has."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from binder.api import Contribution, Design, SmallWork, SupplyFact
from binder_plugins.operations.aids.at_assembly import at_assembly, cut_for, wiped_in
from binder_plugins.operations.aids.facts import PREFIX, Tool, ToolsFact, Whose
from binder_plugins.operations.aids.loads import loads_for
from binder_plugins.operations.aids.making import made
from binder_plugins.operations.aids.owning import in_plain_words, owned_name, owns
from binder_plugins.operations.aids.reading import readers
from binder_plugins.operations.aids.sizes import Place
from binder_plugins.operations.aids.vocabulary import Said, said_in, spoken_in
from binder_plugins.operations.aids.wiping import BRUSH, WITH_SPIRIT, cleared
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.tasks import float_tools
from binder_solid.filled import SPIRIT, is_degreased
from binder_solid.float_tried import FEELERS, owns_feelers

if TYPE_CHECKING:
    from collections.abc import Iterator

_BOUGHT = "bought"
# What lies ready by the words of its act, which tell which of several it is.
_BY_WORDS = frozenset({"epoxy or glue", "clips of a shaft"})
# What an act melts in, and what cleans it afterwards, as they stand among the things to buy.
_MELTS = {
    "silver-solder": ("silver solder, free of cadmium, and its flux", "pickle"),
    "soft-solder": ("soft solder and its flux",),
    "braze": ("brazing rod and its flux", "pickle"),
}
_BONDS = frozenset({"bond", "glue"})
# By these a tool is made in the lathe; what drills there is held in this.
_TURNING = ("knife tool", "parting tool", "boring tool")
_DRILL_CHUCK = "drill chuck"
# What stands before a tool that is bought only in the place of the one before it.
_INSTEAD = "; or "
# In the name of a tool: the size that it reads, where it is not owned.
_AT = " of {at}"
# What is had in a width, or in the size of a thread, where it is not made.
_BY_WIDTH = frozenset({"grooving tool", "undercut tool"})
_BY_THREAD = frozenset({"fitted gauge", "tapped ring", "screwed stub"})


@dataclass(slots=True)
class _Found:
    """What has been found so far: tools by name, and the small work that makes some of them."""

    design: Design
    tools: dict[str, Tool] = field(default_factory=dict)
    work: dict[str, SmallWork] = field(default_factory=dict)
    places: dict[str, Place] = field(default_factory=dict)
    supplies: dict[tuple[str, str], SupplyFact] = field(default_factory=dict)
    by_piece: dict[str, list[str]] = field(default_factory=lambda: defaultdict(list))

    def note(self, name: str, whose: Whose, place: Place) -> None:
        """Adds a use of a tool."""
        self.used(name, whose, (place.piece, place.title))

    def used(self, name: str, whose: Whose, use: tuple[str, str]) -> None:
        """Adds a use of a tool in a piece of work, by the id and the title of that."""
        known = self.tools.get(name)
        uses = known.uses if known is not None else ()
        if use not in uses:
            self.tools[name] = Tool(name, whose, (*uses, use))
        if name not in self.by_piece[use[0]]:
            self.by_piece[use[0]].append(name)

    def wanted_by(self, work: SmallWork, own: list[str]) -> None:
        """The tools with which a gib, or its screws, are made; owned, or to be had."""
        shop = self.design.workshop
        for name in own:
            if name in work.tools:
                self.used(name, Whose.OWNED, (f"{PREFIX}{work.subject}", work.subject))
        for said in _with_also((*said_in(work.tools), *_spoken_of(work))):
            is_owned = owns(said, shop)
            if said.row.is_used_up and not is_owned:
                self.used_up(said.name, work.subject)
                continue
            name = owned_name(said, shop, self.design.units) if is_owned else said.name
            whose = Whose.OWNED if is_owned else Whose.HAD
            self.used(name, whose, (f"{PREFIX}{work.subject}", work.subject))

    def used_up(self, name: str, title: str) -> None:
        """Adds what is bought for a piece of work, by the title of that."""
        key = (name, title)
        self.supplies[key] = SupplyFact(" for ".join(key), name, title)

    def lies_ready(self, what: str, place: Place) -> None:
        """Adds what stands among the things to buy already to what is laid out."""
        if what not in self.by_piece[place.piece]:
            self.by_piece[place.piece].append(what)

    def named(self, said: Said, place: Place) -> None:
        """Adds a tool that is named at a place, and what is used with it."""
        for one in said_in(said.also):
            self.named(one, place)
        if said.row.own == _BOUGHT:
            self.lies_ready(said.words if said.row.name in _BY_WORDS else said.name, place)
            return
        shop = self.design.workshop
        if owns(said, shop):
            name = owned_name(said, shop, self.design.units).replace(_AT, "")
            self.note(name, Whose.OWNED, place)
            return
        if said.row.is_used_up:
            self.used_up(said.name, place.title)
            self.lies_ready(said.name, place)
            return
        work = made(said.row.make, said.words, place, said.name) if said.row.make else None
        if work is None:
            size = place.thread if said.row.make in _BY_THREAD else ""
            size = place.wide(said.words) if said.row.make in _BY_WIDTH else size
            at = f" of {place.about}" if place.about else ""
            self.note(f"{said.name.replace(_AT, at)} {size}".strip(), Whose.HAD, place)
            return
        known = self.work.get(work.subject)
        self.work[work.subject] = _both(known, work) if known is not None else work
        self.places.setdefault(work.subject, place)
        self.note(work.subject, Whose.MADE, place)

    def needs(self, own: list[str]) -> None:
        """The tools with which tools are made, and those with which these are, to the last."""
        done: set[str] = set()
        while left := [name for name in self.work if name not in done]:
            for name in left:
                done.add(name)
                bar = next((float(one) for one in self.work[name].section), 0.0)
                place = replace(self.places[name], making=name, bar=bar)
                if any(one in self.work[name].tools for one in _TURNING):
                    _chucked(self.work[name].tools, place, self)
                    _read(BRUSH, place, self, own, is_holder=False)
                _read(self.work[name].tools, place, self, own, is_holder=True)
                for said in _spoken_of(self.work[name]):
                    self.named(said, place)


def _spoken_of(work: SmallWork) -> tuple[Said, ...]:
    """What the steps of a making speak of; what is made itself is told with its tools."""
    return tuple(said for said in spoken_in("; ".join(work.steps)) if not said.row.make)


def _with_also(said: tuple[Said, ...]) -> Iterator[Said]:
    """Each with what is used with it."""
    for one in said:
        yield one
        yield from said_in(one.also)


def _both(one: SmallWork, other: SmallWork) -> SmallWork:
    """One that serves both: the longer, or of longer reach, for each part that is named once."""
    longer = max(one, other, key=lambda work: (work.length, work.reach))
    parts = list(dict.fromkeys([*one.of.split("; "), other.of]))
    return replace(longer, of="; ".join(parts))


def collect_tools(design: Design) -> Contribution:
    """Every tool, fixture and gauge of every leaf, by name, and the making of those not there."""
    found = _Found(design)
    own = own_names(design)
    for route in design.facts.all(Route):
        for setup in route.setups:
            _of_setup(route, setup, found, own)
    _of_assembly(found, own)
    found.needs(own)
    for work in design.facts.all(SmallWork):
        found.wanted_by(work, own)
    by_piece = {piece: tuple(names) for piece, names in found.by_piece.items()}
    tools = ToolsFact("", tuple(found.tools.values()), by_piece)
    return Contribution(facts=[tools, *found.work.values(), *found.supplies.values()])


def _of_setup(route: Route, setup: SetUp, found: _Found, own: list[str]) -> None:
    """What holds the work, what it is set true by, and the tools of each act."""
    design = found.design
    held = Place(route, setup, None, design)
    for text in (setup.grip.holder, setup.grip.on, setup.grip.support):
        _read(text, held, found, own, is_holder=text == setup.grip.holder)
    for said in spoken_in(f"{setup.datum}. {setup.true}"):
        found.named(said, held)
    for text in (setup.fluid, *cleared(setup)):
        _read(text, held, found, own, is_holder=False)
    for reader in readers(setup, design):
        found.note(reader, Whose.OWNED, held)
    if setup.place == "lathe":
        for act in setup.acts:
            _chucked(act.tool, held, found)
    for act in setup.acts:
        place = Place(route, setup, act, design)
        _read(act.tool, place, found, own, is_holder=True)
        _read(act.measure, place, found, own, is_holder=True)
        for said in spoken_in(f"{act.what}; {act.spoils}"):
            found.named(said, place)
        joints = [design.joints[one] for one in act.joints if one in design.joints]
        is_wiped = act.act in _BONDS and any(is_degreased(one, design) for one in joints)
        for what in (*_MELTS.get(act.act, ()), *((SPIRIT,) if is_wiped else ())):
            found.lies_ready(what, place)
        _read(WITH_SPIRIT if is_wiped else "", place, found, own, is_holder=False)


def _chucked(text: str, place: Place, found: _Found) -> None:
    """The drill chuck in the tailstock, where a tool of the text goes into it."""
    if any(one.row.is_chucked for one in said_in(text)):
        owned = next(iter(place.workshop.entry.holding.drill_chucks), "")
        found.note(owned or _DRILL_CHUCK, Whose.OWNED if owned else Whose.HAD, place)


def _of_assembly(found: _Found, own: list[str]) -> None:
    """What closes the joints, and what tries their floats."""
    design = found.design
    for place in wiped_in(design):
        _read(place.act.tool if place.act is not None else "", place, found, own, is_holder=False)
    for closing in at_assembly(design):
        if closing.act is not None:
            _read(closing.act.tool, closing, found, own, is_holder=True)
            for what in cut_for(closing.act, design):
                found.lies_ready(what, closing)
            for said in spoken_in(closing.act.what):
                found.named(said, closing)
    for task in design.tasks.values():
        for tool in float_tools(task, design):
            whose = Whose.HAD if tool == FEELERS and not owns_feelers(design) else Whose.OWNED
            found.used(tool, whose, (task.id, task.title))
        for load in loads_for(task, design):
            found.used(load, Whose.HAD, (task.id, task.title))


def _read(text: str, place: Place, found: _Found, own: list[str], *, is_holder: bool) -> None:
    """The tools of a text: what the workshop calls by a name of its own, then the trade's words."""
    if not text or text.startswith("its "):
        return
    first, _, other = text.partition(_INSTEAD)
    if other.endswith("not owned") and said_in(first):
        text = first
    is_own = any(name in text for name in own)
    for name in own:
        if name in text:
            found.note(name, Whose.OWNED, place)
            text = text.replace(name, "").strip(" ,")
    said = said_in(text)
    for one in said:
        found.named(one, place)
    if not said and not is_own and is_holder:
        for part in _parts(text):
            whose = Whose.OWNED if _is_listed(part, found.design) else Whose.HAD
            found.note(part, whose, place)


def _parts(text: str) -> Iterator[str]:
    """What no row reads, as it is told; a mate, a hand and a speed are no tools."""
    for part in text.split(", "):
        said = part.strip().removesuffix("not owned").strip()
        if said and not said.startswith(("by hand", "read twice", "as near")):
            yield said


def _is_listed(part: str, design: Design) -> bool:
    return any(part.lower() in one.lower() for one in in_plain_words(design.workshop))


def own_names(design: Design) -> list[str]:
    """Names that the workshop gives its holders and instruments, longest first."""
    holding = design.workshop.entry.holding
    groups = (
        holding.chucks,
        holding.collets,
        holding.drill_chucks,
        holding.vices,
        holding.steadies,
        holding.rotary_tables,
        holding.dividing_heads,
        design.workshop.entry.measuring,
    )
    names = {str(name) for group in groups for name in group}
    # Equally long ones by their letters: the order of a set is another on every run.
    return sorted(names, key=lambda name: (-len(name), name))
