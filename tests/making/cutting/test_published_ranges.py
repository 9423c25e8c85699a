"""What a small machine is told lies within, or below, what is published."""

from __future__ import annotations

import pytest

from binder_making import cutting
from binder_making.cutting.power import forces
from binder_making.cutting.published import tables
from binder_making.cutting.speed import table

DRILLING = {
    "aluminium": (195, 390),
    "brass": (60, 75),
    "cast iron": (25, 35),
    "mild steel": (30, 36),
    "stainless steel": (6, 15),
    "plastics": (20, 75),
}
MILLING = {
    "aluminium": (60, 150, 0.13, 0.76),
    "brass": (60, 150, 0.25, 0.76),
    "cast iron": (15, 30, 0.13, 0.63),
    "mild steel": (25, 35, 0.25, 0.63),
    "stainless steel": (9, 20, 0.1, 0.38),
}


@pytest.mark.parametrize("material", DRILLING)
def test_drilling_band(material: str) -> None:
    # Nominal tutorial cutting speeds, table 1.
    found = cutting.band("drilling", material)
    assert found is not None
    assert (found.least, found.most) == DRILLING[material]


@pytest.mark.parametrize("material", MILLING)
def test_milling_band(material: str) -> None:
    # Nominal tutorial cutting speeds, table 3.
    speed, feed = cutting.band("milling", material), cutting.band("tooth_feed", material)
    assert speed is not None
    assert feed is not None
    assert (speed.least, speed.most, feed.least, feed.most) == MILLING[material]


def test_reaming_beside_drilling() -> None:
    # Reaming tables after a machinists' handbook, ft/min: drill, HSS reamer, carbide reamer.
    rows = tables()["reaming"]["rows"]
    assert rows["303 stainless, annealed"] == [85, 55, 225]
    assert rows["304 stainless, annealed"] == [55, 35, 150]
    assert rows["grey iron, 190 to 220 HB"] == [80, 55, 180]


def test_a_reamer_is_never_faster_than_published() -> None:
    ratio = table()["acts"]["ream"]["take"] / table()["acts"]["drill"]["take"]
    for drill, reamer, _ in tables()["reaming"]["rows"].values():
        assert ratio <= reamer / drill


def test_tapping_and_parting_fractions() -> None:
    # Workshop rule (from memory): tapping 0.25 to 0.4 of drilling, parting half of turning.
    acts = table()["acts"]
    drill = acts["drill"]["take"]
    assert acts["tap"]["range"] == pytest.approx([0.25 * drill, 0.4 * drill])
    assert acts["part-off"]["take"] == 0.5


@pytest.mark.parametrize("group", cutting.groups(), ids=lambda one: one.name)
def test_speeds_keep_to_the_published_turning_band(group: cutting.Group) -> None:
    assert group.least_mpm <= group.usual_mpm <= group.most_mpm
    found = cutting.band("turning", group.band) if group.band else None
    if found is not None:
        assert found.least <= group.usual_mpm <= found.most


@pytest.mark.parametrize(("act", "work"), [("drill", "drilling"), ("mill", "milling")])
def test_no_cutter_is_faster_than_published(act: str, work: str) -> None:
    for group in cutting.groups():
        found = cutting.band(work, group.band) if group.band else None
        if found is not None:
            assert cutting.cutting_speed(group, act).mpm <= found.most, group.name


@pytest.mark.parametrize("act", table()["acts"])
def test_each_act_takes_a_factor_within_its_range(act: str) -> None:
    row = table()["acts"][act]
    assert row["range"][0] <= row["take"] <= row["range"][1]


def test_every_group_has_its_forces() -> None:
    data = forces()
    for group in cutting.groups():
        known = group.name in data["cutting"]["rows"] or group.name in data["cutting"]["ratios"]
        assert known, group.name
        assert group.name in data["drilling"]["rows"]


def test_the_trades_speeds() -> None:
    # Common practice, no source (m/min, HSS turning): what a small machine takes.
    usual = {one.name: one.usual_mpm for one in cutting.groups()}
    assert usual["mild steel"] == 25
    assert usual["free-cutting steel"] == 35
    assert 12 <= usual["tool steel"] <= 15
    assert 60 <= usual["brass"] <= 90
    assert 100 <= usual["aluminium"] <= 150


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("free cutting steel", "free-cutting steel"),
        ("EN1A leaded", "free-cutting steel"),
        ("bright mild steel", "mild steel"),
        ("silver steel", "tool steel"),
        ("stainless 303", "stainless steel"),
        ("grey cast iron", "cast iron"),
        ("phosphor bronze", "bronze"),
        ("aluminium bronze", "bronze"),
        ("CZ121 brass", "brass"),
        ("aluminium 6061", "aluminium"),
        ("cotton phenolic laminate", "plastic"),
        ("oak", None),
    ],
)
def test_a_materials_name_tells_its_group(words: str, name: str | None) -> None:
    found = cutting.group_of(words)
    assert (found.name if found else None) == name


def test_drill_feeds_as_published() -> None:
    # Manual of a drilling machine, inches for a turn: under 1/8, to 1/4, to 1/2, to 5/8.
    assert cutting.drill_feed(3.0) == pytest.approx(0.0254)
    assert cutting.drill_feed(6.0) == pytest.approx(0.0508)
    assert cutting.drill_feed(12.0) == pytest.approx(0.1016)
    assert cutting.drill_feed(15.0) == pytest.approx(0.1778)


@pytest.mark.parametrize(
    ("ratio", "speed", "feed"),
    [(2.9, 1, 1), (3, 0.9, 0.9), (4, 0.8, 0.9), (5, 0.7, 0.8), (9, 0.625, 0.8)],
)
def test_deep_holes_are_drilled_slower(ratio: float, speed: float, feed: float) -> None:
    # Published guide to drilling; at six diameters 35 to 40 per cent is taken off the speed.
    found = cutting.pecks(ratio * 6, 6)
    assert (found.speed, found.feed) == pytest.approx((speed, feed))
