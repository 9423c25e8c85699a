"""What the tests of threading share: a thread by its name."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.units import ThreadName
from binder.units.designations import read_thread
from binder_trade.threads import Thread, from_name

Named = Callable[[str], Thread]


@pytest.fixture(scope="session")
def named() -> Named:
    """A thread by its designation."""

    def read(text: str) -> Thread:
        name = read_thread(text)
        assert isinstance(name, ThreadName), text
        return from_name(name)

    return read
