"""Plugins to those that can live together, with a finding for every clash."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.diagnostics import Code, Diagnostic, Span
from binder.host import codes
from binder.host.plugin import Plugin
from binder.spec.kinds import Slot
from binder.spec.models import PartEntry, SpecEntry


def without_clashes(
    plugins: Iterable[Plugin], core: Iterable[Code]
) -> tuple[tuple[Plugin, ...], tuple[Diagnostic, ...]]:
    """The plugins whose names are their own; of two that clash the first one stays."""
    owners: dict[str, str] = dict(_core_claims(core))
    kept: list[Plugin] = []
    findings: list[Diagnostic] = []
    for plugin in plugins:
        taken = [claim for claim in _claims(plugin) if claim in owners]
        if taken:
            findings.append(_clash(plugin, taken[0], owners[taken[0]]))
        else:
            kept.append(plugin)
            owners.update(dict.fromkeys(_claims(plugin), f"plugin '{plugin.name}'"))
    return tuple(kept), tuple(findings)


def _core_claims(core: Iterable[Code]) -> Iterator[tuple[str, str]]:
    for code in core:
        yield f"code '{code.name}'", "binder itself"
    for key in SpecEntry.model_fields:
        yield f"{Slot.SECTION} '{key}'", "binder itself"
    for key in ("sizes", "picture", "include"):
        yield f"{Slot.SECTION} '{key}'", "binder itself"
    for key in PartEntry.model_fields:
        yield f"{Slot.SHAPE} '{key}'", "binder itself"


def _claims(plugin: Plugin) -> Iterator[str]:
    for kind in plugin.kinds:
        yield f"{kind.slot} '{kind.key}'"
    for series in plugin.series:
        yield f"series '{series.name}'"
    for code in plugin.codes:
        yield f"code '{code.name}'"
    for reckoning in plugin.reckonings:
        yield f"reckoning '{reckoning.name}'"


def _clash(plugin: Plugin, claim: str, owner: str) -> Diagnostic:
    place = Span(f"<plugin {plugin.name} of {plugin.distribution}>", 0, 0, 0, 0)
    return codes.PLUGIN_CLASH.at(
        place,
        f"plugin '{plugin.name}' adds {claim}, which {owner} has",
        help=f"uninstall {plugin.distribution}, or the other",
    )
