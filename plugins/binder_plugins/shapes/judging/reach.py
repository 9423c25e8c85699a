"""Cuts against the cutters that are owned: corners too sharp, too deep, no way in."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from binder.api import Design, Diagnostic, Feature, Size, exact, shown_length
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.features import Cut, Hole, Pocket, TeeSlot
from binder_solid.facts import FormFact, Located

# Common practice, no source: an end mill cuts three times its diameter deep.
_DEEP = 3


def check_reach(design: Design) -> Iterator[Diagnostic]:
    """Each cut of a part that is more than looks."""
    for form in design.facts.all(FormFact):
        features = {one.name: one for one in design.parts[form.subject].features}
        for one in form.located:
            feature = features.get(one.name)
            look = _LOOKS.get(one.kind)
            if feature is not None and look is not None and not one.is_dummy:
                yield from look(feature, one, form, design)


def _pocket(feature: Feature, one: Located, form: FormFact, design: Design) -> Iterator[Diagnostic]:
    entry = feature.entry
    mills = design.workshop.owned.end_cutters
    if not isinstance(entry, Pocket) or not mills:
        return
    smallest = min(mills, key=lambda mill: mill.mm)
    corner = entry.corner
    if corner is None or 2 * corner.exact < smallest.mm:
        yield form_codes.POCKET_CORNER_TOO_SHARP.at(
            corner.span if corner is not None else feature.at,
            f"the corners of '{feature.name}' on '{form.subject}' are "
            f"{'square' if corner is None else f'R{shown_length(corner.exact)}'}; the smallest "
            f"cutter leaves R{shown_length(smallest.mm / 2)}",
            help=f"write `corner: {shown_length(smallest.mm / 2)}`, or more",
        )
        return
    cutter = design.workshop.widest_end_cutter(2 * corner.exact)
    if cutter is not None:
        yield from _too_deep(feature, one, form, float(cutter.mm), "its corners")


def _slot(feature: Feature, one: Located, form: FormFact, design: Design) -> Iterator[Diagnostic]:
    if one.diameter is None or one.depth is None or one.face == "axis":
        return
    cutter = design.workshop.widest_end_cutter(exact(one.diameter))
    if cutter is not None:
        yield from _too_deep(feature, one, form, float(cutter.mm), "it")


def _keyway(feature: Feature, one: Located, form: FormFact, design: Design) -> Iterator[Diagnostic]:
    """A Woodruff cutter reaches what its own radius gives: its joint looks after it."""
    if getattr(feature.entry, "cutter", None) is None:
        yield from _slot(feature, one, form, design)


def _too_deep(
    feature: Feature, one: Located, form: FormFact, cutter: float, what: str
) -> Iterator[Diagnostic]:
    if one.depth is not None and one.depth > _DEEP * cutter + 1e-6:
        depth = getattr(feature.entry, "depth", None)
        yield form_codes.CUTTER_CANNOT_REACH.at(
            depth.span if isinstance(depth, Size) else feature.at,
            f"'{feature.name}' on '{form.subject}' is {one.depth:g} mm deep; the {cutter:g} mm "
            f"cutter that {what} takes reaches {_DEEP * cutter:g} mm",
            help=f"make it {_DEEP * cutter:g} mm deep, wider, or cut it from both sides",
        )


def _bore(feature: Feature, one: Located, form: FormFact, design: Design) -> Iterator[Diagnostic]:
    bars = design.workshop.entry.cutters.boring_bars
    if not isinstance(feature.entry, Hole) or not bars or one.diameter is None:
        return
    if feature.entry.narrows_to is not None:  # Judged by its small end, where its drill is known.
        return
    deep = one.depth if one.depth is not None else _through(one, form)
    if deep < one.diameter:
        return
    able = [bar.reach.mm for bar in bars if bar.least_bore.mm <= one.diameter + 1e-6]
    most = max(able, default=0.0)
    if deep <= most + 1e-6:
        return
    words = f"reaches {most:g} mm" if able else f"needs {min(b.least_bore.mm for b in bars):g} mm"
    yield form_codes.CUTTER_CANNOT_REACH.at(
        feature.at,
        f"'{feature.name}' on '{form.subject}' is {one.diameter:g} mm across and {deep:g} mm "
        f"deep; the best boring bar {words}",
        help="drill and ream it, bore it from both ends, or make the bore larger",
    )


def _through(one: Located, form: FormFact) -> float:
    return sum(abs(way) * size for way, size in zip(one.frame.z, form.size, strict=True))


def _undercut(
    feature: Feature, one: Located, form: FormFact, design: Design
) -> Iterator[Diagnostic]:
    """A dovetailed or T-slot: its cutter comes in from an end, and is to be owned."""
    if _is_closed(feature, one, form):
        yield form_codes.CUTTER_CANNOT_REACH.at(
            feature.at,
            f"'{feature.name}' on '{form.subject}' ends inside the metal: its cutter cannot get in",
            help="let it run out at one end: longer, or moved to the edge",
        )
    entry = feature.entry
    cutters = design.workshop.entry.cutters.tee_slot_cutters
    if isinstance(entry, TeeSlot) and not any(
        one.diameter.exact <= entry.head.exact and one.width.exact <= entry.head_depth.exact
        for one in cutters
    ):
        yield form_codes.CUTTER_CANNOT_REACH.at(
            entry.head.span,
            f"no T-slot cutter here goes into a head of {shown_length(entry.head.exact)} × "
            f"{shown_length(entry.head_depth.exact)}",
            help="put one on the shopping list, or build the slot up from strips",
        )


def _is_closed(feature: Feature, one: Located, form: FormFact) -> bool:
    is_tail = one.kind == "dovetailed" and not getattr(feature.entry, "inside", False)
    if one.length is None or is_tail or form.stretches:
        return False
    runs_across = isinstance(feature.entry, Cut) and feature.entry.runs == "across"
    x = max(range(3), key=lambda n: abs(one.frame.x[n]))
    z = max(range(3), key=lambda n: abs(one.frame.z[n]))
    axis = next(n for n in range(3) if n not in (x, z)) if runs_across else x
    start, end = (one.spots[0][axis] + way * one.length / 2 for way in (-1, 1))
    return start > 1e-6 and end < form.size[axis] - 1e-6


Look = Callable[[Feature, Located, FormFact, Design], Iterator[Diagnostic]]
_LOOKS: dict[str, Look] = {
    "pocketed": _pocket,
    "slotted": _slot,
    "keywayed": _keyway,
    "bored": _bore,
    "t_slotted": _undercut,
    "dovetailed": _undercut,
}
