"""A design and its findings to the pages of one binder."""

from binder.compose.compose import compose

__all__ = ["compose"]
