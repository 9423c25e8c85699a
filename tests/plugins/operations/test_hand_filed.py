"""What is filed to a size lies with what reads it, what is filed square with a square.

Page 3 of a binder: no gauge told, the caliper reads it. Common practice, no source.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from tests.plugins.operations.conftest import HEAD, Plan

# 3 mm thick is filed, not milled; 1.5 mm sheet too.
BAR = "{material: mild steel, stock: 6 mm x 3 mm flat bar, cut: 24 mm}"
SHEET = (
    "{{material: mild steel, stock: 1.5 mm sheet, plate: {{length: {0} mm, width: 14.5 mm,"
    " thickness: 1.5 mm}}}}"
)


@pytest.mark.parametrize(
    ("part", "tools"),
    [
        (BAR, {"files", "square", "digital caliper"}),
        (SHEET.format(131), {"files", "square", "digital caliper"}),
        # 180 mm is beyond the caliper's 150, its 14.5 mm are not.
        (SHEET.format(180), {"files", "square", "digital caliper"}),
    ],
)
def test_filed_to_size_and_square(part: str, tools: set[str], plan: Plan) -> None:
    design = plan(f"{HEAD}  part: {part}\n").design
    assert design is not None
    (found,) = [one for one in collect_tools(design).facts if isinstance(one, ToolsFact)]
    assert tools <= set(found.by_piece["part 2"])
