"""What is said of bar as bought, of wood, and of a thread that ends at a shoulder."""

from __future__ import annotations

import pytest

from tests.plugins.operations.conftest import RouteOf

SCREW = (
    "{material: mild steel, stock: 10 mm round bar, turned: [{name: head, diameter: 9 mm, length:"
    " 6 mm}, {name: shank, diameter: 5 mm, length: 20 mm}], features: {thread: {screwed: M5, on:"
    " shank, length: %g mm, at: right}%s}}"
)


@pytest.mark.parametrize(
    ("long", "more", "is_turned_round"),
    [
        (20.0, "", True),
        (12.0, "", False),
        (20.0, ", gap: {undercut: 1.5 mm, on: shank, at: 0.8 mm from head}", False),
    ],
)
def test_a_die_is_turned_round_at_a_shoulder(
    long: float, more: str, is_turned_round: bool, route_of: RouteOf
) -> None:
    """A die leaves two turns half cut on its lead side, the plain side fewer; where an undercut
    or plain shank follows there is no need. Common practice, no source."""
    die = next(act for act in route_of(SCREW % (long, more)).acts if act.act == "die")
    assert ("turn the die round" in die.what) == is_turned_round


@pytest.mark.parametrize(
    ("stock", "is_said"), [("12 mm round bar", True), ("16 mm round bar", False)]
)
def test_a_bar_at_the_finished_size_is_said_to_stay(
    stock: str, is_said: bool, route_of: RouteOf
) -> None:
    part = (
        f"{{material: brass, stock: {stock}, turned: [{{name: rim, diameter: 12 mm, length: 6 mm}},"
        " {name: boss, diameter: 8 mm, length: 6 mm}]}"
    )
    acts = route_of(part).acts
    assert any("rim stays ⌀12 mm as bought" in act.what for act in acts) == is_said
    assert any(act.act == "turn" and act.feature == "rim" for act in acts) != is_said


def test_teeth_on_bar_as_bought_want_it_run_true(route_of: RouteOf) -> None:
    """18 teeth of module 0.5 stand on 10 mm: (18 + 2) × 0.5."""
    part = (
        "{material: brass, stock: 10 mm round bar, gear: {teeth: 18, module: 0.5 mm, width: 4 mm},"
        " features: {bore: {reamed: 4 mm, on: outside, depth: through}}}"
    )
    assert any("run it true" in act.what for act in route_of(part).acts)


@pytest.mark.parametrize(
    ("material", "stock", "is_sanded"),
    [("beech", "10 mm x 10 mm board", True), ("brass", "10 mm round bar", False)],
)
def test_wood_has_no_burrs(material: str, stock: str, is_sanded: bool, route_of: RouteOf) -> None:
    """Wood is smoothed with the grain by abrasive paper. Common practice, no source."""
    part = (
        f"{{material: {material}, stock: {stock}, turned: [{{name: grip, diameter:"
        " 9 mm, length: 15 mm}]}"
    )
    act = next(act for act in route_of(part).acts if act.act == "deburr")
    assert ("abrasive paper" in act.tool) == is_sanded == ("burr" not in act.what)
