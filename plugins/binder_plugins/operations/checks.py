"""Routes to what cannot be held, cut, divided or measured in this workshop."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import NOWHERE, CutSize, Design, Diagnostic, HalfFact, MaterialFact, exact
from binder_plugins.operations import codes
from binder_plugins.operations.facts import Route
from binder_plugins.operations.planning import ring
from binder_solid.facts import FormFact, Located

if TYPE_CHECKING:
    from collections.abc import Iterator

_HELP = {
    "nothing-to-grip": "leave a plain step of 3 mm or more, or a hole right through",
    "stands-out-too-far": "shorter, thicker, or tell the lathe's `tailstock` in the workshop",
    "needs-steady": "use rod as bought, or turn it in short lengths",
    "thread-turns-the-work": "a longer plain step to grip, or a collet of its size",
    "drill-cannot-reach": "from both ends, stepped, or larger",
    "two-settings-for-true": "put a collet or four-jaw chuck in the workshop, or bore it through",
    "ream-blind": "right through, or `bored`",
    "operations-loop": "change one of the reasons that are named",
}
_SLENDER = 10.0
_INSET = frozenset({"pressed", "retained", "bonded", "glued", "shrunk"})


def check_routes(design: Design) -> Iterator[Diagnostic]:
    """What the planner met on its way."""
    for route in design.facts.all(Route):
        for name, words in dict.fromkeys(route.trouble):
            yield codes.BY_NAME[name].at(route.at, words, help=_HELP.get(name, ""))
        for act in route.acts:
            for name, words in act.trouble:
                yield codes.BY_NAME[name].at(act.at, words, help=_HELP.get(name, ""))


def check_order(design: Design) -> Iterator[Diagnostic]:
    """Acts of different parts that wait for one another in a ring."""
    found = ring(design)
    if found is not None:
        first = found.edges[0]
        owner = next(
            (r for r in design.facts.all(Route) if first.before.startswith(r.subject)), None
        )
        yield codes.OPERATIONS_LOOP.at(
            owner.at if owner is not None else NOWHERE,
            "the acts of the work wait for one another in a ring",
            notes=found.words[:6],
            help=_HELP["operations-loop"],
        )


def check_measured(design: Design) -> Iterator[Diagnostic]:
    """Limits against the instruments that are owned."""
    for half in design.facts.all(HalfFact):
        item = design.parts.get(half.item)
        if item is None or half.lower is None or half.upper is None:
            continue
        if "as bought" in half.what:
            continue
        yield from _measured(half, design)


def _measured(half: HalfFact, design: Design) -> Iterator[Diagnostic]:
    part = design.parts[half.item]
    if half.what.startswith(("ream", "bore", "drill", "lap")) or half.lower is None:
        return
    low, high = exact(half.lower), exact(half.upper or half.lower)
    found = design.workshop.finest(low, high, "outside")
    is_free = half.is_master or "suit" in half.how
    if found is None and not is_free:
        yield codes.CANNOT_BE_MEASURED.at(
            part.at,
            f"'{half.place}' of '{half.item}' is {half.what}, and no instrument here reaches it",
            help="let it be made to suit its mate, or borrow an instrument",
        )


def check_bars(design: Design) -> Iterator[Diagnostic]:
    """Bars that neither pass the spindle nor go into a saw."""
    saws = [one for one in design.workshop.entry.machines.saws.values() if "bars" in one.cuts]
    for cut in design.facts.all(CutSize):
        part = design.parts.get(cut.subject)
        if part is None or not cut.form.endswith(("bar", "rod")) or not cut.section:
            continue
        across = cut.section[0]
        is_sawn = any(one.takes is None or one.takes.exact >= across for one in saws)
        if not is_sawn and not design.workshop.passes_spindle(across):
            yield codes.BAR_WILL_NOT_PASS.at(
                part.at,
                f"'{part.name}' is cut from {cut.section_text}, which goes neither through the "
                "spindle nor into a saw here",
                help="order it sawn to length",
            )


def check_floors(design: Design) -> Iterator[Diagnostic]:
    """Parts pressed or bonded into blind holes that are only drilled."""
    for half in design.facts.all(HalfFact):
        joint, part = design.joints.get(half.joint), design.parts.get(half.item)
        if joint is None or part is None or joint.kind not in _INSET:
            continue
        feature = next((one for one in part.features if one.name == half.place), None)
        form = design.facts.about(FormFact, half.item)
        if feature is None or feature.kind != "drilled" or form is None:
            continue
        if any(one.name == half.place and one.depth is not None for one in form.located):
            yield codes.FLAT_BOTTOM_BY_DRILL.at(
                feature.at,
                f"'{half.joint}' stands on the cone that the drill leaves in '{half.place}'",
                help="ream or bore it, or drill deeper than the part goes in",
            )


def check_warping(design: Design) -> Iterator[Diagnostic]:
    """Long thin pieces of bright steel that are milled half through from one side."""
    for form in design.facts.all(FormFact):
        material = design.facts.about(MaterialFact, form.subject)
        part = design.parts[form.subject]
        if material is None or form.stretches or not _is_bright(material):
            continue
        for one in form.located:
            if _bows(one, form):
                yield codes.WILL_WARP.at(
                    next((f.at for f in part.features if f.name == one.name), part.at),
                    f"'{form.subject}' is bright steel, {form.size[0]:g} mm long, and "
                    f"'{one.name}' takes {one.depth:g} mm of its {form.size[2]:g} mm away",
                    help="rough both sides first, or anneal it",
                )


def _is_bright(material: MaterialFact) -> bool:
    return "steel" in material.group and "bright" in f"{material.condition} {material.designation}"


def _bows(one: Located, form: FormFact) -> bool:
    is_cut = one.kind in {"slotted", "pocketed", "stepped", "dovetailed"}
    if not is_cut or one.depth is None or one.face not in {"top", "underside"}:
        return False
    middle = one.frame.origin[0]
    long = one.length or 2 * min(middle, form.size[0] - middle)
    is_thin = form.size[0] >= _SLENDER * form.size[2]
    return is_thin and long >= form.size[0] / 2 and one.depth >= form.size[2] / 2
