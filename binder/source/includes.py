"""The `include:` of a spec to the names of the files that it asks for."""

from __future__ import annotations

from binder.diagnostics import Span
from binder.source import bounds
from binder.source.codes.include_codes import INCLUDE_NOT_A_NAME, INCLUDE_TWICE, TOO_MANY_INCLUDES
from binder.source.findings import Findings
from binder.source.quoting import quoted
from binder.source.tree import Node, Row, Table, Written

INCLUDE = "include"


def take_includes(root: Table, main_name: str, found: Findings) -> tuple[Written, ...] | None:
    """Take `include:` out of a tree that was just read; its names in the order written.

    main_name: the main spec's own name, which it may not include. Nothing where a name
    cannot be used, so that the model would lack parts.
    """
    if INCLUDE not in root:
        return ()
    asked = root.pop(INCLUDE)
    key_span = root.key_spans.pop(INCLUDE)
    items = asked if isinstance(asked, Row) else [asked]
    names = [_name(item, key_span, found) for item in items]
    written = tuple(name for name in names if name is not None)
    if len(written) > bounds.INCLUDES:
        span = written[bounds.INCLUDES].span
        message = f"{len(written)} files are included, and {bounds.INCLUDES} may be"
        found.add(TOO_MANY_INCLUDES, span, message, help="put several into one file")
        return None
    is_twice = _report_twice(written, main_name, found)
    return None if is_twice or len(written) < len(names) else written


def _name(item: Node, key_span: Span, found: Findings) -> Written | None:
    if isinstance(item, Written) and item:
        return item
    span = key_span if item is None else item.span
    help = "write `include: jib.yaml`, or `include: [jib.yaml, post.yaml]`"
    found.add(INCLUDE_NOT_A_NAME, span, "a file name should stand here", help=help)
    return None


def _report_twice(written: tuple[Written, ...], main_name: str, found: Findings) -> bool:
    seen = {main_name}
    for name in written:
        if name in seen:
            message = f"{quoted(name)} is read already"
            found.add(INCLUDE_TWICE, name.span, message, help="leave one of them")
        seen.add(name)
    return len(seen) <= len(written)
