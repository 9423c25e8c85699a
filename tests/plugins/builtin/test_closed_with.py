"""What closes the joints of an assembly stands in its table and beside its members in the list.

A maker lays out by these tables: what a step uses and no table names is missing at the bench
(common practice, no source).
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from binder.api import ClosedWithFact, Design, HardwareFact, ItemNumber, Table
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.buildorder.closed_with import tell_hardware
from binder_plugins.partslist.pages import list_pages
from tests.plugins.operations.test_order import MODELS, design_of


def _told(model: str) -> Design:
    design = design_of(model)
    return replace(design, facts=design.facts.plus(tell_hardware(design).facts))


def _rows(design: Design, name: str) -> dict[str, str]:
    (whole,) = assembly_pages(design, ())
    (sheet,) = [one for one in whole.sections if one.id == f"assembly-{name}"]
    table = sheet.blocks[0]
    assert isinstance(table, Table)
    return {"".join(map(str, row[2])): "".join(map(str, row[1])) for row in table.rows}


@pytest.mark.parametrize("model", MODELS)
def test_all_hardware_of_the_model_goes_into_its_assemblies(model: str) -> None:
    """Every joint of these models is closed in an assembly: nothing is left over."""
    design = _told(model)
    wanted: Counter[str] = Counter()
    for own in design.facts.all(HardwareFact):
        wanted[own.name] += own.count
    found: Counter[str] = Counter()
    for fact in design.facts.all(ClosedWithFact):
        found.update(dict(fact.items))
    assert found == wanted


def test_the_screws_of_the_cheeks_stand_in_the_table_of_the_winch() -> None:
    """Two cheeks, two screws each; one screw holds the cap on the post; two clips, one pin."""
    design = _told("wharf-crane/wharf-crane")
    assert _rows(design, "winch")["M3 × 6 mm cheese head screw"] == "4"
    assert _rows(design, "mast")["M4 × 8 mm cheese head screw"] == "1"
    assert _rows(design, "jib_head")["4 mm external circlip"] == "2"
    assert _rows(design, "crane")["3 mm × 16 mm steel dowel pin"] == "2"


def test_the_list_of_parts_tells_what_closes_an_assembly() -> None:
    design = _told("wharf-crane/wharf-crane")
    number = design.facts.about(ItemNumber, "pin_of_hook_in_block")
    assert number is not None
    parts = str(next(iter(list_pages(design, ()))))
    assert f"of items 25, 26, 27, 28; closed with {number.number}" in parts
