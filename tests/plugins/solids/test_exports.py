"""STEP files of parts: by themselves, and several where they stand."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from binder.api import NOWHERE, Diagnostic, Span
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.solids.exports import file_of, solid_files
from binder_solid.facts import SolidFact
from binder_solid.forms import Box, Cylinder, Frame
from binder_solid.placed import PlacedFact
from binder_solid.solid import NamedForm
from binder_solid.solids import step_volume
from tests.solid.needs_kernel import NEEDS_KERNEL

pytestmark = NEEDS_KERNEL
ROOT = Path(__file__).resolve().parents[3]
PLATE = NamedForm("plate", Box(20.0, 10.0, 2.0))
PIN = NamedForm("pin", Cylinder(1.5, 8.0), Frame((5.0, 5.0, 2.0)))


def made(*placed: NamedForm) -> bytes | Diagnostic:
    file = file_of(placed, "the whole", "", NOWHERE)
    assert (file.kind, file.item, file.ending) == ("solid", "", "step")
    found = file.make()
    assert isinstance(found, (bytes, Diagnostic))
    return found


def test_parts_that_stand_together_are_one_file() -> None:
    data = made(PLATE, PIN)
    assert isinstance(data, bytes)
    # 20 × 10 × 2, and π/4 3² × 8
    assert step_volume(data) == pytest.approx(400.0 + math.pi / 4 * 9 * 8)
    assert b"'plate'" in data
    assert b"'pin'" in data


def test_the_same_parts_give_the_same_file() -> None:
    assert made(PLATE, PIN) == made(PLATE, PIN)


def test_nonsense_is_a_finding_at_its_part() -> None:
    at = Span("trial.yaml", 3, 1, 3, 9)
    bad = NamedForm("bad", Box(math.nan, 10.0, 2.0))
    found = file_of((bad,), "bad part", "bad", at).make()
    assert isinstance(found, Diagnostic)
    assert (found.code.name, found.span) == ("solid-unbuildable", at)
    assert "'bad part' cannot be written" in found.message


def test_the_model_holds_every_copy_where_it_stands(host: Host) -> None:
    spec = ROOT / "specs" / "screw-jack" / "screw-jack.yaml"
    design = compiled(Job(spec, for_files=True), host, Phase.CHECK).design
    assert design is not None
    (model,) = (one for one in solid_files(design) if not one.item)
    data = model.make()
    assert isinstance(data, bytes)
    copies = [design.facts.about(SolidFact, one.item) for one in design.facts.all(PlacedFact)]
    assert len(copies) > len(design.parts)  # the jack has two knobs
    assert step_volume(data) == pytest.approx(sum(one.volume for one in copies if one))
