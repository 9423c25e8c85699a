"""Every published value that the tables of hardware are held to (published.yaml beside this)."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest
import yaml

from binder_trade import hardware

INCH = 25.4
# Heads by topic of the published values: kind, and the attribute of each figure.
HEADS: Mapping[str, tuple[str, Mapping[str, str]]] = {
    "iso4762": ("cap", {"dk_mm": "dk_mm", "k_mm": "k_mm", "hex_key_mm": "drive_mm"}),
    "iso4017": ("hexagon", {"af_mm": "dk_mm", "k_mm": "k_mm"}),
    "iso10642": (
        "countersunk socket",
        {"dk_theoretical_mm": "dk_sharp_mm", "k_mm": "k_mm", "hex_key_mm": "drive_mm"},
    ),
    "iso2009": ("countersunk", {"dk_theoretical_mm": "dk_sharp_mm", "k_mm": "k_mm"}),
    "iso1207": ("cheese", {"dk_mm": "dk_mm", "k_mm": "k_mm"}),
}

PUBLISHED: Mapping[str, Any] = yaml.safe_load(
    Path(__file__).with_name("published.yaml").read_text(encoding="utf-8")
)


def checks(*topics: str) -> list[Any]:
    return [
        pytest.param(topic, *row, id=f"{topic}-{number}")
        for topic in topics
        for number, row in enumerate(PUBLISHED[topic]["checks"])
    ]


def is_near(found: float | None, expected: float, tolerance: float) -> bool:
    assert found is not None
    return abs(found - expected) <= tolerance + 1e-9


def test_no_topic_is_left_out() -> None:
    used = {*HEADS, *LOOKED_UP, "counterbore_depth", "standard_equivalence", "set_screw"}
    assert used == set(PUBLISHED)
    assert sum(len(one["checks"]) for one in PUBLISHED.values()) == 109


@pytest.mark.parametrize(("topic", "inputs", "expected", "tolerance"), checks(*HEADS))
def test_heads(
    topic: str, inputs: dict[str, str], expected: dict[str, float], tolerance: float
) -> None:
    kind, attributes = HEADS[topic]
    found = hardware.head(kind, inputs["thread"])
    for name, value in expected.items():
        assert is_near(getattr(found, attributes[name]), value, tolerance), name


def _nut(kind: str, inputs: dict[str, Any]) -> dict[str, float]:
    return {"m_mm": hardware.nut(kind, inputs["thread"]).m_mm}


def _washer(inputs: dict[str, Any]) -> dict[str, float]:
    found = hardware.washer("plain", inputs["thread"])
    return {"d1_mm": found.d1_mm, "d2_mm": found.d2_mm, "h_mm": found.h_mm}


def _counterbore(inputs: dict[str, Any]) -> dict[str, float]:
    assert inputs["head"] == "ISO 4762"
    return {"counterbore_dia_mm": hardware.counterbore("cap", inputs["thread"]).diameter_mm}


def _dowel(inputs: dict[str, Any]) -> dict[str, float]:
    soft = hardware.dowel(inputs["d_mm"]).chamfer_mm
    assert hardware.dowel(inputs["d_mm"], hardened=True).chamfer_mm == soft
    return {"chamfer_mm": soft}


def _dowel_limits(inputs: dict[str, Any]) -> dict[str, float]:
    found = hardware.dowel(inputs["d_mm"], tolerance=inputs["cls"])
    return {"upper_um": found.upper_um, "lower_um": found.lower_um}


def _circlip(found: hardware.Circlip) -> dict[str, float]:
    return {
        "thickness_mm": found.thickness_mm,
        "groove_dia_mm": found.groove_mm,
        "groove_width_mm": found.width_mm,
    }


def _parallel_key(inputs: dict[str, Any]) -> dict[str, float]:
    found = hardware.parallel_key(inputs["shaft_mm"])
    return {
        "b_mm": found.b_mm,
        "h_mm": found.h_mm,
        "shaft_depth_t1_mm": found.shaft_depth_mm,
        "hub_depth_t2_mm": found.hub_depth_mm,
        "depth_tol_plus_mm": found.depth_plus_mm,
    }


def _keyway(inputs: dict[str, Any]) -> dict[str, float]:
    found = hardware.keyway_width(inputs["b_mm"], inputs["fit"].replace("_", " "))
    return {"upper_um": found.upper_um, "lower_um": found.lower_um}


def _woodruff_number(inputs: dict[str, Any]) -> dict[str, float]:
    found = hardware.woodruff_number(str(inputs["key_no"]))
    return {
        "width_in": found.width_mm / INCH,
        "diameter_in": found.diameter_mm / INCH,
        "height_C_max_in": found.height_mm / INCH,
    }


def _whitworth(inputs: dict[str, Any]) -> dict[str, float]:
    thread = f"{inputs['thread']} BSW"
    bolt, nut = hardware.head("hexagon bolt", thread), hardware.nut("full", thread)
    assert bolt.standard == nut.standard == inputs["standard"]
    assert bolt.dk_mm == nut.s_mm
    return {
        "af_max_in": bolt.dk_mm / INCH,
        "head_max_in": bolt.k_mm / INCH,
        "nut_max_in": nut.m_mm / INCH,
    }


def _association(inputs: dict[str, Any]) -> dict[str, float]:
    screw = hardware.head("hexagon", inputs["thread"])
    assert screw.dk_mm == hardware.nut("full", inputs["thread"]).s_mm
    return {"af_in": screw.dk_mm / INCH}


LOOKED_UP: Mapping[str, Callable[[dict[str, Any]], dict[str, float]]] = {
    "iso4032": lambda inputs: _nut("full", inputs),
    "iso4035": lambda inputs: _nut("thin", inputs),
    "iso7089": _washer,
    "counterbore": _counterbore,
    "dowel_pin": _dowel,
    "dowel_pin_tolerance": _dowel_limits,
    "circlip_din471": lambda inputs: _circlip(hardware.circlip_shaft(inputs["shaft_mm"])),
    "circlip_din472": lambda inputs: _circlip(hardware.circlip_bore(inputs["bore_mm"])),
    "parallel_key": _parallel_key,
    "keyway_width_tolerance": _keyway,
    "woodruff_number": _woodruff_number,
    "woodruff_height": _woodruff_number,
    "woodruff_metric": lambda inputs: {
        "cutter_dia_mm": hardware.woodruff(inputs["b_mm"], inputs["h_mm"]).cutter_mm
    },
    "bsw_hex": _whitworth,
    "ba_hex_af": _association,
}


@pytest.mark.parametrize(("topic", "inputs", "expected", "tolerance"), checks(*LOOKED_UP))
def test_tables(
    topic: str, inputs: dict[str, Any], expected: dict[str, float], tolerance: float
) -> None:
    found = LOOKED_UP[topic](inputs)
    for name, value in expected.items():
        assert is_near(found[name], value, tolerance), name


@pytest.mark.parametrize(("topic", "inputs", "expected", "tolerance"), checks("set_screw"))
def test_grub_screws(
    topic: str, inputs: dict[str, str], expected: dict[str, float], tolerance: float
) -> None:
    old, new = inputs["standard"].split(" (")[1].rstrip(")"), inputs["standard"].split(" (")[0]
    point = hardware.equivalent(old).words.split(", ")[1].removesuffix(" point")
    found = hardware.grub(point, inputs["thread"])
    assert found.standard == new
    figures = {
        "hex_key_mm": found.drive_mm,
        "flat_point_dp_max_mm": found.point_mm,
        "cup_point_dv_max_mm": found.point_mm,
    }
    for name, value in expected.items():
        assert is_near(figures[name], value, tolerance), name


@pytest.mark.parametrize(
    ("topic", "inputs", "expected", "tolerance"), checks("standard_equivalence")
)
def test_standards_that_were_replaced(
    topic: str, inputs: dict[str, str], expected: dict[str, str], tolerance: float
) -> None:
    found = hardware.equivalent(inputs["din"])
    assert found.new == expected["iso"]
    assert f"{expected['point']} point" in found.words


@pytest.mark.parametrize(("topic", "inputs", "expected", "tolerance"), checks("counterbore_depth"))
def test_depths_of_counterbores(
    topic: str, inputs: dict[str, str], expected: dict[str, float], tolerance: float
) -> None:
    found = hardware.counterbore("cap", inputs["thread"]).depth_mm
    assert expected["min_mm"] <= found <= expected["max_mm"]
