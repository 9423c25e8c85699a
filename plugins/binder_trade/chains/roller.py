"""Two sprockets and a chain to whole links, the centre distance, speed and its unevenness."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, mm, positive, within
from binder_trade.fits.naming import cited
from binder_trade.roots import root_between

LINKS: Final = (
    "L/p = 2C/p + (z1 + z2)/2 + ((z2 − z1)/2π)² p/C; Bhandari, Design of Machine Elements"
)
EXACT: Final = "geometry of the pitch polygons (Khurmi, Theory of Machines)"
POLYGON: Final = "geometry of the pitch polygon, p / sin(180°/z)"


@dataclass(frozen=True, slots=True)
class Chain:
    """A roller chain: pitch, roller and inner width in mm, breaking load in N if kept."""

    name: str
    pitch_mm: float
    roller_mm: float
    inner_mm: float
    breaking_n: float | None
    source: str


@dataclass(frozen=True, slots=True)
class ChainDrive:
    """A chain of whole links: `links_exact` is what the centres asked for; mm."""

    links_exact: float
    links: int
    length_mm: float
    centres_mm: float
    needs_cranked_link: bool
    wrap_small_rad: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class ChainSpeed:
    """Mean speed in m/s, turns of the driven a minute, and the rise and fall as a part of one."""

    speed_ms: float
    driven_rpm: float
    variation: float
    steps: tuple[Step, ...]


def chain(name: str) -> Chain:
    """A roller chain by its ISO number, as 04B. Raises NotDefined for one not kept."""
    table = _data()["roller"]
    key = name.strip().upper().removesuffix("-1")
    if key not in table["rows"]:
        raise NotDefined(
            f"no chain “{name[:20]}” is kept here", "one of: " + ", ".join(table["rows"])
        )
    row = table["rows"][key]
    return Chain(key, row["pitch"], row["roller"], row["inner"], row.get("breaking"), cited(table))


def chains() -> tuple[str, ...]:
    """The names of the chains that are kept."""
    return tuple(_data()["roller"]["rows"])


def pitch_circle(pitch_mm: float, teeth: int) -> float:
    """The pitch circle's diameter of a sprocket; mm. Source: `POLYGON`."""
    return positive(pitch_mm, "the pitch") / math.sin(math.pi / _teeth(teeth))


def teeth_for(pitch_mm: float, circle_mm: float) -> float:
    """The teeth, not rounded, of a sprocket with this pitch circle in mm."""
    pitch, circle = positive(pitch_mm, "the pitch"), positive(circle_mm, "the pitch circle")
    if circle <= pitch:
        raise NotDefined("the sprocket is smaller than a link", "take a larger sprocket")
    return math.pi / math.asin(pitch / circle)


def links_for(pitch_mm: float, first: int, second: int, centres_mm: float) -> float:
    """The length of the chain in pitches, not rounded, by the usual formula. Source: `LINKS`."""
    pitch, centres = _apart(pitch_mm, first, second, centres_mm)
    return _links(first, second, centres / pitch)


def exact_length(pitch_mm: float, first: int, second: int, centres_mm: float) -> float:
    """The length in mm with the pitch circles in place of the teeth. Source: `EXACT`."""
    pitch, centres = _apart(pitch_mm, first, second, centres_mm)
    gap = 1 / math.sin(math.pi / first) - 1 / math.sin(math.pi / second)
    return pitch * ((first + second) / 2 + 2 * centres / pitch + gap**2 / 4 * pitch / centres)


def chain_drive(
    pitch_mm: float,
    first: int,
    second: int,
    centres_mm: float,
    *,
    even: bool = True,
    links: int | None = None,
) -> ChainDrive:
    """Whole links and the centre distance that they want; mm, rad.

    The count is the nearest even one (or whole, with `even` off) unless `links` is given. An
    odd count needs a cranked link. Raises NotDefined where the sprockets would touch. Source:
    `LINKS`, solved for the centres.
    """
    pitch, centres = _apart(pitch_mm, first, second, centres_mm)
    exact = _links(first, second, centres / pitch)
    count = links if links is not None else _whole(exact, even=even)
    found = pitch * _centres(count, first, second)
    lean = math.asin(
        min(1.0, abs(pitch_circle(pitch, first) - pitch_circle(pitch, second)) / 2 / found)
    )
    steps = (
        Step("links wanted", "2C/p + (z1+z2)/2 + ((z2−z1)/2π)² p/C", f"{exact:.3f}", LINKS),
        Step("links taken", "even, or with a cranked link", str(count), LINKS),
        Step("centres for them", "the formula solved for C", mm(found), LINKS),
    )
    return ChainDrive(exact, count, count * pitch, found, count % 2 == 1, math.pi - 2 * lean, steps)


def chain_speed(pitch_mm: float, driver_rpm: float, first: int, second: int) -> ChainSpeed:
    """Speed of chain and driven sprocket; a polygon pulls unevenly by 1 − cos(180°/z)."""
    pitch, turns = positive(pitch_mm, "the pitch"), amount(driver_rpm, "the speed in r/min")
    one, two = _teeth(first), _teeth(second)
    speed = pitch * one * turns / 60_000
    uneven = 1 - math.cos(math.pi / one)
    steps = (
        Step("mean speed of the chain", "p z n / 60 000", f"{speed:.3f} m/s", POLYGON),
        Step("driven sprocket", "n z1 / z2", f"{turns * one / two:.1f} r/min", POLYGON),
        Step("unevenness", "1 − cos(180° / z1)", f"{uneven * 100:.1f} %", POLYGON),
    )
    return ChainSpeed(speed, turns * one / two, uneven, steps)


def _links(first: int, second: int, apart: float) -> float:
    return 2 * apart + (first + second) / 2 + ((second - first) / (2 * math.pi)) ** 2 / apart


def _centres(count: int, first: int, second: int) -> float:
    least = abs(second - first) / (2 * math.pi * math.sqrt(2)) + 1e-9
    try:
        return root_between(lambda c: _links(first, second, c) - count, least, float(count))
    except ValueError:
        raise NotDefined(
            f"a chain of {count} links does not go round {first} and {second} teeth",
            "take more links",
        ) from None


def _whole(exact: float, *, even: bool) -> int:
    step = 2 if even else 1
    return step * max(1, round(exact / step))


def _apart(pitch_mm: float, first: int, second: int, centres_mm: float) -> tuple[float, float]:
    pitch, centres = positive(pitch_mm, "the pitch"), positive(centres_mm, "the centre distance")
    least = (pitch_circle(pitch, first) + pitch_circle(pitch, second)) / 2
    if centres <= least:
        raise NotDefined(
            f"sprockets of {first} and {second} teeth touch at {centres:g} mm centres",
            f"set them more than {least:.1f} mm apart",
        )
    return pitch, centres


def _teeth(teeth: int) -> int:
    return int(within(teeth, 5, 500, "the number of teeth"))


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.chains", "chains.yaml")
    return data
