"""All fastened joints of a design to what they need: the step of this plugin."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from types import MappingProxyType

from binder.api import (
    Bought,
    Contribution,
    Design,
    Diagnostic,
    HardwareFact,
    Joint,
    NumberOff,
)
from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.asking import HELD_BY, WORDS, Asked, asked
from binder_plugins.fasteners.beside_axis import beside_axis
from binder_plugins.fasteners.clips import clipped
from binder_plugins.fasteners.dowels import dowelled
from binder_plugins.fasteners.grubs import clamped
from binder_plugins.fasteners.keys import keyed
from binder_plugins.fasteners.nutted import bolted, studded
from binder_plugins.fasteners.pins import pinned
from binder_plugins.fasteners.placing import placed
from binder_plugins.fasteners.riveting import riveted
from binder_plugins.fasteners.said import Said, gather
from binder_plugins.fasteners.screwed import screwed
from binder_plugins.fasteners.seen import Seen, look
from binder_plugins.fasteners.tails import is_own_rivet, riveted_over
from binder_trade.explained import NotDefined
from binder_trade.fastening import read_pattern
from binder_trade.hardware import NotListed

_BY_KIND: Mapping[str, Callable[[Seen], Iterator[Said]]] = MappingProxyType(
    {
        "screwed": screwed,
        "bolted": bolted,
        "studded": studded,
        "dowelled": dowelled,
        "pinned": pinned,
        "keyed": keyed,
        "clamped": clamped,
        "riveted": riveted,
        "clipped": clipped,
        "buttoned": screwed,
    }
)
_NEED_NO_HOLDER = ("clipped", "buttoned", "dowelled", "studded")


def decide(design: Design) -> Contribution:
    """Features, hardware, lines for the leaves, sums and findings of all fastened joints."""
    said: list[Said] = list(_patterns(design))
    tapers: list[tuple[Joint, Asked]] = []
    for joint in design.joints.values():
        if joint.kind == "belted":
            said += _holder(joint, design)
        if joint.kind not in _BY_KIND:
            continue
        found = asked(joint, design)
        if found is None:
            said += _holder(joint, design)
        elif isinstance(found, Diagnostic):
            said.append(found)
        else:
            said += _of_joint(joint, design, found)
            tapers += [(joint, found)] if found.name.kind == "taper pin" else []
    said += _mixed(tapers)
    contribution = gather(said, design)
    more = list(_too_few(contribution, design))
    return Contribution(
        facts=contribution.facts,
        features=contribution.features,
        bought=contribution.bought,
        workings=contribution.workings,
        findings=[*contribution.findings, *more],
    )


def _of_joint(joint: Joint, design: Design, found: Asked) -> Iterator[Said]:
    seen = look(joint, design, found)
    if isinstance(seen, Diagnostic):
        yield seen
        return
    seen = beside_axis(seen)
    try:
        yield from placed(seen, _BY_KIND[joint.kind](seen))
    except (NotDefined, NotListed) as fault:
        yield codes.HARDWARE_NOT_LISTED.at(found.at, fault.reason, help=fault.way_out)


def _holder(joint: Joint, design: Design) -> Iterator[Said]:
    """A finding where nothing is named that could hold; a part may be the screw itself."""
    if is_own_rivet(joint, design):
        yield from riveted_over(joint, design)
        return
    if joint.held_by or joint.kind in _NEED_NO_HOLDER:
        return
    item = WORDS.get(joint.kind) or HELD_BY[joint.kind][0]
    yield codes.HOLDER_MISSING.at(
        joint.at,
        f"'{joint.name}' names no {item}",
        help=f"ask for the {item} with `fastener:`, or name a bought one with `held_by:`",
    )


def _mixed(tapers: list[tuple[Joint, Asked]]) -> Iterator[Said]:
    systems = [_is_inch(found) for _, found in tapers]
    for (joint, found), is_inch in zip(tapers[1:], systems[1:], strict=True):
        if is_inch != systems[0]:
            yield shaft_codes.PIN_TAPER_MIXED.at(
                found.at,
                f"'{joint.name}' has a taper pin of {'1:48' if is_inch else '1:50'}, "
                f"'{tapers[0][0].name}' one of {'1:50' if is_inch else '1:48'}",
                help=f"use one system; '{tapers[0][1].name.says}' was named first",
            )


def _is_inch(found: Asked) -> bool:
    """Its size is in inches, or a number of the inch table."""
    return bool(found.name.thread_text) or found.name.diameter_text.endswith("in")


def _patterns(design: Design) -> Iterator[Said]:
    """The patterns of written features: nobody can mark out what cannot be read."""
    for feature in design.features():
        words = getattr(feature.entry, "pattern", None)
        if words is None or feature.is_dummy or feature.implied_by:
            continue
        off = getattr(feature.entry, "off", None)
        try:
            read_pattern(str(words), int(off) if off is not None else None)
        except NotDefined as fault:
            yield codes.PATTERN_UNREADABLE.at(words.span, fault.reason, help=fault.way_out)


def _too_few(contribution: Contribution, design: Design) -> Iterator[Diagnostic]:
    needed: dict[str, int] = {}
    for fact in contribution.facts:
        if isinstance(fact, HardwareFact):
            needed[fact.name] = needed.get(fact.name, 0) + fact.count
    for name, count in needed.items():
        item = design.bought.get(name)
        have = design.facts.about(NumberOff, name)
        if isinstance(item, Bought) and have is not None and have.count < count:
            yield codes.TOO_FEW_BOUGHT.at(
                item.at,
                f"the joints need {count} off '{name}', the assemblies have {have.count}",
                help=f"write {count} off, or ask with `fastener:` and let the joints count",
            )
