"""What YAML reads in silence as something else: each is found, and quotes are the way out."""

from __future__ import annotations

import pytest

from binder.source import read_text

Place = tuple[int, int, int, int]

CASES: list[tuple[str, str, Place]] = [
    ("thread: #4-40", "value-read-as-comment", (1, 9, 1, 14)),
    ("a:\n  - #30\n  - b", "value-read-as-comment", (2, 5, 2, 8)),
    ("because: #the head\n  is large", "value-read-as-comment", (1, 10, 1, 19)),
    ("a: # 30 drill", "value-read-as-comment", (1, 4, 1, 14)),
    ("drill: no. #30", "value-read-as-comment", (1, 12, 1, 15)),
    ("a: {b: 1,5 mm}", "comma-in-number", (1, 8, 1, 14)),
    ("a: {b: 1,5}", "comma-in-number", (1, 8, 1, 11)),
    ("a: [1,5 mm, 2]", "comma-in-number", (1, 5, 1, 11)),
    ("a: {b:1}", "colon-without-space", (1, 6, 1, 7)),
    ("a:\n  - length:19 mm", "colon-without-space", (2, 11, 2, 12)),
    ("parts:\n  title:x\n", "colon-without-space", (2, 8, 2, 9)),
    ("a: 1\n b:1\n", "colon-without-space", (2, 3, 2, 4)),
    ("a: {b 1, c: 2}", "colon-missing", (1, 5, 1, 8)),
    ("holes:\n  -bore\n", "dash-without-space", (2, 3, 2, 4)),
    ("holes:\n  -bore: 1\n", "dash-without-space", (2, 3, 2, 8)),
    ("a:\n  - b\n   -c\n", "dash-without-space", (3, 4, 3, 5)),
    ("m: brass\n  length 20 mm\n", "lines-run-together", (2, 3, 2, 15)),
    ("p:\n  bore 20 mm\n  depth 3 mm", "lines-run-together", (3, 3, 3, 13)),
    ("a:\n  - b\n   - c\n", "lines-run-together", (3, 4, 3, 7)),
    ('a: "x\n  length: 1"', "lines-run-together", (2, 3, 2, 13)),
    ("a: [1,\n\t2]", "tab-in-indent", (2, 1, 2, 2)),
]

QUIET = [
    'thread: "#4-40"',
    "thread: no. 4-40  # the small one",
    "thread: 4#40",
    'a: 1/4"\nb: 12" long\nc: 7 1/2 in',
    "a: {b: '1,5 mm', c: 1.5 mm}",
    "a: [10,20]",
    "a: [1 mm,5 mm]",
    "a:\n  - see http://x\n  - 1:16",
    "a:\n  - 'b:1'",
    "a: {b: , c: }",
    "a: {b: 1,\n    c: 2}",
    "a: # the parts\n  b: 1",
    "a: #parts\n  b: 1",
    "note: turn the long shoulder\n  first and bore\n  to 12 mm",
    "note: |\n  length 20 mm\n  #30\n  b:1\n",
    "a: bar\n  + 2 mm",
    'a: "-x"\nb: -5 mm',
    "a:\tb",
    "a:\n  # \tx\n  b: 1\n",
]


@pytest.mark.parametrize(("text", "code", "place"), CASES)
def test_trap_is_found_where_it_is(text: str, code: str, place: Place) -> None:
    _, findings = read_text(text, "jack.yaml")
    assert [(f.code.name, *f.span) for f in findings] == [(code, "jack.yaml", *place)]
    assert findings[0].help


@pytest.mark.parametrize("text", QUIET)
def test_what_is_meant_as_written_is_let_be(text: str) -> None:
    document, findings = read_text(text)
    assert document is not None
    assert findings == ()


def test_what_the_comma_cut_is_named_with_a_point() -> None:
    _, (finding,) = read_text("a: {b: 1,5 mm}")
    assert "`1.5 mm`" in finding.help
