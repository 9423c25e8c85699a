"""The tools for gears: mandrels clear of the cutter, holders that go in the mill, setting plugs.

Clearances are plane geometry, worked again here; how far work stands out, which ledge a clamp
wants, are common practice, no source.
"""

from __future__ import annotations

import math

import pytest

from binder.api import Design, SmallWork, Table
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.for_fly_cutters import holder_shank
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.leaf import operations
from binder_plugins.operations.table_mandrel import Cut, TableMandrel, table_mandrel
from binder_plugins.operations.wanted_page import wanted_pages
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without
from tests.plugins.operations.test_teeth import RACK
from tests.plugins.running.test_crane_run import CRANE


def wheel(teeth: int, width: float, bore: float = 4, module: float = 0.5) -> str:
    """A spur gear with a reamed bore, of steel."""
    return (
        f"{{material: mild steel, stock: round bar, gear: {{module: {module} mm, teeth: {teeth},"
        f" width: {width} mm}}, features: {{bore: {{reamed: {bore} mm, depth: through}}}}}}"
    )


def toothed(route: Route) -> SetUp:
    """The set-up in which teeth are cut."""
    return next(one for one in route.setups if any(a.act == "cut-teeth" for a in one.acts))


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    made = compiled(Job(CRANE / "wharf-crane.yaml", None, ()), host, Phase.CHECK).design
    assert made is not None
    return made


def tool(design: Design, name: str) -> SmallWork:
    """What is made, by the beginning of its name."""
    works = [one for one in collect_tools(design).facts if isinstance(one, SmallWork)]
    return next(one for one in works if one.subject.startswith(name))


def _clears(found: TableMandrel, radius: float) -> float:
    """The least gap in mm between a disc that stands at the roots, over the far face of the wheel,
    and all that stands behind that: neck, body, and flange with its clamps."""
    middle = radius + found.root / 2
    behind = [(0.1 * n, found.neck / 2 if 0.1 * n < found.swing or not found.swing
               else found.body / 2) for n in range(int(10 * found.apart))]  # fmt: skip
    # The clamps stand 16 mm high before the flange, up to the rim of a table of any size.
    behind += [(found.apart - 16.0, 0.5 * n) for n in range(int(2 * middle))]
    return min(math.hypot(x, middle - y) for x, y in behind) - radius


@pytest.mark.parametrize(
    ("teeth", "width", "bore", "module"),
    [(18, 4, 4, 0.5), (54, 3, 8, 0.5), (12, 10, 5, 1.0), (80, 8, 10, 1.0), (30, 6, 6, 0.8)],
)
def test_a_cutter_swings_clear_of_the_mandrel(
    plan: Plan, teeth: int, width: float, bore: float, module: float
) -> None:
    design = plan(f"{HEAD}  part: {wheel(teeth, width, bore, module)}\n").design
    assert design is not None
    found = table_mandrel(design, "part", bore, Cut("teeth", 2.25 * module, 50.0))
    assert found is not None
    # ISO 53, profile A: the bottoms lie at z + 2 − 2 × 2.25 modules.
    assert found.root == pytest.approx(module * (teeth - 2.5))
    assert bore < found.neck < found.root
    assert _clears(found, 25.0) >= 0.1
    assert found.across > found.body


def test_a_pinion_on_a_thin_bore_has_its_shoulder_under_the_teeth(crane: Design) -> None:
    """18 teeth of 0.5: bottoms at 0.5 × 15.5 = 7.75. A disc of 25 that stands at 3.875 comes over
    a body of 16 for √(25² − (28.875 − 8)²) = 13.8 mm: with 2 to be clear 16 mm of neck."""
    work = tool(crane, "mandrel ⌀4 mm for the table")
    neck = next(step for step in work.steps if "neck" in step)
    assert "⌀7.5 mm" in neck
    assert "⌀7.75 mm" in neck
    assert "16 mm long" in neck
    assert "43 mm behind the wheel" in neck
    # The bar is a flange for clamps, and was in the model already.
    assert work.section_text.startswith("30 mm")
    # 8 for the nut, 4 of wheel, 43, 8 of flange, and 20 in the chuck.
    assert work.length >= 83


def ratchet(teeth: int, lean: float = 0.0) -> str:
    """A ratchet wheel of 28 mm, teeth 6 mm deep, on a bore of 6 mm."""
    return (
        f"{{material: mild steel, stock: round bar, ratchet: {{teeth: {teeth}, outside: 28 mm,"
        f" depth: 6 mm, width: 8 mm, lean: {lean:g} deg}},"
        " features: {bore: {reamed: 6 mm, depth: through}}}"
    )


@pytest.mark.parametrize(("teeth", "lean"), [(3, 0.0), (4, 0.0), (5, 0.0), (4, 10.0), (12, 0.0)])
def test_a_neck_lies_under_the_nearest_place_of_the_backs(
    plan: Plan, teeth: int, lean: float
) -> None:
    """Each back is stepped along from its foot to the next point; plane geometry, worked here."""
    design = plan(f"{HEAD}  part: {ratchet(teeth, lean)}\n").design
    assert design is not None
    found = table_mandrel(design, "part", 6.0, Cut("teeth", 6.0, 10.0))
    assert found is not None
    # The face leans back from its point, so that its foot lags by so much.
    lag = math.asin(6 * math.tan(math.radians(lean)) / 8)
    end = 2 * math.pi / teeth + lag
    steps = (n / 2000 for n in range(2001))
    near = min(math.hypot(8 + n * (14 * math.cos(end) - 8), n * 14 * math.sin(end)) for n in steps)
    assert found.low / 2 == pytest.approx(near, abs=1e-3)
    assert 0.1 <= near - found.neck / 2 <= 0.5 or found.neck == 7.0


def test_the_washer_goes_by_the_backs_of_few_teeth(plan: Plan) -> None:
    """Four teeth, 14 to the points and 8 to the bottoms: 14 × 8 / √(14² + 8²) = 6.946."""
    design = plan(f"{HEAD}  part: {ratchet(4)}\n").design
    assert design is not None
    steps = " ".join(tool(design, "mandrel ⌀6 mm for the table").steps)
    assert "no wider than ⌀13.5 mm" in steps
    assert "⌀13.5 mm (the backs of the teeth pass 6.95 mm from the axis)" in steps


def test_a_short_wheel_is_cut_without_a_footstock(route_of: RouteOf) -> None:
    setup = toothed(route_of(wheel(18, 4)))
    assert not setup.grip.support
    assert "without a footstock" in setup.true


def test_a_long_pinion_wants_a_footstock_to_buy_or_borrow(plan: Plan) -> None:
    design = plan(f"{HEAD}  part: {wheel(18, 20)}\n", upto=Phase.COMPOSE).design
    assert design is not None
    route = design.facts.about(Route, "part")
    assert route is not None
    assert "footstock of the rotary table" in toothed(route).grip.support
    (section,) = wanted_pages(design, ())
    had = next(block for block in section.blocks if isinstance(block, Table))
    assert any("footstock" in text_of(row[0]) for row in had.rows)


def test_a_footstock_that_is_owned_carries_every_mandrel(plan: Plan) -> None:
    shop = without(holding__fixtures="[footstock for the rotary table, parallels]")
    for owned in (shop, ""):
        design = plan(f"{HEAD}  part: {wheel(18, 4)}\n", owned).design
        assert design is not None
        route = design.facts.about(Route, "part")
        assert route is not None
        steps = tool(design, "mandrel").steps
        assert ("footstock" in toothed(route).grip.support) == bool(owned)
        assert any("centre the nut's end" in step for step in steps) == bool(owned)


@pytest.mark.parametrize(
    ("collets", "most", "shank"),
    [("2 mm to 16 mm by 1 mm", "16 mm", 16), ("2 mm to 16 mm by 1 mm", "10 mm", 10),
     ("[6 mm, 10 mm, 12 mm]", "16 mm", 12), ("20 mm to 25 mm by 1 mm", "16 mm", 13)],
)  # fmt: skip
def test_the_shank_of_a_fly_cutter_holder_goes_in_the_mill(
    plan: Plan, collets: str, most: str, shank: float
) -> None:
    """A collet up to the mill's largest end mill, else the keyed chuck, which ends at 13 mm."""
    own = f"{{spring collets: {{sizes: {collets}, closes: 1 mm}}}}"
    mill = "{mill-drill: {travels: {x: 260 mm, y: 120 mm, z: 180 mm},"
    mill += f" speeds: 100 r/min to 2000 r/min, largest_end_mill: {most}}}}}"
    shop = without(holding__collets=own, machines__mills=mill)
    design = plan(f"{HEAD}  part: {wheel(18, 4)}\n", shop).design
    assert design is not None
    assert holder_shank(design.workshop) == shank
    work = tool(design, "holder for fly cutters")
    assert f"turn the shank to ⌀{shank} mm" in work.steps[0]
    assert float(work.section[0]) >= max(shank, 14)
    # The corners of a square of 6 lie on a circle of 8.49.
    assert "⌀8.5 mm across" in " ".join(work.steps)


def test_one_holder_serves_all_fly_cutters_and_is_sawn_from_a_bar(crane: Design) -> None:
    work = tool(crane, "holder for fly cutters")
    assert work.of == "drum wheel; crank pinion"
    assert work.form
    assert work.length > 70


def test_the_foot_of_a_plug_leaves_a_ledge_round_the_gear(crane: Design) -> None:
    """The pinion is 0.5 × 20 = 10 over its teeth: 6 mm all round make 22. The wheel stands
    0.5 × 72 / 2 = 18 away: its collar of 12 and the foot take 6 + 11 = 17 of that."""
    work = tool(crane, "footed plug")
    assert "⌀22 mm" in work.steps[0]
    assert float(work.section[0]) >= 22
    assert "clears the collar" in work.steps[-1]
    pin = tool(crane, "pointed pin")
    assert float(pin.section[0]) == 2.0
    collared = tool(crane, "setting plug")
    assert "⌀8 mm" in collared.steps[0]
    assert "⌀7 mm" in collared.steps[1]
    for one in (work, pin, collared):
        assert one.form
        assert one.length > 0


def test_work_on_a_mandrel_tells_no_stand_out(crane: Design) -> None:
    """A wheel 3 mm thick between shoulder and nut stands off the jaws by the mandrel."""
    for name in ("drum_wheel", "ratchet"):
        route = crane.facts.about(Route, name)
        assert route is not None
        heads = [text_of(group.title) for group in operations(route, crane).groups]
        (held,) = [text for text in heads if "stub mandrel" in text]
        assert "out of the jaws" not in held


def test_a_fly_cutter_is_tried_where_holder_and_mandrel_are_there(crane: Design) -> None:
    """Neither holder, mandrel nor table need be there when it is ground: it is tried in the
    set-up of the teeth, on a disc that is bored as the wheel; common practice, no source."""
    for name, bore in (("drum_wheel", "8 mm reamer"), ("crank_pinion", "4 mm reamer")):
        route = crane.facts.about(Route, name)
        assert route is not None
        acts = [act.what for act in toothed(route).acts]
        assert "scrap disc, on the mandrel" in acts[0]
        # Each cutter is set where it cuts: one holder serves all, and holds one at a time.
        assert "in its holder, its tip 25 mm from the axis" in acts[0]
        assert "cut" in acts[-1]
        (work,) = [
            one
            for one in collect_tools(crane).facts
            if isinstance(one, SmallWork) and one.subject == f"fly cutter for the {route.title}"
        ]
        assert bore in work.steps[-1]
        assert bore in work.tools
        # 15 for the template, 25 for the grinding, 15 for the disc; the trial is the set-up's.
        assert work.minutes == 55
        # The blank of high-speed steel is told from the gear's own.
        assert f"a piece as large as the {route.title} to try it on" in work.stock
        assert f"a scrap disc as large as the {route.title}" in work.steps[-1]
    holder = tool(crane, "holder for fly cutters")
    assert not any("tip" in step for step in holder.steps)


def test_a_cutter_that_is_tried_on_scrap_as_it_is_held_needs_no_disc(plan: Plan) -> None:
    """A rack is cut in a vice: the piece for its trial is sawn off, 40 minutes without a disc."""
    design = plan(f"{HEAD}  part: {RACK}\n").design
    assert design is not None
    work = tool(design, "fly cutter")
    assert work.minutes == 40
    assert "keep a piece of scrap as large as the part" in work.steps[-1]
