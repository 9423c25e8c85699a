"""Lines on layers to a DXF file of release 12: groups of a code and a value, two lines each.

A drawing unit is 1 mm; the release has no place to say so. It was published with release 12
of the format; every reader knows LINE, ARC, CIRCLE and POLYLINE of it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from binder_drafting import Bow, Chain, Edge
from binder_drafting.edges import extremes

Group = tuple[int, str | int | float]
_WHOLE = 360.0 - 1e-6
# Colours by number in the format's own list: 7 is black or white, whichever shows.
_COLOURS = (7, 1, 3, 5)


def dxf_of(edges: Sequence[Edge], layers: Iterable[str]) -> bytes:
    """The file, the same bytes for the same lines; an edge lies on the layer of its kind."""
    groups = (*_header(edges), *_tables(tuple(layers)), *_entities(edges), (0, "EOF"))
    return "".join(f"{code:>3}\r\n{_value(value)}\r\n" for code, value in groups).encode("ascii")


def _value(value: str | float) -> str:
    if isinstance(value, float):
        text = f"{value:.6f}".rstrip("0").rstrip(".")
        return f"{'0' if text == '-0' else text}.0" if "." not in text else text
    return str(value)


def _header(edges: Sequence[Edge]) -> Iterator[Group]:
    points = [point for edge in edges for point in extremes(edge)]
    yield from ((0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"))
    for name, pick in (("$EXTMIN", min), ("$EXTMAX", max)):
        yield (9, name)
        yield from _point(10, (pick(x for x, _ in points), pick(y for _, y in points)))
    yield (0, "ENDSEC")


def _tables(layers: tuple[str, ...]) -> Iterator[Group]:
    yield from ((0, "SECTION"), (2, "TABLES"), (0, "TABLE"), (2, "LTYPE"), (70, 1))
    yield from ((0, "LTYPE"), (2, "CONTINUOUS"), (70, 0), (3, "Solid line"))
    yield from ((72, 65), (73, 0), (40, 0.0), (0, "ENDTAB"))
    yield from ((0, "TABLE"), (2, "LAYER"), (70, len(layers)))
    for number, name in enumerate(layers):
        colour = _COLOURS[number % len(_COLOURS)]
        yield from ((0, "LAYER"), (2, name.upper()), (70, 0), (62, colour), (6, "CONTINUOUS"))
    yield from ((0, "ENDTAB"), (0, "ENDSEC"))


def _entities(edges: Iterable[Edge]) -> Iterator[Group]:
    yield from ((0, "SECTION"), (2, "ENTITIES"))
    for edge in edges:
        yield from _bow(edge) if isinstance(edge, Bow) else _chain(edge)
    yield (0, "ENDSEC")


def _bow(bow: Bow) -> Iterator[Group]:
    is_whole = bow.end - bow.start >= _WHOLE
    yield from ((0, "CIRCLE" if is_whole else "ARC"), (8, bow.kind.upper()))
    yield from _point(10, bow.centre)
    yield (40, bow.radius)
    if not is_whole:
        yield from ((50, bow.start % 360.0), (51, bow.end % 360.0))


def _chain(chain: Chain) -> Iterator[Group]:
    layer = chain.kind.upper()
    if len(chain.points) == 2:
        yield from ((0, "LINE"), (8, layer))
        yield from _point(10, chain.points[0])
        yield from _point(11, chain.points[1])
        return
    yield from ((0, "POLYLINE"), (8, layer), (66, 1), (70, 0))
    yield from _point(10, (0.0, 0.0))
    for point in chain.points:
        yield from ((0, "VERTEX"), (8, layer))
        yield from _point(10, point)
    yield from ((0, "SEQEND"), (8, layer))


def _point(code: int, at: tuple[float, float]) -> Iterator[Group]:
    yield from ((code, at[0]), (code + 10, at[1]), (code + 20, 0.0))
