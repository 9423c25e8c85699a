"""All plugins of one run behind one typed call for each thing they do."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from importlib.metadata import EntryPoint

from binder.api.contributions import ExportFile, PlanStep, Reckoning
from binder.design import Design
from binder.diagnostics import Code, Diagnostic, Span
from binder.host.catalogue import CORE_CODES
from binder.host.clashes import without_clashes
from binder.host.discover import broken, installed, load
from binder.host.order import ordered_steps
from binder.host.plugin import Plugin
from binder.host.printed import printed
from binder.host.questions import bounded
from binder.pages import Drawing, Inset, Section
from binder.parameters import Gauge, Series
from binder.spec.kinds import Kinds


@dataclass(frozen=True, slots=True)
class Host:
    """The plugins of a run, and what went wrong in loading them."""

    plugins: tuple[Plugin, ...]
    steps: tuple[tuple[Plugin, PlanStep], ...]
    findings: tuple[Diagnostic, ...]

    @staticmethod
    def load(points: Iterable[EntryPoint] | None = None) -> Host:
        """Loads the installed plugins, or those of the given entry points."""
        loaded, faults = load(installed() if points is None else points)
        kept, clashes = without_clashes(loaded, CORE_CODES)
        steps, unordered = ordered_steps(kept)
        return Host(kept, steps, (*faults, *clashes, *unordered))

    def kinds(self) -> Kinds:
        """All kinds that the language has."""
        return Kinds(tuple(kind for plugin in self.plugins for kind in plugin.kinds))

    def series(self) -> Mapping[str, Series]:
        """The series of sizes as sold, by name."""
        return {one.name: one for one in self._sizes() if isinstance(one, Series)}

    def gauges(self) -> Mapping[str, Gauge]:
        """The gauges, by name."""
        return {one.name: one for one in self._sizes() if isinstance(one, Gauge)}

    def _sizes(self) -> Iterator[Series | Gauge]:
        return (one for plugin in self.plugins for one in plugin.series)

    def codes(self) -> Mapping[str, Code]:
        """Every code that can be reported, by name."""
        own = (code for plugin in self.plugins for code in plugin.codes)
        return {code.name: code for code in (*CORE_CODES, *own)}

    def reckonings(self) -> Mapping[str, Reckoning]:
        """The one-off questions that can be asked, by name."""
        return {one.name: bounded(one) for plugin in self.plugins for one in plugin.reckonings}

    def settle(self, design: Design) -> tuple[Design, tuple[Diagnostic, ...]]:
        """The design with the sizes of shapes that were left to suit."""
        return self._run(design, [one for one in self.steps if one[1].settles_shapes])

    def expand(
        self, design: Design, *, for_pages: bool = False
    ) -> tuple[Design, tuple[Diagnostic, ...]]:
        """The design after every other step."""
        steps = [
            (plugin, step)
            for plugin, step in self.steps
            if not step.settles_shapes and (for_pages or not step.for_pages)
        ]
        return self._run(design, steps)

    def _run(
        self, design: Design, steps: Iterable[tuple[Plugin, PlanStep]]
    ) -> tuple[Design, tuple[Diagnostic, ...]]:
        """One step after the other; one that fails is a finding and is left out."""
        findings: list[Diagnostic] = []
        for plugin, step in steps:
            try:
                more = step.run(design)
                design = design.with_contribution(more)
            except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
                findings.append(broken(_place(plugin), plugin.name, error))
            else:
                findings.extend(more.findings)
        return design, printed(findings, design.units)

    def check(self, design: Design) -> tuple[Diagnostic, ...]:
        """What all checks have to say."""
        findings: list[Diagnostic] = []
        for plugin in self.plugins:
            for check in plugin.checks:
                try:
                    findings.extend(check.run(design))
                except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
                    findings.append(broken(_place(plugin), plugin.name, error))
        return printed(findings, design.units)

    def sections(
        self, design: Design, findings: tuple[Diagnostic, ...]
    ) -> tuple[tuple[Section | Inset, ...], tuple[Diagnostic, ...]]:
        """The sections of all plugins; a page that fails is a finding and is left out."""
        sections: list[Section | Inset] = []
        faults: list[Diagnostic] = []
        for plugin in self.plugins:
            for page in plugin.pages:
                try:
                    sections.extend(page.run(design, findings))
                except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
                    faults.append(broken(_place(plugin), plugin.name, error))
        return tuple(sections), tuple(faults)

    def exports(self, design: Design) -> tuple[tuple[ExportFile, ...], tuple[Diagnostic, ...]]:
        """The files that can be written; an offer that fails is a finding and is left out."""
        files: list[ExportFile] = []
        faults: list[Diagnostic] = []
        for plugin in self.plugins:
            for offer in plugin.exports:
                try:
                    files.extend(_guarded(one, plugin) for one in offer.run(design))
                except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
                    faults.append(broken(_place(plugin), plugin.name, error))
        return tuple(files), tuple(faults)


def _guarded(file: ExportFile, plugin: Plugin) -> ExportFile:
    """The file with a maker that gives a finding where the plugin's own raises."""

    def make() -> bytes | Drawing | Diagnostic:
        try:
            return file.make()
        except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
            return broken(_place(plugin), plugin.name, error)

    return replace(file, make=make)


def _place(plugin: Plugin) -> Span:
    return Span(f"<plugin {plugin.name} of {plugin.distribution}>", 0, 0, 0, 0)
