"""Plate cams: what may be written of one, and the contour that its drive gives it."""

from __future__ import annotations

from pydantic import PrivateAttr

from binder.api import Length, Model
from binder_solid.facts import ContourFact


class Cam(Model):
    """A plate cam of a width, with its hub; the drive that names the part gives its contour."""

    width: Length
    hub: Length | None = None
    hub_length: Length | None = None

    _contour: ContourFact | None = PrivateAttr(default=None)

    @property
    def contour(self) -> ContourFact | None:
        """What the drive gives, None before it has."""
        return self._contour

    def cut_to(self, contour: ContourFact) -> Cam:
        """The same cam with its contour."""
        made = self.model_copy()
        made._contour = contour  # noqa: SLF001 - its own
        return made
