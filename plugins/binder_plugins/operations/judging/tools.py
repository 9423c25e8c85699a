"""Routes to findings about drills, cutters and knurls that are not owned."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, exact, shown_length
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.form_cutters import has_grinder
from binder_plugins.operations.hole_tools import NOT_OWNED
from binder_plugins.operations.judging import tool_codes
from binder_solid.facts import FormFact, Located

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Feature, Part, Workshop

_PLUNGED = frozenset({"slotted", "keywayed", "pocketed"})
# Wheels of so near a pitch in mm roll the same; common practice, no source.
_SAME_PITCH = 0.05


def check_tools(design: Design) -> Iterator[Diagnostic]:
    """Every size that no tool of this workshop makes."""
    for route in design.facts.all(Route):
        form = design.facts.about(FormFact, route.subject)
        kinds = {one.name: one for one in form.located} if form is not None else {}
        for act in route.acts:
            yield from _drill(act, route, kinds.get(act.feature), design)
            yield from _form_cutter(act, route, design)
            yield from _saw(act, route)
        milled = {act.feature for one in route.setups if one.place == "mill" for act in one.acts}
        for located in kinds.values():
            if located.name in milled:
                yield from _slot(located, design)
    for part in design.parts.values():
        for feature in part.features:
            if feature.kind == "knurled":
                yield from _knurl(part, feature, design)


def _drill(act: Act, route: Route, located: Located | None, design: Design) -> Iterator[Diagnostic]:
    """A tapped hole's drill, and a reamer that is not owned, are the matter of other checks."""
    if act.act != "drill" or located is None or not act.tool.endswith(NOT_OWNED):
        return
    size = shown_length(exact(round(act.size, 3)), design.units)
    name = act.feature.replace("_", " ")
    if located.kind == "reamed" and design.workshop.owns_reamer(exact(located.diameter or 0.0)):
        yield tool_codes.REAMER_WITHOUT_DRILL.at(
            act.at,
            f"no drill here leaves the {name} of '{route.subject}' to be reamed; it wants {size}",
            help="buy the drill, or bore it before it is reamed",
        )
    elif located.kind == "drilled":
        yield tool_codes.DRILL_NOT_OWNED.at(
            act.at,
            f"'{act.feature}' of '{route.subject}' wants a {size} drill, which is not owned",
            help=_next_drills(act.size, design),
        )


def _next_drills(size: float, design: Design) -> str:
    drills = design.workshop.drills()
    under = [one for one in drills if float(one.mm) < size]
    over = [one for one in drills if float(one.mm) > size]
    near = [one.name for one in (*under[-1:], *over[:1])]
    return f"nearest owned: {' and '.join(near)}" if near else "no drill is owned at all"


def _form_cutter(act: Act, route: Route, design: Design) -> Iterator[Diagnostic]:
    if has_grinder(design.workshop):
        return
    if act.act == "cut-teeth" and act.tool.endswith(NOT_OWNED):
        document = design.spec.resolved.document
        shapes = (document.span(("parts", route.subject, kind)) for kind in ("gear", "rack"))
        written = (at for at in shapes if at != route.at)
        yield tool_codes.GEAR_CUTTER_NOT_OWNED.at(
            act.at if act.at != route.at else next(written, act.at),
            f"the teeth of '{route.subject}' want a {act.tool.removesuffix(f', {NOT_OWNED}')}, "
            f"which is {NOT_OWNED}",
            help="buy or borrow it, or tell a grinder for a fly cutter under `others:`",
        )


def _saw(act: Act, route: Route) -> Iterator[Diagnostic]:
    if act.act == "slit" and act.tool.endswith(NOT_OWNED):
        yield tool_codes.SLOT_CUTTER_NOT_OWNED.at(
            act.at,
            f"'{act.feature}' of '{route.subject}' is narrower than every hand saw here cuts",
            help="make it as wide as an owned saw cuts, or buy a slotting file",
        )


def _slot(one: Located, design: Design) -> Iterator[Diagnostic]:
    width = one.width or one.diameter
    if one.kind not in _PLUNGED or not width:
        return
    workshop = design.workshop
    if workshop.widest_end_cutter(exact(round(width, 4)), plunging=True) is not None:
        return
    if one.kind == "slotted" and _is_sawn(width, workshop):
        return
    yield tool_codes.SLOT_CUTTER_NOT_OWNED.at(
        one.at,
        f"'{one.name}' is {shown_length(exact(round(width, 3)), design.units)} wide, and no "
        "cutter here is so narrow and may plunge",
        help="make it as wide as an owned slot drill, or buy the cutter",
    )


def _is_sawn(width: float, workshop: Workshop) -> bool:
    saws = workshop.entry.cutters.slitting_saws
    return any(saw.width.mm <= width + 1e-6 for saw in saws)


def _knurl(part: Part, feature: Feature, design: Design) -> Iterator[Diagnostic]:
    pitch = getattr(feature.entry, "knurled", None)
    if pitch is None:
        return
    style = getattr(feature.entry, "style", None) or "diamond"
    owned = design.workshop.entry.cutters.knurls
    if any(one.pattern == style and abs(one.pitch.mm - pitch.mm) <= _SAME_PITCH for one in owned):
        return
    has = ", ".join(f"{one.pattern} {one.pitch.text}" for one in owned) or "none"
    yield tool_codes.KNURL_NOT_OWNED.at(
        feature.at,
        f"'{feature.name}' of '{part.name}' is a {style} knurl of "
        f"{shown_length(exact(pitch.exact), design.units)}, and no such wheels are owned",
        help=f"wheels here: {has}",
    )
