"""Every code is explained, has a case in the tests, and is caused by its own example."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from binder.diagnostics import Code
from binder.source import CODES, read_spec

# Their examples need a large file, another user, or several files that only a test makes.
_SHOWN_IN_OTHER_TESTS = {
    "file-not-readable",
    "file-too-large",
    "findings-left-out",
    "hidden-character",
    "include-in-include",
    "include-without-folder",
    "not-utf-8",
    "section-in-main-only",
    "section-kinds-differ",
    "text-too-long",
    "too-deep",
    "too-many-includes",
    "too-many-values",
    "utf-16",
}


@pytest.mark.parametrize("code", CODES, ids=lambda code: code.name)
def test_code_is_explained(code: Code) -> None:
    assert re.fullmatch("[a-z0-9]+(-[a-z0-9]+)+", code.name)
    for heading in (code.meaning, code.bench, code.remedy):
        assert heading.endswith((".", "`."))
        assert len(heading) > 20
    assert code.example.strip()


def test_no_name_is_used_twice() -> None:
    assert len({code.name for code in CODES}) == len(CODES)


@pytest.mark.parametrize("code", CODES, ids=lambda code: code.name)
def test_code_has_a_case(code: Code) -> None:
    tests = [path for path in Path(__file__).parent.glob("test_*.py") if path != Path(__file__)]
    assert any(f'"{code.name}"' in path.read_text(encoding="utf-8") for path in tests)


@pytest.mark.parametrize(
    "code",
    [code for code in CODES if code.name not in _SHOWN_IN_OTHER_TESTS],
    ids=lambda code: code.name,
)
def test_example_causes_the_code(code: Code, tmp_path: Path) -> None:
    (tmp_path / "parts").mkdir()
    spec = tmp_path / "trial.yaml"
    spec.write_text(code.example, encoding="utf-8")
    _, findings = read_spec(spec)
    assert code in {finding.code for finding in findings}
