"""What holds the model up, as a page: the chain without float, and the float of the others."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Paragraph,
    Place,
    Section,
    Strong,
    Subheading,
    Table,
    Text,
)
from binder_plugins.operations.holding_up import Held, Holding, holding_up
from binder_plugins.operations.minutes import route_estimate
from binder_plugins.operations.planning import WorkPlan, useful_minutes

if TYPE_CHECKING:
    from collections.abc import Iterator

_CHAIN = (
    Column("", 0.8, is_figure=True),
    Column("One after the other", 6),
    Column("Takes", 2, is_figure=True),
    Column("In evening", 2, is_figure=True),
)
_OTHERS = (
    Column("Has time", 4.6),
    Column("Takes", 1.6, is_figure=True),
    Column("Float", 1.6, is_figure=True),
    Column("Can begin in", 1.8, is_figure=True),
    Column("Planned in", 1.8, is_figure=True),
    Column("Waited for in", 2, is_figure=True),
)
_MINUTES_ALONE = 120
_FLOAT = (
    "Float is the work by which a part may fall behind before it holds up the whole; what shares a "
    "way to the end shares it, and without any it holds the model up as the chain does. Evenings "
    "are those of the plan above: in the first of its row a part may be begun, a later set-up of "
    "it once that one's own tools and mates are there; if it is done for the last of its row, no "
    "other has to move. A tool that is made in the chuck for a set-up stays there for it and moves "
    "with it: it stands in the row of its part. On a bad evening take up something with much "
    "float; what stands in the chain wants a fresh one."
)


def holding_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section beside the evenings, where more than one thing is made."""
    plan = design.facts.about(WorkPlan, "")
    if plan is None or len(plan.evenings) < 2:
        return
    found = holding_up(plan, useful_minutes(design))
    rows = tuple(_link(n, one) for n, one in enumerate(found.chain, 1))
    blocks: list[Block] = [Paragraph((_words(found, plan),)), Table(_CHAIN, rows)]
    if found.others:
        others = tuple(_other(one) for one in found.others)
        blocks += [Subheading("All others"), Paragraph((_FLOAT,)), Table(_OTHERS, others)]
    yield Section("holding-up", "What holds the model up", Place.EVENINGS, tuple(blocks))


def _words(found: Holding, plan: WorkPlan) -> str:
    whole = route_estimate(plan.minutes).text
    chain = route_estimate(found.length - found.rests).text
    rests = ", and the waits for what cures or dries in it" if found.rests else ""
    return (
        f"Of {whole} of work these take {chain} one after the other{rests}: with any number of "
        "hands the model is done no sooner, and an hour lost here is lost to the whole. Begin "
        "each as soon as what stands before it is done." + _alone(found)
    )


def _alone(found: Holding) -> str:
    """What one pair of hands waits for cures, in whole evenings; nothing where nothing cures."""
    if not found.rests and not found.idle:
        return ""
    evenings = round(found.idle)
    if not evenings:
        return (
            " While something cures there is always other work: take up what has the least float."
        )
    waits = "an evening" if evenings == 1 else f"{evenings} evenings"
    return (
        " One pair of hands that always takes up what has the least float has nothing but cures "
        f"to wait for on {waits}."
    )


def _link(number: int, one: Held) -> tuple[Text, ...]:
    return ((str(number),), (Strong(_title(one)),), (_time(one.minutes),), (_evenings(one),))


def _other(one: Held) -> tuple[Text, ...]:
    return (
        (_title(one),),
        (_time(one.minutes),),
        (_time(one.slack) if one.slack else "none",),
        (str(one.may_begin),),
        (_evenings(one),),
        (str(one.needed),),
    )


def _title(one: Held) -> str:
    title = f"finish the {one.title}" if one.owner.startswith("finish ") else one.title
    return title[0].upper() + title[1:]


def _evenings(one: Held) -> str:
    return f"{one.begins}" if one.begins == one.ends else f"{one.begins} to {one.ends}"


def _time(minutes: float) -> str:
    """Minutes up to two hours, beyond them hours and minutes: nothing is lost to whoever adds."""
    hours, rest = divmod(round(minutes), 60)
    if minutes <= _MINUTES_ALONE:
        return f"{minutes:.0f} min"
    return f"{hours} h {rest} min" if rest else f"{hours} h"
