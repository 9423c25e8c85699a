"""Blind holes, wires, engagement and screwcutting figures."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder_trade.drills import standard_drills
from binder_trade.explained import NotDefined
from binder_trade.threading import (
    blind,
    engagement,
    full_thread_in,
    length_of_engagement,
    metal,
    over_owned,
    over_wires,
    point_length,
    screwcutting,
    strength_left,
    strip_ratio,
    usable_wires,
)
from binder_trade.threads import Thread

Named = Callable[[str], Thread]
BAD = [math.nan, math.inf, -1.0, 0.0]


def test_the_point_of_a_drill_is_three_tenths_of_it() -> None:
    # 118° point: ½ ÷ tan 59° = 0.300.
    assert point_length(10) == pytest.approx(3.0, abs=0.01)


def test_a_blind_hole_adds_up(named: Named) -> None:
    # Leads 8, 4 and 2 pitches (handbook); two pitches for chips: common practice, no source.
    hole = blind(named("M6"), 8, "second", 5.0)
    assert (hole.lead_mm, hole.chips_mm) == (4.0, 2.0)
    assert hole.drill_mm == 14.0
    assert hole.tip_mm == pytest.approx(14 + point_length(5))
    assert full_thread_in(named("M6"), hole.drill_mm, "second") == pytest.approx(8)


def test_a_plug_tap_needs_less_room_than_a_taper(named: Named) -> None:
    depths = [blind(named("M4"), 6, kind).drill_mm for kind in ("plug", "second", "taper")]
    assert depths == sorted(depths)
    assert full_thread_in(named("M4"), 6, "taper") == 0.0


@pytest.mark.parametrize("depth", BAD)
def test_a_depth_that_is_none_is_refused(named: Named, depth: float) -> None:
    with pytest.raises(NotDefined):
        blind(named("M6"), depth, "plug")
    with pytest.raises(NotDefined):
        full_thread_in(named("M6"), depth, "plug")


def test_an_unknown_tap_is_refused(named: Named) -> None:
    with pytest.raises(NotDefined, match="taper, second, plug"):
        blind(named("M6"), 8, "spiral")


def test_usable_wires_are_the_published_limits(named: Named) -> None:
    # Published: 0.505182 and 1.01036 P for 60°, 0.506 and 0.853 P for Whitworth.
    iso, whitworth = usable_wires(named("M6")), usable_wires(named("1/4 BSW"))
    assert iso.least_mm == pytest.approx(0.505182, abs=1e-5)
    assert iso.most_mm == pytest.approx(1.01036, abs=1e-4)
    assert whitworth.least_mm / 1.27 == pytest.approx(0.506, abs=0.0005)
    assert whitworth.most_mm / 1.27 == pytest.approx(0.853, abs=0.0005)


@pytest.mark.parametrize("wire", [0.5, 1.1, *BAD])
def test_a_wire_that_does_not_lie_in_the_thread_is_refused(named: Named, wire: float) -> None:
    with pytest.raises(NotDefined):
        over_wires(named("M6"), wire)


def test_drill_shanks_serve_as_wires(named: Named) -> None:
    got = over_owned(named("M6"), standard_drills("metric"))
    assert got.name == "0.58 mm"
    assert got.over_mm == pytest.approx(5.350 + 3 * 0.58 - 0.866, abs=0.001)
    with pytest.raises(NotDefined, match=r"0\.577 mm"):
        over_owned(named("M6"), [("3 mm", 3.0)])


def test_a_weaker_hole_needs_more_thread(named: Named) -> None:
    thread = named("M6")
    # Equal metals: the nut's thread is the wider at its root, J is below 1.
    assert strip_ratio(thread) == pytest.approx(0.75 * 4.9175 / (0.875 * 6), abs=0.001)
    assert length_of_engagement(thread, 1.1) == length_of_engagement(thread)
    longer = length_of_engagement(thread, 3) / length_of_engagement(thread)
    assert longer == pytest.approx(strip_ratio(thread, 3))


@pytest.mark.parametrize("ratio", BAD)
def test_a_ratio_of_strengths_that_is_none_is_refused(named: Named, ratio: float) -> None:
    with pytest.raises(NotDefined):
        length_of_engagement(named("M6"), ratio)


def test_a_larger_hole_costs_little_strength(named: Named) -> None:
    thread = named("M3")
    assert strength_left(thread, thread.minor_internal_mm) == pytest.approx(1)
    assert 0.9 < strength_left(thread, 2.5) < 1
    with pytest.raises(NotDefined):
        strength_left(thread, 2.9)


@pytest.mark.parametrize(
    ("material", "wanted"),
    # Workshop rule of thumb: 1 D steel, 1.5 D cast iron and brass, 2 D aluminium and plastic.
    [
        ("mild steel", 6.0),
        ("silver steel", 6.0),
        ("cast iron", 9.0),
        ("CZ121 brass", 9.0),
        ("aluminium", 12.0),
        ("acetal", 12.0),
        ("unobtainium", 12.0),
    ],
)
def test_engaged_length_by_material(named: Named, material: str, wanted: float) -> None:
    assert engagement(named("M6"), material).wanted_mm == wanted


def test_three_threads_are_the_least_and_five_where_often_undone(named: Named) -> None:
    # Common practice, no source: one diameter of M1 is four threads.
    once = engagement(named("M1"), "steel")
    assert (once.wanted_mm, once.why) == (1.0, "1 D in mild steel")
    often = engagement(named("M1"), "steel", is_often_undone=True)
    assert (often.wanted_mm, often.why) == (1.25, "5 full threads")


def test_a_metal_is_told_by_its_words() -> None:
    kinds = {name: metal(name) for name in ("silver steel", "cast aluminium bar", "brass sheet")}
    names = {name: kind.name for name, kind in kinds.items() if kind is not None}
    assert names == {
        "silver steel": "high carbon steel",
        "cast aluminium bar": "cast aluminium",
        "brass sheet": "brass sheet or drawn brass",
    }
    assert metal("oak") is None
    assert metal("") is None


@pytest.mark.parametrize(
    # Published lathe table: infeed along a slide at 29°, in inches, by threads to the inch.
    ("thread", "inches"),
    [("1/4-20 UNC", 0.0371), ("5/16-18 UNC", 0.0412), ("10-32 UNF", 0.0232), ("4-40 UNC", 0.0186)],
)
def test_infeed_at_29_degrees(named: Named, thread: str, inches: float) -> None:
    figures = screwcutting(named(thread))
    assert figures.slide_deg == 29
    flat = next(infeed for infeed in figures.infeeds if infeed.point == "flat of P/8")
    assert flat.along_slide_mm / 25.4 == pytest.approx(inches, abs=0.0001)


def test_whitworth_goes_in_at_half_its_angle(named: Named) -> None:
    figures = screwcutting(named("1/4 BSW"))
    assert figures.slide_deg == 27.5
    (infeed,) = figures.infeeds
    # BS 84: depth 0.6403 P.
    assert infeed.depth_mm == pytest.approx(0.640327 * 1.27, abs=1e-4)
    assert infeed.along_slide_mm == pytest.approx(infeed.depth_mm / math.cos(math.radians(27.5)))


def test_the_blank_and_the_groove(named: Named) -> None:
    figures = screwcutting(named("M6"))
    assert figures.die_blank_mm == pytest.approx(5.9)
    assert (figures.groove_mm, figures.groove_narrow_mm) == (3.0, 2.0)
    # About d − 1.6 P: ISO 4755, from memory.
    assert figures.groove_diameter_mm == pytest.approx(4.4, abs=0.01)
    assert figures.groove_diameter_mm < named("M6").minor_external_mm
