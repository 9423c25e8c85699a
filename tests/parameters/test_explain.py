"""The working of a size: what was given, the formula with its values, and why."""

from __future__ import annotations

from collections.abc import Callable

from binder.diagnostics import Diagnostic, Span
from binder.parameters import Given, Resolved, working_of
from binder.source import Written

Resolve = Callable[..., tuple[Resolved, tuple[Diagnostic, ...]]]

SPEC = """\
sizes:
  bar: 20 mm
  drum: 0.8 * bar
  axle: nearest(0.3 * bar, rod)
  pin: next_up(bar / 10, [2 mm, 3 mm])
  jib: 2 * picture(412 px)
  wire: 12 swg
  short: drum - bar
  odd: short * 2
picture: {file: quay.png, known: {pixels: 260, is: 5 * bar}, tilt: 5 deg}
"""


def test_a_product_of_a_name(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    working = working_of(found.sizes["drum"], found.environment)
    assert working.id == "sizes.drum"
    assert working.title == "drum"
    bar = Given("bar", "20 mm", Span("<text>", 2, 8, 2, 13), "sizes.bar")
    assert working.given == (bar,)
    assert working.formula == "0.8 \u00d7 20 mm"
    assert working.result == "16 mm"
    assert working.because == "follows from bar"
    assert working.span == Span("<text>", 3, 9, 3, 18)


def test_inches_where_they_are_wanted(resolved: Resolve) -> None:
    found, _ = resolved("sizes: {bar: 1 in, half: bar / 2}")
    working = working_of(found.sizes["half"], found.environment, "inch")
    assert (working.formula, working.result) == ("1 in / 2", "1/2 in")


def test_what_is_written_stands_for_itself(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    working = working_of(found.sizes["bar"], found.environment)
    assert (working.given, working.formula, working.because) == ((), "20 mm", "as written")


def test_a_choice_names_its_neighbours_and_its_source(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    working = working_of(found.sizes["axle"], found.environment)
    assert working.given[1].name == "drawn rod"
    assert working.given[1].value == "6 mm for 6 mm; above it 8 mm"
    assert working.given[1].span == Span("<text>", 4, 9, 4, 32)
    assert working.because == "nearest of drawn rod"
    assert working.source == "a shop's list"
    listed = working_of(found.sizes["pin"], found.environment)
    assert listed.given[1] == Given(
        "the list", "2 mm for 2 mm; above it 3 mm", Span("<text>", 5, 8, 5, 39)
    )
    assert listed.because == "next size up of the list"


def test_a_measure_shows_the_picture(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    working = working_of(found.sizes["jib"], found.environment)
    assert [(one.name, one.value) for one in working.given] == [
        ("known length", "100 mm is 260 px"),
        ("bar", "20 mm"),
        ("each end is placed to", "\u00b1 1 px"),
        ("tilt", "5\u00b0"),
    ]
    assert working.formula == "2 \u00d7 (412 px \u00d7 100 mm / 260 px)"
    # 2 * 412 * 100 / 260 = 316.92; root of 0.343, 0.544 and 0.381 % squared is 0.747 %.
    assert working.result == "316.9 mm \u00b1 2.4 mm"
    assert working.because == "measured off the picture"
    assert working.source.startswith("JCGM 100:2008")


def test_a_gauge_shows_its_size_and_source(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    working = working_of(found.sizes["wire"], found.environment)
    assert [(one.name, one.value) for one in working.given] == [("12 swg", "2.642 mm")]
    assert working.source == "BS 3737"


def test_negative_values_stand_in_brackets(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    assert working_of(found.sizes["odd"], found.environment).formula == "(-4 mm) \u00d7 2"


def test_the_command_line_says_so(resolved: Resolve) -> None:
    found, _ = resolved(SPEC, "bar=25 mm")
    working = working_of(found.sizes["bar"], found.environment)
    assert (working.result, working.because) == ("25 mm", "set on the command line")


def test_a_size_of_a_part_has_its_own_id(resolved: Resolve) -> None:
    found, _ = resolved(SPEC)
    text = Written("bar + 1 mm", Span("<text>", 30, 5, 30, 15))
    quantity = found.sizes["bar"].quantity
    working = working_of(("parts.post.overall", text, quantity), found.environment)
    assert (working.id, working.formula) == ("parts.post.overall", "20 mm + 1 mm")
    assert working.span == text.span


def test_why_has_ten_words_at_most(resolved: Resolve) -> None:
    found, _ = resolved("sizes: {a: 1 mm, b: 1 mm, c: 1 mm, d: 1 mm, e: a + b + c + d}")
    because = working_of(found.sizes["e"], found.environment).because
    assert because == "follows from a, b, c and others"
