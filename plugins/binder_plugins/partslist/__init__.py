"""Plugin `partslist`: item numbers, numbers off, and the list of all that the model needs."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Code, HardwareFact, ItemNumber, NumberOff, Page, PlanStep, hookimpl
from binder_plugins.partslist.codes import CODES
from binder_plugins.partslist.counting import count_items, number_items
from binder_plugins.partslist.pages import list_pages


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Counts that disagree."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Item numbers, and numbers off over all assemblies."""
    return [
        PlanStep("number the items", number_items, gives=(ItemNumber,), after=(HardwareFact,)),
        PlanStep("count the items", count_items, gives=(NumberOff,)),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The parts list and the shopping list of bought items."""
    return [Page("parts list", list_pages)]
