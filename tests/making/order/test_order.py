"""The order keeps every rule, is the same on every run, and a missing edge is seen."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from binder_making.operation import Operation
from binder_making.order import Loop, Order, Prices, graph, in_order, spent
from binder_making.precedence import Edge, Priority, edges
from tests.making.order.exact import cheapest
from tests.making.order.judge import broken, is_missed
from tests.making.order.many_parts import many_parts
from tests.making.order.random_work import operations

SLOW = settings(suppress_health_check=list(HealthCheck), deadline=None)


def prefer(before: str, after: str, priority: Priority) -> Edge:
    return Edge(before, after, "as it is wished", is_must=False, priority=priority)


def must(before: str, after: str) -> Edge:
    return Edge(before, after, "as it has to be")


def bench(*names: str) -> list[Operation]:
    return [Operation(id=name, act="file") for name in names]


@SLOW
@given(operations())
def test_keeps_every_rule_or_shows_a_ring(work: list[Operation]) -> None:
    found = edges(work)
    order = in_order(work, found)
    if isinstance(order, Loop):
        assert all(edge.is_must for edge in order.edges)
        assert all(edge in found for edge in order.edges)
        ring = [*order.edges, order.edges[0]]
        assert all(one.after == other.before for one, other in pairwise(ring))
        return
    assert sorted(order.sequence) == sorted(one.id for one in work)
    assert not [edge for edge in broken(order.sequence, found) if edge.is_must]
    assert set(broken(order.sequence, found)) <= set(order.gave_way)


@SLOW
@given(operations())
def test_is_the_same_on_every_run(work: list[Operation]) -> None:
    again = [
        Operation(**{name: getattr(one, name) for name in Operation.__slots__}) for one in work
    ]
    assert in_order(work, edges(work)) == in_order(again, edges(again))


@SLOW
@given(operations(), st.data())
def test_a_missing_edge_is_seen(work: list[Operation], data: st.DataObject) -> None:
    """Without an edge that no other implies, an order is allowed that the judge refuses."""
    musts = [edge for edge in edges(work) if edge.is_must]
    assume(musts and isinstance(in_order(work, musts), Order))
    gone = data.draw(st.sampled_from(musts))
    assert is_missed(work, musts, gone)


@SLOW
@given(operations(most=7))
def test_lies_between_the_bound_and_what_trying_all_finds(work: list[Operation]) -> None:
    order = in_order(work, edges(work))
    assume(isinstance(order, Order))
    assert isinstance(order, Order)
    kept = [edge for edge in edges(work) if edge not in order.gave_way]
    web = graph(work, kept)
    assert not isinstance(web, Loop)
    best = cheapest(web, Prices())
    assert order.bound.minutes <= best + 1e-9
    assert best <= order.spent.minutes + 1e-9
    assert order.spent.minutes <= 1.25 * best + 1e-9


@SLOW
@given(operations(), st.randoms(use_true_random=False))
def test_no_order_is_below_the_bound(work: list[Operation], chance: object) -> None:
    """Any other order of the same graph, of the same operations told in another turn."""
    order = in_order(work, edges(work))
    assume(isinstance(order, Order))
    assert isinstance(order, Order)
    kept = [edge for edge in edges(work) if edge not in order.gave_way]
    shuffled = list(work)
    chance.shuffle(shuffled)  # type: ignore[attr-defined]
    other = in_order(shuffled, [Edge(e.before, e.after, e.reason) for e in kept])
    assert isinstance(other, Order)
    by_id = {one.id: one for one in work}
    assert spent((by_id[name] for name in other.sequence), Prices()) == other.spent
    for reached in (order.spent, other.spent):
        assert reached.minutes >= order.bound.minutes - 1e-9
        assert reached.setups >= order.bound.setups
        assert reached.holdings >= order.bound.holdings
        assert reached.tools >= order.bound.tools


def test_the_shortest_ring_is_shown_with_each_reason() -> None:
    long = [must("a", "b"), must("b", "c"), must("c", "d"), must("d", "a")]
    short = Edge("c", "b", "the bush is bored to the shaft")
    loop = in_order(bench("a", "b", "c", "d"), [*long, short])
    assert isinstance(loop, Loop)
    assert loop.words == (
        "b before c: as it has to be",
        "c before b: the bush is bored to the shaft",
    )


def test_one_that_waits_for_itself_is_a_ring_too() -> None:
    loop = in_order(bench("a", "b"), [must("b", "b")])
    assert isinstance(loop, Loop)
    assert [edge.after for edge in loop.edges] == ["b"]


def test_of_two_wishes_the_higher_priority_stands() -> None:
    truth, safety = prefer("a", "b", Priority.TRUTH), prefer("b", "a", Priority.SAFETY)
    order = in_order(bench("a", "b"), [truth, safety])
    assert isinstance(order, Order)
    assert order.sequence == ("b", "a")
    assert order.gave_way == (truth,)


def test_a_must_outranks_every_wish() -> None:
    order = in_order(bench("a", "b"), [prefer("b", "a", Priority.SAFETY), must("a", "b")])
    assert isinstance(order, Order)
    assert order.sequence == ("a", "b")


def turned(name: str, setup: str, tool: str = "knife") -> Operation:
    return Operation(id=name, act="turn", machine="lathe", holding="chuck", setup=setup, tool=tool)


def test_a_set_up_is_finished_before_the_next() -> None:
    work = [turned("a1", "a"), turned("b1", "b"), turned("a2", "a"), turned("b2", "b")]
    order = in_order(work, [])
    assert isinstance(order, Order)
    assert order.sequence == ("a1", "a2", "b1", "b2")
    assert (order.spent.setups, order.spent.holdings, order.spent.tools) == (2, 1, 1)
    assert order.is_proved_best


def test_a_set_up_that_must_be_left_is_counted_in_the_bound() -> None:
    work = [turned("a1", "a"), turned("b1", "b"), turned("a2", "a")]
    order = in_order(work, [must("a1", "b1"), must("b1", "a2")])
    assert isinstance(order, Order)
    assert order.spent.setups == 3
    assert order.is_proved_best


def test_the_set_up_stays_while_another_machine_works() -> None:
    drilled = Operation(
        id="d", act="drill", machine="mill", holding="vice", setup="v", tool="drill"
    )
    order = in_order(
        [turned("a1", "a"), drilled, turned("a2", "a")], [must("a1", "d"), must("d", "a2")]
    )
    assert isinstance(order, Order)
    assert order.spent.setups == 2


def test_a_dear_set_up_is_mounted_once() -> None:
    """Either a or b has to be mounted twice; the four-jaw takes longer to true."""
    work = [turned("a1", "a"), turned("b1", "b"), turned("a2", "a"), turned("b2", "b")]
    waits = [must("a1", "b2"), must("b1", "a2")]
    for dear, other in (("a", "b"), ("b", "a")):
        order = in_order(work, waits, Prices(setups={("lathe", dear): 12}))
        assert isinstance(order, Order)
        assert order.spent.setups == 3
        assert order.spent.minutes == 12 + 2 * 4 + 6 + 1
        names = "".join(name[0] for name in order.sequence)
        assert other + dear in names
        assert dear + other in names


def test_a_wish_for_time_gives_way_to_a_set_up() -> None:
    work = [turned("a1", "a"), turned("b1", "b"), turned("a2", "a")]
    wish = prefer("b1", "a2", Priority.TIME)
    order = in_order(work, [wish, must("a1", "b1")])
    assert isinstance(order, Order)
    assert order.sequence == ("a1", "a2", "b1")
    assert order.gave_way == (wish,)


def test_edges_to_others_are_left_out_and_ids_are_one_each() -> None:
    order = in_order(bench("a"), [must("x", "a")])
    assert isinstance(order, Order)
    assert order.sequence == ("a",)


def test_two_hundred_parts_come_near_the_bound() -> None:
    work = many_parts(200)
    found = edges(work)
    order = in_order(work, found)
    assert isinstance(order, Order)
    assert not [edge for edge in broken(order.sequence, found) if edge.is_must]
    assert order.spent.minutes <= 1.05 * order.bound.minutes
