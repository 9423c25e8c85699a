"""What exact arithmetic refuses; the evaluator makes findings of these."""

from __future__ import annotations


class QuantityError(Exception):
    """The root of all refusals of the arithmetic."""


class DimensionTooHighError(QuantityError):
    """A power of a dimension past the third; the text names the dimension."""


class DimensionsDifferError(QuantityError):
    """A sum of unlike things, such as a length and a plain number."""


class TooManyDigitsError(QuantityError):
    """An amount that no longer fits into 512 bits, or an error that is not finite."""


class TooManySourcesError(QuantityError):
    """A size that hangs on more independent measurements than are followed."""
