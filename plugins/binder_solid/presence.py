"""Whether the kernel of solids is installed, told without loading it."""

from __future__ import annotations

from importlib.util import find_spec


def is_kernel_there() -> bool:
    """Says whether solids can be made here."""
    return find_spec("OCP") is not None
