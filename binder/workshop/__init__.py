"""What a maker owns: a workshop file to typed answers that change the advice."""

from binder.workshop.read import read_workshop, workshop_schema
from binder.workshop.workshop import Workshop

__all__ = ["Workshop", "read_workshop", "workshop_schema"]
