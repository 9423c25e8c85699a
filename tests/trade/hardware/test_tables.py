"""Sense of the tables themselves: sources, order, and the geometry that standards obey."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources import files
from itertools import pairwise
from math import radians, tan

import pytest
import yaml

from binder_trade import hardware
from binder_trade.hardware.listing import Table, tables

FILES = (
    *("heads.yaml", "nuts.yaml", "washers.yaml", "grubs.yaml", "studs.yaml", "lengths.yaml"),
    *("dowels.yaml", "pins.yaml", "rivets.yaml", "rings.yaml", "keys.yaml", "seats.yaml"),
    *("spanners.yaml", "wood_screws.yaml", "threads.yaml"),
)
OTHERS = {"steps.yaml", "equivalents.yaml"}


def all_tables() -> Iterator[tuple[str, Table]]:
    for file in FILES:
        for name, one in tables(file).items():
            yield f"{file} {name}", one


def test_every_data_file_is_looked_at() -> None:
    found = {one.name for one in files("binder_trade.hardware").joinpath("data").iterdir()}
    assert found == {*FILES, *OTHERS}


@pytest.mark.parametrize(("where", "one"), list(all_tables()), ids=[at for at, _ in all_tables()])
def test_every_table_names_its_source(where: str, one: Table) -> None:
    assert one.status in ("verified", "memory")
    assert one.source
    assert one.standard in one.source or one.source.startswith("common practice, no source")
    assert one.from_memory <= set(one.rows)
    assert one.rows
    for key, row in one.rows.items():
        assert row, key
        names = {name for name in row if not name.endswith("_um")}
        assert all(row[name] >= 0 for name in names), key


def test_lists_of_lengths_rise() -> None:
    text = files("binder_trade.hardware").joinpath("data", "steps.yaml").read_text(encoding="utf-8")
    for name, written in yaml.safe_load(text).items():
        assert written["source"], name
        assert written["status"] in ("verified", "memory")


THREAD_TABLES = [
    pytest.param(one, id=f"{file} {name}")
    for file in ("heads.yaml", "nuts.yaml", "washers.yaml", "grubs.yaml", "seats.yaml")
    for name, one in tables(file).items()
    if name != "depth"
]
# Figures that may stand still from one size to the next, but never fall.
RISING = ("dk", "k", "drive", "sharp", "s", "m", "d1", "d2", "h", "point", "d")


@pytest.mark.parametrize("one", THREAD_TABLES)
def test_bigger_threads_have_no_smaller_hardware(one: Table) -> None:
    rows = list(one.rows.values())
    if one.series == ("BA",):
        rows.reverse()
    for lower, higher in pairwise(rows):
        for figure in RISING:
            # ASME B18.3 and B18.6.3 keep the head height of 3/8 in at 7/16 in, and lessen it at
            # 1/2 in; ISO 7721 has one height for M4 and M5.
            if figure in lower and not (figure == "k" and "sharp" in lower):
                assert higher[figure] >= lower[figure], (figure, lower, higher)


def threads_of(kind: str) -> list[str]:
    by_series = {
        "M": [f"M{size}" for size in ("1.6", "2", "2.5", "3", "3.5", "4", "5", "6", "8", "10")],
        "BA": [f"{number} BA" for number in (0, 1, 2, 3, 4, 5, 6, 7, 8, 10)],
    }
    found = []
    for thread in [*by_series["M"], *by_series["BA"], "M12", "M14", "M16", "M20"]:
        try:
            hardware.head(kind, thread)
        except hardware.NotListed:
            continue
        found.append(thread)
    return found


COUNTERSUNK = [kind for kind in hardware.HEAD_KINDS if "countersunk" in kind]


@pytest.mark.parametrize("kind", COUNTERSUNK)
def test_a_cone_of_90_degrees_is_half_as_high_as_wide(kind: str) -> None:
    """k = (sharp diameter − d) / 2, from geometry; ISO 7721 and ISO 10642 round it to 0.05 mm."""
    threads = threads_of(kind)
    assert len(threads) >= 10
    for thread in threads:
        found = hardware.head(kind, thread)
        assert found.angle_deg == 90
        assert found.dk_sharp_mm is not None
        height = (found.dk_sharp_mm - hardware.nominal_mm(thread)) / 2
        assert found.k_mm == pytest.approx(height, abs=0.051), thread
        assert found.dk_mm <= found.dk_sharp_mm


@pytest.mark.parametrize("thread", ["2-56 UNC", "4-40 UNC", "6-32 UNC", "8-32 UNC", "10-32 UNF"])
def test_an_american_cone_is_82_degrees(thread: str) -> None:
    """k = (sharp diameter − d) / 2 tan 41°; the tables reckon from the least d, 0.1 mm off."""
    for kind in ("countersunk", "countersunk socket"):
        found = hardware.head(kind, thread)
        assert found.angle_deg == 82
        assert found.dk_sharp_mm is not None
        height = (found.dk_sharp_mm - hardware.nominal_mm(thread)) / 2 / tan(radians(41))
        assert found.k_mm == pytest.approx(height, abs=0.1), kind


def test_hexagons_are_swept_by_their_corners() -> None:
    assert hardware.head("hexagon", "M10").envelope_mm == pytest.approx(16 * 2 / 3**0.5)
    assert hardware.nut("full", "M10").envelope_mm == pytest.approx(18.475, abs=0.001)
    assert hardware.head("cap", "M10").envelope_mm == 16.27  # knurled, ISO 4762 table 1


@pytest.mark.parametrize("size", ["M1.6", "M3", "M6", "M10", "M20"])
def test_a_head_goes_into_its_counterbore(size: str) -> None:
    found = hardware.counterbore("cap", size)
    head = hardware.head("cap", size)
    assert found.diameter_mm > head.envelope_mm
    assert found.depth_mm > head.k_mm


@pytest.mark.parametrize("shaft", [3, 6, 10, 15, 20, 30, 50])
def test_a_circlip_lies_in_its_groove(shaft: float) -> None:
    ring = hardware.circlip_shaft(shaft)
    assert ring.free_mm < ring.groove_mm < shaft
    assert ring.thickness_mm < ring.width_mm
    assert ring.land_mm == pytest.approx(1.5 * (shaft - ring.groove_mm), abs=0.11)  # n = 3 t
    assert ring.clear_mm > shaft


@pytest.mark.parametrize("bore", [8, 12, 16, 22, 28, 35, 50])
def test_an_internal_circlip_lies_in_its_groove(bore: float) -> None:
    ring = hardware.circlip_bore(bore)
    assert ring.free_mm > ring.groove_mm > bore
    assert ring.thickness_mm < ring.width_mm
    assert ring.clear_mm < bore


def test_every_circlip_is_beside_its_neighbours() -> None:
    for name in ("shaft", "bore"):
        rows = list(tables("rings.yaml")[name].rows.items())
        for (key, lower), (next_key, higher) in pairwise(rows):
            step = float(next_key) - float(key)
            assert 0.8 * step <= higher["groove"] - lower["groove"] <= 1.3 * step, next_key
            assert higher["free"] > lower["free"]
            assert higher["clear"] > lower["clear"] or next_key == "10"  # lugs grow at 10 mm


KEYED = [6.5, 8, 10, 11, 12, 15, 17, 20, 22, 25, 30, 35, 38, 44, 50, 58]


@pytest.mark.parametrize("shaft", KEYED)
def test_a_key_has_play_above_it(shaft: float) -> None:
    """t1 + t2 − h is 0.2 mm to 3 mm of width and 0.3 mm beyond, by the table of ISO/R 773."""
    key = hardware.parallel_key(shaft)
    play = key.shaft_depth_mm + key.hub_depth_mm - key.h_mm
    assert play == pytest.approx(0.2 if key.b_mm <= 3 else 0.3)


@pytest.mark.parametrize("shaft", [3.5, 4.5, 5.5, 6.5, 7.5, 9, 11, 13, 15, 17, 19, 21, 24, 27, 30])
def test_a_woodruff_key_has_play_above_it(shaft: float) -> None:
    key = hardware.woodruff_for(shaft)
    play = key.shaft_depth_mm + key.hub_depth_mm - key.h_mm
    assert play == pytest.approx(0.2 if key.b_mm <= 3 else 0.3)
    assert key.h_mm < key.cutter_mm / 2  # less than half a disc
    assert hardware.woodruff(key.b_mm, key.h_mm) == key


def test_ranges_of_shafts_leave_no_gap() -> None:
    for name in ("parallel", "woodruff"):
        rows = list(tables("keys.yaml")[name].rows.values())
        for lower, higher in pairwise(rows):
            assert lower["to_shaft"] == higher["over"]
    split = list(tables("pins.yaml")["split"].rows.values())
    assert all(lower["to_bolt"] == higher["over"] for lower, higher in pairwise(split))


def test_american_woodruff_numbers_are_less_than_half_a_disc() -> None:
    """The disc is cut off a whole number of 1/64 in below its centre (E of ANSI B17.2).

    Heights are printed to 0.001 in, hence the tolerance.
    """
    for number in tables("keys.yaml")["inch woodruff"].rows:
        key = hardware.woodruff_number(number)
        cut_off = (key.diameter_mm / 2 - key.height_mm) / 25.4 * 64
        assert cut_off == pytest.approx(round(cut_off), abs=0.05), number
        assert 1 <= round(cut_off) <= 7


@pytest.mark.parametrize("number", range(17))
def test_association_hexagons_follow_their_formula(number: int) -> None:
    """1.75 D across flats, published for BS 57; D of BS 93."""
    thread = f"{number} BA"
    flats = hardware.head("hexagon", thread).dk_mm
    assert flats == pytest.approx(1.75 * hardware.nominal_mm(thread), abs=0.0015 * 25.4)
