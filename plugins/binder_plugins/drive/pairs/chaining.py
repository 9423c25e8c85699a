"""Gears in a frame to the tolerance chain of their centre distance."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import ChainFact, ChainLink, Design, FitFact, Joint
from binder_plugins.drive.pairs.facts import MeshFact
from binder_plugins.drive.train.bodies import bodies
from binder_trade.explained import NotDefined
from binder_trade.fastening.lining_up import BY_COORDINATES, BY_HAND, placing_error
from binder_trade.gears.pair import Mesh, mesh

SET = "set in mesh"
# Kinds of joint whose gap is filled: with adhesive, or with solder.
FILLED = ("retained", "soft_soldered", "silver_soldered")
# Pairs of teeth in touch, under which one lets go before the next has hold: common practice.
_LEAST_CONTACT = 1.1
_HALVINGS = 40


def centre_chains(meshes: tuple[MeshFact, ...], design: Design) -> Iterator[ChainFact]:
    """The chain of each pair whose distance the frame tells."""
    of = bodies(design)
    for fact in meshes:
        if fact.mesh is None or fact.frame is None or fact.mesh.wheel.is_internal:
            continue
        items = [of[one].items if one in of else (one,) for one in (fact.pinion, fact.wheel)]
        yield _chain(fact, fact.mesh, [*_links(fact, fact.frame, items, design)], design)


def _chain(fact: MeshFact, made: Mesh, links: list[ChainLink], design: Design) -> ChainFact:
    joint = design.joints[fact.joint]
    is_set = joint.made == SET
    titles = [item.title for name in (fact.pinion, fact.wheel) if (item := design.item(name))]
    return ChainFact(
        subject=f"{fact.subject}: centres",
        kind="centres",
        title=f"Centres of {' and '.join(titles)}",
        items=(fact.pinion, fact.wheel),
        links=tuple(links),
        least=made.tight_mm,
        most=2 * fact.wanted - made.tight_mm,
        jams=made.tight_mm,
        fails=_parts_at(made),
        closing=links[0].name if is_set else "",
        is_set=is_set,
        way_out=f"add `made: {SET}`: the second bore is put where the cut gears run freely",
        at=joint.at,
    )


def _links(
    fact: MeshFact, frame: float, items: list[tuple[str, ...]], design: Design
) -> Iterator[ChainLink]:
    """The distance of the bores, and how far each shaft can lie off the middle of its own."""
    how = BY_COORDINATES if design.workshop.entry.machines.mills else BY_HAND
    stray = placing_error(how)
    if design.joints[fact.joint].made == SET:
        # The second bore is where the gears put it: no table has placed it.
        how, stray = SET, 0.0
    yield ChainLink(
        "distance of the bores", frame, stray, -stray, 1.0, f"{fact.subject} centres", how
    )
    for one in items:
        for joint in design.joints.values():
            fit = design.facts.about(FitFact, joint.name)
            if fit is not None and _turns(joint, one):
                yield _slack(joint, fit)
                yield from _bedded(joint, one, design)
                break


def _turns(joint: Joint, items: tuple[str, ...]) -> bool:
    return joint.kind in ("runs_in", "swivels") and any(end.item in items for end in joint.ends)


def _slack(joint: Joint, fit: FitFact) -> ChainLink:
    """A shaft pressed to one side moves by half of its clearance, to either side."""
    half = max(fit.clearance_max_um, 0.0) / 2000
    return ChainLink(
        f"play of '{joint.name}'", 0.0, half, -half, 1.0, f"play {joint.name}", "half the clearance"
    )


def _bedded(joint: Joint, shaft: tuple[str, ...], design: Design) -> Iterator[ChainLink]:
    """A bush that is bonded lies against one side of its hole: half of the gap to that side."""
    bushes = {end.item for end in joint.ends} - set(shaft)
    for other in design.joints.values():
        fit = design.facts.about(FitFact, other.name)
        is_bonded = other.kind in FILLED and any(end.item in bushes for end in other.ends)
        if fit is not None and is_bonded:
            half = max(fit.clearance_max_um, 0.0) / 2000
            name = f"gap of '{other.name}'"
            yield ChainLink(name, 0.0, half, -half, 1.0, f"gap {other.name}", "half the gap")


def _parts_at(made: Mesh) -> float:
    """The distance at which too few teeth are in touch; between tight and clear of all."""
    near = made.tight_mm
    far = near + 2.25 * made.pinion.module_mm
    for _ in range(_HALVINGS):
        middle = (near + far) / 2
        near, far = (middle, far) if _holds(made, middle) else (near, middle)
    return near


def _holds(made: Mesh, centres: float) -> bool:
    try:
        return mesh(made.pinion, made.wheel, centres_mm=centres).contact_ratio >= _LEAST_CONTACT
    except NotDefined:
        return False
