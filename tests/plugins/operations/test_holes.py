"""Single holes to their acts, reckoned by hand."""

from __future__ import annotations

from tests.plugins.operations.conftest import RouteOf

BLOCK = "material: mild steel, block: {length: 40 mm, width: 30 mm, height: 20 mm}"


def test_a_blind_tap_is_drilled_for_its_lead_and_the_chips(route_of: RouteOf) -> None:
    """M3: 8 mm of thread, 2 × 0.5 for the plug tap's lead, 2 × 0.5 for chips: 10 mm."""
    acts = route_of(f"{{{BLOCK}, features: {{it: {{tapped: M3, on: top, depth: 8 mm}}}}}}").acts
    drill = next(one for one in acts if one.act == "drill")
    tap = next(one for one in acts if one.act == "tap")
    assert "10 mm deep" in drill.what
    assert "8 mm deep" in tap.what


def test_a_tap_into_a_bore_is_drilled_to_the_bore_only(route_of: RouteOf) -> None:
    """12 mm boss, 6 mm bore: a wall of 3 mm, and the drill ends in the bore."""
    part = (
        "{material: brass, stock: 14 mm round bar, turned: [{name: boss, diameter: 12 mm,"
        " length: 12 mm}], features: {bore: {drilled: 6 mm, on: boss, depth: through},"
        " grub: {tapped: M3, across: boss, at: 6 mm from left, depth: 3 mm}}}"
    )
    drills = [one for one in route_of(part).acts if one.feature == "grub" and one.act == "drill"]
    assert "3 mm deep" in drills[-1].what
