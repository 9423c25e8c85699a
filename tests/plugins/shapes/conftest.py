"""Small parts compiled to their forms, and the forms to volumes by the kernel."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_solid.facts import FormFact
from binder_solid.presence import is_kernel_there
from binder_solid.solid import Solid

Compile = Callable[..., Outcome]
FormOf = Callable[..., FormFact]
SolidOf = Callable[..., Solid]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"


def part_text(shape: str, *features: str, stock: str = "") -> str:
    """A spec of one part: its shape, and its features one a line."""
    lines = [f"  part:\n    material: mild steel\n    {shape}\n"]
    if stock:
        lines.append(f"    stock: {stock}\n")
    if features:
        lines.append("    features:\n" + "".join(f"      {one}\n" for one in features))
    return HEAD + "".join(lines)


@pytest.fixture
def form_of(compile_text: Compile) -> FormOf:
    """The form of a part that compiles; `allowed` are codes that may be reported."""

    def run(shape: str, *features: str, stock: str = "", allowed: tuple[str, ...] = ()) -> FormFact:
        outcome = compile_text(part_text(shape, *features, stock=stock))
        assert outcome.design is not None, [one.message for one in outcome.findings]
        left = [one.message for one in outcome.findings if one.code.name not in allowed]
        assert not left
        form = outcome.design.facts.about(FormFact, "part")
        assert form is not None
        return form

    return run


@pytest.fixture
def solid_of(form_of: FormOf) -> SolidOf:
    """The solid of a part; the test is skipped where the kernel is not there."""
    if not is_kernel_there():
        pytest.skip("the kernel is not installed")
    from binder_solid.solids import measured

    def run(shape: str, *features: str, stock: str = "", allowed: tuple[str, ...] = ()) -> Solid:
        return measured(form_of(shape, *features, stock=stock, allowed=allowed).form)

    return run
