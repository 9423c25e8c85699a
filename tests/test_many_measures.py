"""A size may hang on a hundred measures off the picture, and on no more."""

from __future__ import annotations

from collections.abc import Callable

from binder.compiler import Outcome

TERMS = 12


def _spec(groups: int) -> str:
    sums = [
        " + ".join(f"picture({300 + TERMS * group + n} px)" for n in range(TERMS))
        for group in range(groups)
    ]
    lines = "".join(f"  s{group}: {text}\n" for group, text in enumerate(sums))
    total = " + ".join(f"s{group}" for group in range(groups))
    return (
        "format: 1\nmodel: {title: Measures, issue: A, units: mm}\n"
        "picture: {file: quay.png, known: {pixels: 260, is: 60 mm}}\n"
        f"sizes:\n{lines}  total: {total}\n"
        "parts: {pin: {material: brass, stock: 6 mm wire, cut: total / 100}}\n"
    )


def test_too_many_measures_are_refused(compile_text: Callable[..., Outcome]) -> None:
    groups = 100 // TERMS + 1
    codes = {(one.code.name, one.span.line) for one in compile_text(_spec(groups)).findings}
    assert ("too-many-measures", 5 + groups) in codes


def test_fewer_are_worked_out(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(_spec(100 // TERMS - 1))
    assert "too-many-measures" not in {one.code.name for one in outcome.findings}
    assert not outcome.has_errors
