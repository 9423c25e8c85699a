"""Plugins are loaded one by one; what breaks or clashes is a finding, and the rest go on."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from importlib.metadata import EntryPoint
from pathlib import Path
from types import ModuleType

import pytest

from binder.api import hooks
from binder.api.contributions import PlanStep
from binder.design import Contribution, Fact
from binder.host import Host
from binder.host.order import ordered_steps
from binder.host.plugin import Plugin

ROOT = Path(__file__).parent.parent.parent


def _module(name: str, source: str, monkeypatch: pytest.MonkeyPatch) -> EntryPoint:
    module = ModuleType(name)
    exec(compile(source, name, "exec"), module.__dict__)  # noqa: S102 - the test's own text
    monkeypatch.setitem(sys.modules, name, module)
    return EntryPoint(name, name, hooks.GROUP)


def _point(name: str, value: str) -> EntryPoint:
    return EntryPoint(name, value, hooks.GROUP)


def test_one_that_cannot_be_imported_is_a_finding_and_the_rest_load() -> None:
    host = Host.load([_point("bad", "no_such_module"), _point("stock", "binder_plugins.stock")])
    assert [one.code.name for one in host.findings] == ["plugin-broken"]
    assert [plugin.name for plugin in host.plugins] == ["stock"]


def test_a_taken_name_is_a_clash() -> None:
    host = Host.load([_point("x", "binder_plugins.stock"), _point("x", "binder_plugins.joints")])
    assert [one.code.name for one in host.findings] == ["plugin-clash"]
    assert len(host.plugins) == 1


def test_a_taken_key_is_a_clash_and_the_first_one_stays(monkeypatch: pytest.MonkeyPatch) -> None:
    source = """
from binder.api import FeatureEntry, Kind, Length, Slot, hookimpl
class Drilled(FeatureEntry):
    kind = "drilled"
    drilled: Length
@hookimpl
def binder_kinds():
    return [Kind(Slot.FEATURE, "drilled", Drilled, "another drill")]
"""
    second = _module("second_drill", source, monkeypatch)
    host = Host.load([_point("shapes", "binder_plugins.shapes"), second])
    assert [one.code.name for one in host.findings] == ["plugin-clash"]
    assert [plugin.name for plugin in host.plugins] == ["shapes"]


@pytest.mark.parametrize(
    "body",
    ["return None", "return [1]", "raise RuntimeError('oh')", "return {}"],
)
def test_a_hook_that_returns_nonsense_breaks_its_plugin_alone(
    body: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    source = f"from binder.api import hookimpl\n@hookimpl\ndef binder_kinds():\n    {body}\n"
    point = _module("nonsense", source, monkeypatch)
    host = Host.load([point, _point("stock", "binder_plugins.stock")])
    names = [plugin.name for plugin in host.plugins]
    if body == "return None":
        # pluggy drops an answer of None, so the plugin gives nothing and harms nobody.
        assert names == ["nonsense", "stock"]
    else:
        assert names == ["stock"]
        assert [one.code.name for one in host.findings] == ["plugin-broken"]


@dataclass(frozen=True, slots=True)
class One(Fact):
    """A fact of this test."""


@dataclass(frozen=True, slots=True)
class Two(Fact):
    """Another."""


def _plugin(*steps: PlanStep) -> Plugin:
    return Plugin("trial", "trial", "1", steps=steps)


def _nothing(_design: object) -> Contribution:
    return Contribution()


def test_steps_run_in_the_order_of_their_facts_whatever_order_they_come_in() -> None:
    first = PlanStep("z first", _nothing, gives=(One,))
    then = PlanStep("a then", _nothing, needs=(One,), gives=(Two,))
    last = PlanStep("b last", _nothing, after=(Two, One))
    for steps in ([first, then, last], [last, then, first], [then, last, first]):
        order, findings = ordered_steps([_plugin(*steps)])
        assert [step.name for _, step in order] == ["z first", "a then", "b last"]
        assert not findings


def test_a_fact_that_nobody_gives_and_a_ring_are_findings() -> None:
    lonely = _plugin(PlanStep("lonely", _nothing, needs=(One,)))
    assert [one.code.name for one in ordered_steps([lonely])[1]] == ["plugin-step-order"]
    ring = _plugin(
        PlanStep("a", _nothing, needs=(Two,), gives=(One,)),
        PlanStep("b", _nothing, needs=(One,), gives=(Two,)),
    )
    order, findings = ordered_steps([ring])
    assert not order
    assert [one.code.name for one in findings] == ["plugin-step-order"]


def test_the_docs_name_every_hook() -> None:
    names = [name for name in vars(hooks) if name.startswith("binder_")]
    text = (ROOT / "plugins" / "README.md").read_text(encoding="utf-8")
    assert names
    for name in names:
        assert f"`{name}`" in text
        assert name in (hooks.__doc__ or "")
        assert getattr(hooks, name).__doc__


def test_every_hook_is_used_by_a_built_in(host: Host) -> None:
    for short in ("kinds", "series", "codes", "steps", "checks", "pages", "reckonings", "exports"):
        assert any(getattr(plugin, short) for plugin in host.plugins), short
