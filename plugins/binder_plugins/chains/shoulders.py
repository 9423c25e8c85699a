"""Running joints to chains from shoulder to shoulder: a journal a little longer than its bore."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from binder.api import Before, ChainFact, ChainLink, Design, Joint, PlaceFact, Reference
from binder_plugins.chains.stops import closed_by
from binder_solid.facts import FormFact
from binder_trade.limits import stray_mm

# With more room than this along the axis the piece is not held by the shoulders.
_MOST_PLAY = 1.0
# Common practice, no source: what a part wants that turns on a screw or pin.
LEAST, MOST = 0.1, 0.3
_TRIED = "it is tried on before the journal leaves its grip"
RUNNING = ("runs_in", "swivels", "hinged")
_SUNK = ("recessed", "counterbored")
_GENERAL = "ISO 2768-1 m"
_OF_TWO = "ISO 2768-1 m, of the length and of the recess"


def shoulder_chains(design: Design) -> Iterator[ChainFact]:
    """A chain for each through bore on a journal that is longer by a little."""
    listed = getattr(design.spec.written, "shafts", None) or {}
    for joint in design.joints.values():
        if joint.kind in RUNNING and len(joint.ends) == 2:
            journal, bore = halves(joint, design)
            if journal is not None and bore is not None and journal.item not in listed:
                yield from _chain(joint, journal, bore, design)


def tried_on(fact: ChainFact, design: Design) -> Iterator[Before]:
    """What closes a float is made before the journal, so that it is tried before that is let go."""
    closing = next((one for one in fact.links if one.name == fact.closing), None)
    joint = design.joints.get(fact.closed_by)
    journal = closing.key.partition(".")[0] if closing is not None and closing.factor > 0 else ""
    for item in joint.items if joint is not None and journal else ():
        if item in design.parts and item not in fact.items:
            yield Before(f"make {item}", f"make {journal}", _TRIED, is_must=False, at=fact.at)


def held(bore: PlaceFact, design: Design) -> Fraction | None:
    """The metal in mm along a bore between what stops it: less the recesses in its mouths.

    In turned work a recess or counterbore is on the bore's own axis; elsewhere that is not known.
    """
    part = design.parts.get(bore.item)
    sunk = _sunk_in(bore, design)
    if bore.thickness is None or not sunk:
        return bore.thickness
    if part is None or part.shape_kind != "turned" or bore.across:
        return None
    return bore.thickness - sum(sunk, Fraction(0))


def _sunk_in(bore: PlaceFact, design: Design) -> list[Fraction]:
    """How deep each recess is in the mouths of a bore; mm."""
    return [
        one.depth
        for one in design.facts.all(PlaceFact)
        if one.item == bore.item and one.kind in _SUNK and one.depth is not None
    ]


def halves(joint: Joint, design: Design) -> tuple[PlaceFact | None, PlaceFact | None]:
    """The journal and the bore of a joint, None for what is neither."""
    places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends]
    journal = next((one for one in places if one is not None and one.form == "step"), None)
    bore = next((one for one in places if one is not None and one.form == "hole"), None)
    return journal, bore


def _chain(
    joint: Joint, journal: PlaceFact, bore: PlaceFact, design: Design
) -> Iterator[ChainFact]:
    thick = held(bore, design)
    if journal.length is None or thick is None or not bore.is_through:
        return
    play = float(journal.length - thick)
    if not 0 < play <= _MOST_PLAY:
        return
    pin, hub = (design.item(one.item) for one in (journal, bore))
    names = [one.title if one is not None else "" for one in (pin, hub)]
    master = joint.entry.master
    # A journal that is made to its measured hub is measured across, whatever its ends came to.
    is_across = master is not None and master.item == bore.item
    name = f"journal of the {names[0]}"
    whole = _link(name, journal, float(journal.length), 1.0)
    links = (
        *((whole,) if is_across else _journal(names[0], journal, whole, design)),
        _hub(names[1], bore, thick, design),
    )
    yield ChainFact(
        subject=f"{joint.name}: shoulders",
        kind="shoulders",
        title=f"End float of '{joint.name}'",
        items=(journal.item, bore.item),
        links=links,
        least=LEAST,
        most=MOST,
        jams=0.0,
        closing=_closing(joint.entry.master, (journal, bore), links),
        way_out=_way_out(play, *names),
        closed_by=closed_by(journal, bore, joint, design),
        at=joint.at,
    )


def _between(title: str, bore: PlaceFact, thick: Fraction) -> str:
    """What of the hub is between the shoulders: all of its length, or what a recess leaves."""
    is_whole = bore.thickness is None or thick == bore.thickness
    return f"length of the {title}" if is_whole else f"web of the {title} under its recess"


def _hub(title: str, bore: PlaceFact, thick: Fraction, design: Design) -> ChainLink:
    """The length of a hub; a web strays by the whole length and by each depth cut of it."""
    name = _between(title, bore, thick)
    link = _link(name, bore, float(thick), -1.0)
    if bore.thickness is None or thick == bore.thickness:
        return link
    sizes = (bore.thickness, *_sunk_in(bore, design))
    of = tuple(stray_mm(float(one)) for one in sizes)
    half = round(sum(of), 6)
    return replace(link, upper=half, lower=-half, why=_OF_TWO, of=of)


def _journal(
    title: str, journal: PlaceFact, whole: ChainLink, design: Design
) -> Iterator[ChainLink]:
    """The length of a journal: what is left of a rod where each end of it is turned down.

    Each end is measured from its own face, so that both and the whole add to what is left.
    """
    form = design.facts.about(FormFact, journal.item)
    steps = form.stretches if form is not None and journal.is_bought_rod else ()
    step = next((one for one in steps if one.name == journal.place), None)
    long = form.size[0] if form is not None else 0.0
    ends = (("left", step.start), ("right", long - step.end)) if step is not None else ()
    if not ends or min(end for _, end in ends) <= 0:
        yield whole
        return
    yield _link(f"length of the {title} over all", journal, long, 1.0)
    for side, end in ends:
        yield _link(f"{side}-hand end of the {title}, turned down", journal, end, -1.0)


def _closing(
    master: Reference | None, halves: tuple[PlaceFact, PlaceFact], links: tuple[ChainLink, ...]
) -> str:
    """Where the joint names the half that is made and measured first, the other one closes."""
    if master is None:
        return ""
    # The hub is the last link; a journal that is made to it is the first, and one link alone.
    return links[-1].name if master.item == halves[0].item else links[0].name


def _way_out(play: float, pin: str, hub: str) -> str:
    """What is done to the journal: longer where play is missing, shorter where there is more."""
    if play < LEAST:
        return f"make the journal of the {pin} longer, or measure the {hub} first"
    if play > MOST:
        return f"make the journal of the {pin} shorter, or measure the {hub} first"
    return (
        f"too little: make the journal of the {pin} longer; too much: shorter; or measure "
        f"the {hub} first"
    )


def _link(name: str, place: PlaceFact, length: float, factor: float) -> ChainLink:
    half = stray_mm(length)
    return ChainLink(name, length, half, -half, factor, f"{place.subject} length", _GENERAL)
