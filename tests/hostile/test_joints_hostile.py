"""Joints as a careless and as a spiteful maker writes them: findings at their place, no faults."""

from __future__ import annotations

import importlib.util
import random
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.design import Design
from binder.diagnostics import Diagnostic
from binder.host import Host

Compile = Callable[..., Outcome]
HERE = Path(__file__).parent
SPECS = HERE.parents[1] / "specs"
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"


def _beside(name: str) -> ModuleType:
    spec = importlib.util.spec_from_file_location(name, HERE / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


_CASES = _beside("wrong_joints")
WRONG: dict[str, tuple[str, str]] = _CASES.WRONG
PARTS: str = _CASES.PARTS


def _spec(lines: str) -> str:
    """The parts with these joints; the hub waits for a joint only where one names it."""
    parts = PARTS.replace("WAIT", "to suit" if "hub.bore" in lines else "7 mm")
    return f"{HEAD}{parts}joints:\n  {lines}\n"


def _marked(text: str) -> tuple[str, tuple[int, int]]:
    """The text without its marks, and the line and column of the first."""
    before = text[: text.index("⟪")]
    line, column = before.count("\n") + 1, len(before) - before.rfind("\n")
    return text.replace("⟪", "").replace("⟫", ""), (line, column)


def _has_fault(findings: tuple[Diagnostic, ...]) -> bool:
    return any(one.code.name == "plugin-broken" for one in findings)


def _design(outcome: Outcome) -> Design:
    assert outcome.design is not None
    assert not _has_fault(outcome.findings)
    return outcome.design


@pytest.mark.parametrize("name", WRONG)
def test_what_is_wrong_is_found_at_its_place(name: str, compile_text: Compile) -> None:
    code, lines = WRONG[name]
    text, place = _marked(_spec(lines))
    outcome = compile_text(text)
    assert not _has_fault(outcome.findings)
    found = {(one.code.name, (one.span.line, one.span.column)) for one in outcome.findings}
    assert (code, place) in found
    assert all(one.message for one in outcome.findings)


def test_every_finding_says_a_way_out(compile_text: Compile) -> None:
    silent = set()
    for _, lines in WRONG.values():
        outcome = compile_text(_marked(_spec(lines))[0])
        silent |= {one.code.name for one in outcome.findings if not (one.help or one.notes)}
    assert silent == set()


# Wrong in a way that no single word tells: some error, or a warning that names the thing.
IMPOSSIBLE = {
    "bored through the boss": "a: {runs_in: [big.seat, hub.bore]}",
    "a wall of paper": "a: {pressed: [wide.seat, hub.bore]}",
    "two sizes for one bore": (
        "a: {runs_in: [shaft.seat, hub.bore]}\n  b: {runs_in: [shaft.end, hub.bore]}"
    ),
    "two holes": "a: {runs_in: [wheel.bore, lid.h]}",
    "two shafts": "a: {runs_in: [shaft.seat, pin.rod]}",
    "one part with itself": "a: {screwed: [lid.underside, lid.top], fastener: M3 cap screw}",
    "three halves of a bearing": "a: {runs_in: [shaft.seat, hub.bore, wheel.bore]}",
    "a pin wider than its shaft": (
        "a: {pinned: [wheel.boss, shaft.seat], fastener: 8 mm dowel pin}"
    ),
    "a thread wider than its part": (
        "a: {screwed: [lid.underside, box.top], fastener: M64 x 90 mm cap screw}"
    ),
    "the same screws twice": (
        "a: {screwed: [lid.underside, nut.top], fastener: M3 cap screw}\n"
        "  b: {screwed: [lid.underside, nut.top], fastener: M3 cap screw}"
    ),
}
MORE = """  big: {material: silver steel, turned: [{name: seat, diameter: 20 mm, length: 30 mm}]}
  wide: {material: silver steel, turned: [{name: seat, diameter: 17.9 mm, length: 30 mm}]}
"""


@pytest.mark.parametrize("name", IMPOSSIBLE)
def test_what_cannot_be_made_is_an_error(name: str, compile_text: Compile) -> None:
    text = _spec(IMPOSSIBLE[name]).replace("joints:\n", f"{MORE}joints:\n")
    outcome = compile_text(text)
    assert not _has_fault(outcome.findings)
    assert outcome.has_errors


def test_a_bore_to_suit_that_no_joint_names_is_an_error(compile_text: Compile) -> None:
    text = _spec("a: {glued: [lid.top, box.underside]}").replace("7 mm", "to suit")
    assert compile_text(text).has_errors


MUTANTS = 120
ODD = (
    *("0", "-1", "1e99", "½", "{", "}", "[", "]", ":", "~", "yes", "to suit", "through", "rest"),
    *("M3", "2 BA", "H7/q9", "nan", "inf", "9999 mm", "-3 mm", "500 off on 3 mm PCD", "\u202e"),
)


@pytest.mark.parametrize("folder", ["screw-jack", "tilt-hammer", "wharf-crane"])
def test_no_mutant_of_a_joint_escapes(folder: str, host: Host, tmp_path: Path) -> None:
    text = (SPECS / folder / f"{folder}.yaml").read_text(encoding="utf-8")
    for path in (SPECS / folder).iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    spec = tmp_path / f"{folder}.yaml"
    lines = text.split("\n")
    first = lines.index("joints:") + 1
    last = next(n for n in range(first, len(lines)) if not lines[n].startswith("  "))
    dice = random.Random(folder)
    for number in range(MUTANTS):
        changed = list(lines)
        for _ in range(dice.randint(1, 2)):
            changed[dice.randrange(first, last)] = _changed(
                lines[dice.randrange(first, last)], dice
            )
        spec.write_text("\n".join(changed), encoding="utf-8")
        outcome = compiled(Job(spec), host, Phase.CHECK)
        assert not _has_fault(outcome.findings), (number, outcome.findings)
        assert outcome.findings or outcome.design is not None


def _changed(line: str, dice: random.Random) -> str:
    """One word of a line dropped, doubled, or become an odd one."""
    words = line.split(" ")
    at = dice.randrange(2, len(words)) if len(words) > 2 else 0
    words[at : at + 1] = dice.choice(([], [words[at]] * 2, [dice.choice(ODD)]))
    return " ".join(words)
