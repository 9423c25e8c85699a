"""Sizes of sets, as `6 mm`, `1 mm to 13 mm by 0.1 mm`, `number drills 1 to 60` or a series."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Annotated

from pydantic import ValidationInfo
from pydantic_core import PydanticCustomError

from binder.diagnostics import Span
from binder.parameters import Environment, Gauge
from binder.parameters.near import did_you_mean
from binder.source import Written
from binder.spec.pieces import Piece, read_piece, split_at
from binder.spec.reading import LEAST_LENGTH, MOST_LENGTH, Reading, size_reader, written
from binder.spec.refusal import refused
from binder.units import LENGTH, Quantity, shown
from binder.workshop import codes
from binder.workshop.many import OneOrMany
from binder.workshop.ranges import BOTH_ENDS

MOST_MEMBERS = 500
MOST_IN_ALL = 5000
_GAUGE_RUN = re.compile(
    r"(?P<gauge>[a-z]+(?: [a-z]+)*)"
    r"(?: (?P<first>[A-Za-z0-9/]{1,3}) to (?P<last>[A-Za-z0-9/]{1,3}))?"
)
_INCH_WORDS = ("in", "inch", "inches", "thou", '"', "″", "”")
_WHAT = "sizes, as 6 mm or 1 mm to 13 mm by 0.5 mm"
_read_length = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)


@dataclass(frozen=True, slots=True)
class Member:
    """One size of a set: the name on its shank or box, and its exact size in mm."""

    name: str
    mm: Fraction


@dataclass(frozen=True, slots=True)
class Run:
    """Sizes that were written as one text, in the order in which they stand in the box."""

    members: tuple[Member, ...]
    text: Written

    @property
    def span(self) -> Span:
        """Where it was written."""
        return self.text.span


@dataclass(frozen=True, slots=True)
class SetReading(Reading):
    """A reading that counts the sizes of all runs: a short file must not stand for millions.

    `totals` holds the count after each run.
    """

    totals: list[int] = field(default_factory=list)


def read_run(value: object, info: ValidationInfo) -> Run:
    """A run of sizes, a gauge or part of one, a series of the environment, or a single size."""
    text = written(value, _WHAT)
    if not isinstance(info.context, SetReading):
        raise TypeError("a run of sizes is read within a SetReading")
    totals = info.context.totals
    if totals and totals[-1] > MOST_IN_ALL:
        raise _too_many()
    members = _members(text, info, info.context.environment)
    totals.append(len(members) + (totals[-1] if totals else 0))
    if totals[-1] > MOST_IN_ALL:
        raise _too_many()
    return Run(members, text)


def _too_many() -> PydanticCustomError:
    message = f"more than {MOST_IN_ALL} sizes in the runs of this file"
    return refused(codes.BAD_RUN, message, "take larger steps, or leave out what is not there")


def _members(text: Written, info: ValidationInfo, environment: Environment) -> tuple[Member, ...]:
    sold = environment.series.get(text.replace(" ", "_"))
    if sold is not None:
        return tuple(Member(label, size.amount) for label, size in sold.members)
    gauge = _GAUGE_RUN.fullmatch(text)
    if gauge is not None and (gauge["first"] or gauge["gauge"] in _plurals(environment)):
        return _of_gauge(gauge, environment)
    ends = split_at(text, " to ")
    if len(ends) == BOTH_ENDS:
        return _stepped(text, ends[0], ends[1], info)
    return (Member(" ".join(text.split()), _read_length(text, info).exact),)


def _plurals(environment: Environment) -> dict[str, Gauge]:
    """The gauges by what a set of them is called: `number drills` for `number_drill`."""
    return {f"{name.replace('_', ' ')}s": gauge for name, gauge in environment.gauges.items()}


def _of_gauge(found: re.Match[str], environment: Environment) -> tuple[Member, ...]:
    plurals = _plurals(environment)
    gauge = plurals.get(found["gauge"])
    if gauge is None:
        known = sorted([*plurals, *environment.series])
        near = did_you_mean(found["gauge"], known)
        message = f"no sizes are known as '{found['gauge']}'"
        way_out = near or f"known here: {', '.join(known) or 'none'}"
        raise refused(codes.BAD_RUN, message, way_out, 0, len(found["gauge"]))
    names = list(gauge.sizes)
    first, last = (_place(found, end, names) for end in ("first", "last"))
    if first > last:
        message = f"{found['first']} comes after {found['last']}"
        way_out = f"write {found['gauge']} {found['last']} to {found['first']}"
        raise refused(codes.RANGE_BACKWARDS, message, way_out)
    chosen = names[first : last + 1]
    return tuple(Member(_gauge_name(gauge, name), gauge.sizes[name].amount) for name in chosen)


def _place(found: re.Match[str], end: str, names: list[str]) -> int:
    """Where an end of the run stands in the gauge; a gauge by itself is meant whole."""
    name = found[end]
    if name is None:
        return 0 if end == "first" else len(names) - 1
    if name in names:
        return names.index(name)
    message = f"there is no '{name}' among {found['gauge']}"
    way_out = f"they run from {names[0]} to {names[-1]}"
    raise refused(codes.BAD_RUN, message, way_out, found.start(end), len(name))


def _gauge_name(gauge: Gauge, name: str) -> str:
    """The name as a maker writes it, and as an expression takes it."""
    kind, _, thing = gauge.name.partition("_")
    if not thing:
        return f"{name} {kind}"
    return f"{'no.' if kind == 'number' else kind} {name} {thing}"


def _stepped(text: Written, first: Piece, rest: Piece, info: ValidationInfo) -> tuple[Member, ...]:
    last, *steps = split_at(rest.text, " by ")
    if len(steps) != 1:
        message = "how far apart are these sizes?"
        raise refused(codes.BAD_RUN, message, "write one step, as `1 mm to 13 mm by 0.5 mm`")
    pieces = (first, *(Piece(rest.start + one.start, one.text) for one in (last, steps[0])))
    least, most, step = (
        read_piece(text, piece, lambda part: _read_length(part, info)) for piece in pieces
    )
    if least.exact >= most.exact:
        message = f"{shown(least.quantity)} is not below {shown(most.quantity)}"
        raise refused(codes.RANGE_BACKWARDS, message, "write the smaller end first")
    count = (most.exact - least.exact) / step.exact + 1
    if count.denominator != 1 or count > MOST_MEMBERS:
        raise _bad_step(pieces[2], count)
    unit = "inch" if first.text.endswith(_INCH_WORDS) else None
    sizes = (least.exact + index * step.exact for index in range(int(count)))
    return tuple(Member(shown(Quantity(size, LENGTH), unit), size) for size in sizes)


def _bad_step(step: Piece, count: Fraction) -> PydanticCustomError:
    if count > MOST_MEMBERS:
        message, way_out = f"more than {MOST_MEMBERS} sizes in one run", "take a larger step"
    else:
        message = f"steps of {step.text} miss the last size"
        way_out = "change the step or the last size"
    return refused(codes.BAD_RUN, message, way_out, step.start, len(step.text))


Sizes = Annotated[
    tuple[Run, ...], OneOrMany(read_run, {"type": ["string", "number"], "description": _WHAT})
]
