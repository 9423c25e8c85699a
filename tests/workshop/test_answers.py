"""What a workshop answers: each question with the smallest file that shows it."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from binder.workshop import Workshop
from tests.workshop.conftest import HEAD, Read

F = Fraction

FILE = f"""{HEAD}machines:
  lathes:
    small:
      swing: 180 mm
      swing_over_cross_slide: 100 mm
      between_centres: 300 mm
      spindle_bore: 20 mm
      speeds: [900 r/min, 130 r/min, 340 r/min]
    large:
      swing: 12 in
      between_centres: 30 in
      spindle_bore: 1 1/4 in
      speeds: 50 r/min to 2000 r/min
  saws:
    hacksaw: {{kerf: 1 mm, cuts: [bars, sheet]}}
    band saw: {{kerf: 0.8 mm, cuts: [bars, wood]}}
holding:
  chucks:
    three-jaw: {{jaws: 3, grips: 2 mm to 80 mm, run_out: 0.08 mm}}
    four-jaw: {{jaws: 4, grips: 4 mm to 100 mm, independent: true}}
  collets:
    closing: {{sizes: 2 mm to 10 mm by 2 mm, closes: 0.5 mm, run_out: 0.02 mm}}
    fixed: {{sizes: [6 mm], run_out: 0.01 mm}}
drills:
  metric: [2.5 mm, 3 mm, 3.3 mm, 3.4 mm]
  numbers: number drills
  rods: drawn rod
reamers:
  hand: {{sizes: 6 mm, by_hand: true}}
  machine: {{sizes: [6 mm, 8 mm], gives: H7}}
  odd: {{sizes: 10 mm, by_hand: true}}
taps: {{sets: [M3], taper: [M3 x 0.35, 2 BA], plug: [2 ba]}}
dies: [M3, 1/4 x 40]
cutters:
  end_mills: [3 mm, 6 mm, 10 mm]
  slot_drills: [2 mm, 6 mm]
measuring:
  caliper: {{measures: [outside, inside], range: 0 mm to 150 mm, resolution: 0.01 mm}}
  micrometer: {{measures: [outside], range: 0 mm to 25 mm, resolution: 0.002 mm}}
  large micrometer: {{measures: [outside], range: 25 mm to 50 mm, resolution: 0.001 mm}}
  rule: {{measures: [outside], range: 0 mm to 300 mm, resolution: 0.5 mm}}
shelf:
  - {{stock: 20 mm round bar, material: mild  steel, length: 300 mm, quantity: 2, price: 4.50}}
buying:
  currency: EUR
  bar_lengths: [1 m, 300 mm]
  prices:
    - {{stock: 10 mm x 3 mm flat bar, material: brass, length: 500 mm, price: 7}}
allowances: {{facing: 0.5 mm, holding: 20 mm}}
evening: 90 min
"""


@pytest.fixture
def shop(read: Read) -> Workshop:
    workshop, findings = read(FILE)
    assert findings == ()
    assert workshop is not None
    return workshop


def test_drills_are_sorted_by_size_whatever_the_drawer(shop: Workshop) -> None:
    sizes = [drill.mm for drill in shop.drills()]
    assert sizes == sorted(sizes)
    assert {drill.drawer for drill in shop.drills()} == {"metric", "numbers", "rods"}


def test_a_gauge_by_itself_is_the_whole_of_it(shop: Workshop) -> None:
    names = [drill.name for drill in shop.drills() if drill.drawer == "numbers"]
    assert names == ["no. 3 drill", "no. 2 drill", "no. 1 drill"]


def test_owns_drill_is_exact(shop: Workshop) -> None:
    assert shop.owns_drill(F("3.3")) is not None
    assert shop.owns_drill(F("3.31")) is None


@pytest.mark.parametrize(
    ("mm", "below", "above", "found"),
    [
        ("3.2", "0", "0.3", "3.3 mm"),  # a clearance hole: + 0.3 / - 0, trade note 3.1
        ("3.2", "0.05", "0.05", None),
        ("3.35", "0.1", "0.1", "3.3 mm"),  # of two as near the smaller
        ("2.5", "0", "0", "2.5 mm"),
    ],
)
def test_nearest_drill(mm: str, below: str, above: str, found: str | None, shop: Workshop) -> None:
    drill = shop.nearest_drill(F(mm), F(below), F(above))
    assert (drill.name if drill else None) == found


def test_a_machine_reamer_comes_before_a_hand_reamer(shop: Workshop) -> None:
    six, ten = shop.owns_reamer(F(6)), shop.owns_reamer(F(10))
    assert six is not None
    assert (six.drawer, six.gives, six.is_hand) == ("machine", "H7", False)
    assert ten is not None
    assert ten.is_hand
    assert shop.owns_reamer(F(7)) is None


def test_taps_of_one_thread_are_gathered(shop: Workshop) -> None:
    assert [(tap.designation, tap.kinds) for tap in shop.taps()] == [
        ("M3", ("taper", "second", "plug")),
        ("M3 x 0.35", ("taper",)),
        ("2 BA", ("taper", "plug")),
    ]


def test_threads_are_known_by_meaning_not_by_spelling(shop: Workshop) -> None:
    fine = shop.owns_tap("M3×0.35")
    assert fine is not None
    assert fine.designation == "M3 x 0.35"
    assert shop.owns_die("1/4 x 40 ME") is not None
    assert shop.owns_die("M3 LH") is None


def test_end_cutters(shop: Workshop) -> None:
    widest = shop.widest_end_cutter(F(5))
    assert widest is not None
    assert (widest.mm, widest.plunges) == (F(3), False)
    plunging = shop.widest_end_cutter(F(5), plunging=True)
    assert plunging is not None
    assert plunging.mm == 2
    assert shop.widest_end_cutter(F(1)) is None


def test_speeds_in_order(shop: Workshop) -> None:
    assert shop.speeds("small") == ((F(130), F(130)), (F(340), F(340)), (F(900), F(900)))
    assert shop.speeds("large") == ((F(50), F(2000)),)
    assert shop.speeds("none") == ()


@pytest.mark.parametrize(
    ("machine", "wanted", "found"),
    [
        ("small", 339, 130),
        ("small", 340, 340),
        ("small", 5000, 900),
        ("small", 129, None),
        ("large", 777, 777),
        ("large", 5000, 2000),
        ("none", 500, None),
    ],
)
def test_next_lower_speed(machine: str, wanted: int, found: int | None, shop: Workshop) -> None:
    assert shop.speed_at_most(machine, F(wanted)) == found


def test_what_the_lathes_take(shop: Workshop) -> None:
    assert shop.largest_swing() == F("304.8")
    assert shop.largest_swing(over_cross_slide=True) == 100
    assert shop.passes_spindle(F("31.75"))
    assert not shop.passes_spindle(F("31.76"))


def test_holders_the_truest_first(shop: Workshop) -> None:
    assert [one.name for one in shop.holders(F(6))] == [
        "fixed", "closing", "three-jaw", "four-jaw",
    ]  # fmt: skip
    assert [one.name for one in shop.holders(F("5.5"))] == ["closing", "three-jaw", "four-jaw"]
    assert [one.name for one in shop.holders(F("5.4"))] == ["three-jaw", "four-jaw"]
    assert shop.holders(F(101)) == ()


@pytest.mark.parametrize(
    ("form", "kerf"),
    [("round bar", "1"), ("sheet", "1"), ("plate", "1"), ("board", "0.8"), ("casting", None)],
)
def test_kerf(form: str, kerf: str | None, shop: Workshop) -> None:
    assert shop.kerf_for(form) == (None if kerf is None else F(kerf))


@pytest.mark.parametrize(
    ("least", "most", "measures", "resolution"),
    [
        (0, 20, "outside", "0.002"),
        (0, 30, "outside", "0.01"),
        (25, 30, "outside", "0.001"),
        (0, 200, "outside", "0.5"),
        (0, 20, "inside", "0.01"),
        (0, 20, "depth", None),
    ],
)
def test_resolution(
    least: int, most: int, measures: str, resolution: str | None, shop: Workshop
) -> None:
    found = shop.resolution_for(F(least), F(most), measures)
    assert found == (None if resolution is None else F(resolution))


def test_the_shelf(shop: Workshop) -> None:
    (bar,) = shop.shelf()
    assert (bar.form, bar.section, bar.material) == ("round bar", (F(20),), "mild steel")
    assert (bar.length, bar.count, str(bar.price)) == (F(300), 2, "4.50")


def test_what_is_sold(shop: Workshop) -> None:
    (bar,) = shop.sold()
    assert (bar.section, bar.count, bar.price) == ((F(10), F(3)), None, Decimal(7))
    assert shop.bar_lengths() == (F(300), F(1000))


def test_allowances_and_evening(shop: Workshop) -> None:
    assert (shop.facing, shop.holding_length, shop.evening_hours) == (F("0.5"), F(20), F("1.5"))
    assert shop.parting_width is None


def test_an_empty_workshop_answers_nothing(read: Read) -> None:
    shop, (finding,) = read(HEAD)
    assert finding.code.name == "no-machine"
    assert shop is not None
    assert shop.largest_swing() is None
    assert not shop.passes_spindle(F(1))
    assert shop.kerf_for("round bar") is None
    assert (shop.facing, shop.evening_hours) == (None, None)
