"""The hooks of binder: all that a plugin can do, on one page.

A plugin is an installed module named under the entry point group `binder.plugins`. It is
trusted code: a spec cannot name, load or configure one, and nothing in the spec's folder is
ever imported. Each hook takes nothing and returns a sequence of values; pluggy only collects
them. A plugin that has nothing to give for a hook leaves it out.

The life of one run:

1. *Loading.* Each entry point is imported by itself, built-in ones first, then by name. One
   that fails to import, or whose name is taken, becomes a finding that names its
   distribution; the rest go on.
2. *Collecting.* Every hook (`binder_codes` too, for `binder explain`) is called once for
   each plugin, before the spec is read. What comes back is checked for type and for clashes
   (two plugins, one key). Data that is slow to read is best read when it is first asked
   for, not here.
3. *Reading and validating.* `binder_series` gives the sizes that `nearest(...)` and gauge
   names look up; `binder_kinds` gives the words of the language. The spec is typed by them.
4. *Expanding.* The steps of `binder_steps` run one after another, each on the frozen design
   that the ones before it left, in an order derived from the types of fact that they need
   and give. A step returns a `Contribution`; it cannot change what was written. A step that
   raises is a finding with the plugin's name, and its contribution is left out.
5. *Checking.* The checks of `binder_checks` look at the finished design and yield findings.
   They add nothing to it, so their order does not matter.
6. *Composing.* The pages of `binder_pages` turn design and findings into sections. They
   know no HTML; where a section stands is its `Place`.
7. *Exporting*, where files are asked for instead of a binder. The offers of `binder_exports`
   name files by kind and item; only those that the maker wants are made. A file whose maker
   raises is a finding, and the others are written.

Apart from any spec, `binder reckon` answers one question at the bench: the plugin that knows
gives it by `binder_reckonings`.

What one plugin needs of another travels as a typed fact on the design: a step names the
fact types it needs and gives, and never imports another plugin.
"""

from __future__ import annotations

from collections.abc import Sequence

import pluggy

from binder.api.contributions import Check, Export, Page, PlanStep, Reckoning
from binder.diagnostics import Code
from binder.parameters import Gauge, Series
from binder.spec.kinds import Kind

GROUP = "binder.plugins"

hookspec = pluggy.HookspecMarker("binder")
hookimpl = pluggy.HookimplMarker("binder")


@hookspec
def binder_kinds() -> Sequence[Kind]:  # type: ignore[empty-body]
    """Kinds of shape, feature, joint and section, each with the model that reads it."""


@hookspec
def binder_series() -> Sequence[Series | Gauge]:  # type: ignore[empty-body]
    """Series of sizes as sold, and gauges whose members are sizes by name."""


@hookspec
def binder_codes() -> Sequence[Code]:  # type: ignore[empty-body]
    """Every code that the plugin can report, explained."""


@hookspec
def binder_steps() -> Sequence[PlanStep]:  # type: ignore[empty-body]
    """Steps of the expand phase, with the fact types that each needs and gives."""


@hookspec
def binder_checks() -> Sequence[Check]:  # type: ignore[empty-body]
    """Checks of the finished design."""


@hookspec
def binder_pages() -> Sequence[Page]:  # type: ignore[empty-body]
    """Makers of sections of the binder."""


@hookspec
def binder_reckonings() -> Sequence[Reckoning]:  # type: ignore[empty-body]
    """One-off questions that `binder reckon` answers without a spec."""


@hookspec
def binder_exports() -> Sequence[Export]:  # type: ignore[empty-body]
    """Offers of files that others can open: solids, flat outlines, drawings."""
