"""Proportions, room and engagement; each rule's source stands beside it."""

from __future__ import annotations

import math

import pytest

from binder_trade.fastening import (
    NotDefined,
    counterbore_depth,
    countersink_depth,
    countersink_in_plate,
    edge_distance,
    grub_for,
    hardware_count,
    head_at_edge,
    heads_side_by_side,
    hole_pitch,
    holes_line_up,
    key_room,
    land_under_head,
    least_engagement,
    pin_for,
    pin_in_shaft,
    placing_error,
    rivet_in_sheet,
    same_angle,
    spanner_room,
    straight_way_in,
    strength_note,
)


@pytest.mark.parametrize(
    ("tapped", "screw", "major", "pitch", "least"),
    [
        # Rule of thumb of the design press: 1 d steel, 1.5 d cast iron and brass, 2 d aluminium.
        ("carbon steel", "carbon steel", 3, 0.5, 3.0),
        ("cast iron", "carbon steel", 6, 1.0, 9.0),
        ("brass", "carbon steel", 3.6, 0.66, 5.4),
        ("aluminium", "carbon steel", 3, 0.5, 6.0),
        ("plastic", "stainless steel", 4, 0.7, 8.0),
        # The softer half decides: a brass screw in steel.
        ("carbon steel", "brass", 4, 0.7, 6.0),
        # Never under 3 threads (common practice, no source).
        ("carbon steel", "carbon steel", 2, 1.0, 3.0),
    ],
)
def test_least_engagement(
    tapped: str, screw: str, major: float, pitch: float, least: float
) -> None:
    found = least_engagement(tapped, screw, major, pitch)
    assert found.least_mm == pytest.approx(least)
    assert found.steps[-1].value
    assert "differ" in found.convention


def test_engagement_undone_often_and_in_wood() -> None:
    """Five threads where it is undone often: common practice, no source."""
    often = least_engagement("carbon steel", "carbon steel", 2, 0.7, is_undone_often=True)
    assert often.least_mm == pytest.approx(3.5)
    with pytest.raises(NotDefined, match="no machine thread holds in hardwood"):
        least_engagement("hardwood", "carbon steel", 3, 0.5)


@pytest.mark.parametrize(
    ("thread", "head", "major", "least", "most"),
    # DIN 974-1: head plus an addition; published tables lie between these.
    [("M5", 5, 5, 5.2, 5.8), ("M6", 6, 6, 6.2, 6.9), ("M8", 8, 8, 8.3, 9.1)],
)
def test_counterbore_depth(
    thread: str, head: float, major: float, least: float, most: float
) -> None:
    assert least <= counterbore_depth(head, major) <= most


def test_land_under_a_sunk_head() -> None:
    """Half a diameter: common practice, no source. M3 sunk 3.4 in 5 leaves 1.6, needs 1.5."""
    assert land_under_head(5, 3.4, 3).is_good
    thin = land_under_head(4.5, 3.4, 3)
    assert not thin.is_good
    assert thin.ways_out[1] == "a plate of 4.9 mm"


def test_countersink() -> None:
    """Plane geometry: 90° from 3.4 to 6.72 is 1.66 deep; 82° is deeper by 1/tan 41°."""
    assert countersink_depth(6.72, 3.4, 90) == pytest.approx(1.66)
    assert countersink_depth(6.72, 3.4, 82) == pytest.approx(1.66 / math.tan(math.radians(41)))
    assert countersink_in_plate(2, 6.72, 3.4, 90).is_good
    assert not countersink_in_plate(1.7, 6.72, 3.4, 90).is_good
    assert same_angle(90, 90)
    assert not same_angle(82, 90)
    with pytest.raises(NotDefined):
        countersink_depth(6, 3, 180)


def test_edges_and_pitches() -> None:
    """1.5 d metal, 3 d wood, 3 d pitch: common practice, no source; EN 1993-1-8 table 3.3 allows
    1.2 d and 2.2 d of the hole (from memory), so these are on its safe side."""
    assert edge_distance(4.5, 3, "carbon steel").is_good
    assert not edge_distance(4.4, 3, "carbon steel").is_good
    assert not edge_distance(9, 3.5, "hardwood").is_good
    assert edge_distance(10.5, 3.5, "hardwood").is_good
    assert not edge_distance(-2, 3, "brass").is_good
    assert hole_pitch(9, 3).is_good
    assert not hole_pitch(8, 3).is_good
    assert edge_distance(5, 3, "brass").needs_mm >= 1.2 * 3.4


def test_heads_and_spanners() -> None:
    """Heads: plane geometry and 0.5 mm between them (common practice, no source)."""
    assert heads_side_by_side(7, 6.5).is_good
    assert not heads_side_by_side(6.5, 6.5).is_good
    assert head_at_edge(3.25, 6.5).is_good
    assert not head_at_edge(3, 6.5).is_good
    assert spanner_room(8, 14).is_good
    assert not spanner_room(7, 14).is_good
    assert key_room(20, 16).is_good
    assert not straight_way_in(10, 8, 3).is_good


def test_pins_and_shafts() -> None:
    """A third of the shaft at most: common practice, no source."""
    assert pin_in_shaft(2, 6).is_good
    assert not pin_in_shaft(2.5, 6).is_good
    assert pin_for(8, (1.0, 1.5, 2.0, 2.5, 3.0)).diameter_mm == 2.5
    with pytest.raises(NotDefined):
        pin_for(2, (1.0,))


def test_grub_screw_for_a_shaft() -> None:
    """About half the shaft: design press, as read in a public article."""
    metric = {"M2": 2.0, "M2.5": 2.5, "M3": 3.0, "M4": 4.0, "M5": 5.0}
    assert grub_for(6, metric).name == "M3"
    assert grub_for(8, metric).name == "M4"
    assert grub_for(7, metric).name == "M3"
    assert grub_for(20, metric).name == "M5"
    assert grub_for(6, {"4 BA": 3.6}).name == "4 BA"
    with pytest.raises(NotDefined, match=r"6\.25 mm to 16\.67 mm"):
        grub_for(25, metric)


def test_rivet_for_a_sheet() -> None:
    """Three times the thickest sheet: public rivet guides name it."""
    assert rivet_in_sheet(3, 1).is_good
    assert not rivet_in_sheet(3.2, 1).is_good


def test_holes_line_up() -> None:
    """ISO 273, M3: medium 3.4, coarse 3.6. By hand 0.25 (common practice, no source) wants 0.5."""
    by_hand = "marked out by hand"
    assert not holes_line_up(4, 3.4, 3, by_hand).is_good
    assert holes_line_up(4, 3.6, 3, by_hand).is_good
    assert holes_line_up(1, 3.2, 3, by_hand).is_good
    assert holes_line_up(4, 3.2, 3, "drilled to coordinates").is_good
    assert holes_line_up(4, 3.0, 3, "spotted through").is_good
    assert holes_line_up(4, 3.4, 3, by_hand, 3.4).is_good
    assert placing_error(by_hand) == 0.25
    with pytest.raises(NotDefined, match="not known"):
        placing_error("by eye")
    with pytest.raises(NotDefined, match="does not pass"):
        holes_line_up(2, 2.9, 3, by_hand)


@pytest.mark.parametrize(
    ("area", "proof_mpa", "load"),
    # ISO 898-1 printed proof loads: M3 4.8 1560 N, M3 8.8 2920 N, M6 8.8 11600 N.
    [(5.03, 310, 1560), (5.03, 580, 2920), (20.1, 580, 11600)],
)
def test_proof_load(area: float, proof_mpa: float, load: float) -> None:
    note = strength_note(area, proof_mpa)
    assert note.proof_n == pytest.approx(load, rel=0.01)
    assert "competent person" in note.defers


def test_share_of_the_proof_load() -> None:
    note = strength_note(5.03, 310, 4, 62.4)
    assert note.share == pytest.approx(0.01, rel=0.01)
    assert note.says == "the load is a small part (1%) of what 4 screws are proved to"
    assert "more than all" in strength_note(5.03, 310, 1, 2000).says
    with pytest.raises(NotDefined):
        strength_note(5.03, 310, 0)


def test_spares() -> None:
    """A tenth more of small ones: common practice, no source."""
    assert [hardware_count(n, 3) for n in (0, 1, 8, 10, 11, 20)] == [0, 2, 9, 11, 13, 22]
    assert hardware_count(8, 6) == 8
    with pytest.raises(NotDefined):
        hardware_count(-1, 3)


@pytest.mark.parametrize("value", [math.nan, math.inf, 0.0, -1.0])
def test_figures_that_make_no_sense_are_refused(value: float) -> None:
    for sum_of in (
        lambda: least_engagement("brass", "brass", value, 0.5),
        lambda: least_engagement("brass", "brass", 3, value),
        lambda: counterbore_depth(value, 3),
        lambda: land_under_head(value, 1, 3),
        lambda: edge_distance(5, value, "brass"),
        lambda: pin_in_shaft(2, value),
        lambda: grub_for(value, {"M3": 3.0}),
        lambda: holes_line_up(2, value, 3, "spotted through"),
        lambda: strength_note(value, 310),
        lambda: hardware_count(2, value),
    ):
        with pytest.raises(NotDefined):
            sum_of()
