"""One loaded plugin and all that it gives."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api.contributions import Check, Export, Page, PlanStep, Reckoning
from binder.diagnostics import Code
from binder.parameters import Gauge, Series
from binder.spec.kinds import Kind


@dataclass(frozen=True, slots=True)
class Plugin:
    """A plugin by name, the distribution that brought it, and its contributions."""

    name: str
    distribution: str
    version: str
    kinds: tuple[Kind, ...] = ()
    series: tuple[Series | Gauge, ...] = ()
    codes: tuple[Code, ...] = ()
    steps: tuple[PlanStep, ...] = ()
    checks: tuple[Check, ...] = ()
    pages: tuple[Page, ...] = ()
    reckonings: tuple[Reckoning, ...] = ()
    exports: tuple[Export, ...] = ()
