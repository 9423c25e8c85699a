"""Changes, departures, sources and the spec itself: what makes the binder good in ten years."""

from __future__ import annotations

from collections.abc import Iterator

from binder.design import Design
from binder.host import Host
from binder.pages import (
    Blank,
    Code,
    Column,
    Facts,
    Listing,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
)


def changes(design: Design) -> Iterator[Section]:
    """What each issue changed, and the record of what was really made."""
    written = design.spec.written
    rows = tuple(
        ((Code(issue),), (" ".join(words.split()),)) for issue, words in written.changes.items()
    )
    history = Table((Column("Issue", 1), Column("What changed", 8)), rows) if rows else None
    first = Paragraph((f"This is issue {written.model.issue}, the first.",))
    yield Section(
        id="changes",
        title="Changes and as built",
        place=Place.CHANGES,
        starts_page=False,
        blocks=(
            history or first,
            Subheading("As built"),
            Facts(
                (("Made to issue", (Blank("issue", ""),)), ("Finished on", (Blank("date", ""),)))
            ),
        ),
    )


def departures(design: Design) -> Iterator[Section]:
    """Where the maker departs from the usual way, and why."""
    if design.departures:
        rows: tuple[tuple[Text, ...], ...] = tuple(
            ((Code(one.what),), (one.because,), (str(one.at.line),)) for one in design.departures
        )
        columns = (Column("Of", 2), Column("Because", 6), Column("Line", 1, is_figure=True))
        yield Section(
            id="departures",
            title="Departures",
            place=Place.CHANGES,
            blocks=(Table(columns, rows),),
            starts_page=False,
        )


def sources(design: Design, host: Host) -> Section:
    """The standards and rules behind the figures, and the program that reckoned them."""
    used = {working.source for working in design.workings.values() if working.source}
    used |= {source for gauge in _named_sources(design) for source in (gauge,)}
    rows = tuple(((source,),) for source in sorted(used))
    plugins: dict[tuple[str, str], list[str]] = {}
    for plugin in host.plugins:
        plugins.setdefault((plugin.distribution, plugin.version), []).append(plugin.name)
    columns = (Column("Distribution", 3), Column("Version", 1.5), Column("Plugins", 12))
    reckoned: tuple[tuple[Text, ...], ...] = tuple(
        ((distribution,), (version,), (Code(", ".join(names)),))
        for (distribution, version), names in plugins.items()
    )
    return Section(
        id="sources",
        title="Sources",
        place=Place.SOURCES,
        starts_page=False,
        blocks=(
            *((Table((Column("Standard, handbook or rule"),), rows),) if rows else ()),
            Subheading("Reckoned by"),
            Table(columns, reckoned),
        ),
    )


def _named_sources(design: Design) -> Iterator[str]:
    environment = design.spec.resolved.environment
    for named in design.spec.resolved.sizes.values():
        for name, series in environment.series.items():
            if name in str(named.text):
                yield series.source


def the_spec(design: Design) -> Section:
    """The spec as it was compiled, file by file."""
    document = design.spec.resolved.document
    blocks = [
        block
        for name, text in document.texts.items()
        for block in (Subheading(name), Listing(text))
    ]
    words = "This binder was compiled from these files; the PDF carries them inside. Their hash is "
    return Section(
        id="spec",
        title="The spec",
        place=Place.SPEC,
        starts_page=False,
        blocks=(Paragraph((words, Code(document.digest[:16]), ".")), *blocks),
    )
