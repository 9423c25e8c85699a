"""Every rule fires on the pair that it was written for, gives its reason, and on no other."""

from __future__ import annotations

import pytest

from binder_making.operation import Operation
from binder_making.order import Order, in_order
from binder_making.precedence import SCOPES, Edge, Rule, edges, rules, words
from binder_trade.explained import NotDefined
from tests.making.precedence.fires import FIRES
from tests.making.precedence.pairs import apart, pair

IDS = [rule.id for rule in rules()]
PLACES = [(rule, scope) for rule in rules() for scope in rule.scopes]


def test_at_least_as_many_rules_as_the_trade_names() -> None:
    assert len(rules()) >= 69
    assert len(set(IDS)) == len(IDS)
    assert set(IDS) == set(FIRES)


def test_rules_use_known_words_and_scopes_and_have_a_reason() -> None:
    known = set(words().acts) | set(words().groups) | set(words().tags)
    for rule in rules():
        assert set(rule.before.words) | set(rule.after.words) <= known, rule.id
        assert set(rule.scopes) <= set(SCOPES), rule.id
        assert len(rule.reason.split()) >= 4, rule.id


def test_rules_of_mates_and_neighbours_have_one_scope() -> None:
    for rule in rules():
        if {"mate", "neighbour"} & set(rule.scopes):
            assert len(rule.scopes) == 1, rule.id


def test_every_scope_and_tag_is_used() -> None:
    assert {scope for rule in rules() for scope in rule.scopes} == set(SCOPES)
    asked = {word for rule in rules() for word in (*rule.before.words, *rule.after.words)}
    assert set(words().tags) <= asked


def test_groups_hold_acts() -> None:
    for acts in words().groups.values():
        assert set(acts) <= set(words().acts)
    assert not set(words().acts) & (set(words().groups) | set(words().tags))


@pytest.mark.parametrize(("rule", "scope"), PLACES, ids=lambda one: getattr(one, "id", one))
def test_fires_on_its_pair(rule: Rule, scope: str) -> None:
    operations = pair(*FIRES[rule.id], scope)
    for given in (operations, operations[::-1]):
        found = [edge for edge in edges(given) if edge.rule == rule.id]
        assert found == [Edge("first", "second", rule.reason, rule.is_must, rule.priority, rule.id)]


@pytest.mark.parametrize("rule", rules(), ids=IDS)
def test_is_silent_of_what_shares_nothing(rule: Rule) -> None:
    assert edges(apart(*FIRES[rule.id])) == ()


@pytest.mark.parametrize(("rule", "scope"), PLACES, ids=lambda one: getattr(one, "id", one))
def test_decides_the_order_and_is_missed_when_gone(rule: Rule, scope: str) -> None:
    """The later one stands first in the list, so that only this rule turns them round."""
    first, second = pair(*FIRES[rule.id], scope)
    only = edges((second, first), [rule])
    assert _sequence((second, first), only) == ("first", "second")
    assert _sequence((second, first), ()) == ("second", "first")


def _sequence(operations: tuple[Operation, ...], given: tuple[Edge, ...]) -> tuple[str, ...]:
    order = in_order(operations, given)
    assert isinstance(order, Order)
    return order.sequence


def test_a_mate_is_of_another_part() -> None:
    one = Operation(id="a", act="measure", part="bush", tags=frozenset({"master"}), joints=("j",))
    own = Operation(
        id="b", act="turn", part="bush", tags=frozenset({"finish", "fit"}), joints=("j",)
    )
    mate = Operation(
        id="c", act="turn", part="pin", tags=frozenset({"finish", "fit"}), joints=("j",)
    )
    assert [(e.before, e.after) for e in edges((one, own, mate))] == [("a", "c")]


def test_a_part_with_too_many_features() -> None:
    cuts = [Operation(id=f"{n}", act="turn", part="comb") for n in range(1100)]
    holes = [
        Operation(id=f"-{n}", act="drill", part="comb", tags=frozenset({"cross"}))
        for n in range(1100)
    ]
    with pytest.raises(NotDefined, match="too many"):
        edges([*cuts, *holes])


def test_a_bored_and_reamed_hole_in_full() -> None:
    """One hole from the end inwards, told in the wrong order (common practice, no source)."""
    acts = ("ream", "bore", "drill", "drill pilot", "centre", "face")
    hole = [
        Operation(
            id=words_,
            act=words_.split()[0],
            part="bush",
            feature="bore",
            end="left",
            tags=frozenset(words_.split()[1:]),
        )
        for words_ in acts
    ]
    order = in_order(hole, edges(hole))
    assert isinstance(order, Order)
    assert order.sequence == ("face", "centre", "drill pilot", "drill", "bore", "ream")
