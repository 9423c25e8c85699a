"""A flywheel to its inertia, its energy at speed, and how fast its rim may go."""

from __future__ import annotations

from dataclasses import replace
from math import pi

from binder.api import Design, Diagnostic, Joint, MaterialFact, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.rings import rings_of
from binder_plugins.drive.duties.shown import at_most
from binder_plugins.drive.duties.tripping import head_lift
from binder_plugins.drive.judging.running import turning_of
from binder_solid.facts import FormFact
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.flywheel import Rim, Wheel, coefficient_of, disc_wheel, rim
from binder_trade.mechanisms.tappets import blow_energy_nmm

_MADE_OF = {
    "cast iron": "cast iron",
    "steel": "steel",
    "brass": "brass or bronze",
    "bronze": "brass or bronze",
    "aluminium": "aluminium",
}
_WORST = "wood"
# The coefficient of speed of hammers and crushers; Khurmi, Theory of Machines (from memory).
_EVEN = 0.2


def steadying(joint: Joint, design: Design) -> Told:
    """The flywheel as a body of discs, as its steps are turned."""
    item = joint.ends[0].item
    wheel, outside = _wheel(joint, design)
    body = turning_of(item, design)
    speeds = sorted({abs(one) for one in body.speeds if one}) if body is not None else []
    if wheel is None or not speeds:
        return Told()
    fastest = speeds[-1]
    made = _rim(item, design, outside, fastest)
    most = f"{made.limit_ms:g} m/s is the customary most, {at_most(made.most_rpm)} r/min"
    rows = [
        ("Mass", f"{wheel.mass_kg * 1000:.3g} g, by its steps, bore and recesses alone"),
        ("Inertia", f"{wheel.inertia_kgmm2:.3g} kg·mm²"),
        ("Energy", ", ".join(f"{wheel.energy_nmm(n):.3g} N·mm at {n:.3g} r/min" for n in speeds)),
        ("Rim", f"{made.speed_ms:.2f} m/s at {fastest:.3g} r/min; {most}"),
    ]  # fmt: skip
    rows += _swing(joint, design, wheel, speeds)
    duty = DutyFact(joint.name, "Flywheel", tuple(rows), (*wheel.steps, *made.steps))
    findings = []
    if made.use > 1:
        findings.append(
            codes.RIM_TOO_FAST.at(
                joint.at,
                f"the rim of '{item}' goes {made.speed_ms:.1f} m/s; {made.limit_ms:g} m/s is the "
                "customary most",
                help=f"run it at {made.most_rpm:.0f} r/min at the most, behind a guard",
            )
        )
    findings += _uneven(joint, design, wheel, fastest)
    return Told(duty, tuple(findings))


def _wheel(joint: Joint, design: Design) -> tuple[Wheel | None, float]:
    """The wheel by what the drive says of it, else by the steps of its part."""
    item = joint.ends[0].item
    outside, mass = getattr(joint.entry, "outside", None), getattr(joint.entry, "mass", None)
    if isinstance(outside, Size) and isinstance(mass, Size):
        kilos = float(mass.exact) / 1000
        return Wheel(kilos, kilos * outside.mm**2 / 8, ()), outside.mm
    form = design.facts.about(FormFact, item)
    material = design.facts.about(MaterialFact, item)
    if form is None or material is None or material.density is None:
        return None, 0.0
    rings = rings_of(form)
    try:
        made = [
            disc_wheel(one.across, one.long, material.density * 1000, one.inside) for one in rings
        ]
    except NotDefined:
        return None, 0.0
    if not made:
        return None, 0.0
    mass_kg = sum(one.mass_kg for one in made)
    inertia = sum(one.inertia_kgmm2 for one in made)
    steps = tuple(
        replace(step, name=f"{step.name}, ring {number}")
        for number, one in enumerate(made, 1)
        for step in one.steps
    )
    return Wheel(mass_kg, inertia, steps), max(one.across for one in rings)


def _rim(item: str, design: Design, outside: float, rpm: float) -> Rim:
    material = design.facts.about(MaterialFact, item)
    group = f"{material.group} {material.designation}".lower() if material is not None else ""
    made_of = next((kind for word, kind in _MADE_OF.items() if word in group), _WORST)
    density = (material.density if material is not None else None) or 7.8
    return rim(outside, rpm, density * 1000, made_of)


def _blow(joint: Joint, design: Design) -> float | None:
    """The energy of a blow on the same shaft, in N·mm."""
    own = turning_of(joint.ends[0].item, design)
    for other in design.joints.values():
        mass = getattr(other.entry, "falls", None)
        if other.kind != "trips" or not isinstance(mass, Size):
            continue
        if own is not None and other.ends[0].item in own.items:
            return blow_energy_nmm(float(mass.exact) / 1000, head_lift(other))
    return None


def _swing(
    joint: Joint, design: Design, wheel: Wheel, speeds: list[float]
) -> list[tuple[str, str]]:
    """What the wheel holds of one lift, and what that lift costs it in speed.

    A wheel that holds less than a lift cannot give it, however slow it grows. Source: that
    of `coefficient_of`.
    """
    energy = _blow(joint, design)
    if not energy:
        return []
    held = ", ".join(f"{_times(wheel.energy_nmm(n) / energy)} at {n:.4g} r/min" for n in speeds)
    rows = [("Against one lift", f"a lift takes {energy:.3g} N·mm; the wheel holds {held}")]
    rpm = speeds[-1]
    share = coefficient_of(energy, wheel.inertia_kgmm2, rpm)
    told = f"{share:.0%} at {rpm:.4g} r/min, by the wheel alone"
    if wheel.energy_nmm(rpm) < energy:
        need = energy * 1000 / (_EVEN * (rpm * pi / 30) ** 2)
        told = (
            f"all of it, by the wheel alone: what drives it lifts, and the wheel evens little. It "
            f"would take {need:.3g} kg·mm², {share / _EVEN:.2g} times as much, to lose {_EVEN:.0%} "
            f"at {rpm:.4g} r/min (ΔE = I ω² Cs); or a wheel on a shaft that turns faster"
        )
    return [*rows, ("Speed lost at a lift", told)]


def _times(share: float) -> str:
    return f"{share:.2g} of it" if share < 1 else f"{share:.1f} times as much"


def _uneven(joint: Joint, design: Design, wheel: Wheel, rpm: float) -> list[Diagnostic]:
    wanted = getattr(joint.entry, "swing", None)
    energy = _blow(joint, design)
    if not isinstance(wanted, Size) or energy is None or not float(wanted.exact):
        return []
    share = coefficient_of(energy, wheel.inertia_kgmm2, rpm)
    if share <= float(wanted.exact):
        return []
    more = share / float(wanted.exact)
    omega = rpm * pi / 30
    need = energy * 1000 / (float(wanted.exact) * omega**2)
    return [
        codes.FLYWHEEL_TOO_LIGHT.at(
            joint.at,
            f"a lift takes {share:.0%} of the speed, and {float(wanted.exact):.0%} is wanted",
            help=f"{need:.3g} kg·mm² are needed, {more:.2g} times as much, or run it faster",
        )
    ]
