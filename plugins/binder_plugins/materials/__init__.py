"""Plugin `materials`: what the metals and other materials of small models are."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Check, Code, MaterialFact, Page, PlanStep, hookimpl
from binder_plugins.materials.checks import check_materials
from binder_plugins.materials.codes import CODES
from binder_plugins.materials.facts import state_materials
from binder_plugins.materials.page import material_pages


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Unknown materials, and forms that are not sold."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The facts about each part's material."""
    return [PlanStep("look up materials", state_materials, gives=(MaterialFact,))]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is the material known, and sold in the form that is asked for."""
    return [Check("materials are known and sold so", check_materials)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A table of the materials used."""
    return [Page("materials", material_pages)]
