"""What these tests share: the faces of a part of a small model."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome, Phase
from binder_plugins.templates.wanted import Template, templates_of
from tests.plugins.templates.models import HEAD

Designed = Callable[[str], Design]
Laid = Callable[[str], list[Template]]


@pytest.fixture
def designed(compile_text: Callable[..., Outcome]) -> Designed:
    """The design of a text of parts, as a check makes it: without the kernel."""

    def run(parts: str) -> Design:
        outcome = compile_text(HEAD + parts)
        assert outcome.design is not None, outcome.findings
        return outcome.design

    return run


@pytest.fixture
def laid(designed: Designed) -> Laid:
    """The faces of a text of parts, as they are without the kernel."""
    return lambda parts: list(templates_of(designed(parts)))


@pytest.fixture
def cut(compile_text: Callable[..., Outcome]) -> Laid:
    """The faces of a text of parts, cut by the kernel."""

    def run(parts: str) -> list[Template]:
        outcome = compile_text(HEAD + parts, Phase.COMPOSE)
        assert outcome.design is not None, outcome.findings
        return list(templates_of(outcome.design))

    return run
