"""What comes before what: rules as data, the words they are told in, and their edges."""

from binder_making.precedence.matching import Edge, edges
from binder_making.precedence.predicate import BadPredicate, Predicate, predicate
from binder_making.precedence.rules import Priority, Rule, Words, rules, words
from binder_making.precedence.scopes import SCOPES

__all__ = [
    "SCOPES",
    "BadPredicate",
    "Edge",
    "Predicate",
    "Priority",
    "Rule",
    "Words",
    "edges",
    "predicate",
    "rules",
    "words",
]
