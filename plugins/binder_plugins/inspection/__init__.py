"""Plugin `inspection`: what is measured, what must be true to what, and what to do if it is out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Check, Code, Design, Diagnostic, Page, hookimpl, late
from binder_plugins.inspection.codes import CODES

_HERE = "binder_plugins.inspection"


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Something that must be true, and that nothing here can judge."""
    return CODES


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Can it be seen here whether what runs is in line and square."""
    return [Check("alignments can be judged", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The list of sizes and alignments, with a box for each."""
    return [Page("inspection", late(f"{_HERE}.page", "inspection_pages"))]


def _check(design: Design) -> Iterator[Diagnostic]:
    if not design.joints:
        return
    from binder_plugins.inspection.truing import check_alignment

    yield from check_alignment(design)
