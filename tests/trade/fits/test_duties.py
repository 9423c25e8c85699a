"""A maker's words for a fit."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.duties import choose, duties
from binder_trade.limits import fit

# Words of a maker, the classes by duty at 16 mm: workshop practice (common practice, no source).
WORDS = [
    ("runs slow and oiled", "H7/g6"),
    ("slow, oiled", "H7/g6"),
    ("oscillates", "H7/g6"),
    ("runs", "H8/f7"),
    ("Running fit", "H8/f7"),
    ("runs easy or dirty", "H8/e8"),
    ("turns fast", "H8/e8"),
    ("turns freely", "H8/e8"),
    ("slides by hand", "H7/g6"),
    ("sliding", "H7/g6"),
    ("sliding, no shake", "H7/h6"),
    ("push", "H7/h6"),
    ("tight push", "H7/k6"),
    ("press", "H7/p6"),
    ("pressed in", "H7/p6"),
    ("drive", "H7/s6"),
    ("shrunk on", "H7/s6"),
    ("force", "H7/u6"),
    ("located, can come apart", "H7/h6"),
    ("loose, easy", "H9/d9"),
    ("loose", "H11/c11"),
    ("dowel", "H7/m6"),
    ("light drive", "H7/n6"),
]
# ANSI B4.2 Table 11: the standard's names of preferred fits.
NAMES = [
    ("loose", "loose running"),
    ("loose, easy", "free running"),
    ("runs", "close running"),
    ("sliding", "sliding"),
    ("push", "locational clearance"),
    ("tight push", "locational transition"),
    ("tap", "locational transition, more accurate"),
    ("press", "locational interference"),
    ("drive", "medium drive"),
    ("force", "force"),
]
# Published clearances, least and most in µm: ISO 286-2 values as in ANSI B4.2 and JIS B 0401.
CLEARANCES = [
    ("sliding", 3, 2, 18),
    ("sliding", 10, 5, 29),
    ("sliding", 18, 6, 35),
    ("sliding", 25, 7, 41),
    ("loose", 6, 70, 220),
    ("loose, easy", 2, 20, 70),
    ("runs", 3, 6, 30),
    ("runs", 12, 16, 61),
    ("runs", 20, 20, 74),
    ("runs easily", 16, 32, 86),
    ("push", 10, 0, 24),
    ("tight push", 10, -10, 14),
    ("tap", 8, -19, 5),
    ("press", 20, -35, -1),
    ("drive", 40, -59, -18),
    ("force", 12, -44, -15),
    ("dowel", 5, -12, 8),
]


@pytest.mark.parametrize(("text", "classes"), WORDS)
def test_words_of_a_maker(text: str, classes: str) -> None:
    choice = choose(text, 16)
    assert f"{choice.hole}/{choice.shaft}" == classes


@pytest.mark.parametrize(("text", "name"), NAMES)
def test_names_of_the_standard(text: str, name: str) -> None:
    assert choose(text, 16).named == name


@pytest.mark.parametrize(("text", "nominal", "least", "most"), CLEARANCES)
def test_clearances_of_the_chosen_fits(
    text: str, nominal: float, least: float, most: float
) -> None:
    choice = choose(text, nominal)
    pair = fit(nominal, choice.hole, choice.shaft)
    assert (pair.clearance_min_um, pair.clearance_max_um) == (least, most)


def test_a_small_press_fit_always_has_nip() -> None:
    # H7/p6 is a transition fit up to 3 mm and touches nothing at 6 (ISO 286-1): hence s6.
    for nominal in (2, 3, 6, 10):
        choice = choose("press", nominal)
        assert choice.shaft == "s6"
        assert fit(nominal, choice.hole, choice.shaft).clearance_max_um < 0
    assert choose("press", 10.01).shaft == "p6"


def test_the_shaft_basis_is_the_counterpart() -> None:
    # ISO 286-2: G7/h6 at 12 mm is 6 to 35 µm, as H7/g6 is.
    choice = choose("sliding", 12, hole_basis=False)
    assert (choice.hole, choice.shaft) == ("G7", "h6")
    pair = fit(12, choice.hole, choice.shaft)
    assert (pair.clearance_min_um, pair.clearance_max_um) == (6, 35)


def test_every_duty_is_understood_by_its_own_name_and_says_why() -> None:
    for duty in duties():
        choice = choose(duty, 16)
        assert choice.duty == duty
        assert 2 <= len(choice.why.split()) <= 10
        assert "common practice" in choice.source


def test_running_duties_get_looser_in_order() -> None:
    order = ["slides closely", "slides", "runs", "runs easily", "loose and easy", "loose"]
    for nominal in (2, 6, 14, 40, 100):
        most = []
        for duty in order:
            choice = choose(duty, nominal)
            most.append(fit(nominal, choice.hole, choice.shaft).clearance_max_um)
        assert most == sorted(most)


def test_mistyped_words_get_a_hint() -> None:
    with pytest.raises(NotDefined, match="oscillates"):
        choose("oscilates", 6)
    with pytest.raises(NotDefined, match="say one of"):
        choose("wobbly", 6)


def test_two_duties_at_once_are_refused() -> None:
    with pytest.raises(NotDefined, match="more than one thing"):
        choose("runs and is pressed", 6)


@pytest.mark.parametrize("text", ["", "   ", "in the", "123", "H7/g6", "ß" * 500])
def test_no_words_are_refused(text: str) -> None:
    with pytest.raises(NotDefined):
        choose(text, 6)
