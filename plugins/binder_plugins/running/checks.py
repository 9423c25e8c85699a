"""Moving joints to findings: is their oil right, and is each sub-assembly tried by itself."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Diagnostic
from binder_plugins.running import codes
from binder_plugins.running.moving import Moving, moving
from binder_plugins.running.oiling import says_dry, says_grease, says_oil
from binder_plugins.running.upright import check_thrust

_WOOD = ("hardwood", "softwood", "plywood")
_RUNS_DRY = ("sintered-bronze", "ptfe", "nylon", "acetal", "cotton-phenolic-laminate")
_FRICTION = ("belted", "rubs")
_SOFT = ("plastic", "laminate", *_WOOD)
# Unoiled metal on metal, m/s: common practice, no source.
_DRY_MS = 0.1


def check_running(design: Design) -> Iterator[Diagnostic]:
    """All findings about what moves."""
    found = moving(design)
    for one in found:
        yield from _oil(one)
    yield from check_thrust(design)
    for assembly in design.assemblies.values():
        yield from _test(assembly, found, design)


def _oil(one: Moving) -> Iterator[Diagnostic]:
    groups = {fact.group for fact in one.materials}
    if groups & set(_WOOD) and says_oil(one):
        yield codes.OIL_SWELLS_WOOD.at(
            one.joint.at,
            f"'{one.joint.name}' is oiled, and a half of it is wood",
            help="bush it with metal, or say `duty: dry`",
        )
    if says_grease(one) and any(fact.id == "sintered-bronze" for fact in one.materials):
        yield codes.GREASE_ON_SINTERED.at(
            one.joint.at,
            f"'{one.joint.name}' runs in sintered bronze, and is greased",
            help="soak the bush in warm oil instead",
        )
    if one.joint.kind in _FRICTION and (says_oil(one) or says_grease(one)):
        yield codes.OIL_ON_FRICTION.at(
            one.joint.at,
            f"'{one.joint.name}' drives by friction, and is oiled",
            help="keep it dry",
        )
    bears = any(fact.id in _RUNS_DRY or fact.group in _SOFT for fact in one.materials)
    if says_dry(one) and not bears and one.rubbing is not None and one.rubbing > _DRY_MS:
        yield codes.DRY_AND_FAST.at(
            one.joint.at,
            f"'{one.joint.name}' rubs at {one.rubbing:.2g} m/s without oil",
            help=f"oil it, or bush it with sintered bronze; dry metal bears {_DRY_MS:g} m/s",
        )


def _test(assembly: Assembly, found: tuple[Moving, ...], design: Design) -> Iterator[Diagnostic]:
    """Only a joint that closes in it, not one within an assembly that it holds."""
    if assembly.test:
        return
    members = {member.item for member in assembly.members}
    inside = members - set(design.assemblies)
    for one in found:
        if set(one.joint.items) <= inside:
            yield codes.TEST_MISSING.at(
                assembly.at,
                f"'{assembly.name}' holds '{one.joint.name}', and has no test",
                help="add `test:` with what it must do by itself",
            )
            return
