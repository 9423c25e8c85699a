"""Turns the sealed, gasketed and packed joints of a design into all that follows from them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from binder.api import Contribution, Design, Diagnostic, Fact, Feature, Joint, Working
from binder_plugins.seals import codes
from binder_plugins.seals.bought import Supply, supplied
from binder_plugins.seals.box import box_fact, box_features, box_findings, box_halves, box_supply
from binder_plugins.seals.choosing import NoSizeError, ring_fact
from binder_plugins.seals.faces import (
    gasket_findings,
    gasket_halves,
    gasket_layer,
    gasket_supply,
    gasket_workings,
)
from binder_plugins.seals.facts import GasketFact
from binder_plugins.seals.kinds import SealEntry
from binder_plugins.seals.ring_findings import ring_findings
from binder_plugins.seals.ring_halves import (
    ring_features,
    ring_halves,
    ring_supply,
    ring_workings,
)
from binder_plugins.seals.sums import workings_of
from binder_trade.seals import NotDefined, gasket


@dataclass
class _Gathered:
    """What the seals of a design add up to."""

    facts: list[Fact] = field(default_factory=list)
    features: list[Feature] = field(default_factory=list)
    workings: list[Working] = field(default_factory=list)
    findings: list[Diagnostic] = field(default_factory=list)
    supplies: list[Supply] = field(default_factory=list)


def settle_seals(design: Design) -> Contribution:
    """Facts, features, hardware, workings and findings of all seals."""
    gathered = _Gathered()
    for joint in design.joints.values():
        if isinstance(joint.entry, SealEntry) and len(joint.ends) > 1:
            _settle(joint, joint.entry, design, gathered)
    bought, hardware = supplied(gathered.supplies, design)
    return Contribution(
        facts=[*gathered.facts, *hardware],
        features=gathered.features,
        bought=bought,
        workings=gathered.workings,
        findings=gathered.findings,
    )


def _settle(joint: Joint, entry: SealEntry, design: Design, gathered: _Gathered) -> None:
    settle = {"sealed": _ring, "gasketed": _gasket, "packed": _packed}[joint.kind]
    try:
        settle(joint, entry, design, gathered)
    except NoSizeError:
        gathered.findings.append(
            codes.SIZE_MISSING.at(
                joint.at,
                f"nothing tells the diameter of what '{joint.name}' seals",
                help="name the step or the bore that meets, or write `bore:`",
            )
        )


def _ring(joint: Joint, entry: SealEntry, design: Design, gathered: _Gathered) -> None:
    try:
        fact = ring_fact(joint, entry, design)
    except NotDefined as refusal:
        span = entry.ring.span if entry.ring is not None else joint.at
        gathered.findings.append(
            codes.RING_UNKNOWN.at(span, f"'{joint.name}': {refusal.reason}", help=refusal.way_out)
        )
        return
    gathered.facts += [fact, *ring_halves(fact, design)]
    gathered.features += ring_features(fact, design)
    gathered.workings += ring_workings(fact, design)
    gathered.findings += ring_findings(fact, entry, design)
    gathered.supplies += ring_supply(fact, design)


def _gasket(joint: Joint, entry: SealEntry, design: Design, gathered: _Gathered) -> None:
    if entry.gasket is None:
        if not joint.held_by:
            gathered.findings.append(
                codes.GASKET_MISSING.at(
                    joint.at,
                    f"'{joint.name}' names no gasket",
                    help="write `gasket: oiled paper`, or another sheet, and its `thickness:`",
                )
            )
        return
    try:
        made = gasket(entry.gasket, entry.thickness.mm if entry.thickness is not None else None)
    except NotDefined as refusal:
        span = entry.thickness.span if "thick" in refusal.reason and entry.thickness else None
        gathered.findings.append(
            codes.GASKET_UNKNOWN.at(
                span or entry.gasket.span,
                f"'{joint.name}': {refusal.reason}",
                help=refusal.way_out,
            )
        )
        return
    fact = GasketFact(joint.name, joint, made)
    gathered.facts += [fact, gasket_layer(fact), *gasket_halves(fact, design)]
    gathered.findings += gasket_findings(fact, design)
    gathered.workings += gasket_workings(fact)
    gathered.supplies += gasket_supply(fact, design)


def _packed(joint: Joint, entry: SealEntry, design: Design, gathered: _Gathered) -> None:
    try:
        fact = box_fact(joint, entry, design)
    except NotDefined as refusal:
        size = entry.packing
        gathered.findings.append(
            codes.PACKING_WRONG.at(
                size.span if size is not None else joint.at,
                f"'{joint.name}': {refusal.reason}",
                help=refusal.way_out,
            )
        )
        return
    gathered.facts += [fact, *box_halves(fact, design)]
    gathered.features += box_features(fact, design)
    gathered.workings += workings_of(joint, fact.box.steps, _rod(fact.box.rod_mm))
    gathered.findings += box_findings(fact, design)
    gathered.supplies += box_supply(fact, design)


def _rod(mm: float) -> Iterator[tuple[str, float]]:
    yield "rod", mm
