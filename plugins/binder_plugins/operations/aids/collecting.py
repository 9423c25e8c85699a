"""All routes to the tools that they name, and to how those are made that nobody has."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from binder.api import Contribution, Design, SmallWork
from binder_plugins.operations.aids.at_assembly import at_assembly
from binder_plugins.operations.aids.facts import Tool, ToolsFact, Whose
from binder_plugins.operations.aids.making import made
from binder_plugins.operations.aids.owning import in_plain_words, owns
from binder_plugins.operations.aids.planned import PREFIX
from binder_plugins.operations.aids.sizes import Place
from binder_plugins.operations.aids.vocabulary import Said, said_in, spoken_in
from binder_plugins.operations.facts import Route

if TYPE_CHECKING:
    from collections.abc import Iterator

_BOUGHT = "bought"
# What is had in the size of a thread where it is not made.
_BY_THREAD = frozenset({"fitted gauge", "tapped ring", "screwed stub"})


@dataclass(slots=True)
class _Found:
    """What has been found so far: tools by name, and the small work that makes some of them."""

    design: Design
    tools: dict[str, Tool] = field(default_factory=dict)
    work: dict[str, SmallWork] = field(default_factory=dict)
    by_piece: dict[str, list[str]] = field(default_factory=lambda: defaultdict(list))

    def note(self, name: str, whose: Whose, place: Place) -> None:
        """Adds a use of a tool."""
        use = (place.piece, place.title)
        known = self.tools.get(name)
        uses = known.uses if known is not None else ()
        if use not in uses:
            self.tools[name] = Tool(name, whose, (*uses, use))
        if name not in self.by_piece[place.piece]:
            self.by_piece[place.piece].append(name)

    def wanted_by(self, work: SmallWork) -> None:
        """The tools with which a gib, or its screws, are made; owned, or to be had."""
        piece = f"{PREFIX}{work.subject}"
        for said in said_in(work.tools):
            is_owned = owns(said, self.design.workshop)
            known = self.tools.get(said.name)
            uses = known.uses if known is not None else ()
            whose = Whose.OWNED if is_owned else Whose.HAD
            self.tools[said.name] = Tool(said.name, whose, (*uses, (piece, work.subject)))

    def named(self, said: Said, place: Place) -> None:
        """Adds a tool that is named at a place: owned, made, or to be had."""
        if said.row.own == _BOUGHT:
            return
        if owns(said, self.design.workshop):
            self.note(said.name, Whose.OWNED, place)
            return
        work = made(said.row.make, said.words, place, said.name) if said.row.make else None
        if work is None:
            thread = f" {place.thread}" if said.row.make in _BY_THREAD and place.thread else ""
            self.note(f"{said.name}{thread}", Whose.HAD, place)
            return
        known = self.work.get(work.subject)
        self.work[work.subject] = _both(known, work) if known is not None else work
        self.note(work.subject, Whose.MADE, place)


def _both(one: SmallWork, other: SmallWork) -> SmallWork:
    """One that serves both: the longer of them, for each part that is named once."""
    longer = other if other.length > one.length else one
    parts = list(dict.fromkeys([*one.of.split("; "), other.of]))
    return replace(longer, of="; ".join(parts))


def collect_tools(design: Design) -> Contribution:
    """Every tool, fixture and gauge of every leaf, by name, and the making of those not there."""
    found = _Found(design)
    own = _own_names(design)
    for route in design.facts.all(Route):
        for setup in route.setups:
            held = Place(route, setup, None, design)
            for text in (setup.grip.holder, setup.grip.on, setup.grip.support):
                _read(text, held, found, own, is_holder=text == setup.grip.holder)
            _read(setup.fluid, held, found, own, is_holder=False)
            for act in setup.acts:
                place = Place(route, setup, act, design)
                _read(act.tool, place, found, own, is_holder=True)
                _read(act.measure, place, found, own, is_holder=True)
                for said in spoken_in(act.what):
                    found.named(said, place)
    for closing in at_assembly(design):
        if closing.act is not None:
            _read(closing.act.tool, closing, found, own, is_holder=True)
            for said in spoken_in(closing.act.what):
                found.named(said, closing)
    for work in design.facts.all(SmallWork):
        found.wanted_by(work)
    by_piece = {piece: tuple(names) for piece, names in found.by_piece.items()}
    tools = ToolsFact("", tuple(found.tools.values()), by_piece)
    return Contribution(facts=[tools, *found.work.values()])


def _read(text: str, place: Place, found: _Found, own: list[str], *, is_holder: bool) -> None:
    """The tools of a text: what the workshop calls by a name of its own, then the trade's words."""
    if not text or text.startswith("its "):
        return
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


def _own_names(design: Design) -> list[str]:
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
    return sorted({str(name) for group in groups for name in group}, key=len, reverse=True)
