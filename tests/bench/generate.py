"""A number of parts to a spec of that size, shaped like the ones that makers write."""

from __future__ import annotations

from collections.abc import Iterator

_PER_ASSEMBLY = 20


def spec_of(parts: int) -> str:
    """A valid spec with so many parts, their features, joints and assemblies, as YAML."""
    return "\n".join(_lines(parts)) + "\n"


def _lines(parts: int) -> Iterator[str]:
    yield "format: 1"
    yield "model: {title: Bench model, issue: A, units: mm}"
    yield "sizes:"
    yield "  bar: 20 mm"
    for number in range(parts // 10):
        yield f"  size{number}: 0.{number % 8 + 1} * bar + {number % 7}.5 mm"
    yield "parts:"
    for number in range(parts):
        yield from _part(number, parts)
    yield "joints:"
    for number in range(1, parts, 2):
        yield f"  pin{number}: {{slides: [p{number}.shank, p{number - 1}.bore]}}"
    yield "assemblies:"
    yield from _assemblies(parts)


def _part(number: int, parts: int) -> Iterator[str]:
    length = f"size{number % (parts // 10)} + 12 mm"
    yield f"  p{number}:"
    yield f"    material: {('mild steel', 'brass', 'bronze')[number % 3]}"
    yield "    stock: round bar"
    yield "    turned:"
    yield f"      - {{name: head, diameter: bar, length: {number % 5 + 2} mm}}"
    yield f"      - {{name: shank, diameter: 0.{4 if number % 2 else 6} * bar, length: rest}}"
    yield f"    overall: {length}"
    yield "    features:"
    yield f"      bore: {{reamed: {3 if number % 2 else 8} mm, on: head, depth: through}}"
    yield f"      edge: {{chamfered: 0.{number % 5 + 3} mm, on: shank}}"
    yield f"      ring: {{grooved: {number % 3 + 1} mm, on: shank, depth: 1 mm}}"


def _assemblies(parts: int) -> Iterator[str]:
    names = []
    for start in range(0, parts, _PER_ASSEMBLY):
        members = ", ".join(f"p{n}" for n in range(start, min(start + _PER_ASSEMBLY, parts)))
        yield f"  group{start}: {{of: [{members}], test: each pin slides}}"
        names.append(f"group{start}")
    yield f"  whole: {{of: [{', '.join(names)}], test: it turns}}"
