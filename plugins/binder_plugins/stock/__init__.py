"""Plugin `stock`: the sizes in which bars, sheet, drills and gauges are sold."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Code, Gauge, Reckoning, Series, hookimpl
from binder_plugins.stock.codes import CODES
from binder_plugins.stock.questions import RECKONINGS
from binder_plugins.stock.tables import all_sizes


@hookimpl
def binder_series() -> Sequence[Series | Gauge]:
    """Stock series for `nearest(...)`, and gauges for `12 swg` and `no. 34 drill`."""
    return all_sizes()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A gauge that does not exist."""
    return CODES


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """The thickness of a gauge."""
    return RECKONINGS
