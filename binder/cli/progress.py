"""A sign of life on a terminal for work that takes over a second."""

from __future__ import annotations

import sys
from threading import Timer
from types import TracebackType
from typing import TYPE_CHECKING, Self

if TYPE_CHECKING:
    from rich.status import Status

PATIENCE = 1.0


class Progress:
    """Shows what is being done, after a second and only where someone watches."""

    def __init__(self) -> None:
        self._words = ""
        self._status: Status | None = None
        self._timer = Timer(PATIENCE, self._show)
        self._timer.daemon = True

    def __enter__(self) -> Self:
        if sys.stderr.isatty():
            self._timer.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._timer.cancel()
        if self._timer.is_alive():
            self._timer.join()
        if self._status is not None:
            self._status.stop()

    def says(self, words: str) -> None:
        """What is being done now."""
        self._words = words
        if self._status is not None:
            self._status.update(words)

    def _show(self) -> None:
        from rich.console import Console
        from rich.status import Status

        self._status = Status(self._words, console=Console(stderr=True))
        self._status.start()
