"""Safe exact expressions, and the sizes of a spec in the order in which they follow."""

from binder.parameters.environment import Environment, Gauge, KnownLength, Named, Series
from binder.parameters.explain import working_of
from binder.parameters.expression import Expression, parse
from binder.parameters.faults import ExpressionFault
from binder.parameters.places import finding_of, place_of
from binder.parameters.remarks import remarks_on
from binder.parameters.resolve import Resolved, resolve
from binder.parameters.series import series_of
from binder.parameters.working import Given, Working

__all__ = [
    "Environment",
    "Expression",
    "ExpressionFault",
    "Gauge",
    "Given",
    "KnownLength",
    "Named",
    "Resolved",
    "Series",
    "Working",
    "finding_of",
    "parse",
    "place_of",
    "remarks_on",
    "resolve",
    "series_of",
    "working_of",
]
