"""Parts to their forms, with the place of each feature."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Contribution, Design, Diagnostic, Fact, Part
from binder_plugins.shapes.forming.beside import holes_beside
from binder_plugins.shapes.forming.bodies import body_of, told_of
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.eyes import eye_notes, flat_eyes, hammered_flat
from binder_plugins.shapes.forming.locating import IN_WORDS, Made, all_made
from binder_plugins.shapes.forming.unread import unread_places
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Cut, Form, Joined


def form_parts(design: Design) -> Contribution:
    """A `FormFact` for each part whose shape is whole, and places that could not be read."""
    facts: list[Fact] = []
    findings: list[Diagnostic] = []
    for part in design.parts.values():
        body = body_of(part, design)
        if body is None:
            continue
        made = tuple(all_made(part, body, design))
        beside = tuple(holes_beside(part, body, made, design))
        facts.append(_fact(part, body, made, beside, design))
        findings += unread_places(part, made)
    return Contribution(facts=facts, findings=findings)


def _fact(
    part: Part, body: Body, made: tuple[Made, ...], beside: tuple[Located, ...], design: Design
) -> FormFact:
    eyes = list(flat_eyes(body, made))
    form = whole(hammered_flat(body, eyes), made)
    tools = [tool for one in beside for tool in one.tools]
    return FormFact(
        subject=part.name,
        shape=body.shape,
        form=_cut(form, tools),
        size=body.size,
        stretches=body.stretches,
        located=(
            *body.notes,
            *eye_notes(part, eyes, design.units),
            *(one.located for one in made),
            *beside,
        ),
        told=(*body.told, *told_of(part, design.units)),
        words=tuple(_words(part)),
        data=body.data,
        at=part.at,
    )


def _words(part: Part) -> Iterator[str]:
    for one in part.features:
        if one.kind in IN_WORDS:
            yield f"{one.name}: {getattr(one.entry, one.kind)}"


def whole(body: Form, made: Iterable[Made]) -> Form:
    """The body with all that is cut away and put on, in the order written.

    What is cut between two bosses is cut in one go.
    """
    form = body
    tools: list[Form] = []
    for one in made:
        if not one.located.adds:
            tools += one.located.tools
            continue
        form = Joined((_cut(form, tools), *one.located.tools))
        tools = []
    return _cut(form, tools)


def _cut(form: Form, tools: Iterable[Form]) -> Form:
    tools = tuple(tools)
    return Cut(form, tools) if tools else form
