"""What stands in the way of a solid: a form that cannot be made, or no kernel to make it."""

from __future__ import annotations


class Unbuildable(Exception):
    """A form is no body: the reason in a few words, and where in the form it lies."""

    def __init__(self, reason: str, where: str = "") -> None:
        super().__init__(f"{where}: {reason}" if where else reason)
        self.reason = reason
        self.where = where

    def __reduce__(self) -> tuple[type[Unbuildable], tuple[str, str]]:
        """Lets it travel from a process that makes solids to the one that asked."""
        return (Unbuildable, (self.reason, self.where))


class NoKernel(Exception):
    """The extra `solid` is not installed, so nothing can be made into a solid."""
