"""Small specs compiled with the plugins that cautions look at, and no others."""

from __future__ import annotations

from collections.abc import Callable
from importlib.metadata import EntryPoint

import pytest

from binder.api import CautionFact, Section
from binder.compiler import Outcome, Phase
from binder.host import Host
from binder.pages import Place

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
PLUGINS = (
    "cautions", "drive", "fasteners", "fits", "joints", "materials", "partslist", "shapes", "stock",
)  # fmt: skip
Facts = dict[str, CautionFact]


@pytest.fixture(scope="session")
def host() -> Host:
    """Takes the place of the host with all plugins."""
    points = [EntryPoint(name, f"binder_plugins.{name}", "binder.plugins") for name in PLUGINS]
    return Host.load(points)


@pytest.fixture
def outcome_of(compile_text: Callable[..., Outcome]) -> Callable[..., Outcome]:
    """Compiles the body of a spec under a head that calls for nothing by itself."""

    def run(body: str, head: str = HEAD, upto: Phase = Phase.CHECK) -> Outcome:
        outcome = compile_text(head + body, upto)
        assert outcome.design is not None, outcome.findings
        return outcome

    return run


@pytest.fixture
def cautions_of(outcome_of: Callable[..., Outcome]) -> Callable[..., Facts]:
    """The caution facts of a body, by subject."""

    def run(body: str, head: str = HEAD) -> Facts:
        design = outcome_of(body, head).design
        assert design is not None
        return {fact.subject: fact for fact in design.facts.all(CautionFact)}

    return run


@pytest.fixture
def page_of(outcome_of: Callable[..., Outcome]) -> Callable[..., Section]:
    """The section of cautions of a body."""

    def run(body: str, head: str = HEAD) -> Section:
        outcome = outcome_of(body, head, Phase.COMPOSE)
        assert outcome.binder is not None, outcome.findings
        (section,) = (one for one in outcome.binder.sections if one.place is Place.CAUTIONS)
        return section

    return run
