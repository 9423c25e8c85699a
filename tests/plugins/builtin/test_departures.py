"""`because:` answers a warning inside the thing that carries it; an error it does not."""

from __future__ import annotations

from collections.abc import Callable

from binder.compiler import Outcome, Phase

HEAD = "format: 1\nmodel: {title: Reasons, issue: A, units: mm}\nparts:\n"


def test_a_warning_is_accepted_with_its_reason(compile_text: Callable[..., Outcome]) -> None:
    pin = "  pin: {material: unobtainium, stock: 6 mm wire, cut: 9 mm"
    assert not compile_text(f"{HEAD}{pin}}}\n").is_clean
    outcome = compile_text(f"{HEAD}{pin}, because: it lay in the drawer}}\n", Phase.COMPOSE)
    assert outcome.is_clean
    assert [one.accepted for one in outcome.findings] == ["it lay in the drawer"]
    assert outcome.binder is not None
    assert any(section.id == "departures" for section in outcome.binder.sections)


def test_an_error_stands(compile_text: Callable[..., Outcome]) -> None:
    text = f"{HEAD}  pin: {{material: brass, stock: 6 mm wire, because: I like it}}\n"
    outcome = compile_text(text)
    assert outcome.has_errors
    assert all(not one.accepted for one in outcome.findings)
