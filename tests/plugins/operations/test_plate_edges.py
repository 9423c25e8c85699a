"""The edges of plate: stood up in the vice only as far as it does not bend away from the cutter."""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import SetUp
from tests.plugins.operations.conftest import RouteOf

# Force of a light side cut in N, and Young's modulus of brass in N/mm²: from memory.
CUT_N, BRASS = 50.0, 100_000.0
JAWS_MM = 25.0  # of the built-in workshop


def _edges(route_of: RouteOf, size: tuple[float, float, float], more: str = "") -> list[SetUp]:
    """The set-ups in which edges of a plate of a size in mm are milled."""
    long, wide, thick = size
    text = (
        f"{{material: brass, stock: {thick:g} mm plate{more}, plate: "
        f"{{length: {long:g} mm, width: {wide:g} mm, thickness: {thick:g} mm}}}}"
    )
    route = route_of(text)
    return [one for one in route.setups if any(act.act == "mill" for act in one.acts)]


@pytest.mark.parametrize(
    ("size", "held"),
    [
        # Jaws 25 mm deep and five thicknesses: what is higher than 40 mm of 3 mm plate lies flat.
        ((38.0, 30.0, 3.0), [("vice", ["edge 1", "edge 2", "edges"])]),
        ((68.0, 36.0, 3.0), [("vice", ["edge 1", "edges"]), ("vice", ["edge 2", "ends"])]),
        ((60.0, 60.0, 3.0), [("plate", ["edge 1", "edge 2", "edges"])]),
        # The same size, twice as thick and more, stands.
        ((60.0, 60.0, 8.0), [("vice", ["edge 1", "edge 2", "edges"])]),
    ],
)
def test_thin_plate_lies_flat(
    route_of: RouteOf, size: tuple[float, float, float], held: list[tuple[str, list[str]]]
) -> None:
    """How far it may stand out: common practice, no source."""
    found = _edges(route_of, size)
    assert [(one.grip.kind, [act.feature for act in one.acts]) for one in found] == held
    for one in found:
        is_up = "the edge up" in one.grip.on
        is_beyond = "just beyond" in one.grip.on
        assert is_up != is_beyond
        assert ("side of the cutter" in one.acts[0].what) == is_beyond


@pytest.mark.parametrize("thick", [2.0, 3.0, 5.0])
@pytest.mark.parametrize("long", [30.0, 45.0, 70.0])
def test_what_stands_up_hardly_bends(route_of: RouteOf, long: float, thick: float) -> None:
    """A beam held at one end, F L³ / 3 E I: under a tenth of the 0.1 mm of ISO 2768-1 m."""
    wide = 30.0
    for one in _edges(route_of, (long, wide, thick)):
        if "the edge up" in one.grip.on:
            ends = any(act.feature == "edge 2" for act in one.acts)
            out, across = max((long if ends else wide) - JAWS_MM, 0.0), wide if ends else long
            stiff = 3 * BRASS * across * thick**3 / 12
            assert CUT_N * out**3 / stiff < 0.01


def test_a_pair_lies_as_one_plate_does(route_of: RouteOf) -> None:
    """Plates held together are not one piece: each bends by itself."""
    (up, flat) = _edges(route_of, (68.0, 36.0, 3.0), ", quantity: 2")
    assert up.grip.holder == "machine vice, 2 together"
    assert flat.grip.on.startswith("2 together, its made edges")
    (lying,) = _edges(route_of, (60.0, 60.0, 3.0), ", quantity: 2")
    assert lying.grip.holder == "clamped flat on the table, on packing, 2 together"
    assert "by the square" in lying.true
