"""What the maker may add to a spec."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Kind, Slot, Words

MOST_ADDED = 50
Added = Annotated[list[Words], Field(max_length=MOST_ADDED)]


def section_kinds() -> list[Kind]:
    """The section `cautions:`, which can add and do nothing else."""
    says = "cautions of the maker's own, added to those of this tool"
    return [Kind(Slot.SECTION, "cautions", Added, says)]
