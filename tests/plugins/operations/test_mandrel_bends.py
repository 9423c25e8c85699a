"""Mandrels of two thicknesses under the cutter: how far they bend, and what is done for it.

Checked by superposition of the cases of Roark's tables, and by the integration of shafts. That
what pushes goes with the section of the chip: the specific cutting force of the trade's tables.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from binder_plugins.operations.table_mandrel import Cut, TableMandrel, table_mandrel
from binder_trade.shafting.beam import Load, bend_overhung
from binder_trade.shafting.line import round_piece
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without
from tests.plugins.operations.test_gear_tools import ratchet, toothed, wheel


def cantilever(found: TableMandrel, force: float = 100.0) -> float:
    """How far its far end bends in mm, by superposition of the cases of the tables.

    Roark, Formulas for Stress and Strain, table of straight beams, case 1a (end load): F L³ / 3EI
    and a slope of F L² / 2EI; 3a (end couple M): M L² / 2EI and a slope of M L / EI. The body
    carries F and the couple F L1 at its end, its slope swings the neck, which bends besides.
    """
    modulus, thin, body = 205000.0, found.thin, found.out - found.thin
    one, two = (math.pi * across**4 / 64 for across in (found.neck, found.body))
    sinks = force * body**3 / (3 * modulus * two) + force * thin * body**2 / (2 * modulus * two)
    slope = force * body**2 / (2 * modulus * two) + force * thin * body / (modulus * two)
    return sinks + slope * thin + force * thin**3 / (3 * modulus * one)


PINION = TableMandrel(4, 4, 7.75, 7.75, 7.5, 16, 16, 43, is_on_head=False)


def test_a_mandrel_with_a_neck_bends_as_the_table_of_beams_says() -> None:
    """⌀7.5 for 20 of the 47 that it stands out, then ⌀16, against ⌀15.67 all along."""
    for found in (PINION, TableMandrel(6, 2, 11.6, 11.6, 11, 4, 16, 43, is_on_head=True)):
        plain = replace(found, neck=found.out / 3, body=found.out / 3)
        ratio = cantilever(found) / cantilever(plain)
        assert found.bends == pytest.approx(ratio)
        # And by the integration of the shafts, which goes the other way about.
        parts = ((found.out - found.thin, found.body), (found.thin, found.neck))
        bent = bend_overhung(
            [round_piece(*one) for one in parts], [Load(found.out, 100.0)], 205000.0
        )
        assert abs(bent.deflection_mm) == pytest.approx(cantilever(found), rel=1e-6)
    # F/3E (20³ / 155.3 + (47³ − 20³) / 3217) = 100 / 615000 × 81.3 = 0.0132 mm.
    assert cantilever(PINION) == pytest.approx(0.0132, abs=1e-4)
    assert PINION.bends == pytest.approx(2.31, abs=0.01)


def test_a_pinion_on_a_thin_neck_is_cut_in_three_depths(route_of: RouteOf) -> None:
    """Each takes a third of the section 0.330 z + 0.364 z² of the space (ISO 53, module 0.5):
    0.832 mm² at 1.125, 0.277 at 0.53, 0.555 at 0.86. Two more rounds take twice as long again."""
    setup = toothed(route_of(wheel(18, 4)))
    assert "bends 2.3 times as far" in setup.true
    acts = {act.act: act for act in setup.acts if "on-scrap" not in act.tags}
    rough = next(act for act in setup.acts if "rough" in act.tags)
    assert "18 gaps 0.53 mm deep, then 0.86 mm deep" in rough.what
    assert rough.run == pytest.approx(2 * acts["cut-teeth"].run)
    # It is set over the work before the first round, and not again.
    order = [act.what for act in setup.acts if "centre the cutter" in act.what]
    assert order == [rough.what]


def test_teeth_of_no_rack_are_cut_in_depths_too(route_of: RouteOf) -> None:
    """A ratchet of ⌀9 to ⌀6 on ⌀4, 10 wide: a neck of 5.5 for 14 of it bends 2 times as far."""
    part = (
        "{material: mild steel, stock: round bar, ratchet: {teeth: 8, outside: 9 mm, depth: 1.5 mm,"
        " width: 10 mm}, features: {bore: {reamed: 4 mm, depth: through}}}"
    )
    bare = toothed(route_of(part))
    shop = without(holding__fixtures="[footstock for the rotary table, parallels]")
    held = toothed(route_of(part, workshop=shop))
    (rounds,), (whole,) = ([a for a in one.acts if a.act == "cut-teeth"] for one in (bare, held))
    assert "each cut in 2 depths" in rounds.what
    assert rounds.run == pytest.approx(2 * whole.run)
    assert "depths" not in whole.what


def test_a_stiff_mandrel_cuts_at_the_whole_depth(route_of: RouteOf) -> None:
    setup = toothed(route_of(wheel(54, 3, 8)))
    assert not any("rough" in act.tags for act in setup.acts)
    assert "times its thickness" in setup.true


def test_a_footstock_spares_the_rounds(route_of: RouteOf) -> None:
    shop = without(holding__fixtures="[footstock for the rotary table, parallels]")
    setup = toothed(route_of(wheel(18, 4), workshop=shop))
    assert not any("rough" in act.tags for act in setup.acts)


def test_the_body_is_made_thicker_where_that_is_all_it_wants(plan: Plan) -> None:
    """8 of wheel and 43: 51 by ⌀17 is three times, but with a neck of 13.5 for 15 of it it bends
    (15³ / 13.5⁴ + (51³ − 15³) / 17⁴) / (51³ / 17⁴) = 1.04 times as far; at ⌀18 0.84."""
    design = plan(f"{HEAD}  part: {ratchet(4)}\n").design
    assert design is not None
    found = table_mandrel(design, "part", 6.0, Cut("teeth", 6.0, 10.0))
    assert found is not None
    assert (found.body, found.depths) == (18.0, 1)
    assert found.bends == pytest.approx(0.84, abs=0.01)
    assert replace(found, body=17.0).bends == pytest.approx(1.04, abs=0.01)
