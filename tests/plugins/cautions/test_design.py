"""Designs to the facts about cautions."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import CautionFact
from binder.compiler import Outcome
from tests.plugins.cautions.conftest import Facts  # noqa: TID252

Cautions = Callable[..., Facts]
