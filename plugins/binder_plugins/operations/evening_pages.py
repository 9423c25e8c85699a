"""The evenings to their page: what is done, what is laid out, where to stop."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Link,
    Paragraph,
    Place,
    Section,
    Strong,
    Subheading,
    Table,
    Text,
    TickBox,
)
from binder_plugins.operations.aids.facts import PREFIX
from binder_plugins.operations.jobs import piece_id, share_of
from binder_plugins.operations.minutes import route_estimate
from binder_plugins.operations.planning import WorkPlan
from binder_plugins.operations.wanted_page import MADE_SECTION

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_making.sessions import Evening
    from binder_plugins.operations.jobs import Piece

_COLUMNS = (Column("", 0.45), Column("", 4), Column("", 8), Column("", 1.4, is_figure=True))
_NIGHT_H = 24.0
_PRACTISED = (
    "those of a practised amateur: a first model takes half as long again, a beginner twice to "
    "three times"
)
_VERBS = ("assemble", "begin", "go on with", "bond", "put", "lock")


def evening_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section with every evening."""
    plan = design.facts.about(WorkPlan, "")
    if plan is None or not plan.evenings:
        return
    blocks: list[Block] = [Paragraph((_words(plan, design),))]
    day = 0
    for evening in plan.evenings:
        blocks += _evening(evening, plan, max(evening.day - day - 1, 0))
        day = evening.day
    yield Section("evenings", "Evenings", Place.EVENINGS, tuple(blocks))


def _words(plan: WorkPlan, design: Design) -> str:
    told = "at the pace of this workshop" if design.workshop.entry.pace else _PRACTISED
    count = len(plan.evenings)
    return (
        f"The work in {count} evening{'s' if count > 1 else ''}, one kind of set-up at a time as "
        f"far as the order allows. Work is mounted {plan.setups} times; mounting and changing "
        f"tools takes {plan.spent_min:.0f} min, and no order that keeps every reason can take "
        f"less than {plan.least_min:.0f}. Minutes of a line are {told}. The range of an evening "
        "has a fifth more in it for measuring and the odd remake, goes from a quarter under to "
        "three fifths over that, and adds up to the hours of the cover. Write down what an evening "
        "really took: its minutes over those printed are your pace (pace: in the workshop file)."
    )


def _evening(evening: Evening, plan: WorkPlan, idle: int) -> Iterator[Block]:
    """An evening; `idle` days pass before it that no other fills."""
    time = route_estimate(evening.minutes)
    yield Subheading(f"Evening {evening.number}: {time.least_min:.0f} to {time.most_min:.0f} min")
    if evening.held_by:
        piece = plan.pieces[piece_id(evening.held_by)]
        yield Paragraph(
            (
                Strong(f"Leave {idle} evening{'s' if idle > 1 else ''} free before this one: "),
                f"{_rested(piece)} is not to be touched before.",
            )
        )
    if evening.number == 1 and (tools := ready(evening.tools, evening)):
        yield Paragraph((Strong("Lay out before you start: "), f"{'; '.join(tools)}."))
    yield Table(_COLUMNS, tuple(_rows(evening, plan)))
    yield Paragraph(tuple(_foot(evening, plan)))


def _rows(evening: Evening, plan: WorkPlan) -> Iterator[tuple[Text, ...]]:
    for name in evening.jobs:
        piece = plan.pieces[piece_id(name)]
        part = f", {name.split(', ')[-1]}" if ", part " in name else ""
        number, count = (int(one) for one in part.split()[2::2]) if part else (1, 1)
        share = share_of(piece, number, count)
        what: Text = (f"{_what(piece)}{part}",)
        if piece.id.startswith(PREFIX):
            what = (f"from {piece.what}{part}; ", Link("how", MADE_SECTION))
        yield ((TickBox(f"evening {name}"),), _who(piece), what, (f"{share:.0f} min",))


def _who(piece: Piece) -> Text:
    if piece.setup is None:
        return (Strong(piece.title[0].upper() + piece.title[1:]),)
    off = f", {piece.count} off" if piece.count > 1 else ""
    return (Strong(piece.title[0].upper() + piece.title[1:]), f", set-up {piece.setup.number}{off}")


def _what(piece: Piece) -> str:
    setup = piece.setup
    if setup is None:
        return piece.what
    where = f"{setup.machine}: " if setup.machine else ""
    acts = list(dict.fromkeys(act.act for act in setup.acts))
    shown = ", ".join(acts[:6]) + (" …" if len(acts) > 6 else "")
    return f"{where}{shown.replace('-', ' ')}"


def _foot(evening: Evening, plan: WorkPlan) -> Iterator[Strong | str]:
    if evening.gates:
        yield Strong("Measure and write down: ")
        yield f"{'; '.join(gates_told(evening.gates))}. "
    for remark in evening.remarks:
        yield f"{remark[0].upper()}{remark[1:]}. "
    if evening.cures:
        long = any(plan.pieces[piece_id(one)].rests_h > _NIGHT_H for one in evening.cures)
        is_last = evening.number == len(plan.evenings)
        until = "for the time that is told" if long or is_last else "before the next evening"
        yield Strong(f"Not to be touched {until}: ")
        yield f"{'; '.join(_resting(evening, plan))}. "
    following = plan.evenings[evening.number : evening.number + 1]
    tools = ready(evening.next_tools, *following)
    if tools:
        yield Strong("Lay out for the next: ")
        yield f"{'; '.join(tools)}."
    elif evening.number == len(plan.evenings):
        yield "The last one."


def gates_told(gates: tuple[str, ...]) -> Iterator[str]:
    """What is measured, each piece of work named once, whatever its set-ups."""
    found: dict[str, list[str]] = {}
    for gate in gates:
        title, _, sizes = gate.rpartition(": ")
        found.setdefault(title, []).append(sizes)
    for title, several in found.items():
        each = dict.fromkeys(size for one in several for size in one.split(", "))
        yield f"{title}: {', '.join(each)}"


def ready(tools: tuple[str, ...], *evenings: Evening) -> list[str]:
    """The tools of an evening without those that are made in it."""
    made = {piece_id(job).removeprefix(PREFIX) for one in evenings for job in one.jobs}
    return [tool for tool in tools if tool not in made]


def _resting(evening: Evening, plan: WorkPlan) -> Iterator[str]:
    """What cures, dries or is away, and for how long."""
    for name in evening.cures:
        piece = plan.pieces[piece_id(name)]
        yield _rested(piece)


def _rested(piece: Piece) -> str:
    verb, _, rest = piece.title.partition(" the ")
    is_task = piece.setup is None and verb in _VERBS
    return f"{f'the {rest}' if is_task else piece.title} ({rest_text(piece.rests_h)})"


def rest_text(hours: float) -> str:
    """`12 h`, or days beyond two."""
    return f"{hours / 24:.0f} days" if hours > 48 else f"{hours:.0f} h"
