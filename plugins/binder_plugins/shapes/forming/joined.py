"""Fabrications to the form of the joined thing, with what is cut in it afterwards."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    Fabrication,
    Fact,
    LayerEntry,
    did_you_mean,
    exact,
    shown_length,
)
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.form import whole
from binder_plugins.shapes.forming.locating import all_made
from binder_plugins.shapes.forming.riveting import rivets_stopped
from binder_plugins.shapes.forming.stacking import Layer, stacked
from binder_plugins.shapes.forming.unread import unread_places
from binder_solid.facts import FormFact, JoinedFact, Told
from binder_solid.forms import Joined

# More than this side by side is no small machine, and the kernel takes minutes to join them.
_MOST = 60


def form_fabrications(design: Design) -> Contribution:
    """A `JoinedFact` for each fabrication whose stack is told and can be laid out."""
    facts: list[Fact] = []
    findings: list[Diagnostic] = []
    for one in design.fabrications.values():
        wrong = list(_wrong_pieces(one))
        layers = () if wrong else tuple(_layers(one, design))
        unlaid = [] if wrong else list(_not_laid_out(one, layers))
        findings += [*wrong, *unlaid]
        findings += [] if unlaid else rivets_stopped(one, layers)
        if layers and not unlaid:
            body = _body(one, layers, design)
            made = tuple(all_made(one, body, design))
            findings += unread_places(one, made)
            facts.append(
                JoinedFact(
                    subject=one.name,
                    shape=body.shape,
                    form=whole(body.form, made),
                    size=body.size,
                    located=tuple(each.located for each in made),
                    told=body.told,
                    at=one.at,
                )
            )
    return Contribution(facts=facts, findings=findings)


def _wrong_pieces(one: Fabrication) -> Iterator[Diagnostic]:
    """Layers of what is not among the pieces, or of more than there are."""
    there = {str(member.item): member.count for member in one.pieces}
    used: dict[str, int] = {}
    for layer in one.stack:
        name = str(layer.piece)
        used[name] = used.get(name, 0) + (layer.off or 1)
        if name not in there:
            yield form_codes.STACK_OF_OTHERS.at(
                layer.piece.span,
                f"'{name}' is no piece of '{one.name}'",
                help=did_you_mean(name, there),
            )
        elif used[name] > there[name]:
            yield form_codes.STACK_OF_OTHERS.at(
                layer.piece.span,
                f"{used[name]} off '{name}' are stacked, and '{one.name}' has {there[name]}",
                help=f"write `{used[name]} off {name}` under `pieces:`",
            )


def _layers(one: Fabrication, design: Design) -> Iterator[Layer]:
    """The layers that can be laid out, on the face of the first."""
    first: FormFact | None = None
    for entry in one.stack:
        form = design.facts.about(FormFact, str(entry.piece))
        first = first or form
        if form is None or first is None:
            continue
        places = _places(entry, first)
        if places:
            yield Layer(entry, form, places)


def _places(entry: LayerEntry, first: FormFact) -> tuple[tuple[float, float], ...]:
    from binder_trade.explained import NotDefined
    from binder_trade.fastening import Face, lay_out, read_pattern

    if not entry.pattern and (entry.off or 1) == 1:
        return ((0.0, 0.0),)
    if (entry.off or 1) > _MOST:
        return ()
    try:
        pattern = read_pattern(str(entry.pattern or ""), entry.off)
        return lay_out(pattern, Face(first.size[0], first.size[1])).places
    except NotDefined:
        return ()


def _not_laid_out(one: Fabrication, layers: tuple[Layer, ...]) -> Iterator[Diagnostic]:
    laid = {id(layer.entry) for layer in layers}
    for entry in one.stack:
        if id(entry) not in laid:
            yield form_codes.STACK_NOT_LAID_OUT.at(
                entry.piece.span,
                f"it cannot be told where '{entry.piece}' lies in '{one.name}'",
                help="give the piece its shape, and several a pattern: `in a row, 30 mm apart`; "
                f"a layer has at most {_MOST}",
            )


def _body(one: Fabrication, layers: tuple[Layer, ...], design: Design) -> Body:
    pile = stacked(layers)
    told = tuple(
        # In brackets: these come from the pieces, and are there to be looked at (ISO 129-1).
        Told(f"{one.name}.over_{along}", along, 0.0, mm, f"({_bare(mm, design)})")
        for along, mm in zip("xyz", pile.size, strict=True)
    )
    return Body("fabrication", Joined(pile.forms), (0.0, 0.0, 0.0), pile.size, told=told)


def _bare(mm: float, design: Design) -> str:
    return shown_length(exact(round(mm, 3)), design.units).removesuffix(" mm")
