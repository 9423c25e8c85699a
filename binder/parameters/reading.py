"""The text of an expression to a value that can be evaluated in any environment."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from binder.parameters.environment import Environment
from binder.parameters.expression import Work
from binder.parameters.nodes import Choice, GaugeSize, Literal, Measure, Node, SizeName, walked
from binder.parameters.nodes import SeriesName as _SeriesName
from binder.parameters.parser import parsed
from binder.units import NUMBER, UNIT_WORDS, Quantity
