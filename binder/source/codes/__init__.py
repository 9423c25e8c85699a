"""What the reading of a spec can report, each fault explained where it is declared."""

from __future__ import annotations

from binder.diagnostics import Code
from binder.source.codes import (
    bound_codes,
    file_codes,
    include_codes,
    key_codes,
    like_codes,
    refused_codes,
    syntax_codes,
    trap_codes,
)

_FAMILIES = (
    file_codes,
    include_codes,
    bound_codes,
    key_codes,
    like_codes,
    refused_codes,
    syntax_codes,
    trap_codes,
)

CODES: tuple[Code, ...] = tuple(
    code for family in _FAMILIES for code in vars(family).values() if isinstance(code, Code)
)
