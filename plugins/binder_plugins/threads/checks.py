"""All checks of threads, one family after the other."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain

from binder.api import Design, Diagnostic
from binder_plugins.threads import codes
from binder_plugins.threads.check_crossing import check_crossing
from binder_plugins.threads.check_holes import check_holes
from binder_plugins.threads.check_joints import check_joints
from binder_plugins.threads.check_mouths import check_mouths
from binder_plugins.threads.check_outsides import check_outsides
from binder_plugins.threads.check_shaken import check_shaken
from binder_plugins.threads.check_tools import check_tools
from binder_plugins.threads.found import (
    has_threads,
    named_in,
    thread_of,
    threaded,
    threads_of,
    written_at,
)
from binder_plugins.threads.shop import shop_of
from binder_trade.threads import NotMade


def check_threads(design: Design) -> Iterator[Diagnostic]:
    """Every finding about threads."""
    if not has_threads(design):
        return iter(())
    found = threads_of(design)
    shop = shop_of(design.workshop)
    return chain(
        _not_made(design),
        _to_suit_nothing(design),
        check_tools(found, shop, design),
        check_holes(found, shop, design),
        check_crossing(found, design),
        check_mouths(found, design),
        check_outsides(found, design),
        check_joints(found, design),
        check_shaken(design),
    )


def _not_made(design: Design) -> Iterator[Diagnostic]:
    for feature in threaded(design):
        name = named_in(feature)
        refused = thread_of(name) if name is not None else None
        if isinstance(refused, NotMade):
            yield codes.THREAD_NOT_MADE.at(
                written_at(feature, design), refused.reason, help=refused.way_out
            )


def _to_suit_nothing(design: Design) -> Iterator[Diagnostic]:
    """A thread that is left to suit, and no joint names it."""
    named = {str(end) for joint in design.joints.values() for end in joint.ends}
    for feature in threaded(design):
        subject = f"{feature.owner}.{feature.name}"
        if named_in(feature) is None and subject not in named:
            yield codes.THREAD_NOT_SAID.at(
                written_at(feature, design),
                f"'{subject}' is to suit, and no joint says what screws into it",
                help="name the thread, as M4, or name the hole in a `threaded` joint",
            )
