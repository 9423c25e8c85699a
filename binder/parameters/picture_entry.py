"""The `picture:` entry of a spec to the known length that it tells."""

from __future__ import annotations

from dataclasses import dataclass, field

from binder.diagnostics import NOWHERE, Diagnostic, Span
from binder.parameters import codes
from binder.parameters.environment import Environment
from binder.parameters.faults import ExpressionFault
from binder.parameters.parser import parse
from binder.parameters.picture import KnownLength, known_length
from binder.source import Document, Table, Written
from binder.units import NUMBER, Quantity

PICTURE = "<picture>"
_KEYS = ("file", "known", "pixel_error", "tilt", "depth")
_PIXELS = ("pixels", "pixel_error")


@dataclass(frozen=True, slots=True)
class PictureEntry:
    """The texts of a picture by key, and the names of the sizes that they need."""

    texts: dict[str, Written] = field(default_factory=dict)
    names: frozenset[str] = frozenset()
    span: Span = NOWHERE

    def evaluated(
        self, environment: Environment, known: frozenset[str], findings: list[Diagnostic]
    ) -> KnownLength | None:
        """The known length; None, and a finding, where it makes none."""
        if not self.texts or any(n in known and n not in environment.values for n in self.names):
            return None
        values: dict[str, Quantity] = {}
        for key, text in self.texts.items():
            try:
                values[key] = parse(_without_pixels(key, text)).evaluate(environment)
            except ExpressionFault as fault:
                findings.append(fault.code.at(text.span, fault.message, help=fault.help))
                return None
        if any(values[key].dimension != NUMBER for key in _PIXELS if key in values):
            findings.append(codes.PICTURE_KNOWN.at(self.span, "pixels are counted, not measured"))
            return None
        try:
            return known_length(values)
        except ExpressionFault as fault:
            findings.append(fault.code.at(self.span, fault.message, help=fault.help))
            return None


def _without_pixels(key: str, text: Written) -> str:
    return text.removesuffix("px").strip() if key in _PIXELS else str(text)


def read_picture(document: Document, findings: list[Diagnostic]) -> PictureEntry:
    """The entry; an empty one where there is none or it is broken."""
    entry = document.root.get("picture")
    if entry is None:
        return PictureEntry()
    span = document.span(("picture",), of_key=True)
    if not isinstance(entry, Table) or not isinstance(entry.get("known"), Table):
        findings.append(
            codes.PICTURE_KNOWN.at(
                span,
                "the picture has no known length",
                help="write `picture: {known: {pixels: 260, is: 100 mm}}`",
            )
        )
        return PictureEntry()
    texts = _texts(entry, findings)
    if "pixels" not in texts or "is" not in texts:
        findings.append(codes.PICTURE_KNOWN.at(span, "the known length needs `pixels` and `is`"))
        return PictureEntry()
    return PictureEntry(texts, _names(texts), span)


def _texts(entry: Table, findings: list[Diagnostic]) -> dict[str, Written]:
    texts: dict[str, Written] = {}
    for owner, keys in ((entry, _KEYS), *_inner(entry)):
        for key, value in owner.items():
            if key not in keys:
                findings.append(
                    codes.PICTURE_KEY.at(
                        owner.key_spans[key],
                        f"'{key}' is not known of a picture",
                        help=f"known here: {', '.join(keys)}",
                    )
                )
            elif isinstance(value, Written) and key != "file":
                texts[key] = value
    return texts


def _inner(entry: Table) -> list[tuple[Table, tuple[str, ...]]]:
    found: list[tuple[Table, tuple[str, ...]]] = []
    for key, keys in (("known", ("pixels", "is")), ("depth", ("offset", "distance"))):
        inner = entry.get(key)
        if isinstance(inner, Table):
            found.append((inner, keys))
    return found


def _names(texts: dict[str, Written]) -> frozenset[str]:
    names: set[str] = set()
    for key, text in texts.items():
        try:
            names |= parse(_without_pixels(key, text)).names
        except ExpressionFault:
            continue  # It is reported when it is evaluated.
    return frozenset(names)
