"""Tells what a salvaged gear is, from its outside diameter, teeth and spans: likeliest first."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.gears.candidates import Candidate, candidate, kinds_of
from binder_trade.gears.pitches import pitches
from binder_trade.gears.telling_apart import Measure, measures

MATCH: Final = "outside / (z + 2 h_a) against the pitches that are sold"
BASE_PITCH: Final = "span over k + 1 less span over k is π m cos α, whatever the shift"


@dataclass(frozen=True, slots=True)
class Identified:
    """The candidates, likeliest first, and what would tell the first ones apart.

    `module_mm` and `dp` are what the outside diameter gives for full depth.
    """

    module_mm: float
    dp: float
    candidates: tuple[Candidate, ...]
    measure_next: tuple[Measure, ...]
    is_settled: bool
    steps: tuple[Step, ...]


def identify(
    outside_mm: float,
    teeth: int,
    *,
    bore_mm: float | None = None,
    spans_mm: Iterable[tuple[int, float]] = (),
    by_caliper: bool = False,
    keep: int = 6,
) -> Identified:
    """What an external spur gear may be, from sizes in mm; spans as (teeth spanned, mm).

    One span tells pitch and angle together, two over neighbouring counts leave the shift out.
    `by_caliper`: flat jaws over an odd number of teeth read short, which is put right.
    Raises NotDefined where nothing sold is near.
    """
    within(teeth, 6, 1000, "a number of teeth")
    outside_mm = positive(outside_mm, "an outside diameter")
    if by_caliper and teeth % 2:
        outside_mm *= 2 / (1 + math.cos(math.pi / teeth))
    spans = tuple(spans_mm)
    for across, value in spans:
        within(across, 2, max(2, teeth // 2), "a number of teeth spanned")
        positive(value, "a span")
    found = [
        made
        for pitch in pitches()
        for basic in kinds_of(pitch)
        if (made := candidate(pitch, basic, outside_mm, teeth, bore_mm, spans)) is not None
    ]
    if not found:
        raise NotDefined(
            "no pitch that is sold is near it", "count the teeth again, and measure over the tips"
        )
    ranked = sorted(found, key=lambda each: (each.error, each.name))[:keep]
    module = outside_mm / (teeth + 2)
    steps = _steps(module, ranked)
    near = ranked[1:] and ranked[1].error < max(3 * ranked[0].error, 0.008)
    return Identified(module, 25.4 / module, tuple(ranked), measures(ranked), not near, steps)


def _steps(module: float, ranked: list[Candidate]) -> tuple[Step, ...]:
    best = ranked[0]
    return (
        Step("module by the outside", "outside / (z + 2)", mm(module), MATCH),
        Step("DP by the outside", "25.4 / m", f"{25.4 / module:.3f}", MATCH),
        Step("likeliest", "nearest that is sold", best.name, MATCH),
        Step(
            "off by",
            "outside − m (z + 2 h_a)",
            f"{best.outside_off_mm:+.3f} mm".replace("-", "−"),
            MATCH,
        ),
        Step("span", f"over {best.across} teeth", _or_none(best.span_mm), BASE_PITCH),
    )


def _or_none(span_mm: float | None) -> str:
    return "too few teeth to span" if span_mm is None else mm(span_mm)
