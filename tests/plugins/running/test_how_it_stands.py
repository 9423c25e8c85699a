"""Play in a bearing is felt across its axis: what moves along it is end float, made on purpose.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from binder_plugins.running.tracing import faults, numbered
from tests.plugins.operations.test_order import design_of


def knocks(model: str, joint: str) -> list[str]:
    """How it is told that a joint knocks."""
    design = design_of(model)
    joints = numbered(design)
    own = [one.name for one in joints].index(joint) + 1
    (fault,) = (one for one in faults(joints, design) if one.sign == "It knocks or rattles")
    return [one.look for one in fault.causes if own in one.numbers]


@pytest.mark.parametrize(
    ("model", "joint"),
    [("screw-jack/screw-jack", "saddle on screw"), ("wharf-crane/wharf-crane", "post in bush")],
)
def test_what_stands_upright_is_rocked_sideways(model: str, joint: str) -> None:
    said = knocks(model, joint)
    assert said[0].startswith("rock it sideways")
    assert not any(one.startswith("lift") for one in said)


def test_what_lies_is_lifted_and_its_end_float_is_another_matter() -> None:
    across, along = knocks("wharf-crane/wharf-crane", "axle in cheeks")
    assert across.startswith("lift the shaft")
    assert "more than its clearance" in across
    assert "more than the end float that 'Inspection' wants" in along


def test_where_no_end_float_is_wanted_none_is_measured() -> None:
    assert len(knocks("wharf-crane/wharf-crane", "post in bush")) == 1
