"""A joint to the words of the step that closes it: what goes before, the joint's own, and the rest.

The sheet of the assembly prints them, and the tools that they speak of are laid out by them.
"""

from __future__ import annotations

from binder.api import Assembly, Design, Joint, JointFact
from binder_plugins.buildorder.as_marked import turned_while_tight
from binder_plugins.buildorder.closing import done_after, done_before
from binder_plugins.buildorder.driven_home import past
from binder_plugins.buildorder.floating import for_now, tried_first
from binder_plugins.buildorder.led import led
from binder_plugins.buildorder.locking import dry
from binder_plugins.buildorder.on_the_coat import HOW
from binder_plugins.buildorder.own_holes import own_holes
from binder_plugins.buildorder.pawl_tried import pawl_tried
from binder_plugins.buildorder.riding import beside, put_on_first
from binder_plugins.buildorder.run_out import run_to
from binder_plugins.buildorder.straddled import between_plates, goes_with
from binder_plugins.buildorder.tied import tied_first
from binder_solid.tripped import trip_words


def step_words(joint: Joint, one: Assembly, design: Design) -> str:
    """The step of a joint that closes in an assembly; '' for one without words of its own."""
    fact = design.facts.about(JointFact, joint.name)
    if fact is None:
        return ""
    step = _said_done(joint, design) + tried_first(joint, design) + own_holes(joint, design)
    step += "in the same move: " if goes_with(joint, design) else ""
    step += put_on_first(joint, design) + for_now(joint, fact.step, design)
    step += past(joint, one, design) + run_to(joint, design)
    step += beside(joint, one, design) + between_plates(joint, design)
    step += led(joint, one, design) + tied_first(joint, one, design)
    step += turned_while_tight(joint, one, design)
    step += pawl_tried(joint, design) + trip_words(joint, design) + dry(joint, design)
    return step


def _said_done(joint: Joint, design: Design) -> str:
    later = done_after(joint, design)
    if later is not None:
        return f"last of all, the finish dry ({later.title}): {HOW}"
    task = done_before(joint, design)
    return f"done before ({task.title}): " if task is not None else ""
