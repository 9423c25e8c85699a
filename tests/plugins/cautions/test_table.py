"""The caution data: every row says where it comes from, and says no more than it may."""

from __future__ import annotations

import re
from collections import Counter
from datetime import UTC, date, datetime

import pytest

from binder.api import Slot, load_data
from binder.host import Host
from binder_plugins.cautions.facts import caution_table
from binder_plugins.cautions.matching import ANSWERED
from binder_plugins.cautions.signs import SignKind
from binder_plugins.cautions.table import FROM_MEMORY, NO_SOURCE, Caution
from binder_plugins.cautions.words import LONGEST_PHRASE, phrases

ROWS = caution_table().cautions
MOST_WORDS = 60
MOST_IN_LINE = 16
# What is about the shop as a whole, and read before any work: on the page of cautions alone.
ON_THE_PAGE = {"manual", "alone", "cutting-fluid"}
# A source that was looked up longer ago than this is looked up again before a release.
MOST_YEARS = 5
DAY = re.compile(r"20[0-9]{2}-[0-9]{2}-[0-9]{2}")
WORDED = (SignKind.FINISH, SignKind.WORDS, SignKind.DRIVEN_BY, SignKind.TOOL)

each_row = pytest.mark.parametrize("row", ROWS, ids=[row.id for row in ROWS])

# Which publications were read is known from the project's notes on trust, section 3: only these
# are marked there as read in a public copy.
READ = {
    "29 CFR 1910.219",
    "HSE EIS2 and UK MCA Safety Bulletin 21",
    "HSE EIS31",
    "HSE GS4",
    "HSE RR79",
    "HSE SIM 03/2012/01",
    "HSE web pages on asthma and lung disease in engineering",
    "OSHA STD 01-12-008 on 29 CFR 1910.215(a)(4)",
    "US T.O. 1-1A-9 and DGUV 209-090",
}


def _today() -> date:
    return datetime.now(tz=UTC).date()


@each_row
def test_a_row_is_whole_and_short(row: Caution) -> None:
    texts = (row.id, row.title, row.text, row.short, row.source, row.edition, row.verified)
    assert all(text.strip() for text in texts)
    assert len(row.text.split()) <= MOST_WORDS
    assert len(row.short.split()) <= MOST_IN_LINE
    assert not row.short.endswith(".")
    assert row.hazard in caution_table().hazards
    assert row.is_general or row.triggers
    assert not row.defers_to.endswith(".")


@each_row
def test_a_row_says_how_far_its_source_was_looked_up(row: Caution) -> None:
    if row.verified == NO_SOURCE:
        assert (row.source, row.edition) == (NO_SOURCE, "none")
    elif row.verified == FROM_MEMORY:
        assert row.source != NO_SOURCE
        assert row.edition != "none"
    else:
        assert DAY.fullmatch(row.verified)
        assert row.source in READ
        assert date.fromisoformat(row.verified) <= _today()


@each_row
def test_what_was_not_read_is_printed_as_such(row: Caution) -> None:
    if row.verified in (FROM_MEMORY, NO_SOURCE):
        assert NO_SOURCE in row.printed_source
        assert "read in a public copy" not in row.printed_source
    else:
        assert row.printed_source.endswith(f"read in a public copy {row.verified}")
    assert (FROM_MEMORY in row.printed_source) is (row.verified == FROM_MEMORY)


@each_row
def test_no_source_is_too_old(row: Caution) -> None:
    if DAY.fullmatch(row.verified):
        age = _today() - date.fromisoformat(row.verified)
        assert age.days <= MOST_YEARS * 366, "open the source again and renew `verified`"


@each_row
def test_figures_stand_only_where_the_source_was_read(row: Caution) -> None:
    if not DAY.fullmatch(row.verified):
        assert not re.search(r"[0-9]", row.title + row.text + row.short)


@each_row
def test_no_row_promises(row: Caution) -> None:
    promised = {"safe", "complies", "comply", "compliant", "certified safe"}
    assert not phrases(f"{row.title} {row.printed_text} {row.short}") & promised


@each_row
def test_words_are_written_as_they_are_searched(row: Caution) -> None:
    for kind in WORDED:
        for word in row.triggers.get(kind, ()):
            assert word in phrases(word.removeprefix("=")), word
            assert len(word.split()) <= LONGEST_PHRASE


def test_every_row_is_printed_where_its_work_is_done() -> None:
    """Not only on the page of cautions: an act, a joint, a finish or the first run carries it."""
    assert {row.id for row in ROWS if not row.at} == ON_THE_PAGE


@each_row
def test_where_a_row_is_printed_is_a_word_of_the_work(row: Caution) -> None:
    acts = set(load_data("binder_making.precedence", "words.yaml")["acts"])
    acts |= set(load_data("binder_plugins.operations", "acts.yaml")["acts"])
    joints = {
        kind.key
        for plugin in Host.load().plugins
        for kind in plugin.kinds
        if kind.slot in {Slot.JOINT, Slot.DRIVE}
    }
    places = {f"at the {one}" for one in ("lathe", "mill", "drill", "saw", "bench")}
    # How a fabrication is joined, where that is no joint of its own.
    joints |= {"brazed", "welded"}
    known = (
        acts | joints | places | {"drill at the mill", "in a chuck", "out of the bar", "first run"}
    )
    assert row.at - known <= row.triggers.get(SignKind.FINISH, frozenset())


def test_ids_are_unique_and_every_hazard_is_used() -> None:
    assert not [name for name, count in Counter(row.id for row in ROWS).items() if count > 1]
    assert {row.hazard for row in ROWS} | {"unknown"} == set(caution_table().hazards)


def test_none_has_a_reason_and_contradicts_no_row() -> None:
    table = caution_table()
    for kind, words in table.none.items():
        assert kind in ANSWERED
        assert all(reason.strip() for reason in words.values())
        rows = (row.triggers.get(kind, frozenset()) for row in ROWS)
        assert not frozenset(words) & frozenset().union(*rows)


def test_what_must_be_left_to_others_is() -> None:
    """Pressure, gas, mains, lifting, isocyanates, beryllium, asbestos: each names who is asked."""
    by_id = {row.id: row for row in ROWS}
    for name in (
        "pressure",
        "pressure-test",
        "gas-appliance",
        "mains",
        "not-lifting-gear",
        "carries-people",
        "guns",
        "isocyanates",
        "beryllium",
        "asbestos",
    ):
        row = by_id[name]
        assert row.defers_to
        assert row.printed_text.endswith(f"Ask first: {row.defers_to}.")


def test_what_is_not_for_a_home_workshop_says_so() -> None:
    by_id = {row.id: row for row in ROWS}
    for name in (
        "isocyanates",
        "cadmium-filler",
        "beryllium",
        "asbestos",
        "solvents",
        "magnesium-fire",
    ):
        assert re.search(r"\b[Nn]ot (in|for) a home workshop", by_id[name].text), name
