"""Parts to what each needs of stock, with the working behind it."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import (
    LENGTH,
    Contribution,
    CutSize,
    Design,
    Diagnostic,
    Given,
    Part,
    Size,
    Stock,
    Working,
    shown,
    shown_length,
    size_text,
)
from binder_plugins.shapes import codes
from binder_plugins.shapes.faults import feature_faults
from binder_plugins.shapes.fit_metal import with_metal
from binder_plugins.shapes.flat import laid_flat
from binder_plugins.shapes.needed import Needed, needed_of
from binder_plugins.shapes.shape_faults import shape_faults
from binder_plugins.shapes.sold import sold_section
from binder_plugins.shapes.turned import measured
from binder_plugins.shapes.written import written_sizes

_USUAL_FORM = {
    "turned": "round bar",
    "block": "flat bar",
    "plate": "plate",
    "disc": "plate",
    "board": "board",
    "cut": "round bar",
    "profile": "round bar",
    "tube": "tube",
    "wire": "wire",
    "sheet": "sheet",
    "gear": "round bar",
    "rack": "flat bar",
    "ratchet": "round bar",
    "sprocket": "round bar",
    "cam": "round bar",
    "pulley": "round bar",
    "flywheel": "round bar",
    "handwheel": "round bar",
    "spring": "wire",
}

# Forms that are sold in width and thickness, and what is planed or milled off each face of them
# in mm where the workshop does not tell its own: common practice, no source.
_FACED = ("flat bar", "strip", "board")
_FACE = Fraction(1)


def size_parts(design: Design) -> Contribution:
    """A `CutSize` for each part whose sizes are whole, and findings for the others."""
    facts: list[CutSize] = []
    workings: list[Working] = []
    findings: list[Diagnostic] = []
    for part in design.parts.values():
        needed, faults = _needed(part)
        findings.extend(faults)
        if needed is None:
            continue
        findings.extend(feature_faults(part, needed))
        if part.stock is None or not part.stock.sizes:
            needed = with_metal(part, needed, design)
        fact, faults = _from_stock(part, needed, design)
        findings.extend(faults)
        if fact is not None:
            facts.append(fact)
            workings.append(_working(part, needed, fact, design.units))
            workings += laid_flat(part, design.units)
    return Contribution(facts=facts, workings=workings, findings=findings)


def _needed(part: Part) -> tuple[Needed | None, tuple[Diagnostic, ...]]:
    if not part.shape_kind:
        finding = codes.SIZE_MISSING.at(
            part.at,
            f"'{part.name}' has no shape",
            help=f"give it one of: {', '.join(_USUAL_FORM)}",
        )
        return None, (finding,)
    if isinstance(part.shape, list):
        steps, findings = measured(part, part.shape)
        return (needed_of(part, steps) if steps else None), findings
    findings = tuple(shape_faults(part))
    return (needed_of(part, ()) if not findings else None), findings


def _from_stock(
    part: Part, needed: Needed, design: Design
) -> tuple[CutSize | None, tuple[Diagnostic, ...]]:
    stock = part.stock
    form = stock.form if stock is not None else _USUAL_FORM[part.shape_kind]
    section = tuple(size.exact for size in stock.sizes) if stock is not None else ()
    fit = needed.in_form(form)
    if fit is None:
        finding = codes.STOCK_WRONG_FORM.at(
            stock.span if stock is not None else part.at,
            f"'{part.name}' cannot be cut from {form}",
            help=f"one of: {', '.join(needed.forms())}",
        )
        return None, (finding,)
    if section and stock is not None:
        findings = tuple(_too_small(part, stock, section, fit))
        if findings:
            return None, findings
        return _cut(part, needed, form, section, design.units), ()
    sold = sold_section(form, _with_faces(form, fit, design), design)
    return _cut(part, needed, form, sold, design.units, is_least=True), ()


def _with_faces(form: str, fit: tuple[Fraction, ...], design: Design) -> tuple[Fraction, ...]:
    """A section of two sizes that is chosen is worked on all four faces: metal for each."""
    if form not in _FACED:
        return fit
    facing = design.workshop.facing
    return tuple(one + 2 * (_FACE if facing is None else facing) for one in fit)


def _too_small(
    part: Part, stock: Stock, section: tuple[Fraction, ...], fit: tuple[Fraction, ...]
) -> Iterator[Diagnostic]:
    for has, wants in zip(sorted(section), sorted(fit), strict=False):
        if has < wants:
            yield codes.STOCK_TOO_SMALL.at(
                stock.span,
                f"'{part.name}' needs {shown_length(wants)}, the stock has {shown_length(has)}",
                help=f"take {shown_length(wants)} or larger",
            )
            return


def _cut(
    part: Part,
    needed: Needed,
    form: str,
    section: tuple[Fraction, ...],
    units: str,
    *,
    is_least: bool = False,
) -> CutSize:
    """The fact; a section of two sizes that was only worked out is said to be the least."""
    words = " × ".join(_section_words(part, section, units))
    if is_least and len(section) > 1:
        words = f"at least {words}"
    return CutSize(
        subject=part.name,
        form=form,
        section=section,
        section_text=f"{words} {form}".strip(),
        length=_length(needed, form),
        width=needed.width,
        is_least=is_least and len(section) > 1,
        at=part.stock.span if part.stock is not None else part.at,
    )


def _section_words(part: Part, section: tuple[Fraction, ...], units: str) -> list[str]:
    """The sizes of the section, as they were written where they were."""
    if part.stock is not None and part.stock.sizes:
        return [size_text(size, units) for size in part.stock.sizes]
    return [shown_length(size, units) for size in section]


def _length(needed: Needed, form: str) -> Fraction:
    """A disc from plate takes a square of its diameter; from a bar, its thickness."""
    if needed.round is not None and needed.width is not None and form in ("plate", "sheet"):
        return needed.width
    return needed.length


def _working(part: Part, needed: Needed, fact: CutSize, units: str) -> Working:
    given = tuple(Given(name, _shown(size, units), size.span) for name, size in _sizes(part))
    return Working(
        id=f"{part.name}.stock",
        title=f"stock for the {part.title}",
        given=given,
        formula=needed.because,
        result=f"{fact.section_text}, {shown_length(fact.length, units)} finished length",
        because="the largest section and the overall length",
        source="geometry",
        span=part.at,
    )


def _shown(size: Size, units: str) -> str:
    is_length = size.quantity.dimension == LENGTH
    return shown_length(size.exact, units) if is_length else shown(size.quantity)


def _sizes(part: Part) -> Iterator[tuple[str, Size]]:
    if part.overall is not None:
        yield "overall", part.overall
    shape = part.shape
    if isinstance(shape, Size):
        yield "length", shape
    elif isinstance(shape, list):
        for number, step in enumerate(shape, 1):
            if isinstance(step.length, Size):
                yield f"length of {step.name or f'step {number}'}", step.length
            if step.diameter is not None:
                yield f"diameter of {step.name or f'step {number}'}", step.diameter
    else:
        yield from written_sizes(shape)
