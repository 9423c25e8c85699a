"""Where the travel of a screw ends is told: at its assembly, its first run, its faults, its drive.

M10 has a pitch of 1.5 mm (ISO 261); that a die leaves one of them half cut: common practice, no
source. The rest is hand reckoning: of 37 mm of thread 15 fill the nut wound out, so that 22 show,
and 20 less wound in: 2. 20 / 1.5 are 13.3 turns.
"""

from __future__ import annotations

import pytest

from binder.api import Block, Checklist, Design
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.running.first_page import first_run_pages
from binder_solid.screw_ends import ScrewEnds, screw_ends
from tests.conftest import Compile
from tests.plugins.drive.test_pair_findings import JACK, LEADS
from tests.plugins.drive.train import spec

FED = "lift: {feeds: [screw], travel: 20 mm, what_travels: %s}"
WHOLE = "assemblies:\n  jack: {of: [body, screw], test: the screw runs from end to end}\n"
HEADED = JACK.replace(
    "turned: [{name: shank, diameter: 10 mm, length: 50 mm}]",
    "turned: [{name: head, diameter: 14 mm, length: 8 mm}, {name: neck, diameter: 7.6 mm, length:"
    " 4 mm}, {name: shank, diameter: 10 mm, length: 37 mm}]",
)


def _design(
    compile_text: Compile, parts: str, fed: str = FED % "screw", more: str = WHOLE
) -> Design:
    outcome = compile_text(spec("", fed, parts=parts, joints=LEADS) + more)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    return outcome.design


def _ends(design: Design) -> ScrewEnds | None:
    return screw_ends(design.joints["nut"], design)


def _ticks(blocks: tuple[Block, ...]) -> list[str]:
    lists = [one for one in blocks if isinstance(one, Checklist)]
    return [text_of(tick.text) for one in lists for tick in one.checks]


def test_both_ends_of_a_screw_are_reckoned(compile_text: Compile) -> None:
    found = _ends(_design(compile_text, JACK % 37))
    assert found is not None
    assert found.before == "plain part of the shank"
    assert (found.shown_in, found.shown_out, found.filled) == pytest.approx((2, 22, 15))
    assert found.turns == pytest.approx(13.33, abs=0.01)
    assert found.half_cut == pytest.approx(1.5)


def test_a_thread_that_ends_at_a_step_shows_up_to_that(compile_text: Compile) -> None:
    found = _ends(_design(compile_text, HEADED % 37))
    assert found is not None
    assert found.before == "neck"


@pytest.mark.parametrize(
    ("long", "fed"),
    [(36, FED % "screw"), (37, FED % "nut"), (37, "lift: {feeds: [screw], what_travels: screw}")],
    ids=["too short", "the nut travels", "no travel"],
)
def test_no_ends_are_told_that_nobody_knows(long: int, fed: str, compile_text: Compile) -> None:
    """36 less 15 and 20 leave 1 mm, and 1.5 mm are half cut: that is a finding, no end."""
    assert _ends(_design(compile_text, JACK % long, fed)) is None


def test_the_sheet_tells_both_ends_where_the_screw_goes_in(compile_text: Compile) -> None:
    (whole,) = assembly_pages(_design(compile_text, JACK % 37), ())
    (sheet,) = whole.sections
    (step,) = [one for one in _ticks(sheet.blocks) if "end to end" in one]
    assert "wound in, 2 mm of thread show between the body and the plain part" in step
    assert "no less: the last 1.5 mm are half cut" in step
    assert "13.3 turns on, 22 mm show, and the thread of the body is still filled, 15 mm" in step
    assert "the ends of 'nut' are 2 mm to 22 mm of its thread showing" in str(sheet.blocks)


def test_the_first_run_and_its_faults_send_nobody_past_the_ends(compile_text: Compile) -> None:
    (page,) = first_run_pages(_design(compile_text, JACK % 37))
    (line,) = [one for one in _ticks(page.blocks) if "Run each screw" in one]
    assert "no farther: 'nut' 2 mm to 22 mm of its thread showing, 13.3 turns" in line
    assert "wound past an end" in str(page.sections)
    bare = _design(compile_text, JACK % 37, "lift: {feeds: [screw], what_travels: screw}")
    (plain,) = first_run_pages(bare)
    assert "Run each screw from end to end." in _ticks(plain.blocks)
    assert "wound past an end" not in str(plain.sections)


def test_the_drive_lists_both_ends(compile_text: Compile) -> None:
    duty = _design(compile_text, HEADED % 37).facts.about(DutyFact, "lift")
    assert duty is not None
    rows = dict(duty.rows)
    assert rows["Thread between body and neck"] == "2 mm wound in, 22 mm out"
    assert rows["Wound out the nut still holds"].startswith("15 mm of thread")
