"""What is read of a rod as bought: where each mate sits, and what tells a piece without a size.

The gap of a retaining compound is 0.02 to 0.05 mm (from memory of makers' data); places along the
rod are added by hand.
"""

from __future__ import annotations

from collections.abc import Callable

from binder.compiler import Outcome, Phase
from binder.pages import Binder, Table, text_of

Compile = Callable[..., Outcome]
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle:
    material: silver steel
    stock: drawn rod
    turned:
      - {name: journal, diameter: 6 mm, length: 40 mm}
      - {name: seat, diameter: 6 mm, length: 12 mm}
  hub:
    material: brass
    stock: round bar
    turned: [{name: boss, diameter: 16 mm, length: 10 mm}]
    features: {bore: {reamed: 6 mm, on: boss, depth: through}}
scrap_box:
  gear: {what: brass clock wheel, measure_first: [bore]}
joints:
  hub on axle: {retained: [hub.bore, axle.journal]}
  gear on axle: {retained: [gear, axle.seat], master: gear}
stands: axle
positions:
  hub: {at: 10 mm from axle.left}
"""


def rows_of(compile_text: Compile) -> dict[str, list[str]]:
    """The rows of the axle, by the place that they begin with."""
    binder = compile_text(TEXT, Phase.COMPOSE).binder
    assert isinstance(binder, Binder)
    (section,) = (one for one in binder.sections if one.id == "inspection")
    (table,) = (one for one in section.blocks if isinstance(one, Table))
    rows = [[text_of(cell) for cell in row] for row in table.rows]
    return {row[2].partition(",")[0]: row for row in rows if row[1] == "axle"}


def test_an_eased_journal_says_where_and_both_its_limits(compile_text: Compile) -> None:
    row = rows_of(compile_text)["journal"]
    # The hub stands from 10 mm to 20 mm; it slides there from the end.
    assert row[2] == "journal, 0 mm to 20 mm from left"
    # A 6 mm bar of h8 (ISO 286-2).
    assert "5.982 to 6.000, as bought" in row[3]
    assert "0.020 to 0.050 mm under" in row[3]


def test_a_seat_for_a_piece_from_the_scrap_box_is_read_by_the_plug(compile_text: Compile) -> None:
    row = rows_of(compile_text)["seat"]
    assert "0.020 to 0.050 mm under the measured bore" in row[3]
    assert row[4] == "a micrometer, against the step of the plug that goes in"
