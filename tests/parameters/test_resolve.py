"""The sizes of a spec: their order, their faults at exact places, and what overrides them."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pytest

from binder.diagnostics import NOWHERE, Diagnostic
from binder.parameters import Resolved, resolve
from binder.parameters.resolve import MOST_FINDINGS
from binder.source import Document, Table, Written

Resolve = Callable[..., tuple[Resolved, tuple[Diagnostic, ...]]]
QUAY = "picture: {file: quay.png, known: {pixels: 260, is: 5 * bar}}"


def place(finding: Diagnostic) -> tuple[str, int, int, int]:
    span = finding.span
    return finding.code.name, span.line, span.column, span.end_column


def marked(text: str) -> tuple[str, tuple[int, int, int]]:
    """A text without its marks, and the line and columns of what they enclose."""
    lines = text.split("\n")
    at = next(number for number, line in enumerate(lines) if "\u27ea" in line)
    start, end = lines[at].index("\u27ea"), lines[at].index("\u27eb") - 1
    plain = text.replace("\u27ea", "").replace("\u27eb", "")
    return plain, (at + 1, start + 1, end + 1)


def amounts(resolved: Resolved) -> dict[str, Fraction]:
    return {name: size.quantity.amount for name, size in resolved.sizes.items()}


def test_sizes_follow_from_one_another_in_any_order(resolved: Resolve) -> None:
    text = f"sizes:\n  half: bar / 2\n  mast: picture(52 px)\n  bar: 20 mm\n{QUAY}"
    found, findings = resolved(text)
    assert findings == ()
    assert amounts(found) == {"half": 10, "mast": 20, "bar": 20}
    assert list(found.sizes) == ["half", "mast", "bar"]
    assert found.environment.picture is not None
    assert found.environment.picture.length.amount == 100
    assert found.sizes["half"].text == "bar / 2"
    assert found.sizes["half"].text.span[1:3] == (2, 9)


def test_no_sizes_at_all(resolved: Resolve) -> None:
    for text in ("format: 1\n", "sizes:\n", "sizes: {}\n"):
        found, findings = resolved(text)
        assert amounts(found) == {}
        assert findings == ()


FAULTS = [
    ("name-unknown", "sizes:\n  bar: 20 mm\n  drum: 0.8 * \u27eabra\u27eb"),
    ("name-unknown", 'sizes:\n  bar: 20 mm\n  drum: "0.8 * \u27eabra\u27eb"'),
    ("kinds-clash", "sizes: {bar: 20 mm, drum: bar + \u27ea2\u27eb}"),
    ("expression-empty", "sizes:\n  bar: \u27ea''\u27eb"),
    ("picture-missing", "sizes:\n  mast: 2 * \u27eapicture(52 px)\u27eb"),
    ("sizes-malformed", "sizes:\n  \u27ea- 20 mm\u27eb"),
    ("sizes-malformed", "sizes: \u27ea20 mm\u27eb"),
    ("sizes-malformed", "sizes:\n  \u27eabar\u27eb: [20 mm]"),
    ("sizes-malformed", "sizes:\n  \u27eabar\u27eb:"),
    ("sizes-malformed", "sizes: \u27ea''\u27eb"),
    ("size-name-unusable", "sizes:\n  \u27eajib-long\u27eb: 120 mm"),
    ("size-name-unusable", "sizes:\n  \u27eamm\u27eb: 120 mm"),
    ("size-name-unusable", "sizes:\n  \u27eamin\u27eb: 120 mm"),
    ("size-name-unusable", "sizes:\n  \u27eapicture\u27eb: 120 mm"),
    ("size-name-unusable", "sizes:\n  \u27earod\u27eb: 120 mm"),
    ("size-name-unusable", "sizes:\n  \u27easwg\u27eb: 120 mm"),
    ("sizes-in-a-circle", "sizes:\n  bar: 2 * \u27eabar\u27eb"),
    ("sizes-in-a-circle", f"sizes:\n  bar: 2 * \u27eapicture(9 px)\u27eb\n{QUAY}"),
    ("picture-malformed", "\u27eapicture\u27eb: quay.png"),
    ("picture-malformed", "\u27eapicture\u27eb: {known: {pixels: 260, is: 9 mm}}"),
    ("picture-malformed", "\u27eapicture\u27eb: {file: a.png}"),
    ("picture-malformed", "picture: {file: a.png, \u27eaknown\u27eb: {pixels: 260}}"),
    ("picture-malformed", "picture: {file: a.png, \u27eaknown\u27eb: {is: 9 mm}}"),
    ("picture-malformed", "picture: {file: a.png, known: {pixels: \u27eamany\u27eb, is: 9 mm}}"),
    ("picture-malformed", "picture: {file: a.png, known: {pixels: \u27ea0\u27eb, is: 9 mm}}"),
    ("picture-malformed", "picture: {file: a.png, known: {pixels: 260, is: \u27ea9\u27eb}}"),
    ("picture-malformed", "picture: {file: a.png, known: {pixels: 260, is: \u27ea-9 mm\u27eb}}"),
    ("picture-malformed", f"bar: 1\n{QUAY}".replace("5 * bar}", "9 mm}, \u27eatlit\u27eb: 5 deg")),
    ("picture-malformed", f"bar: 1\n{QUAY}".replace("5 * bar}", "9 mm}, tilt: \u27ea61 deg\u27eb")),
    ("picture-malformed", f"bar: 1\n{QUAY}".replace("5 * bar}", "9 mm}, tilt: \u27ea5 mm\u27eb")),
    (
        "picture-malformed",
        f"bar: 1\n{QUAY}".replace("5 * bar}", "9 mm}, \u27eadepth\u27eb: {offset: 2 mm}"),
    ),
    ("unit-unknown", "picture: {file: a.png, known: {pixels: 260, is: 9 \u27eamn\u27eb}}"),
    ("name-unknown", "picture: {file: a.png, known: {pixels: 260, is: 9 * \u27eabar\u27eb}}"),
    (
        "picture-known-too-short",
        "picture: {file: a.png, known: {pixels: \u27ea199 px\u27eb, is: 9 mm}}",
    ),
    (
        "picture-known-too-short",
        f"sizes:\n  bar: 20 mm\n  jib: 2 * \u27eapicture(1041 px)\u27eb\n{QUAY}",
    ),
    (
        "pick-in-doubt",
        "sizes:\n  bar: 20 mm\n  post: \u27eanearest(picture(23 px), rod)\u27eb\n"
        + QUAY.replace("bar}}", "bar}, pixel_error: 2}"),
    ),
]


@pytest.mark.parametrize(("code", "text"), FAULTS)
def test_one_finding_at_the_mark(code: str, text: str, resolved: Resolve) -> None:
    plain, where = marked(text)
    _, findings = resolved(plain)
    assert [place(finding) for finding in findings] == [(code, *where)]


def test_a_size_hangs_on_a_hundred_measures_at_most(resolved: Resolve) -> None:
    # Twelve readings a line, each with its own ends; the ends of the known length are shared.
    twelve = " + ".join(["picture(90 px)"] * 12)
    lines = "".join(f"  {name}: {twelve}\n" for name in "pqrtuvwxy")
    text = f"sizes:\n  bar: 20 mm\n{lines}  most: p + q + r + t + u + v + w + x\n"
    found, findings = resolved(text + QUAY)
    assert findings == ()
    assert len(found.sizes["most"].quantity.errors) == 8 * 12 + 1
    _, findings = resolved(f"{text}  over: most + y\n{QUAY}")
    assert [place(one) for one in findings] == [("too-many-measures", 13, 16, 17)]


def test_the_bounds_of_the_warnings(resolved: Resolve) -> None:
    fair = "sizes:\n  bar: 20 mm\n  jib: picture(1040 px)\n" + QUAY
    assert resolved(fair)[1] == ()
    assert resolved("sizes: {bar: 20 mm}\n" + QUAY.replace("260", "200"))[1] == ()
    # One pixel at each end leaves 9 mm, give or take 0.6 mm, well clear of 10 and 6 mm.
    clear = f"sizes:\n  bar: 20 mm\n  post: nearest(picture(22 px), rod)\n{QUAY}"
    assert resolved(clear)[1] == ()


def test_folded_text_has_the_place_of_the_whole(resolved: Resolve) -> None:
    _, findings = resolved("sizes:\n  bar: 20 mm\n  drum: 2 *\n    bra\n")
    assert [(one.code.name, one.span[1:]) for one in findings] == [("name-unknown", (3, 9, 4, 8))]


def test_a_bad_size_spoils_no_other_and_its_dependents_are_silent(resolved: Resolve) -> None:
    text = "sizes:\n  a: 2 mmm\n  b: 2 * a\n  c: b + a\n  d: 3 mm\n  e: 4 * dd\n  f: d * 2"
    found, findings = resolved(text)
    assert [place(one)[:2] for one in findings] == [("unit-unknown", 2), ("name-unknown", 6)]
    assert amounts(found) == {"d": 3, "f": 6}
    assert found.environment.faulty == {"a", "b", "c", "e"}


def test_a_spoilt_picture_spoils_what_is_measured_on_it_in_silence(resolved: Resolve) -> None:
    found, findings = resolved(f"sizes:\n  bar: 20 mmm\n  jib: picture(40 px)\n{QUAY}")
    assert [one.code.name for one in findings] == ["unit-unknown"]
    assert found.environment.faulty == {"bar", "jib", "picture"}


def test_a_circle_names_every_line(resolved: Resolve) -> None:
    text = "sizes:\n  d: 2 * a\n  a: 1 mm + b\n  b: c\n  c: 2 * a\n  e: 3 mm"
    found, findings = resolved(text)
    (finding,) = findings
    assert place(finding) == ("sizes-in-a-circle", 3, 13, 14)
    assert "a, b, c, a" in finding.message
    lines = [(one.span.line, one.span.column, one.label) for one in finding.related]
    assert lines == [(4, 6, "b follows from c"), (5, 10, "c follows from a")]
    assert amounts(found) == {"e": 3}


def test_two_circles_are_two_findings(resolved: Resolve) -> None:
    _, findings = resolved("sizes: {a: b, b: a, c: d, d: c + a}")
    assert [one.code.name for one in findings] == ["sizes-in-a-circle"] * 2


def test_a_long_circle_is_cut_to_six_names(resolved: Resolve) -> None:
    links = "".join(f"  s{at}: s{(at + 1) % 20}\n" for at in range(20))
    _, findings = resolved(f"sizes:\n{links}")
    (finding,) = findings
    assert finding.message.endswith("s0, s1, s2, s3, s4, s5, \u2026, s0")
    assert len(finding.related) == 19


def test_a_hundred_faults_are_enough(resolved: Resolve) -> None:
    lines = "".join(f"  s{at}: 2 * bra{at}\n" for at in range(MOST_FINDINGS + 50))
    _, findings = resolved(f"sizes:\n{lines}")
    assert len(findings) == MOST_FINDINGS + 1
    assert place(findings[-1]) == ("sizes-too-faulty", 1, 1, 6)


BAR = "sizes:\n  bar: 20 mm\n  drum: 0.8 * bar\n"


def test_the_command_line_overrides(resolved: Resolve) -> None:
    found, findings = resolved(BAR, "bar = 1 in")
    assert findings == ()
    assert amounts(found)["drum"] == Fraction("20.32")
    bar = found.sizes["bar"]
    assert (bar.origin, str(bar.text), found.sizes["drum"].origin) == (
        "command line",
        "1 in",
        "spec",
    )
    assert bar.text.span == ("<command line>", 0, 7, 0, 11)


@pytest.mark.parametrize(
    ("overrides", "code", "start", "end"),
    [
        (["bra=1 in"], "set-name-unknown", 1, 4),
        (["bar"], "set-malformed", 1, 4),
        (["bar="], "set-malformed", 1, 5),
        (["=3 mm"], "set-malformed", 1, 6),
        (["bar=1 in", "bar=2 in"], "set-malformed", 1, 9),
        (["bar=2 * bra"], "name-unknown", 9, 12),
    ],
)
def test_faults_of_the_command_line(
    overrides: list[str], code: str, start: int, end: int, resolved: Resolve
) -> None:
    _, findings = resolved(BAR, *overrides)
    (finding,) = findings
    assert (finding.code.name, *finding.span) == (code, "<command line>", 0, start, 0, end)


def test_an_unknown_set_is_answered_with_the_name(resolved: Resolve) -> None:
    _, findings = resolved(BAR, "drun=1 in")
    assert findings[0].help == "did you mean 'drum'?"


def test_an_override_mends_a_bad_size(resolved: Resolve) -> None:
    found, findings = resolved(BAR.replace("20 mm", "20 mmm"), "bar=20 mm")
    assert findings == ()
    assert amounts(found)["drum"] == 16


@pytest.mark.parametrize("order", [(0, 1, 2, 3), (3, 1, 0, 2), (2, 3, 1, 0)])
def test_the_order_of_the_lines_changes_nothing(order: tuple[int, ...], resolved: Resolve) -> None:
    lines = ["  a: 20 mm", "  b: a / 3", "  c: a + b", "  d: c * b / a"]
    found, _ = resolved("sizes:\n" + "\n".join(lines[at] for at in order))
    straight, _ = resolved("sizes:\n" + "\n".join(lines))
    assert amounts(found) == amounts(straight)


def test_inch_and_metric_specs_come_to_the_same(resolved: Resolve) -> None:
    axle = "  axle: nearest(0.3 * bar, rod)\n"
    inch, _ = resolved(f"sizes:\n  bar: 3/4 in\n{axle}  jib: picture(412 px) + 1 1/2 in\n{QUAY}")
    metric, _ = resolved(f"sizes:\n  bar: 19.05 mm\n{axle}  jib: picture(412 px) + 38.1 mm\n{QUAY}")
    assert list(inch.sizes) == ["bar", "axle", "jib"]
    for name, size in inch.sizes.items():
        assert metric.sizes[name].quantity == size.quantity


def chain(length: int) -> Document:
    """A document with sizes each of which follows from the next; the last is 1 mm."""
    root, sizes = Table(NOWHERE), Table(NOWHERE)
    for at in range(length):
        text = f"s{at + 1} + 1 mm" if at < length - 1 else "1 mm"
        sizes[f"s{at}"] = Written(text, NOWHERE)
        sizes.key_spans[f"s{at}"] = NOWHERE
    root["sizes"] = sizes
    root.key_spans["sizes"] = NOWHERE
    return Document("chain", root, {}, "")


def test_a_chain_of_thirty_thousand_sizes_is_followed() -> None:
    """With work that grew with the square of it this would take minutes."""
    length = 30_000
    found, findings = resolve(chain(length), {}, {}, ())
    assert findings == ()
    assert found.sizes["s0"].quantity.amount == length
