"""What is polished in the lathe without a leaf of its own stands under the caution on emery."""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import SmallWork
from binder_plugins.cautions.facts import caution_table
from binder_plugins.cautions.matching import applied
from binder_plugins.cautions.reading import signs_of
from binder_plugins.operations.aids.collecting import collect_tools
from tests.plugins.operations.test_order import MODELS, design_of


@pytest.mark.parametrize("model", MODELS)
def test_what_is_polished_with_a_strip_is_named_first(model: str) -> None:
    """Source of the caution: HSE EIS2; which tools are polished their own steps tell."""
    design = design_of(model)
    whole = replace(design, facts=design.facts.plus(collect_tools(design).facts))
    polished = {
        one.subject
        for one in whole.facts.all(SmallWork)
        if any("strip on its stick" in step for step in one.steps)
    }
    found = {one.caution.id: one.items for one in applied(caution_table(), signs_of(whole))}
    assert polished
    assert polished <= set(found["lathe-emery"][: len(polished) + 3])
