"""Every word of the language has a caution or an explicit none: nothing falls silent."""

from __future__ import annotations

from collections.abc import Iterable
from importlib.resources import files
from typing import Any

import pytest
import yaml

from binder.api import Slot
from binder.host import Host
from binder_plugins import materials
from binder_plugins.cautions.facts import caution_table
from binder_plugins.cautions.signs import SignKind


def _data(package: str, name: str) -> dict[str, Any]:
    text = files(package).joinpath("data", name).read_text(encoding="utf-8")
    content: dict[str, Any] = yaml.safe_load(text)
    return content


def _unanswered(kind: SignKind, words: Iterable[str]) -> set[str]:
    found = set(words)
    assert found
    return found - caution_table().known(kind)


def test_every_hazard_tag_has_an_answer() -> None:
    rows = _data(materials.__name__, "materials.yaml")["materials"]
    tags = [str(tag) for row in rows for tag in row.get("caution", ())]
    assert not _unanswered(SignKind.HAZARD, tags)


@pytest.mark.parametrize(
    ("slot", "kind"),
    [
        (Slot.SHAPE, SignKind.SHAPE),
        (Slot.FEATURE, SignKind.FEATURE),
        (Slot.JOINT, SignKind.JOINT),
        (Slot.DRIVE, SignKind.JOINT),
    ],
)
def test_every_kind_of_the_built_in_plugins_has_an_answer(slot: Slot, kind: SignKind) -> None:
    host = Host.load()
    keys = [one.key for plugin in host.plugins for one in plugin.kinds if one.slot is slot]
    assert not _unanswered(kind, keys)


def test_every_act_has_an_answer_wherever_it_is_done() -> None:
    """At a machine by what stands at the machine, at the bench by its own word."""
    acts = [str(act) for act in _data("binder_plugins.operations", "acts.yaml")["acts"]]
    powered = {
        act
        for act, row in _data("binder_plugins.operations", "acts.yaml")["acts"].items()
        if row.get("speed")
    }
    by_hand = set(acts) - powered - {"part-off", "chamfer"}
    assert not _unanswered(SignKind.ACT, by_hand)
    assert not _unanswered(SignKind.ACT, [f"at the {one}" for one in ("lathe", "mill", "drill")])


def test_every_act_that_rules_speak_of_has_an_answer() -> None:
    words = _data("binder_making.precedence", "words.yaml")
    at_machines = set(words["groups"]["machining"]) | {"part-off", "unchuck"}
    assert not _unanswered(SignKind.ACT, set(words["acts"]) - at_machines)
