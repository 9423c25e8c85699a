"""Forms to what is drawn of them where a drawing does not show all that is made.

Teeth are drawn as the blank they are cut in (ISO 2203), coils as the room that they fill
(after ISO 2162-1, from memory): nobody measures them on paper, and exact hidden lines of them
take seconds.
"""

from __future__ import annotations

from binder_solid.facts import FormFact
from binder_solid.forms import Cut, Cylinder, Form, Frame

_TOOTHED = ("gear", "sprocket")


def drawn_form(fact: FormFact) -> Form | None:
    """The form of the views, None where it is the form itself."""
    if fact.shape == "spring":
        return _envelope(fact)
    if fact.shape in _TOOTHED and fact.size[1] == fact.size[2]:
        tools = tuple(tool for one in fact.located if not one.adds for tool in one.tools)
        blank = _envelope(fact)
        return Cut(blank, tools) if tools else blank
    return None


def _envelope(fact: FormFact) -> Form:
    """A cylinder along x over the whole form."""
    return Cylinder(fact.size[1] / 2, fact.size[0], Frame(z=(1.0, 0.0, 0.0), x=(0.0, 1.0, 0.0)))
