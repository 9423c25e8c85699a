"""The page of the sizes: what its author wrote behind a size stands beside it."""

from __future__ import annotations

from binder.compose.sizes import sizes
from binder.pages import Section, Table, text_of
from tests.conftest import Compile

SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
sizes:
  bar: 25 mm
  pin: '6 mm'   # on which the saddle swivels
  run_out: 2 mm # under the head #2, where the die leaves it half cut
parts:
  rod: {material: mild steel, turned: [{name: rod, diameter: bar, length: pin}]}
"""


def _table(compile_text: Compile, text: str) -> Table:
    design = compile_text(text).design
    assert design is not None
    (page,) = sizes(design)
    assert isinstance(page, Section)
    return next(one for one in page.blocks if isinstance(one, Table))


def test_a_comment_behind_a_size_says_what_it_is_for(compile_text: Compile) -> None:
    table = _table(compile_text, SPEC)
    at = [one.title for one in table.columns].index("What for")
    assert [text_of(row[at]) for row in table.rows] == [
        "",
        "on which the saddle swivels",
        "under the head #2, where the die leaves it half cut",
    ]


def test_without_comments_there_is_no_column_for_them(compile_text: Compile) -> None:
    bare = "\n".join(line.partition("#")[0].rstrip() for line in SPEC.splitlines()) + "\n"
    assert "What for" not in [one.title for one in _table(compile_text, bare).columns]
