"""An outline as drawn and its follower to the motion that comes of it."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative
from binder_trade.mechanisms.cam_laws import Motion
from binder_trade.mechanisms.cam_outlines import OutlinePoint
from binder_trade.mechanisms.cam_profile import Follower

TOUCHING: Final = "the follower touches where its normal is the outline's"
_COUNT: Final = 720
_TURN: Final = 2 * math.pi
_SLOW_MM_RAD: Final = 0.05


@dataclass(frozen=True, slots=True)
class Followed:
    """What a drawn cam does to its follower through one turn; mm and rad.

    `lifts`, `speeds` and `pushes` stand at even steps of the turn: mm, mm/rad, mm/rad².
    `is_bridged` says that a hollow is sharper than the follower, which then rides over it;
    `strikes_mm_rad` is the greatest jump of its speed, nothing where there is none.
    """

    follower: Follower
    base_mm: float
    lift_mm: float
    lifts: tuple[float, ...]
    speeds: tuple[float, ...]
    pushes: tuple[float, ...]
    most_speed: float
    most_acceleration: float
    most_pressure_rad: float
    least_radius_mm: float
    is_bridged: bool
    strikes_mm_rad: float
    steps: tuple[Step, ...]

    def at(self, angle_rad: float) -> Motion:
        """Lift, speed and acceleration at an angle of the cam: mm, mm/rad, mm/rad²."""
        place = angle_rad % _TURN / _TURN * _COUNT
        whole = int(place)
        part = place - whole
        rows = (self.lifts, self.speeds, self.pushes)
        lift, speed, push = (
            row[whole % _COUNT] * (1 - part) + row[(whole + 1) % _COUNT] * part for row in rows
        )
        return lift, speed, push


@dataclass(frozen=True, slots=True)
class _Touch:
    """Where the cam has turned to when a point touches, and what the follower does there."""

    turn: float
    high: float
    speed: float
    push: float
    lean: float


def followed(
    outline: Sequence[OutlinePoint], follower: Follower = "roller", roller_mm: float = 0.0
) -> Followed:
    """The motion of a follower on an outline; its guide passes the cam's middle, radius in mm.

    Raises NotDefined where nothing is lifted. Source: `TOUCHING`.
    """
    roller = not_negative(roller_mm, "the radius of the roller") if follower == "roller" else 0.0
    touches = [*_touches(outline, follower, roller)]
    rows = _outermost(touches)
    rest = min(one.high for one in rows)
    lift = max(one.high for one in rows) - rest
    if lift < 1e-6:
        raise NotDefined("the cam is round: it lifts nothing", "let one radius be larger")
    speed, push = (max(abs(value) for value in values) for values in (
        [one.speed for one in rows], [one.push for one in rows]
    ))  # fmt: skip
    pressure = max(abs(one.lean) for one in rows)
    least = min((p.radius_mm for p in outline if p.radius_mm >= 0), default=math.inf)
    hollow = -math.inf if follower == "flat" else -roller
    steps = (
        Step("lift", "farthest − nearest", mm(lift), TOUCHING),
        Step("most speed", "s tan φ", f"{speed:.3f} mm/rad", TOUCHING),
        Step("most acceleration", "by the radius there", f"{push:.3f} mm/rad²", TOUCHING),
        Step("most pressure angle", "off the guide", f"{math.degrees(pressure):.1f}°", TOUCHING),
    )
    return Followed(
        follower,
        rest - roller,
        lift,
        tuple(one.high - rest for one in rows),
        tuple(one.speed for one in rows),
        tuple(one.push for one in rows),
        speed,
        push,
        pressure,
        least,
        any(hollow < p.radius_mm < 0 for p in outline),
        _jump(touches),
        steps,
    )


def _touches(
    outline: Sequence[OutlinePoint], follower: Follower, roller: float
) -> Iterator[_Touch]:
    for point in outline:
        if follower == "flat":
            yield _on_flat(point)
        else:
            yield _on_round(point, roller)


def _on_flat(point: OutlinePoint) -> _Touch:
    cosine, sine = math.cos(point.normal_rad), math.sin(point.normal_rad)
    high = point.x_mm * cosine + point.y_mm * sine
    speed = point.y_mm * cosine - point.x_mm * sine
    push = point.radius_mm - high if math.isfinite(point.radius_mm) else 0.0
    return _Touch(point.normal_rad, high, speed, push, 0.0)


def _on_round(point: OutlinePoint, roller: float) -> _Touch:
    """The roller's middle lies its radius out along the normal; it moves as that path bends."""
    x = point.x_mm + roller * math.cos(point.normal_rad)
    y = point.y_mm + roller * math.sin(point.normal_rad)
    far, turn = math.hypot(x, y), math.atan2(y, x)
    lean = math.remainder(point.normal_rad - turn, _TURN)
    speed = -far * math.tan(lean)
    path = point.radius_mm + roller
    bend = 1 / path if path else 0.0
    push = (far**2 + 2 * speed**2 - bend * math.hypot(far, speed) ** 3) / far
    return _Touch(turn, far, speed, push, lean)


def _outermost(touches: Sequence[_Touch]) -> list[_Touch]:
    """The touch at each even step of the turn; of several the follower rests on the farthest."""
    step = _TURN / _COUNT
    found: dict[int, _Touch] = {}
    pairs = zip(touches, [*touches[1:], touches[0]], strict=True)
    for one, other in pairs:
        wide = math.remainder(other.turn - one.turn, _TURN)
        if abs(wide) < 1e-12:
            continue
        low, high = sorted((one.turn, one.turn + wide))
        for n in range(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1):
            here = _mixed(one, other, (n * step - one.turn) / wide)
            best = found.get(n % _COUNT)
            if best is None or here.high > best.high:
                found[n % _COUNT] = here
    known = sorted(found)
    return [found[known[max(0, bisect_right(known, n) - 1)]] for n in range(_COUNT)]


def _mixed(one: _Touch, other: _Touch, part: float) -> _Touch:
    rest = 1 - part
    return _Touch(
        one.turn,
        one.high * rest + other.high * part,
        one.speed * rest + other.speed * part,
        one.push * rest + other.push * part,
        one.lean * rest + other.lean * part,
    )


def _jump(touches: Sequence[_Touch]) -> float:
    """The greatest change of speed while the cam stands still, as on a flat under a flat."""
    most, since = 0.0, touches[0]
    for one in touches[1:]:
        if abs(math.remainder(one.turn - since.turn, _TURN)) > 1e-9:
            since = one
        most = max(most, abs(one.speed - since.speed))
    return most if most > _SLOW_MM_RAD else 0.0
