"""What the pages of running say of a crane: only of what it has. All common practice, no source."""

from __future__ import annotations

import math
from pathlib import Path
from shutil import copytree

import pytest

from binder.api import Checklist, CordFact, Design
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_making.times import hand_passes, running_in, under_load
from binder_plugins.buildorder.running_in import full_load
from binder_plugins.buildorder.stripping import opened
from binder_plugins.operations.facts import Route
from binder_plugins.running.conditions import has_of
from binder_plugins.running.first_page import first_run_pages
from binder_plugins.running.tracing import faults, numbered
from binder_plugins.running.ways import ways_round

CRANE = Path(__file__).parents[3] / "specs" / "wharf-crane"


def crane(folder: Path, host: Host, *swaps: tuple[str, str]) -> Outcome:
    """The crane with some of its words changed."""
    whole = copytree(CRANE, folder / "crane")
    for old, new in swaps:
        found = [path for path in whole.glob("*.yaml") if old in path.read_text(encoding="utf-8")]
        assert len(found) == 1, old
        text = found[0].read_text(encoding="utf-8")
        found[0].write_text(text.replace(old, new), encoding="utf-8")
    return compiled(Job(whole / "wharf-crane.yaml", None, ()), host, Phase.CHECK)


@pytest.fixture(scope="module")
def design(tmp_path_factory: pytest.TempPathFactory, host: Host) -> Design:
    made = crane(tmp_path_factory.mktemp("spec"), host).design
    assert made is not None
    return made


def lines(design: Design) -> list[str]:
    """The lines of the first run."""
    (page,) = first_run_pages(design)
    return [text_of(tick.text) for one in page.blocks if isinstance(one, Checklist)
            for tick in one.checks]  # fmt: skip


def test_no_remedy_for_what_is_not_there(design: Design) -> None:
    """The crane has no spring, no gib and no grub screw; its cheeks are screwed to the block."""
    found = faults(numbered(design), design)
    words = " ".join(f"{one.look} {one.cure}" for fault in found for one in fault.causes)
    assert not any(word in words for word in ("spring", "gib", "grub screw", "collar"))
    assert "screws" in has_of(design.joints["axle in cheeks"], design)
    assert "screws" not in has_of(design.joints["handle on arm"], design)
    assert not any("grub" in line for line in lines(design))


def test_a_load_is_let_down_by_hand(design: Design) -> None:
    said = lines(design)
    assert any("lift the pawl by its tail" in line for line in said)
    assert any(line.startswith("Lift and carry it by the piece of quay") for line in said)
    assert not any("Clamp or screw the model" in line for line in said)


def test_a_light_quay_is_clamped_before_the_first_load(tmp_path: Path, host: Host) -> None:
    """The weight of the small quay holds about once over, where twice is wanted."""
    swap = (
        "length: 240 mm, width: 140 mm, thickness: 22 mm",
        "length: 140 mm, width: 120 mm, thickness: 18 mm",
    )
    made = crane(tmp_path, host, swap).design
    assert made is not None
    assert any("Clamp or screw the model" in line for line in lines(made))


def test_the_way_round_follows_the_ratchet(design: Design) -> None:
    """The drum takes the cord in over its top, away from the jib: to the left, from the front."""
    ways = ways_round(design)
    assert ways["barrel_axle"] == "anticlockwise, from the front"
    assert ways["crank_shaft"] == "clockwise, from the front"


def test_the_cord_comes_off_before_paint(design: Design) -> None:
    """It is led over the sheave in the jib and made fast to one of its bars."""
    assert "rope" in {joint.name for joint in opened(design.assemblies["crane"], design)}


def test_the_whole_is_run_in_before_its_full_load(design: Design) -> None:
    """Slowly 10, free 60, a quarter and half of the load 10 each; then 10 under all of it."""
    assert (running_in(is_loaded=True), running_in(is_loaded=False)) == (90.0, 70.0)
    assert under_load() == 10.0
    assert hand_passes(0.0) == {"few": 10, "many": 100, "each": 10}
    assert "run crane" in design.tasks
    assert "run winch" not in design.tasks


def test_the_load_is_told_in_one_way(design: Design) -> None:
    """A quarter and half in running in, all of it with the test of the whole: so say the build
    order, the first run and the sheet of the assembly, and so the minutes are counted."""
    said = lines(design)
    shares = [n for n, one in enumerate(said) if one.startswith("A quarter of the load")]
    whole = [n for n, one in enumerate(said) if one.startswith("All of the load of 1.5 kg")]
    tests = [n for n, one in enumerate(said) if one.startswith("Crane: it lifts")]
    assert [len(shares), len(whole), len(tests)] == [1, 1, 1]
    assert shares < whole < tests
    assert "then half; 5 times each" in said[shares[0]]
    assert "under a quarter and half of the load; all of it comes last" in (
        design.tasks["run crane"].detail
    )
    assert design.tasks["test crane"].detail.startswith("under all of the load")
    assert full_load(design.assemblies["crane"], design).startswith("under all of the load")
    assert not full_load(design.assemblies["winch"], design)


def test_a_slow_crank_is_not_told_to_go_a_hundred_times(design: Design) -> None:
    """160 mm on two lines are 320 mm of cord; a drum of 7.2 mm takes π × 8 mm in a turn of its
    first layer, and the crank goes three times round for one of the drum: no more than 38.2 turns
    up, as many down, at 40 r/min 1.9 min. In 60 minutes that is about 31 times, not a hundred."""
    once = 2 * 320 / (math.pi * 8.0) * 3 / 40
    cord = design.facts.all(CordFact)[0]
    assert 0.85 * once <= cord.pass_min <= once
    many = hand_passes(cord.pass_min)["many"]
    assert many * cord.pass_min <= 60 < (many + 1) * cord.pass_min
    said = lines(design)
    assert any(line.startswith(f"{many} times through its movement by hand") for line in said)
    assert any("the load of 1.5 kg" in line for line in said)
    assert 60 <= running_in(is_loaded=True, pass_min=cord.pass_min) <= 90


def test_a_journal_is_turned_to_its_measured_mate(design: Design) -> None:
    """The tail is 4 mm, the play between 0.1 and 0.3: 0.2 in the middle."""
    acts = {
        name: " | ".join(act.what for one in design.facts.all(Route) if one.subject == name
                         for setup in one.setups for act in setup.acts)
        for name in ("handle_pin", "crank_handle")
    }  # fmt: skip
    assert (
        "4 mm + the length of the crank handle as measured + 0.2 mm = ______" in acts["handle_pin"]
    )
    assert "beyond the shoulder" in acts["handle_pin"]
    assert "the length of the crank handle: ______" in acts["crank_handle"]


def test_an_upright_shaft_does_not_turn_on_paint(tmp_path: Path, host: Host) -> None:
    outcome = crane(
        tmp_path, host,
        ("depth: 20 mm, note: the floor that is left carries the post}", "depth: through}"),
        ("{at: 1 mm above quay.top", "{at: 0 mm above quay.top"),
    )  # fmt: skip
    found = [one for one in outcome.findings if one.code.name == "weight-on-bare-end"]
    assert len(found) == 1
    assert "wood and its paint" in found[0].message
