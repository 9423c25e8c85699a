"""Named sizes: expressions, their exact values, and where each came from."""

from binder.parameters.environment import Environment, Gauge, Named, Series, series_of
from binder.parameters.explain import working_of
from binder.parameters.expression import Expression
from binder.parameters.faults import ExpressionFault
from binder.parameters.parser import parse
from binder.parameters.picture import KnownLength
from binder.parameters.resolve import Resolved, resolve
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
    "parse",
    "resolve",
    "series_of",
    "working_of",
]
