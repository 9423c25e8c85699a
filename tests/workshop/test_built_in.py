"""The workshops that come with binder: read without a finding, and what they answer."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from binder.parameters import Environment, Gauge, Series
from binder.workshop import Workshop, read_workshop
from binder_plugins.stock.tables import all_sizes

INCH_FILE = Path(__file__).parents[2] / "specs" / "workshops" / "inch.yaml"
INCH = Fraction("25.4")


@pytest.fixture(scope="module")
def sold() -> Environment:
    """The series and gauges of the plugin `stock`."""
    sizes = all_sizes()
    series = {one.name: one for one in sizes if isinstance(one, Series)}
    gauges = {one.name: one for one in sizes if isinstance(one, Gauge)}
    return Environment({}, series, gauges, None)


@pytest.fixture(scope="module")
def metric() -> Workshop:
    workshop, findings = read_workshop(None, Environment({}, {}, {}, None))
    assert findings == ()
    assert workshop is not None
    return workshop


@pytest.fixture(scope="module")
def inch(sold: Environment) -> Workshop:
    workshop, findings = read_workshop(INCH_FILE, sold)
    assert findings == ()
    assert workshop is not None
    return workshop


def test_the_default_needs_no_plugin(metric: Workshop) -> None:
    assert metric.units == "mm"
    assert metric.name


def test_the_default_has_no_shelf(metric: Workshop) -> None:
    assert metric.shelf() == ()


def test_a_metric_set_from_1_to_13_by_a_tenth_has_121_drills(metric: Workshop) -> None:
    drills = metric.drills()
    assert len(drills) == 121
    assert (drills[0].name, drills[-1].name) == ("1 mm", "13 mm")
    assert [drill.mm for drill in drills] == [Fraction(n, 10) for n in range(10, 131)]


def test_the_metric_set_holds_the_tapping_drills_of_iso_2306(metric: Workshop) -> None:
    # ISO 2306, drills for use prior to tapping, as read in a public table.
    wanted = {"M3": "2.5", "M4": "3.3", "M5": "4.2", "M6": "5", "M10": "8.5"}
    for thread, drill in wanted.items():
        assert metric.owns_tap(thread)
        assert metric.owns_drill(Fraction(drill)), thread


def test_sets_of_the_inch_workshop(inch: Workshop) -> None:
    drawers: dict[str, int] = {}
    for drill in inch.drills():
        drawers[drill.drawer] = drawers.get(drill.drawer, 0) + 1
    assert drawers == {"numbers": 60, "letters": 26, "fractions": 29}


# Diameters in inches as printed. Numbers and letters: ASME B94.11M, straight shank twist
# drills, as read in public tables; fractions: exact, n/64.
PUBLISHED = {
    "no. 5 drill": "0.2055",
    "no. 8 drill": "0.1990",
    "no. 10 drill": "0.1935",
    "no. 18 drill": "0.1695",
    "no. 29 drill": "0.1360",
    "no. 43 drill": "0.0890",
    "no. 53 drill": "0.0595",
    "no. 60 drill": "0.0400",
    "letter A drill": "0.234",
    "letter E drill": "0.250",
    "letter F drill": "0.257",
    "letter J drill": "0.277",
    "letter U drill": "0.368",
    "letter X drill": "0.397",
    "9/64 in": "0.140625",
    "13/64 in": "0.203125",
    "1/4 in": "0.25",
    "27/64 in": "0.421875",
}


@pytest.mark.parametrize("name", PUBLISHED)
def test_published_diameters(name: str, inch: Workshop) -> None:
    found = [drill.mm for drill in inch.drills() if drill.name == name]
    assert found == [Fraction(PUBLISHED[name]) * INCH]


def test_letter_e_and_a_quarter_inch_are_one_size(inch: Workshop) -> None:
    same = [drill.name for drill in inch.drills() if drill.mm == INCH / 4]
    assert same == ["1/4 in", "letter E drill"]


def test_stock_by_gauge_is_looked_up(inch: Workshop) -> None:
    # 16 SWG is 0.064 in: Imperial Standard Wire Gauge, BS 3737; from memory.
    (sheet,) = [piece for piece in inch.shelf() if piece.form == "sheet"]
    assert sheet.section == (Fraction("0.064") * INCH,)
    assert sheet.width == 6 * INCH


def test_inch_sizes_are_exact(inch: Workshop) -> None:
    assert inch.largest_swing() == 9 * INCH
    assert inch.parting_width == Fraction(3, 32) * INCH
    lathe = inch.entry.machines.lathes["old lathe"]
    assert lathe.leadscrew is not None
    assert lathe.leadscrew.exact == INCH / 8


def test_threads_of_the_inch_workshop(inch: Workshop) -> None:
    assert inch.owns_die("2 BA")
    assert inch.owns_tap("1/4 x 40 ME")
    assert inch.owns_tap("M3") is None
