"""A spec with ten different mistakes gives ten findings in one run, each at its place."""

from __future__ import annotations

from collections.abc import Callable

from binder.compiler import Outcome

TEXT = """\
format: 1
model: {title: Ten mistakes, issue: A, units: metric}
sizes:
  bar: 1,5 mm
  rod: 6 furlong
parts:
  pin:
    materail: brass
    stock: 6 mm rodd
    cut: 40
  arm:
    material: brass
    quantity: 2.5
    cut: 40 mm
    features:
      hole: {driled: 3 mm}
      slot: {slotted: 3 mm, depth: [1 mm]}
joints:
  pin in arm: {slides: [pin rod, arm.hole]}
"""

EXPECTED = {
    ("not-one-of", 2, 47),
    ("decimal-comma", 4, 8),
    ("unit-unknown", 5, 10),
    ("key-missing", 7, 3),
    ("unknown-key", 8, 5),
    ("stock-unknown", 9, 12),
    ("unit-missing", 10, 10),
    ("bad-count", 13, 15),
    ("kind-unknown", 16, 14),
    ("wrong-shape", 17, 36),
    ("bad-reference", 19, 25),
}


def test_each_mistake_is_found_at_its_place(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(TEXT)
    found = {(one.code.name, one.span.line, one.span.column) for one in outcome.findings}
    assert found == EXPECTED
    assert all(one.message for one in outcome.findings)


def test_what_follows_from_a_bad_size_is_silent(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(
        "format: 1\nmodel: {title: One, issue: A, units: mm}\nsizes: {bar: 6 furlong}\n"
        "parts: {pin: {material: brass, stock: 6 mm wire, cut: 2 * bar}}\n"
    )
    assert [one.code.name for one in outcome.findings] == ["unit-unknown"]


def test_a_doubtful_pick_in_a_part_is_remarked(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(
        "format: 1\nmodel: {title: Pick, issue: A, units: mm}\n"
        "picture: {file: quay.png, known: {pixels: 260, is: 60 mm}, pixel_error: 3 px}\n"
        "parts:\n  pin: {material: brass, stock: 6 mm wire,\n"
        "        cut: 'nearest(picture(28 px), [6 mm, 6.5 mm, 7 mm])'}\n"
    )
    assert [(one.code.name, one.span.line) for one in outcome.findings] == [("pick-in-doubt", 6)]


def test_a_misspelt_word_that_stands_for_a_size_is_offered(
    compile_text: Callable[..., Outcome],
) -> None:
    outcome = compile_text(
        "format: 1\nmodel: {title: One, issue: A, units: mm}\nparts:\n  pin: {material: brass,"
        " stock: 6 mm wire, cut: 9 mm, features: {eye: {drilled: 2 mm, depth: trough}}}\n"
    )
    assert ("name-unknown", "did you mean 'through'?") in {
        (one.code.name, one.help) for one in outcome.findings
    }
