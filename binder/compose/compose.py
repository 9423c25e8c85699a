"""The sections of core and plugins, in the order in which the bench uses them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from binder.compose.cover import summary
from binder.compose.reading import read_this
from binder.compose.record import changes, departures, sources, the_spec
from binder.compose.remarks import remarks
from binder.compose.sizes import sizes
from binder.design import Design
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.pages import Attachment, Binder, Block, Inset, Section


def compose(
    design: Design, findings: tuple[Diagnostic, ...], host: Host
) -> tuple[Binder, tuple[Diagnostic, ...]]:
    """The binder, and a finding for each page that a plugin failed to make."""
    of_plugins, faults = host.sections(design, findings)
    own = (
        *remarks((*findings, *faults)),
        read_this(design),
        *changes(design),
        *departures(design),
        *sizes(design),
        sources(design, host),
        the_spec(design),
    )
    whole = (one for one in of_plugins if isinstance(one, Section))
    insets: dict[tuple[str, bool], list[Block]] = {}
    for one in of_plugins:
        if isinstance(one, Inset):
            insets.setdefault((one.section, one.is_foot), []).extend(one.blocks)
    sections = [_with(section, insets) for section in sorted((*own, *whole), key=_place)]
    return _binder(design, tuple(sections)), faults


def _with(section: Section, insets: Mapping[tuple[str, bool], Sequence[Block]]) -> Section:
    """A section with the blocks that plugins set in it and in what it holds."""
    if not insets:
        return section
    return replace(
        section,
        blocks=(
            *insets.get((section.id, False), ()),
            *section.blocks,
            *insets.get((section.id, True), ()),
        ),
        sections=tuple(_with(one, insets) for one in section.sections),
    )


def _place(section: Section) -> tuple[int, str]:
    return (section.place, section.id)


def _binder(design: Design, sections: tuple[Section, ...]) -> Binder:
    head = design.spec.written.model
    document = design.spec.resolved.document
    return Binder(
        title=" ".join(head.title.split()),
        issue=head.issue,
        date=head.date or "",
        digest=document.digest,
        about=" ".join(head.about.split()) if head.about else "",
        summary=summary(design),
        sections=sections,
        attachments=tuple(
            Attachment(name.rsplit("/", 1)[-1], text.encode(), "the spec of this binder")
            for name, text in document.texts.items()
        ),
    )
