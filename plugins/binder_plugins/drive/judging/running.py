"""Do the shafts turn as they should, and is what turns them strong enough."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import codes
from binder_plugins.drive.facts import LoadFact, TrainFact, TurningFact

_R_MIN = 6.0
_NEAR = 0.02


def check_running(design: Design) -> Iterator[Diagnostic]:
    """Speeds and ways that works want; the mover's strength."""
    train = design.facts.about(TrainFact, "")
    if train is None:
        return
    if train.is_relative:
        yield from _no_mover(design)
    for joint in design.joints.values():
        if joint.kind == "works":
            yield from _work(joint, design)
    yield from _strength(train, design)


def _no_mover(design: Design) -> Iterator[Diagnostic]:
    first = next(iter(design.spec.written.drive), None)
    if first is not None:
        yield codes.MOVER_MISSING.at(
            design.joints[first].at,
            "nothing says what turns the drive",
            help="add `hand: {turns: [crank], by: hand, speeds: [60 r/min]}` under `drive:`",
        )


def turning_of(item: str, design: Design) -> TurningFact | None:
    """The body that an item turns with."""
    return next((one for one in design.facts.all(TurningFact) if item in one.items), None)


def _work(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    body = turning_of(joint.ends[0].item, design)
    if body is None:
        return
    speeds = [one for one in body.speeds if one is not None]
    least, most = (getattr(joint.entry, name, None) for name in ("least", "most"))
    low = float(least.exact) / _R_MIN if isinstance(least, Size) else 0.0
    high = float(most.exact) / _R_MIN if isinstance(most, Size) else float("inf")
    if speeds and not any(low * (1 - _NEAR) <= abs(s) <= high * (1 + _NEAR) for s in speeds):
        nearest = min(speeds, key=lambda s: _off(abs(s), low, high))
        yield codes.SPEED_OFF.at(
            joint.at,
            f"'{body.title}' turns at {abs(nearest):.4g} r/min, wanted {_range(low, high)}",
            help=f"change a ratio by {_change(abs(nearest), low, high)}",
        )
    way = getattr(joint.entry, "way", None)
    if way and speeds and body.has_way and any((s > 0) != (way == "clockwise") for s in speeds):
        yield codes.TURNS_WRONG_WAY.at(
            joint.at,
            f"'{body.title}' turns {_way(speeds[0])}, and {way} is wanted",
            help="cross a belt, put an idler between two gears, or turn the mover the other way",
        )


def _off(speed: float, low: float, high: float) -> float:
    return max(low - speed, speed - high, 0.0)


def _range(low: float, high: float) -> str:
    if high == float("inf"):
        return f"{low:g} r/min or more"
    return f"{low:g} to {high:g} r/min" if low else f"{high:g} r/min or less"


def _change(speed: float, low: float, high: float) -> str:
    aim = low if speed < low else high
    return f"{aim / speed:.3g}" if speed else "what is missing"


def _way(speed: float) -> str:
    return "clockwise" if speed > 0 else "anticlockwise"


def _strength(train: TrainFact, design: Design) -> Iterator[Diagnostic]:
    loads = [one for one in design.facts.all(LoadFact) if one.torque or one.power]
    if not loads:
        return
    for name, body, gives in zip(train.movers, train.mover_bodies, train.strength, strict=False):
        turning = design.facts.about(TurningFact, body)
        needs = [one for one in turning.torques if one is not None] if turning else []
        if gives is not None and needs and max(needs) > gives:
            need = max(needs)
            yield codes.DRIVE_TOO_WEAK.at(
                design.joints[name].at,
                f"'{name}' gives {gives:.4g} N·mm, and {need:.4g} N·mm are needed there",
                help=f"gear down {need / gives:.2g} times further, or lighten the load to "
                f"{gives / need:.0%}",
            )
