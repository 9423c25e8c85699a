"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code

CODES: tuple[Code, ...] = ()
