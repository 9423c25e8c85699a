"""Installed entry points to loaded plugins, one by one."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cache
from importlib.metadata import Distribution, EntryPoint, entry_points
from typing import Any

import pluggy

from binder.api import hooks
from binder.api.contributions import Check, Export, Page, PlanStep, Reckoning
from binder.diagnostics import Code, Diagnostic, Span
from binder.host import codes
from binder.host.plugin import Plugin
from binder.parameters import Gauge, Series
from binder.spec.kinds import Kind

OWN_DISTRIBUTION = "build-binder"
_HOOKS: dict[str, tuple[type, ...]] = {
    "kinds": (Kind,),
    "series": (Series, Gauge),
    "codes": (Code,),
    "steps": (PlanStep,),
    "checks": (Check,),
    "pages": (Page,),
    "reckonings": (Reckoning,),
    "exports": (Export,),
}


def installed() -> tuple[EntryPoint, ...]:
    """All entry points of our group, the built-in ones first, then by name."""
    return tuple(sorted(entry_points(group=hooks.GROUP), key=_rank))


def _rank(point: EntryPoint) -> tuple[bool, str, str]:
    return (distribution_of(point) != OWN_DISTRIBUTION, point.name, point.value)


def distribution_of(point: EntryPoint) -> str:
    """The name of the distribution that an entry point belongs to."""
    return _told(point.dist)[0] if point.dist is not None else "an unknown distribution"


@cache
def _told(distribution: Distribution) -> tuple[str, str]:
    """Name and version; the standard library reads the whole file anew for each of them."""
    return distribution.name, distribution.version


def place_of(point: EntryPoint) -> Span:
    """Where findings about a plugin point: its distribution."""
    return Span(f"<plugin {point.name} of {distribution_of(point)}>", 0, 0, 0, 0)


def load(points: Iterable[EntryPoint]) -> tuple[tuple[Plugin, ...], tuple[Diagnostic, ...]]:
    """Every plugin that loads, and a finding for every one that does not."""
    plugins: list[Plugin] = []
    findings: list[Diagnostic] = []
    names: dict[str, EntryPoint] = {}
    for point in points:
        if point.name in names:
            findings.append(_name_taken(point, names[point.name]))
            continue
        names[point.name] = point
        try:
            plugins.append(_load_one(point))
        except Exception as error:  # noqa: BLE001 - a stranger's code may raise anything
            findings.append(broken(place_of(point), point.name, error))
    return tuple(plugins), tuple(findings)


def broken(place: Span, name: str, error: BaseException) -> Diagnostic:
    """The finding that a plugin's code failed."""
    words = " ".join(str(error).split())[:200]
    return codes.PLUGIN_BROKEN.at(
        place,
        f"plugin '{name}' failed: {type(error).__name__}: {words}",
        help="update or uninstall that distribution",
    )


def _name_taken(point: EntryPoint, first: EntryPoint) -> Diagnostic:
    return codes.PLUGIN_CLASH.at(
        place_of(point),
        f"the plugin name '{point.name}' is taken by {distribution_of(first)}",
        help="uninstall one of the two",
    )


def _load_one(point: EntryPoint) -> Plugin:
    manager = pluggy.PluginManager("binder")
    manager.add_hookspecs(hooks)
    manager.register(point.load(), name=point.name)
    manager.check_pending()
    version = _told(point.dist)[1] if point.dist is not None else "?"
    given = {short: _collected(manager, short, types) for short, types in _HOOKS.items()}
    given["kinds"] = tuple(_signed(kind, point.name) for kind in given["kinds"])
    return Plugin(point.name, distribution_of(point), version, **given)


def _signed(kind: Kind, plugin: str) -> Kind:
    return Kind(kind.slot, kind.key, kind.model, kind.says, plugin)


def _collected(
    manager: pluggy.PluginManager, short: str, types: tuple[type, ...]
) -> tuple[Any, ...]:
    caller = getattr(manager.hook, f"binder_{short}")
    found: list[Any] = []
    for answer in caller():
        found.extend(_checked(answer, short, types))
    return tuple(found)


def _checked(answer: object, short: str, types: tuple[type, ...]) -> Sequence[Any]:
    if not isinstance(answer, (list, tuple)):
        message = f"binder_{short} must return a sequence"
        raise TypeError(message)
    for one in answer:
        if not isinstance(one, types):
            wanted = " or ".join(kind.__name__ for kind in types)
            message = f"binder_{short} returned a {type(one).__name__}, not a {wanted}"
            raise TypeError(message)
    return answer
