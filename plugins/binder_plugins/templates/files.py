"""Faces laid flat to files: each as DXF, and the sheets of templates as SVG."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from binder.api import Design, Drawing, ExportFile
from binder_plugins.templates.dxf import dxf_of
from binder_plugins.templates.marking import BEND, HOLE, MARK, OUTLINE
from binder_plugins.templates.sheets import sheets_of
from binder_plugins.templates.wanted import templates_of

LAYERS = (OUTLINE, HOLE, MARK, BEND)


def flat_files(design: Design) -> Iterator[ExportFile]:
    """A DXF file at full size for each face."""
    for one in templates_of(design):
        yield ExportFile("flat", one.part.name, "dxf", partial(dxf_of, one.edges, LAYERS))


def sheet_files(design: Design) -> Iterator[ExportFile]:
    """The sheets of templates as the binder prints them."""
    for sheet in sheets_of(list(templates_of(design)), design):
        yield ExportFile("template", "", "svg", partial(_same, sheet))


def _same(sheet: Drawing) -> Drawing:
    return sheet
