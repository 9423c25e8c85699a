"""What ISO 286 does not define, as a refusal that names a way out."""

from __future__ import annotations

_SHOWN = 24


class NotDefined(Exception):
    """The standard, or the text given, has no such limit.

    `reason` is one plain sentence in lower case, `way_out` what would serve.
    """

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out


def shown(text: str) -> str:
    """What was written, in quotes and cut short where it runs on."""
    return f"'{text}'" if len(text) <= _SHOWN else f"'{text[:_SHOWN]}…'"
