"""From parts to bars: what is sawn, from which bar, and what is said to be proven."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from binder.api import BarPlan, CutSize
from binder.compiler import Outcome

HEAD = "format: 1\nmodel: {title: Bars, issue: A, units: mm}\nparts:\n"


def _plans(outcome: Outcome) -> dict[str, BarPlan]:
    assert outcome.design is not None, outcome.findings
    return {plan.subject: plan for plan in outcome.design.facts.all(BarPlan)}


def test_a_bar_gives_as_many_as_a_hand_reckoning(compile_text: Callable[..., Outcome]) -> None:
    text = f"{HEAD}  pin: {{material: brass, stock: 6 mm drawn rod, cut: 40 mm, quantity: 12}}\n"
    outcome = compile_text(text)
    plan = _plans(outcome)["brass 6 mm drawn rod"]
    assert outcome.design is not None
    shop = outcome.design.workshop
    facing, kerf, grip = shop.facing, shop.kerf_for("drawn rod"), shop.holding_length
    assert facing is not None
    assert kerf is not None
    assert grip is not None
    # By hand: each takes 40 + 2 x facing + kerf; the rest of the bar but the grip is of use.
    each = 40 + 2 * facing + kerf
    first = plan.bars[0]
    assert max(len(bar.pieces) for bar in plan.bars) == (first.length - grip) // each
    assert sum(len(bar.pieces) for bar in plan.bars) == 12
    assert plan.is_proven
    assert plan.pieces[0].length == 40 + 2 * facing


def test_parts_of_one_material_and_section_share_a_bar(
    compile_text: Callable[..., Outcome],
) -> None:
    text = (
        f"{HEAD}  a: {{material: brass, stock: 6 mm drawn rod, cut: 40 mm}}\n"
        "  b: {material: CW614N, stock: 6 mm drawn rod, cut: 50 mm}\n"
        "  c: {material: mild steel, stock: 6 mm drawn rod, cut: 50 mm}\n"
    )
    plans = _plans(compile_text(text))
    assert [piece.item for piece in plans["brass 6 mm drawn rod"].pieces] == ["a", "b"]
    assert len(plans) == 2


def test_a_section_that_was_not_told_is_the_next_larger_that_is_sold(
    compile_text: Callable[..., Outcome],
) -> None:
    turned = "turned: [{diameter: 10.2 mm, length: 9 mm}]"
    outcome = compile_text(f"{HEAD}  a: {{material: brass, stock: round bar, {turned}}}\n")
    assert outcome.design is not None
    cut = outcome.design.facts.about(CutSize, "a")
    assert cut is not None
    # 11 mm is the next in the suppliers' usual range; common practice, no source.
    assert cut.section == (Fraction(11),)


def test_a_hexagon_left_on_hexagon_bar_needs_no_more_than_its_flats(
    compile_text: Callable[..., Outcome],
) -> None:
    turned = "turned: [{hexagon: 10 mm, length: 9 mm}]"
    for stock, needs in (("hexagon bar", 10), ("round bar", 12)):
        outcome = compile_text(f"{HEAD}  a: {{material: brass, stock: {stock}, {turned}}}\n")
        assert outcome.design is not None
        cut = outcome.design.facts.about(CutSize, "a")
        assert cut is not None
        # Across corners 2/sqrt(3) x 10 = 11.547 mm (geometry), so the round bar is 12 mm.
        assert cut.section == (Fraction(needs),)
