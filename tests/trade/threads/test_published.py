"""Every published value of published.yaml, which names the standard or handbook of each table."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml

from binder_trade.threads import (
    Thread,
    deviation_um,
    engagement_normal,
    limits,
    proof_load_n,
    thread,
    ultimate_load_n,
)

INCH = 25.4
PUBLISHED: dict[str, Any] = yaml.safe_load(
    Path(__file__).with_name("published.yaml").read_text(encoding="utf-8")
)
Named = Callable[[str], Thread]
Figures = dict[str, float | None]


def metric_basic(given: dict[str, Any], named: Named) -> Figures:
    one = named(given["thread"])
    return {
        "pitch_mm": one.pitch_mm,
        "d2_mm": one.effective_mm,
        "d3_mm": one.minor_external_mm,
        "D1_mm": one.minor_internal_mm,
        "h3_mm": one.depth_mm,
        "H1_mm": (one.major_mm - one.minor_internal_mm) / 2,
    }


def screw(given: dict[str, Any], named: Named) -> Figures:
    found = limits(named(given["thread"]), given["cls"])
    return {
        "d_max_mm": found.major_max,
        "d_min_mm": found.major_min,
        "d2_max_mm": found.effective_max,
        "d2_min_mm": found.effective_min,
    }


def nut(given: dict[str, Any], named: Named) -> Figures:
    found = limits(named(given["thread"]), given["cls"])
    assert found.is_internal
    return {
        "D1_max_mm": found.minor_max,
        "D1_min_mm": found.minor_min,
        "D2_max_mm": found.effective_max,
        "D2_min_mm": found.effective_min,
    }


def deviation(given: dict[str, Any], named: Named) -> Figures:
    return {"es_um": deviation_um(given["pitch_mm"], given["position"])}


def engagement(given: dict[str, Any], named: Named) -> Figures:
    over, up_to = engagement_normal(thread("metric", given["d_mm"], pitch_mm=given["pitch_mm"]))
    return {"over_mm": over, "up_to_mm": up_to}


def inch_basic(given: dict[str, Any], named: Named) -> Figures:
    one = named(given["thread"])
    return {
        "major_in": one.major_mm / INCH,
        "tpi": one.tpi,
        "pitch_mm": one.pitch_mm,
        "pitch_dia_in": one.effective_mm / INCH,
        "effective_in": one.effective_mm / INCH,
        "minor_internal_in": one.minor_internal_mm / INCH,
        "core_in": one.minor_external_mm / INCH,
        "depth_in": one.depth_mm / INCH,
        "stress_area_in2": one.stress_area_mm2 / INCH**2,
    }


def number_size(given: dict[str, Any], named: Named) -> Figures:
    series = "UNF" if given["number"] == 0 else "UNC"
    return {"major_in": thread(series, number=str(given["number"])).major_mm / INCH}


def unified_limits(given: dict[str, Any], named: Named) -> Figures:
    one = named(given["thread"])
    outer, inner = limits(one, "2A"), limits(one, "2B")
    sizes = {
        "major_2A_max_in": outer.major_max,
        "major_2A_min_in": outer.major_min,
        "pd_2A_max_in": outer.effective_max,
        "pd_2A_min_in": outer.effective_min,
        "minor_2B_min_in": inner.minor_min,
        "minor_2B_max_in": inner.minor_max,
        "pd_2B_min_in": inner.effective_min,
        "pd_2B_max_in": inner.effective_max,
    }
    return {name: None if size is None else size / INCH for name, size in sizes.items()}


def metric_named_basic(given: dict[str, Any], named: Named) -> Figures:
    one = named(given["thread"])
    return {
        "pitch_mm": one.pitch_mm,
        "tpi": one.tpi,
        "major_mm": one.major_mm,
        "depth_mm": one.depth_mm,
        "effective_mm": one.effective_mm,
        "pitch_dia_mm": one.effective_mm,
        "minor_mm": one.minor_external_mm,
    }


def ba_tolerance(given: dict[str, Any], named: Named) -> Figures:
    one = named(given["thread"])
    found = limits(one, given["cls"])
    assert found.major_max is not None
    assert found.minor_min is not None
    return {
        "allowance_mm": one.major_mm - found.major_max,
        "tol_major_mm": found.major_max - found.major_min,
        "tol_effective_mm": found.effective_max - found.effective_min,
        "tol_minor_mm": found.minor_max - found.minor_min,
    }


def loads(given: dict[str, Any], named: Named) -> Figures:
    one, name = named(given["thread"]), given.get("property_class", "8.8")
    return {
        "stress_area_mm2": one.stress_area_mm2,
        "proof_load_N": proof_load_n(one, name),
        "min_ultimate_N": ultimate_load_n(one, name),
    }


TOPICS: dict[str, Callable[[dict[str, Any], Named], Figures]] = {
    "iso_metric_basic": metric_basic,
    "iso_metric_coarse_pitch": metric_basic,
    "iso965_6g": screw,
    "iso965_6H_pitch_dia": nut,
    "iso965_6H_minor_dia": nut,
    "iso965_g_deviation": deviation,
    "iso965_LE_normal": engagement,
    "un_basic": inch_basic,
    "un_number_size": number_size,
    "un_stress_area": inch_basic,
    "un_2A2B": unified_limits,
    "whitworth_basic": inch_basic,
    "whitworth_tpi": inch_basic,
    "ba_basic": metric_named_basic,
    "ba_tolerance": ba_tolerance,
    "me_basic": inch_basic,
    "bsp_basic": metric_named_basic,
    "stress_area": loads,
    "proof_load": loads,
    "ultimate_load": loads,
}
ROWS = [
    pytest.param(topic, row, id=f"{topic}-{'-'.join(str(one) for one in row['given'].values())}")
    for topic, part in PUBLISHED.items()
    for row in part["rows"]
]


@pytest.mark.parametrize(("topic", "row"), ROWS)
def test_is_as_published(topic: str, row: dict[str, Any], named: Named) -> None:
    figures = TOPICS[topic](row["given"], named)
    for name, expected in row["expected"].items():
        within = row["within"]
        allowed = within.get(name, 0) if isinstance(within, dict) else within
        assert figures[name] == pytest.approx(expected, abs=allowed + 1e-9), name
