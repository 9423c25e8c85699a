"""Every code has a case, and its finding points at the marked characters exactly."""

from __future__ import annotations

import importlib.util
from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Outcome
from binder.diagnostics import Severity
from binder.host import Host

HERE = Path(__file__).parent


def _cases(name: str) -> dict[str, str]:
    spec = importlib.util.spec_from_file_location(name, HERE / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    cases: dict[str, str] = module.CASES
    return cases


CASES = _cases("language")


def _marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    """The text without its marks, and the line and column of both."""
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    plain = plain.replace("⟫", "")
    return plain, (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Callable[..., Outcome]) -> None:
    text, place = _marked(CASES[code])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place
    assert found[0].message


def test_every_code_has_a_case(host: Host) -> None:
    """A code stands in the table of cases, or in the tests of its own package."""
    tests = "\n".join(
        path.read_text(encoding="utf-8") for path in sorted(HERE.parent.rglob("test_*.py"))
    )
    without = [name for name in host.codes() if name not in CASES and f'"{name}"' not in tests]
    assert not without


def test_every_code_is_explained(host: Host) -> None:
    for code in host.codes().values():
        assert all((code.meaning, code.bench, code.example, code.remedy)), code.name
        assert code.name == code.name.lower()
        assert isinstance(code.severity, Severity)
