"""Small specs planned in the built-in workshop, or in one that lacks something."""

from __future__ import annotations

from collections.abc import Callable
from importlib.resources import files
from pathlib import Path
from typing import Any

import pytest
import yaml

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.operations.facts import Route

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
BUILT_IN = files("binder.workshop").joinpath("default.yaml").read_text(encoding="utf-8")
Plan = Callable[..., Outcome]
RouteOf = Callable[..., Route]


def without(*paths: str, **changed: str) -> str:
    """The built-in workshop without some of its keys (`machines.mills`), or with others."""
    content: dict[str, Any] = yaml.load(BUILT_IN, Loader=yaml.BaseLoader)  # noqa: S506
    for path in paths:
        *way, last = path.split("/")
        place = content
        for key in way:
            place = place[key]
        del place[last]
    for path, value in changed.items():
        *way, last = path.split("__")
        place = content
        for key in way:
            place = place[key.replace("_", " ") if key.replace("_", " ") in place else key]
        place[last] = yaml.load(value, Loader=yaml.BaseLoader)  # noqa: S506
    return yaml.safe_dump(content, allow_unicode=True, sort_keys=False)


def marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    """The text without its marks, and the line and column of both."""
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    plain = plain.replace("⟫", "")
    return plain, (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


@pytest.fixture
def plan(host: Host, tmp_path: Path) -> Plan:
    """Compiles a spec in a workshop, both as texts."""

    def run(text: str, workshop: str = "", upto: Phase = Phase.CHECK) -> Outcome:
        spec, file = tmp_path / "trial.yaml", tmp_path / "workshop.yaml"
        spec.write_text(text, encoding="utf-8")
        file.write_text(workshop, encoding="utf-8")
        return compiled(Job(spec, file if workshop else None), host, upto)

    return run


@pytest.fixture
def route_of(plan: Plan) -> RouteOf:
    """The route of the part `part` of a spec."""

    def run(part: str, more: str = "", workshop: str = "") -> Route:
        outcome = plan(f"{HEAD}  part: {part}\n{more}", workshop)
        assert outcome.design is not None, [one.message for one in outcome.findings]
        route = outcome.design.facts.about(Route, "part")
        assert route is not None
        return route

    return run
