"""Every fault of an expression: its code, and exactly the characters that are meant."""

from __future__ import annotations

import pytest

from binder.parameters import Environment, ExpressionFault, parse

# What is between the marks is what the finding points at.
FAULTS = [
    ("expression-empty", "\u27ea\u27eb"),
    ("expression-empty", "\u27ea   \u27eb"),
    ("expression-too-long", "\u27ea" + "1 + " * 75 + "1\u27eb"),
    ("expression-too-long", "1+" * 30 + "\u27ea1\u27eb"),
    ("brackets-too-deep", "(" * 20 + "\u27ea(\u27eb1" + ")" * 21),
    ("bracket-unmatched", "2 * \u27ea(\u27ebbar + 3 mm"),
    ("bracket-unmatched", "bar\u27ea)\u27eb"),
    ("bracket-unmatched", "nearest(bar, [6 mm\u27ea)\u27eb"),
    ("expression-garbled", "bar * \u27ea/\u27eb 2"),
    ("expression-garbled", "\u27ea[\u27eb3 mm]"),
    ("expression-garbled", "bar\u27ea,\u27eb 3 mm"),
    ("expression-garbled", "nearest(bar, [6 mm,\u27ea]\u27eb)"),
    ("expression-garbled", "nearest(bar, [\u27ea]\u27eb)"),
    ("expression-garbled", "nearest(bar, [6 mm, \u27ea[\u27eb7 mm]])"),
    ("expression-garbled", "(\u27ea)\u27eb"),
    ("sign-unknown", "80 \u27ea%\u27eb"),
    ("sign-unknown", "\u27ea\u0663\u27eb mm"),
    ("sign-unknown", "bar \u27ea\u2013\u27eb 3 mm"),
    ("sign-unknown", "\u27ea#\u27eb34"),
    ("sign-unknown", "bar\u27ea;\u27eb"),
    ("sign-unknown", "bar\u27ea.\u27ebx"),
    ("sign-unknown", "\u27ea_\u27ebbar"),
    ("sign-unknown", "1 mm\u27ea\n\u27eb2 mm"),
    ("no-powers", "bar \u27ea**\u27eb 2"),
    ("no-powers", "bar\u27ea^\u27eb2"),
    ("sign-missing", "bar \u27ea20 mm\u27eb"),
    ("sign-missing", "2\u27ea(\u27ebbar)"),
    ("sign-missing", "(bar) \u27eabar\u27eb"),
    ("sign-missing", "1 \u27ea000 mm\u27eb"),
    ("sign-missing", "6.5 ft \u27ea3 in\u27eb"),
    ("sign-missing", "6 ft \u27ea13 in\u27eb"),
    ("number-malformed", "\u27ea1.2.3\u27eb mm"),
    ("number-malformed", "bar + \u27ea5.\u27eb mm"),
    ("number-malformed", "\u27ea1_000\u27eb mm"),
    ("number-malformed", "\u27ea7 5/4\u27eb in"),
    ("number-too-large", "\u27ea1e100\u27eb mm"),
    ("number-too-large", "\u27ea1e1000000000\u27eb"),
    ("number-too-large", "\u27ea" + "9" * 200 + "\u27eb"),
    ("number-too-large", "bar + \u27ea1e-100\u27eb mm"),
    ("number-too-large", "1e99 * \u27ea1e99\u27eb"),
    ("decimal-comma", "\u27ea1,5\u27eb mm"),
    ("decimal-comma", "bar + \u27ea1,000\u27eb mm"),
    ("decimal-comma", "2 * (\u27ea1,5\u27eb mm)"),
    ("dashed-fraction", "\u27ea7-1/2 in\u27eb"),
    ("dashed-fraction", '2 * (\u27ea7-1/2"\u27eb)'),
    ("spaced-fraction", "\u27ea1 / 4 in\u27eb"),
    ("spaced-fraction", "bar + \u27ea1 /4 in\u27eb"),
    ("unit-unknown", "20 \u27eamilimetres\u27eb"),
    ("unit-unknown", "2 \u27eabar\u27eb"),
    ("unit-unknown", "6 \u27eaMM\u27eb"),
    ("unit-unknown", "34 \u27eadrill\u27eb"),
    ("unit-unknown", "112 \u27easwg\u27eb"),
    ("name-unknown", "0.8 * \u27eabra\u27eb"),
    ("name-unknown", "\u27eamm\u27eb"),
    ("name-unknown", "2 * \u27earod\u27eb"),
    ("function-unknown", "\u27easqrt\u27eb(bar)"),
    ("function-unknown", "\u27eabar\u27eb(2)"),
    ("function-misused", "nearest(bar\u27ea)\u27eb"),
    ("function-misused", "nearest(bar, \u27ea3 mm\u27eb)"),
    ("function-misused", "nearest(bar, rod\u27ea,\u27eb rod)"),
    ("function-misused", "min(bar\u27ea)\u27eb"),
    ("function-misused", "round(bar, 1 mm, 2 mm\u27ea)\u27eb"),
    ("function-misused", "picture(\u27ea412\u27eb)"),
    ("function-misused", "picture(\u27ea0 px\u27eb)"),
    ("sign-missing", "nearest(bar, rod \u27ea3 mm\u27eb)"),
    ("function-misused", "picture(4 px\u27ea,\u27eb 5 px)"),
    ("function-misused", "2 * \u27eamin\u27eb"),
    ("series-unknown", "nearest(bar, \u27earods\u27eb)"),
    ("series-unknown", "nearest(bar, \u27eabar\u27eb)"),
    ("outside-series", "next_up(\u27ea13 mm\u27eb, rod)"),
    ("outside-series", "next_down(\u27ea5 mm\u27eb, rod)"),
    ("outside-series", "nearest(\u27ea2.9 mm\u27eb, rod)"),
    ("outside-series", "nearest(\u27ea25.5 mm\u27eb, rod)"),
    ("outside-series", "next_up(\u27eabar\u27eb, [6 mm, 8 mm])"),
    ("gauge-unknown", "\u27ea13 swg\u27eb"),
    ("gauge-unknown", "2 * \u27eano. 99 drill\u27eb"),
    ("gauge-unknown", "\u27ea20 awg\u27eb"),
    ("kinds-clash", "3 mm + \u27ea2\u27eb"),
    ("kinds-clash", "bar - \u27earake\u27eb"),
    ("kinds-clash", "bar + \u27ea(bar * bar)\u27eb"),
    ("kinds-clash", "min(bar, \u27ea3\u27eb)"),
    ("kinds-clash", "nearest(3, \u27earod\u27eb)"),
    ("kinds-clash", "nearest(3 mm, \u27ea[3 mm, 4]\u27eb)"),
    ("kind-too-high", "bar * bar * bar * \u27eabar\u27eb"),
    ("kind-too-high", "1 / bar / bar / bar / \u27eabar\u27eb"),
    ("divided-by-zero", "bar / \u27ea(20 mm - bar)\u27eb"),
    ("divided-by-zero", "bar/\u27ea0\u27eb"),
    ("divided-by-zero", "\u27ea1/0\u27eb in"),
    ("divided-by-zero", "\u27ea7 1/0\u27eb in"),
    ("divided-by-zero", "round(bar, \u27ea0 mm\u27eb)"),
    ("pixels-misplaced", "\u27ea412 px\u27eb"),
    ("pixels-misplaced", "bar + \u27ea3px\u27eb"),
    ("size-at-fault", "2 * \u27easpoilt\u27eb"),
]


@pytest.mark.parametrize(("code", "marked"), FAULTS)
def test_the_fault_points_at_the_mark(code: str, marked: str, bench: Environment) -> None:
    start, end = marked.index("\u27ea"), marked.index("\u27eb") - 1
    text = marked.replace("\u27ea", "").replace("\u27eb", "")
    with pytest.raises(ExpressionFault) as caught:
        parse(text).evaluate(bench)
    fault = caught.value
    assert (fault.code.name, fault.start, fault.length) == (code, start, end - start)
    assert fault.message


def test_what_is_missing_at_the_end_is_said_behind_it(bench: Environment) -> None:
    with pytest.raises(ExpressionFault) as caught:
        parse("bar +").evaluate(bench)
    fault = caught.value
    assert (fault.code.name, fault.start, fault.length) == ("expression-garbled", 5, 1)


def test_no_picture(bench: Environment) -> None:
    with pytest.raises(ExpressionFault) as caught:
        parse("2 * picture(412 px)").evaluate(Environment(bench.values))
    fault = caught.value
    assert (fault.code.name, fault.start, fault.length) == ("picture-missing", 4, 15)


def test_a_picture_at_fault(bench: Environment) -> None:
    with pytest.raises(ExpressionFault) as caught:
        parse("picture(412 px)").evaluate(Environment(faulty=frozenset({"picture"})))
    assert caught.value.code.name == "size-at-fault"


def test_what_is_asked_and_what_there_is_are_named(bench: Environment) -> None:
    with pytest.raises(ExpressionFault, match=r"from 6 mm to 1/2 in"):
        parse("next_up(13 mm, rod)").evaluate(bench)
    with pytest.raises(ExpressionFault, match="a plain number and a length"):
        parse("nearest(3, rod)").evaluate(bench)


HELP = {
    "1,5 mm": "write 1.5 mm",
    "1,000 mm": "write 1.000 mm, or 1000 mm for thousands",
    "7-1/2 in": "write 7 1/2 in",
    "2 bar": "write 2 * bar",
    "6 MM": "did you mean 'mm'?",
    "6 inchs": "did you mean 'inches'?",
    "0.8 * bra": "did you mean 'bar'?",
    "nearst(bar, rod)": "did you mean 'nearest'?",
    "nearest(bar, rods)": "did you mean 'rod'?",
    "picture(412)": "picture(412 px)",
    "412 px": "picture(412 px)",
    "1 / 4 in": "write 1/4 in, or 1 / (4 in)",
    "80 %": "0.8 * bar",
    "34 drill": "no. 34 drill",
    "mm": "1 mm",
    "1,00 mm": "write 1.00 mm",
    "1,5 kg * bar": "write 1.5 kg",
    "1,5": "write 1.5",
    "rod": "nearest(20 mm, rod)",
}


@pytest.mark.parametrize("text", HELP)
def test_the_help_says_what_to_write(text: str, bench: Environment) -> None:
    with pytest.raises(ExpressionFault) as caught:
        parse(text).evaluate(bench)
    assert HELP[text] in caught.value.help
