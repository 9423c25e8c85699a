from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.units.designations import Misread, read_thread
from binder_trade.threads import Thread, from_name


def _named(text: str) -> Thread:
    name = read_thread(text)
    if isinstance(name, Misread):
        raise TypeError(f"{text} is misread: {name.reason}")
    return from_name(name)


@pytest.fixture(scope="session")
def named() -> Callable[[str], Thread]:
    """The thread of a designation, read by the product's own grammar."""
    return _named
