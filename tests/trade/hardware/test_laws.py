"""Laws between tables: what one standard takes from another, and what follows from the size."""

from __future__ import annotations

from itertools import pairwise
from math import isclose

import pytest

from binder_trade import hardware
from binder_trade.hardware.listing import Table, table, tables
from binder_trade.hardware.steps_sold import steps_within

WITH_LENGTHS = [
    pytest.param(one, id=f"{file} {name}")
    for file in (
        *("lengths.yaml", "grubs.yaml", "studs.yaml", "dowels.yaml", "pins.yaml", "rivets.yaml"),
        *("keys.yaml", "wood_screws.yaml"),
    )
    for name, one in tables(file).items()
    if "list" in one.words
]


@pytest.mark.parametrize("one", WITH_LENGTHS)
def test_ranges_begin_and_end_at_lengths_that_are_sold(one: Table) -> None:
    for key, row in one.rows.items():
        sold = steps_within(one.words["list"], row)
        assert (sold[0], sold[-1]) == (row["from"], row["to"]), key


@pytest.mark.parametrize("one", WITH_LENGTHS)
def test_bigger_sizes_are_sold_longer(one: Table) -> None:
    rows = list(one.rows.values())
    if one.series == ("BA",):
        rows.reverse()
    for lower, higher in pairwise(rows):
        assert lower["from"] <= higher["from"]
        assert lower["to"] <= higher["to"]


def same(first: Table, second: Table, *figures: str) -> None:
    """The figures are the same wherever both tables list a size."""
    both = set(first.rows) & set(second.rows)
    assert len(both) >= 8
    for key in both:
        for figure in figures:
            assert first.rows[key][figure] == second.rows[key][figure], (key, figure)


def test_heads_that_share_a_standard() -> None:
    """ISO 7721 is the head of ISO 2009, 2010, 7046-1 and 7047; ISO 4014 and 4017 share theirs."""
    heads = tables("heads.yaml")
    flat = heads["countersunk M"]
    for name in ("raised countersunk M", "countersunk cross M", "raised countersunk cross M"):
        same(flat, heads[name], "dk", "k", "sharp", "angle_deg")
    same(heads["raised countersunk M"], flat, "drive")
    same(heads["raised countersunk M"], heads["raised countersunk cross M"], "raised")
    for name in ("countersunk cross M", "raised countersunk cross M"):
        same(heads["pan cross M"], heads[name], "recess_no")
    same(heads["pan M"], heads["pan cross M"], "dk")
    same(heads["cheese M"], heads["pan M"], "drive")
    same(heads["hexagon M"], heads["hexagon bolt M"], "dk", "k", "drive")


def test_american_slots_are_one_series() -> None:
    heads = tables("heads.yaml")
    for name in ("fillister UN", "round UN", "countersunk UN"):
        same(heads["pan UN"], heads[name], "drive")


def test_hexagons_are_one_series() -> None:
    """ISO 272: bolts and nuts of one thread have the same flats."""
    bolts = table("heads.yaml", "hexagon M")
    for name in ("full M", "thin M", "high M", "locking M"):
        nuts = table("nuts.yaml", name)
        for key, row in nuts.rows.items():
            assert row["s"] == bolts.rows[key]["dk"], (name, key)
    for key, row in bolts.rows.items():
        assert row["drive"] == row["dk"], key
    for name, kind in (("full BA", "hexagon BA"), ("thin BA", "hexagon BA")):
        for key, row in table("nuts.yaml", name).rows.items():
            assert row["s"] == table("heads.yaml", kind).rows[key]["dk"], (name, key)
    same(table("nuts.yaml", "full BS"), table("nuts.yaml", "thin BS"), "s")


def test_heights_of_nuts_are_in_order() -> None:
    for thread in [f"M{size}" for size in (5, 6, 8, 10, 12, 14, 16, 20)]:
        thin, full, high, locking = (
            hardware.nut(kind, thread).m_mm for kind in ("thin", "full", "high", "locking")
        )
        assert thin < full < high, thread
        assert full < locking, thread


def test_association_nuts_follow_their_proportions() -> None:
    """About 0.9 D and 2/3 D, as remembered of BS 57."""
    for number in range(11):
        thread = f"{number} BA"
        diameter = hardware.nominal_mm(thread)
        assert hardware.nut("full", thread).m_mm == pytest.approx(0.9 * diameter, abs=0.02)
        assert hardware.nut("thin", thread).m_mm == pytest.approx(diameter * 2 / 3, abs=0.04)
    for number in (0, 1, 2, 3, 4, 5, 6, 7, 8, 10):
        thread = f"{number} BA"
        diameter = hardware.nominal_mm(thread)
        assert hardware.head("cheese", thread).dk_mm == pytest.approx(1.55 * diameter, abs=0.02)
        assert hardware.head("cheese", thread).k_mm == pytest.approx(0.66 * diameter, abs=0.02)
        assert hardware.head("countersunk", thread).dk_mm == pytest.approx(
            1.75 * diameter, abs=0.02
        )


def test_washers_of_one_thread_share_a_hole() -> None:
    washers = tables("washers.yaml")
    same(washers["plain M"], washers["chamfered M"], "d1", "d2", "h")
    same(washers["plain M"], washers["small M"], "d1")
    same(washers["plain M"], washers["large M"], "d1")
    for key, row in washers["large M"].rows.items():
        assert row["d2"] > washers["plain M"].rows[key]["d2"] > washers["small M"].rows[key]["d2"]
    for key, row in washers["spring M"].rows.items():
        assert float(key) < row["d1"] < float(key) + 0.25


def test_grub_screws_share_drives_and_points() -> None:
    grubs = tables("grubs.yaml")
    for drive in ("hexagon socket", "slot"):
        for point in ("cone", "dog", "cup"):
            same(grubs[f"{drive} flat"], grubs[f"{drive} {point}"], "drive")
        same(grubs[f"{drive} flat"], grubs[f"{drive} dog"], "point")
        for key, row in grubs[f"{drive} dog"].rows.items():
            assert isclose(row["dog"], float(key) / 2), key  # long dogs of ISO 4028 and 7435
    for point in ("flat", "dog", "cup"):
        same(grubs[f"hexagon socket {point}"], grubs[f"slot {point}"], "point")
    for key, row in grubs["hexagon socket cone"].rows.items():
        assert row["point"] == pytest.approx(float(key) / 4, abs=0.026), key  # ISO 4027, dt = d/4


@pytest.mark.parametrize("name", ["1 d", "1.25 d", "2 d"])
def test_studs_follow_their_diameter(name: str) -> None:
    """DIN 938, 939 and 835: the nut's thread is 2 d + 6 mm."""
    for key, row in table("studs.yaml", name).rows.items():
        assert row["nut"] == 2 * float(key) + 6
        assert row["engaged"] == pytest.approx(
            float(name.removesuffix(" d")) * float(key), abs=0.51
        )


@pytest.mark.parametrize("name", ["shaft", "bore"])
def test_grooves_of_circlips_follow_the_ring(name: str) -> None:
    """DIN 471 and 472: m is s + 0.1 mm (0.15 mm from 2 mm), n three times the groove's depth."""
    for key, row in table("rings.yaml", name).rows.items():
        play = 0.15 if row["thickness"] >= 2 else 0.1
        assert row["width"] == pytest.approx(row["thickness"] + play), key
        depth = abs(float(key) - row["groove"]) / 2
        assert row["land"] == pytest.approx(3 * depth, abs=0.11), key
        assert 0.3 * depth < abs(row["free"] - row["groove"]) < 2.1 * depth, key
    rows = list(table("rings.yaml", name).rows.values())
    for lower, higher in pairwise(rows):
        assert lower["thickness"] <= higher["thickness"]


def test_e_clips_follow_the_groove() -> None:
    clips = table("rings.yaml", "e clip").rows
    for key, row in clips.items():
        play = 0.05 if row["thickness"] >= 1 else 0.04
        assert row["width"] == pytest.approx(row["thickness"] + play), key
        assert 0.81 < row["gap"] / float(key) < 0.88, key
        assert row["over"] > float(key)
        assert row["outside"] > row["to"]
    for lower, higher in pairwise(list(clips.values())):
        for figure in ("over", "to", "thickness", "outside", "land", "width_upper_um"):
            assert lower[figure] <= higher[figure], figure


def test_rivets_follow_their_diameter() -> None:
    """Head 1.75 d; snap 0.6 d, countersunk 0.5 d high (DIN 660, 661) or 0.375 D (BS 641)."""
    heights = {"snap mm": 0.6, "countersunk mm": 0.5, "snap in": 0.6, "countersunk in": 0.375}
    for name, height in heights.items():
        for key, row in table("rivets.yaml", name).rows.items():
            assert row["dk"] == pytest.approx(1.75 * row["d"], abs=0.08), key
            assert row["k"] == pytest.approx(height * row["d"], abs=0.11), key
            assert row.get("angle_deg") in ({None} if "snap" in name else {75, 90})
            assert f"{row['d']:g} mm" == key or key.endswith(" in")


def test_the_eye_of_a_split_pin_is_two_wires_wide() -> None:
    for key, row in table("pins.yaml", "split").rows.items():
        assert row["eye"] == pytest.approx(2 * row["wire"]), key
        assert row["wire"] < float(key)


def test_woodruff_keys_of_one_height_share_a_cutter() -> None:
    cutters: dict[float, float] = {}
    for row in table("keys.yaml", "woodruff").rows.values():
        assert cutters.setdefault(row["h"], row["cutter"]) == row["cutter"]
        assert 0.34 < row["h"] / row["cutter"] < 0.42
    heights = sorted(cutters)
    assert [cutters[height] for height in heights] == sorted(cutters.values())


def test_pins_grow_with_their_diameter() -> None:
    rising = {
        ("dowels.yaml", "soft"): ("c",),
        ("dowels.yaml", "hardened"): ("c",),
        ("pins.yaml", "taper"): ("dome",),
        ("pins.yaml", "inch taper"): ("large",),
        ("pins.yaml", "spring"): ("free", "free_least", "wall", "a", "shear_kn"),
        ("pins.yaml", "split"): ("ends", "to_bolt"),
        ("spanners.yaml", "hexagon key"): ("long", "short"),
        ("wood_screws.yaml", "countersunk"): ("head", "clearance", "soft", "hard"),
    }
    for (file, name), figures in rising.items():
        for lower, higher in pairwise(list(table(file, name).rows.values())):
            for figure in figures:
                assert lower[figure] <= higher[figure], (name, figure)
    same(table("dowels.yaml", "soft"), table("dowels.yaml", "hardened"), "c")
    for key, row in table("pins.yaml", "taper").rows.items():
        assert row["dome"] == pytest.approx(0.13 * float(key), abs=0.11), key


def test_the_holes_for_wood_screws_are_the_next_drill_over_the_shank() -> None:
    for number in range(13):
        screw = hardware.wood_screw(number)
        assert 0 < screw.clearance_mm - screw.shank_mm <= 25.4 / 64 + 1e-3
        assert screw.head_mm == pytest.approx((0.1195 + 0.0265 * number) * 25.4, abs=0.03)
