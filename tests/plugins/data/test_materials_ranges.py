"""Figures are plausible for their group: a slipped digit or a wrong unit shows here.

The bands are wide on purpose (common practice, no source).
"""

from __future__ import annotations

from typing import Any

import pytest

Record = dict[str, Any]
Band = tuple[float, float]

# Group: density g/cm³, modulus GPa, expansion 1e-6/K.
BANDS: dict[str, tuple[Band, Band, Band]] = {
    "carbon steel": ((7.7, 7.9), (200, 215), (10.5, 13)),
    "alloy steel": ((7.7, 7.9), (200, 215), (10.5, 13)),
    "tool steel": ((7.7, 8.0), (200, 215), (10, 13)),
    "spring steel": ((7.7, 7.9), (195, 215), (10.5, 13)),
    "stainless steel": ((7.6, 8.1), (185, 220), (9.5, 18)),
    "cast iron": ((7.0, 7.5), (95, 180), (9.5, 12.5)),
    "brass": ((8.3, 8.6), (90, 115), (18.5, 21.5)),
    "bronze": ((6.2, 9.0), (80, 130), (16, 19.5)),
    "copper": ((8.2, 9.0), (115, 135), (16, 18)),
    "aluminium": ((2.6, 2.9), (68, 75), (22, 25.5)),
    "zinc alloy": ((6.0, 7.2), (75, 105), (22, 33)),
    "titanium": ((4.3, 4.6), (100, 120), (8, 10)),
    "magnesium": ((1.7, 1.9), (40, 48), (24, 28)),
    "plastic": ((1.0, 2.3), (0.3, 5), (50, 220)),
    "laminate": ((1.2, 1.5), (5, 12), (10, 45)),
    "hardwood": ((0.45, 0.85), (8, 16), (2, 8)),
    "softwood": ((0.35, 0.65), (7, 14), (2, 8)),
    "plywood": ((0.5, 0.8), (5, 13), (2, 12)),
    "gasket": ((0.1, 2.2), (0, 1), (0, 300)),
    "rubber": ((0.9, 1.6), (0, 0.1), (100, 300)),
    "cloth and leather": ((0.1, 1.6), (0, 5), (0, 100)),
    "glass": ((2.2, 2.8), (60, 80), (3, 10)),
}
WEAKEST, STRONGEST = 15, 3000  # MPa, PTFE to fine music wire
SCALES = {"HB": (20, 600), "HV": (20, 800)}


def numbers(figure: object) -> list[float]:
    if isinstance(figure, dict):
        return [number for value in figure.values() for number in numbers(value)]
    if isinstance(figure, list):
        return [number for value in figure for number in numbers(value)]
    assert isinstance(figure, int | float), figure
    assert not isinstance(figure, bool), figure
    return [float(figure)]


def test_every_group_has_a_band_and_every_band_a_record(materials: dict[str, Record]) -> None:
    assert {record["group"] for record in materials.values()} == set(BANDS)


@pytest.mark.parametrize(("place", "figure"), [(0, "density"), (1, "modulus"), (2, "expansion")])
def test_physical_figures_are_one_number_in_the_band(
    materials: dict[str, Record], place: int, figure: str
) -> None:
    for record in materials.values():
        if figure in record:
            assert isinstance(record[figure], int | float), record["id"]
            low, high = BANDS[record["group"]][place]
            assert low <= record[figure] <= high, (record["id"], record[figure])


def test_a_figure_lies_in_its_published_range(materials: dict[str, Record]) -> None:
    for record in materials.values():
        for figure, (low, high) in record.get("ranges", {}).items():
            assert low < high
            assert low <= record[figure] <= high, (record["id"], figure)


def test_ranges_run_upwards(materials: dict[str, Record]) -> None:
    for record in materials.values():
        for key in ("tensile", "yield", "proof"):
            figure = record.get(key)
            bounds = figure.get("min") if isinstance(figure, dict) else figure
            if isinstance(bounds, list):
                low, high = bounds
                assert low < high, (record["id"], key)


def test_strength_is_plausible_and_yield_is_not_above_tensile(
    materials: dict[str, Record],
) -> None:
    for record in materials.values():
        strengths = [record[key] for key in ("tensile", "yield", "proof") if key in record]
        assert all(WEAKEST <= number <= STRONGEST for number in numbers(strengths)), record["id"]
        if "tensile" in record and "yield" in record:
            tensile, limit = numbers(record["tensile"]), numbers(record["yield"])
            # Acrylic is published with a yield above its breaking strength: overlapping ranges.
            if record["group"] != "plastic":
                assert max(limit) <= max(tensile), record["id"]
                assert min(limit) <= min(tensile), record["id"]


def test_hardness_names_its_scale(materials: dict[str, Record]) -> None:
    for record in materials.values():
        if "hardness" in record:
            low, high = SCALES[record["hardness"]["scale"]]
            assert all(low <= number <= high for number in numbers(record["hardness"]["value"]))


@pytest.mark.parametrize(
    ("caution", "ids"),
    [
        ("lead", ["leaded-steel", "brass", "brass-c36000", "leaded-bronze", "gunmetal"]),
        ("beryllium", ["beryllium-copper"]),
        ("magnesium-fire", ["magnesium"]),
        ("titanium-swarf-fire", ["titanium"]),
        ("acid-fume", ["pvc"]),
        ("ptfe-fume", ["ptfe"]),
        ("hardwood-dust", ["oak", "beech", "mahogany", "birch-plywood"]),
        ("sharp-spring", ["music-wire", "spring-steel"]),
        ("fine-dust", ["cotton-phenolic-laminate", "cast-iron", "cast-iron-bar"]),
        ("silica", ["cast-iron"]),
        ("zinc-fume", ["brass", "brass-sheet", "zinc-alloy"]),
    ],
)
def test_cautions_stand_where_they_must(
    materials: dict[str, Record], caution: str, ids: list[str]
) -> None:
    for key in ids:
        assert caution in materials[key].get("caution", ()), key


@pytest.mark.parametrize("key", ["mild-steel", "copper", "stainless", "phosphor-bronze", "acetal"])
def test_cautions_do_not_stand_where_they_mean_nothing(
    materials: dict[str, Record], key: str
) -> None:
    assert "caution" not in materials[key]
