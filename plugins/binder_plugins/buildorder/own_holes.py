"""The holes of wood screws, as the step of their joint tells them: to be drilled, or there."""

from __future__ import annotations

from binder.api import Design, Joint, TogetherFact
from binder_plugins.buildorder.as_marked import as_marked
from binder_solid.piloting import piloted


def own_holes(joint: Joint, design: Design) -> str:
    """The holes to drill first, which are there where it stood so already, or its marks."""
    words = piloted(joint, design)
    if words and any(
        joint.name in (one.joints if one.how == "pilot holes drilled" else one.held)
        for one in design.facts.all(TogetherFact)
    ):
        return "back into its own holes, as marked: "
    return words or as_marked(joint, design)
