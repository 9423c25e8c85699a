"""What the PDF process is given, and how it may end."""

from __future__ import annotations

import json
from base64 import b64decode, b64encode
from dataclasses import dataclass
from enum import IntEnum

from binder.pages import Attachment


class Ending(IntEnum):
    """Exit codes of the PDF process; any other one is a fault that it did not foresee."""

    DONE = 0
    NO_WEASYPRINT = 41
    NO_PANGO = 42
    NO_MEMORY = 43
    ASKED_FOR = 44


@dataclass(frozen=True, slots=True)
class PdfJob:
    """The document, what is attached, and the moment it is dated at (UTC; '' for none)."""

    html: str
    attachments: tuple[Attachment, ...] = ()
    made_on: str = ""

    def to_bytes(self) -> bytes:
        """As JSON in ASCII, so that no locale can change it on the way."""
        attachments = [
            {
                "name": attached.name,
                "content": b64encode(attached.content).decode("ascii"),
                "description": attached.description,
            }
            for attached in self.attachments
        ]
        job = {"html": self.html, "attachments": attachments, "made_on": self.made_on}
        return json.dumps(job).encode("ascii")

    @staticmethod
    def from_bytes(content: bytes) -> PdfJob:
        """The job back from its bytes."""
        raw = json.loads(content)
        attachments = tuple(
            Attachment(one["name"], b64decode(one["content"]), one["description"])
            for one in raw["attachments"]
        )
        return PdfJob(raw["html"], attachments, raw["made_on"])
