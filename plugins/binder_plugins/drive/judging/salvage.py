"""Is a gear of the scrap box what its drive takes it for."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import gear_codes as codes
from binder_plugins.drive.pairs.facts import FoundFact

_NEAR = 1e-3


def check_salvaged(design: Design) -> Iterator[Diagnostic]:
    """Each gear of the scrap box that a drive names."""
    for found in design.facts.all(FoundFact):
        joint = design.joints[found.joint]
        if found.identified is None:
            yield codes.SALVAGED_UNKNOWN.at(
                joint.at, f"'{found.subject}': {found.refusal}", help=found.way_out
            )
        else:
            yield from _taken(found, joint)


def _taken(found: FoundFact, joint: Joint) -> Iterator[Diagnostic]:
    if found.identified is None:
        return
    best = found.identified.candidates[0]
    others = found.identified.measure_next
    measure = f"measure {others[0].what} to be sure" if others else "it stands clear of the others"
    if found.told is None:
        yield codes.SALVAGED_TAKEN.at(
            joint.at,
            f"'{found.subject}' is taken as {best.name}: "
            f"{abs(best.outside_off_mm):.2f} mm off outside",
            help=f"{measure}; then write it as `module: {best.pitch.module_mm:.4g} mm`",
        )
    elif not any(
        abs(one.pitch.module_mm - found.told) < _NEAR for one in found.identified.candidates
    ):
        yield codes.SALVAGED_DIFFERS.at(
            joint.at,
            f"'{found.subject}' measures as {best.name}, and '{joint.name}' says module "
            f"{found.told:.4g}",
            help=f"{measure}, and cut its mate to that",
        )
