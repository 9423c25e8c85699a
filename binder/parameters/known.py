"""The `picture` of a spec to the length that is known on it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from binder.diagnostics import Diagnostic, Span
from binder.parameters import codes
from binder.parameters.environment import Environment, KnownLength
from binder.parameters.expression import Expression, parse
from binder.parameters.faults import ExpressionFault, quoted
from binder.parameters.near import did_you_mean
from binder.parameters.picture import LEAST_PIXELS
from binder.parameters.places import finding_of
from binder.source.tree import Node, Table, Written
from binder.units import ANGLE, LENGTH, Dimension, Quantity, shown

_PIXELS = re.compile(r"([0-9]{1,6}(?:\.[0-9]{1,3})?)(?: ?px)?")
_KEYS = ("file", "known", "pixel_error", "tilt", "depth")
_KNOWN = ("pixels", "is")
_DEPTH = ("offset", "distance")
_KILOMETRE = Fraction(10**6)
_LEAST = Fraction(1, 1000)
_WANTED = {
    "is": (LENGTH, _LEAST, _KILOMETRE),
    "tilt": (ANGLE, Fraction(0), Fraction(60)),
    "offset": (LENGTH, Fraction(0), _KILOMETRE),
    "distance": (LENGTH, _LEAST, _KILOMETRE),
}


@dataclass(slots=True)
class WrittenPicture:
    """The picture's texts, parsed and not yet worked out, and what was found wrong."""

    pixels: Fraction = Fraction(0)
    pixel_error: Fraction = Fraction(1)
    sizes: dict[str, tuple[Written, Expression]] = field(default_factory=dict)
    findings: list[Diagnostic] = field(default_factory=list)

    @property
    def is_usable(self) -> bool:
        """Whether nothing in it is at fault."""
        return not any(finding.is_error for finding in self.findings)

    def names(self) -> Iterator[str]:
        """The sizes that the picture follows from, and `picture` where it measures itself."""
        for _, expression in self.sizes.values():
            yield from expression.follows()

    def refuse(self, at: Span, message: str, help: str = "") -> None:
        """A finding of a malformed picture."""
        self.findings.append(codes.PICTURE_MALFORMED.at(at, message, help=help))

    def table(self, node: Node, at: Span, name: str, keys: tuple[str, ...]) -> Table | None:
        """A table with known keys, or none, and findings for what it is not."""
        if not isinstance(node, Table):
            self.refuse(at, f"`{name}` is no table", f"it has the keys {', '.join(keys)}")
            return None
        for key in node:
            if key not in keys:
                help = did_you_mean(key, keys) or f"known here: {', '.join(keys)}"
                self.refuse(node.key_spans[key], f"{quoted(key)} is not known in {name}", help)
        return node

    def count(self, node: Node, at: Span) -> Fraction:
        """A number of pixels over nought, else 0 and a finding."""
        found = _PIXELS.fullmatch(node) if isinstance(node, Written) else None
        amount = Fraction(found[1]) if found else Fraction(0)
        if not amount:
            place = node.span if isinstance(node, Written) else at
            self.refuse(place, "a number of pixels is wanted here", "write it as 260")
        return amount

    def size(self, name: str, node: Node, at: Span) -> None:
        """An expression, kept under its name, or findings."""
        if not isinstance(node, Written):
            self.refuse(at, f"`{name}` is missing or no plain size", f"write `{name}: 100 mm`")
            return
        try:
            self.sizes[name] = (node, parse(node))
        except ExpressionFault as fault:
            self.findings.append(finding_of(fault, node))


def read_picture(node: Node, key: Span) -> WrittenPicture:
    """The picture's table, with every fault in it; `key` is where its name stands."""
    picture = WrittenPicture()
    table = picture.table(node, key, "picture", _KEYS)
    if table is None:
        return picture
    known = picture.table(table.get("known"), table.key_spans.get("known", key), "known", _KNOWN)
    if known is not None:
        at = table.key_spans["known"]
        picture.pixels = picture.count(known.get("pixels"), known.key_spans.get("pixels", at))
        picture.size("is", known.get("is"), known.key_spans.get("is", at))
        _must_be_long(picture, known.get("pixels"))
    _must_name_file(picture, table, key)
    _read_errors(picture, table)
    return picture


def _read_errors(picture: WrittenPicture, table: Table) -> None:
    """pixel_error, tilt and depth, each of which may be left out."""
    if "pixel_error" in table:
        at = table.key_spans["pixel_error"]
        picture.pixel_error = picture.count(table["pixel_error"], at)
    if "tilt" in table:
        picture.size("tilt", table["tilt"], table.key_spans["tilt"])
    if "depth" in table:
        at = table.key_spans["depth"]
        depth = picture.table(table["depth"], at, "depth", _DEPTH)
        if depth is not None:
            for part in _DEPTH:
                picture.size(part, depth.get(part), depth.key_spans.get(part, at))


def _must_name_file(picture: WrittenPicture, table: Table, key: Span) -> None:
    if not isinstance(table.get("file"), Written):
        at = table.key_spans.get("file", key)
        picture.refuse(at, "the picture has no file", "add `file: quay.png`")


def _must_be_long(picture: WrittenPicture, node: Node) -> None:
    """The warning for a known length of few pixels."""
    if isinstance(node, Written) and 0 < picture.pixels < LEAST_PIXELS:
        message = f"the known length has {float(picture.pixels):g} px, under {LEAST_PIXELS}"
        picture.findings.append(codes.PICTURE_KNOWN_TOO_SHORT.at(node.span, message))


def known_length(
    picture: WrittenPicture, environment: Environment
) -> tuple[KnownLength | None, tuple[Diagnostic, ...]]:
    """The known length, worked out with the sizes at hand, or none and why.

    Nothing is said of a size that is itself at fault.
    """
    findings: list[Diagnostic] = []
    sizes: dict[str, Quantity] = {}
    for name, (text, expression) in picture.sizes.items():
        try:
            sizes[name] = _checked(expression.evaluate(environment), *_WANTED[name])
        except ExpressionFault as fault:
            if fault.code is not codes.SIZE_AT_FAULT:
                findings.append(finding_of(fault, text))
    if len(sizes) < len(picture.sizes) or not picture.is_usable:
        return None, tuple(findings)
    return _known(picture, sizes), ()


def _known(picture: WrittenPicture, sizes: dict[str, Quantity]) -> KnownLength:
    depth = Fraction(0)
    if "offset" in sizes:
        depth = sizes["offset"].amount / sizes["distance"].amount
    return KnownLength(
        picture.pixels,
        sizes["is"],
        picture.sizes["is"][0],
        picture.pixel_error,
        sizes["tilt"].amount if "tilt" in sizes else Fraction(0),
        depth,
    )


def _checked(size: Quantity, dimension: Dimension, least: Fraction, most: Fraction) -> Quantity:
    """The same size; ExpressionFault where it is of another kind or out of its range."""
    if size.dimension != dimension:
        message = f"{dimension.title} is wanted here, this is {size.dimension.title}"
        raise ExpressionFault(codes.PICTURE_MALFORMED, message, 0, 0)
    if not least <= size.amount <= most:
        low, high = (shown(Quantity(end, dimension)) for end in (least, most))
        message = f"{shown(size)} does not lie between {low} and {high}"
        raise ExpressionFault(codes.PICTURE_MALFORMED, message, 0, 0)
    return size
