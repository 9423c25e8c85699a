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


def test_the_cutter_of_a_counterbore_makes_its_size(route_of: RouteOf) -> None:
    """6.5 mm is made by no 6 mm cutter; a drill of the size ground flat does it, and 8 mm has
    its slot drill. Common practice, no source."""
    part = (
        f"{{{BLOCK}, features: {{"
        "a: {drilled: 3.4 mm, on: top, depth: through, at: 10 mm from left, counterbore: 6.5 mm},"
        "b: {drilled: 4.5 mm, on: top, depth: through, at: 10 mm from right, counterbore: 8 mm}}}"
    )
    tools = {act.feature: act.tool for act in route_of(part).acts if act.act == "counterbore"}
    assert tools == {"a": "6.5 mm drill, its end ground flat", "b": "8 mm slot drill"}


def test_a_plain_hole_is_never_named_with_a_smaller_drill(route_of: RouteOf) -> None:
    """Drills by 0.1 mm: 1.05 mm is had by 1.1 mm; 1 mm would not pass a 1 mm rivet."""
    hole = "{drilled: 1.05 mm, on: top, depth: 5 mm}"
    acts = route_of(f"{{{BLOCK}, features: {{it: {hole}}}}}").acts
    drill = next(one for one in acts if one.act == "drill")
    assert drill.tool == "1.1 mm drill, the next above"


def test_holes_in_both_ends_are_two_set_ups(route_of: RouteOf) -> None:
    """No spindle reaches both ends of a block in one grip: the block is turned round."""
    part = (
        f"{{{BLOCK}, features: {{it: {{drilled: 3 mm, on: left, depth: 5 mm, each_end: true}}}}}}"
    )
    found = [one for one in route_of(part).setups if any(a.act == "drill" for a in one.acts)]
    ups = [one.datum.partition("; ") for one in found]
    assert [up for up, *_ in ups] == ["left end up", "right end up"]
    # The spindle is brought over the middle by something: no line or pop stands there.
    assert all(told.endswith("found by an edge finder") for *_, told in ups)
    assert all("2 ×" not in act.what for one in found for act in one.acts)


def test_a_centre_that_stays_is_made_by_its_own_drill(route_of: RouteOf) -> None:
    """Form A, ISO 6411: 2 mm at the pilot, 4.24 mm at the mouth (from memory); not drilled on."""
    part = (
        "{material: mild steel, turned: [{name: rod, diameter: 20 mm, length: 30 mm}],"
        " features: {centre: {centred: 2 mm, on: right}}}"
    )
    acts = [one for one in route_of(part).acts if one.feature == "centre"]
    assert [one.act for one in acts] == ["centre"]
    assert "to ⌀4.24 mm at the mouth" in acts[0].what
    assert acts[0].tool == "2 mm centre drill, form A"


def test_a_hole_across_says_how_far_along_it_lies(route_of: RouteOf) -> None:
    """In the middle of a 6 mm boss at the end: 3 mm from it; in the other boss 10 mm."""
    part = (
        "{material: brass, stock: 14 mm round bar, turned: [{name: a, diameter: 12 mm,"
        " length: 20 mm}, {name: boss, diameter: 10 mm, length: 6 mm}], features: {"
        " grub: {tapped: M3, across: boss, depth: 3 mm},"
        " pin: {drilled: 2 mm, across: a, depth: through}}}"
    )
    acts = route_of(part).acts
    told = {act.feature: act.what for act in acts if act.act == "spot"}
    assert "3 mm from the right-hand end" in told["grub"]
    assert "10 mm from the left-hand end" in told["pin"]
