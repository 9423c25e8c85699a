"""The build order keeps every reason, is the same on every run, and names its rings."""

from __future__ import annotations

import random
from collections.abc import Callable

from hypothesis import given, settings
from hypothesis import strategies as st

from binder.api import Before, BuildSequence
from binder.compiler import Outcome
from binder_plugins.buildorder.columns import arranged
from binder_plugins.buildorder.picture import needed_edges
from binder_plugins.buildorder.ranking import find_ring, layered, ordered
from binder_plugins.buildorder.sequence import with_wishes

TASKS = [f"t{n}" for n in range(12)]
PAIRS = st.lists(
    st.tuples(st.integers(0, 11), st.integers(0, 11)).filter(lambda pair: pair[0] < pair[1]),
    max_size=40,
)


def _befores(pairs: list[tuple[int, int]]) -> list[Before]:
    return [Before(TASKS[a], TASKS[b], "a reason") for a, b in pairs]


@settings(max_examples=200, deadline=None)
@given(PAIRS, st.integers(0, 1000))
def test_every_reason_is_kept_and_the_order_is_stable(
    pairs: list[tuple[int, int]], seed: int
) -> None:
    order = ordered(TASKS, _befores(pairs))
    assert sorted(order) == sorted(TASKS)
    assert all(order.index(TASKS[a]) < order.index(TASKS[b]) for a, b in pairs)
    shuffled = list(pairs)
    random.Random(seed).shuffle(shuffled)
    assert ordered(TASKS, _befores(shuffled)) == order
    layers = layered(order, _befores(pairs))
    assert all(layers[TASKS[a]] < layers[TASKS[b]] for a, b in pairs)


@settings(max_examples=100, deadline=None)
@given(PAIRS)
def test_the_picture_shows_every_wait_by_some_path(pairs: list[tuple[int, int]]) -> None:
    befores = _befores(pairs)
    edges = needed_edges([(one.earlier, one.later) for one in befores])
    columns = arranged(layered(ordered(TASKS, befores), befores), edges)
    assert all(len(path) >= 2 for path in columns.paths)
    for earlier, later in edges:
        assert columns.places[earlier][0] < columns.places[later][0]
    assert len(set(columns.places.values())) == len(columns.places)
    assert _reach(edges) == _reach([(one.earlier, one.later) for one in befores])


def _reach(edges: list[tuple[str, str]]) -> set[tuple[str, str]]:
    found = set(edges)
    while True:
        more = {(a, d) for a, b in found for c, d in found if b == c} - found
        if not more:
            return found
        found |= more


def test_a_ring_is_named_and_only_the_ring() -> None:
    befores = [
        *_befores([(0, 1), (1, 2)]),
        Before("t2", "t0", "back"),
        Before("t2", "t3", "on"),
    ]
    order = ordered(TASKS, befores)
    ring = find_ring(set(TASKS) - set(order), befores)
    assert {one.earlier for one in ring} == {"t0", "t1", "t2"}


def test_a_preference_gives_way_where_it_would_close_a_ring() -> None:
    musts = _befores([(0, 1), (1, 2)])
    wishes = [Before("t2", "t0", "a wish", is_must=False), Before("t3", "t0", "", is_must=False)]
    assert with_wishes(TASKS, [*wishes, *musts]) == [*musts, wishes[1]]


def test_the_master_is_made_first_and_scrap_is_measured_first(
    compile_text: Callable[..., Outcome],
) -> None:
    outcome = compile_text(
        "format: 1\nmodel: {title: Order, issue: A, units: mm}\nparts:\n"
        "  axle: {material: mild steel, stock: 6 mm drawn rod, cut: 40 mm}\n"
        "  arm: {material: brass, stock: 10 mm x 6 mm flat bar, cut: 40 mm,"
        " features: {bore: {reamed: 6 mm}}}\n"
        "scrap_box:\n  gear: {what: a clock wheel, measure_first: [bore]}\n"
        "joints:\n  axle in arm: {runs_in: [axle, arm.bore], master: arm.bore}\n"
        "  gear on axle: {retained: [gear, axle], master: gear}\n"
        "assemblies:\n  all: {of: [axle, arm, gear], test: it spins}\n"
    )
    assert not outcome.findings
    assert outcome.design is not None
    sequence = outcome.design.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("make arm") < order.index("make axle")
    assert order.index("measure gear") < order.index("make axle")
    assert order[-2:] == ["assemble all", "test all"]
    reasons = {reason for step in sequence.steps for _, reason in step.after}
    assert "axle in arm: bore first; the rod as bought is polished to it" in reasons
