"""The sums shown are the sums made."""

from __future__ import annotations

from binder_trade.threads import all_threads, working
from binder_trade.threads.basic import FAMILIES


def test_every_step_has_a_formula_a_value_and_a_source() -> None:
    for family in FAMILIES:
        for one in all_threads(family):
            steps = working(one)
            assert all(step.formula and step.value and step.source for step in steps)
            shown = {step.name: step.value for step in steps}
            assert shown["effective diameter"] == f"{one.effective_mm:.3f} mm"


def test_ba_shows_how_its_sizes_come_about() -> None:
    steps = {step.name: step for step in working(all_threads("BA")[-3])}
    assert steps["pitch p"].formula == "0.9^2, to 0.01"
    assert steps["depth of thread"].value == "0.485 mm"
    assert steps["pitch p"].source == "BS 93"
