"""Parts told by their likeness: what is taken over, changed, left out and mirrored."""

from __future__ import annotations

import pytest

from binder.source import Node, Table, read_text

CHEEK = """
parts:
  cheek:
    title: winch cheek
    material: brass
    quantity: 2
    plate: {length: 68 mm, width: 30 mm}
    features:
      lower: {reamed: 4 mm, at: 10 mm from right, note: left as it is}
      upper: {bored: 7 mm, at: "18 mm left of the lower one, 4 mm from back"}
"""
PIN = """
parts:
  pin: {turned: [{name: head, diameter: 6 mm, length: 2 mm}, {diameter: 4 mm, length: rest}]}
"""


def part(text: str, name: str) -> Table:
    document, findings = read_text(text)
    assert document is not None, findings
    found = document.node(("parts", name))
    assert isinstance(found, Table)
    return found


def plain(node: Node) -> object:
    """The tree without its places."""
    if isinstance(node, Table):
        return {key: plain(value) for key, value in node.items()}
    return [plain(one) for one in node] if isinstance(node, list) else node


def found_in(text: str) -> list[tuple[str, int, int]]:
    document, findings = read_text(text)
    assert document is None
    return [(one.code.name, one.span.line, one.span.column) for one in findings]


def test_a_part_takes_over_what_it_does_not_change() -> None:
    long = plain(part(CHEEK + "  long: {like: cheek, plate: {length: 90 mm}}", "long"))
    cheek = plain(part(CHEEK, "cheek"))
    assert isinstance(long, dict)
    assert isinstance(cheek, dict)
    assert long["plate"] == {"length": "90 mm", "width": "30 mm"}
    assert long["features"] == cheek["features"]
    assert long["material"] == "brass"
    # How it is called and how many there are is each part's own.
    assert not {"title", "quantity"} & set(long)


def test_a_feature_is_changed_or_left_out() -> None:
    text = CHEEK + "  bare: {like: cheek, features: {upper: left out, lower: {reamed: 5 mm}}}"
    bare = plain(part(text, "bare"))
    assert isinstance(bare, dict)
    kept = {"reamed": "5 mm", "at": "10 mm from right", "note": "left as it is"}
    assert bare["features"] == {"lower": kept}


def test_the_opposite_hand_has_left_and_right_exchanged_and_keeps_its_notes() -> None:
    other = plain(part(CHEEK + "  other: {like: cheek, mirrored: true}", "other"))
    assert isinstance(other, dict)
    assert other["features"] == {
        "lower": {"reamed": "4 mm", "at": "10 mm from left", "note": "left as it is"},
        "upper": {"bored": "7 mm", "at": "18 mm right of the lower one, 4 mm from back"},
    }


def test_the_opposite_hand_of_the_opposite_hand_is_the_first_again() -> None:
    text = CHEEK + (
        "  other: {like: cheek, mirrored: true}\n  third: {like: other, mirrored: true}\n"
    )
    third, first = plain(part(text, "third")), plain(part(text, "cheek"))
    assert isinstance(third, dict)
    assert isinstance(first, dict)
    assert third["features"] == first["features"]


def test_a_step_is_changed_by_its_name() -> None:
    thin = plain(part(PIN + "  thin: {like: pin, turned: {head: {diameter: 5 mm}}}", "thin"))
    assert isinstance(thin, dict)
    assert thin["turned"] == [
        {"name": "head", "diameter": "5 mm", "length": "2 mm"},
        {"diameter": "4 mm", "length": "rest"},
    ]


def test_what_is_taken_over_keeps_the_place_where_it_was_written() -> None:
    document, _ = read_text(CHEEK + "  long: {like: cheek}")
    assert document is not None
    assert document.span(("parts", "long", "features", "upper"), of_key=True).line == 10


@pytest.mark.parametrize(
    ("code", "more", "column"),
    [
        ("like-unknown", "  long: {like: cheak}", 16),
        ("like-ring", "  long: {like: long}", 16),
        ("like-nothing-there", "  long: {like: cheek, features: {oil: left out}}", 34),
        ("mirrored-alone", "  long: {material: brass, mirrored: true}", 27),
    ],
)
def test_what_cannot_be_taken_over_is_found_at_its_place(code: str, more: str, column: int) -> None:
    assert found_in(CHEEK + more) == [(code, 11, column)]


def test_a_step_that_is_not_there_is_found() -> None:
    text = PIN + "  thin: {like: pin, turned: {haed: {diameter: 5 mm}}}"
    assert found_in(text) == [("like-nothing-there", 4, 30)]


def test_a_ring_is_found_once_for_each_way_into_it() -> None:
    text = "parts:\n  one: {like: two}\n  two: {like: one}\n"
    assert {name for name, _, _ in found_in(text)} == {"like-ring"}


def test_a_long_chain_is_refused_and_does_not_exhaust_the_stack() -> None:
    lines = [f"  p{n}: {{like: p{n + 1}}}" for n in range(2000)]
    text = "\n".join(("parts:", *lines, "  p2000: {material: brass}"))
    assert {name for name, _, _ in found_in(text)} == {"like-ring"}
