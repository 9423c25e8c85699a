"""The drives of a design to what follows of each pair: teeth, meshes, belts, features."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    Fact,
    Feature,
    Joint,
    LeaningFact,
    Part,
    Working,
    implied_feature,
    made_size,
)
from binder_plugins.drive.gear_codes import GEAR_IMPOSSIBLE
from binder_plugins.drive.pairs.belts import belt_fact
from binder_plugins.drive.pairs.facts import BeltFact, MeshFact, ToothFact
from binder_plugins.drive.pairs.gears import mesh_facts, tooth_facts
from binder_plugins.drive.pairs.grooves import grooves_of
from binder_plugins.drive.pairs.leaning import leaning_facts
from binder_plugins.drive.pairs.salvage import found_facts
from binder_plugins.drive.pairs.stepped import differing
from binder_plugins.drive.pairs.welding import welded
from binder_plugins.drive.train.bodies import bodies
from binder_trade.explained import NotDefined, Step

_GEARED = ("meshes",)
LEANING = ("skews", "bevels", "worms")
# Plain gears and worms are refused elsewhere.
_TOLD_HERE = ("skews", "bevels")
_BLANKS = ("disc", "turned")


def settle_pairs(design: Design) -> Contribution:
    """Facts, features and workings of gears and belts."""
    of = bodies(design)
    facts: list[Fact] = []
    findings: list[Diagnostic] = []
    for joint in design.joints.values():
        if joint.kind in _GEARED:
            facts += found_facts(joint, design)
            facts += tooth_facts(joint, design)
            facts += mesh_facts(joint, of, design)
            facts += _leaning(joint, design, findings)
        elif joint.kind == "belted":
            belt = belt_fact(joint, of, design)
            facts += [belt, *welded(belt, joint, design)] if belt is not None else []
            findings += differing(joint, design)
        elif joint.kind in LEANING:
            facts += _leaning(joint, design, findings)
    return Contribution(
        facts=facts,
        features=[*_features(facts, design)],
        workings=[*_workings(facts, design)],
        findings=findings,
    )


def _leaning(joint: Joint, design: Design, findings: list[Diagnostic]) -> list[LeaningFact]:
    """The leaning teeth of a drive; that there can be none is told, once for each drive."""
    made = leaning_facts(joint, design)
    if not isinstance(made, NotDefined):
        return made
    if joint.kind in _TOLD_HERE:
        findings.append(GEAR_IMPOSSIBLE.at(joint.at, made.reason, help=made.way_out))
    return []


def _features(facts: Iterable[Fact], design: Design) -> Iterator[Feature]:
    """Teeth on each blank that does not tell them itself, and the grooves left to suit."""
    for fact in facts:
        if isinstance(fact, ToothFact) and not fact.refusal:
            part = design.parts.get(fact.subject)
            if part is not None and _is_blank(part):
                yield _teeth(fact.gear.teeth, fact.gear.module_mm, fact.joint, part, design)
        elif isinstance(fact, LeaningFact):
            part = design.parts.get(fact.subject)
            is_toothed = fact.kind != "worm" and design.joints[fact.joint].kind in LEANING
            if part is not None and is_toothed and _is_blank(part):
                yield _teeth(fact.count, fact.module, fact.joint, part, design)
        elif isinstance(fact, BeltFact):
            yield from grooves_of(fact, design)


def _is_blank(part: Part) -> bool:
    return part.shape_kind in _BLANKS and not any(one.kind == "toothed" for one in part.features)


def _teeth(count: int, module_mm: float, name: str, part: Part, design: Design) -> Feature:
    joint = design.joints[name]
    module, dp = getattr(joint.entry, "module", None), getattr(joint.entry, "dp", None)
    if module is None and dp is None:
        module = made_size(module_mm, joint)
    return implied_feature(
        design, joint, part.name, "teeth", "toothed", toothed=count, module=module, dp=dp
    )


def _workings(facts: Iterable[Fact], design: Design) -> Iterator[Working]:
    for fact in facts:
        if isinstance(fact, ToothFact) and fact.blank is not None:
            yield from _of(f"{fact.subject}.teeth", fact.blank.steps, design.joints[fact.joint])
        elif isinstance(fact, MeshFact) and fact.mesh is not None:
            yield from _of(fact.subject, fact.mesh.steps, design.joints[fact.joint])
        elif isinstance(fact, BeltFact):
            for number, one in enumerate(fact.runs, 1):
                name = f"{fact.subject} step {number}" if len(fact.runs) > 1 else fact.subject
                yield from _of(name, one.steps, design.joints[fact.subject])


def _of(name: str, steps: Iterable[Step], joint: Joint) -> Iterator[Working]:
    for step in steps:
        what = step.name.replace(" ", "_")
        yield Working(
            id=f"{name.replace(' ', '_').replace(':', '')}.{what}",
            title=f"{step.name} of '{name}'",
            given=(),
            formula=step.formula,
            result=step.value,
            source=step.source,
            span=joint.at,
        )
