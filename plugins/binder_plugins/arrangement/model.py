"""The model that is being put together: its parts, what they meet, and what stands already."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from binder.api import NOWHERE, Design, Diagnostic, Span, did_you_mean
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import MOST_IN_ALL, Copy, copies_of, formed_items
from binder_plugins.arrangement.joined import Stand
from binder_plugins.arrangement.kinds import CopyPosition, PositionEntry
from binder_plugins.arrangement.meetings import Meeting, meetings_of
from binder_plugins.arrangement.rows import Row, rows_of
from binder_plugins.arrangement.words import faults_of
from binder_solid.forms import Vector


@dataclass
class Model:
    """The model being put together: what stands, by copy and by item, and what was found."""

    design: Design
    copies: Mapping[str, tuple[Copy, ...]]
    meetings: tuple[Meeting, ...]
    rows: tuple[Row, ...]
    entries: Mapping[str, PositionEntry]
    by_copy: Mapping[str, tuple[Meeting, ...]]
    standing: dict[str, Stand] = field(default_factory=dict)
    stands: dict[str, list[Stand]] = field(default_factory=dict)
    findings: list[Diagnostic] = field(default_factory=list)

    def said(self, copy: Copy) -> CopyPosition:
        """What the maker says of one copy."""
        entry = self.entries.get(copy.item)
        if entry is None:
            return CopyPosition.model_construct()
        if copy.number <= len(entry.copies):
            return entry.copies[copy.number - 1]
        return entry

    def meetings_with(self, copy: Copy) -> tuple[Meeting, ...]:
        """The meetings of a copy, seen from it."""
        return self.by_copy.get(copy.name, ())

    def rows_with(self, copy: Copy) -> tuple[Row, ...]:
        """The rows that a copy waits for: as the shaft itself, or on it and carrying nothing."""
        return tuple(row for row in self.rows if copy.name in row.carried)

    def stand(self, one: Stand) -> None:
        """A copy stands from now on."""
        self.standing[one.copy.name] = one
        self.stands.setdefault(one.copy.item, []).append(one)


def begun(design: Design) -> Model:
    """The model before anything stands."""
    copies = copies_of(design)
    entries = getattr(design.spec.written, "positions", None) or {}
    met = meetings_of(design, copies)
    return Model(design, copies, met, rows_of(design, copies), entries, _by_copy(met))


def _by_copy(meetings: tuple[Meeting, ...]) -> dict[str, tuple[Meeting, ...]]:
    found: dict[str, list[Meeting]] = {}
    for one in meetings:
        for name in (one.one.name, one.other.name):
            found.setdefault(name, []).append(one.seen_from(name))
    return {name: tuple(ones) for name, ones in found.items()}


def first_of(model: Model) -> Copy | None:
    """The part that the maker names, or the largest that any joint knows."""
    named = getattr(model.design.spec.written, "stands", None)
    if named is not None:
        found = model.copies.get(str(named))
        if found:
            return found[0]
        if str(named) in left_out(model):
            model.findings.append(_too_many(str(named), named.span))
            return None
        model.findings.append(
            codes.POSITION_UNKNOWN.at(
                named.span,
                f"there is no '{named}' to stand on the bench",
                help=did_you_mean(str(named), model.copies) or "name a part whose sizes are told",
            )
        )
        return None
    met = {one.one.item for one in model.meetings} | {one.other.item for one in model.meetings}
    known = [copies[0] for name, copies in model.copies.items() if name in met and copies]
    return max(known, key=lambda copy: _bulk(copy.fact.size), default=None)


def _bulk(size: Vector) -> float:
    return round(size[0] * size[1] * size[2], 3)


def left_out(model: Model) -> list[str]:
    """The items whose form is known and for which the arrangement had no room."""
    return [name for name in formed_items(model.design) if name not in model.copies]


def _too_many(name: str, span: Span, more: str = "") -> Diagnostic:
    return codes.PART_NOT_PLACED.at(
        span,
        f"'{name}' is not placed{more}: {MOST_IN_ALL} copies of other parts stand before "
        "it, and no more are placed in one model",
        help="write small parts of which there are many last, or build the model in two specs",
    )


def faults_in(model: Model) -> Iterator[Diagnostic]:
    """What is wrong with the words of the positions; what there is no room for is not wrong."""
    over = left_out(model)
    for name, entry in model.entries.items():
        span = model.design.spec.resolved.document.span(("positions", name), of_key=True)
        if name in over:
            continue
        if name not in model.copies:
            yield codes.POSITION_UNKNOWN.at(
                span,
                f"there is no part '{name}' to place",
                help=did_you_mean(name, model.copies) or "name a part whose sizes are told",
            )
            continue
        for one in (entry, *entry.copies):
            yield from faults_of(one, name, model.copies, model.design)
    if over:
        item = model.design.item(over[0])
        more = f" (nor {len(over) - 1} more)" if len(over) > 1 else ""
        yield _too_many(over[0], item.at if item is not None else NOWHERE, more)
