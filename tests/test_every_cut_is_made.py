"""What a leaf says is cut in a part is cut by an act: on the leaf, together, or at assembly."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from binder.api import Design, HalfFact, TogetherFact
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.operations.facts import Route

ROOT = Path(__file__).parent.parent
SPECS = ("screw-jack", "tilt-hammer", "wharf-crane")


def design_of(name: str, host: Host) -> Design:
    """A model of the examples as it is planned."""
    outcome = compiled(Job(ROOT / "specs" / name / f"{name}.yaml"), host, Phase.CHECK)
    assert outcome.design is not None
    return outcome.design


def places_worked(design: Design) -> Iterator[str]:
    """`item.place` of all that is cut: by a part's own acts, or in work on parts together."""
    for route in design.facts.all(Route):
        for act in route.acts:
            feature = act.feature.partition(",")[0]
            yield f"{route.subject}.{feature}"
            # On a task's leaf an act is still of one part, after which it is numbered.
            yield f"{act.id.partition(' ')[0]}.{feature}"
            # One countersink makes the mouths of all holes that it is said to meet.
            yield from (f"{route.subject}.{one}" for one in act.meets if act.act == "countersink")
    for fact in design.facts.all(TogetherFact):
        yield from fact.left
        yield from (place for line in fact.lines for place in line)


@pytest.mark.parametrize("name", SPECS)
def test_every_feature_has_an_act(name: str, host: Host) -> None:
    """A seat is cut with the hole that it belongs to. No source: a plan that leaves out what it
    lists is none."""
    design = design_of(name, host)
    worked = set(places_worked(design))
    features = {f"{one.owner}.{one.name}" for one in design.features()}
    assert features
    assert {one for one in features if not {one, one.removesuffix("_seat")} & worked} == set()


@pytest.mark.parametrize(("name", "count"), [("tilt-hammer", 3), ("wharf-crane", 1)])
def test_pilot_holes_of_wood_screws_are_drilled_at_assembly_or_for_the_reamer(
    name: str, count: int, host: Host
) -> None:
    """Brass twists off in hardwood without a pilot hole and a steel screw before it. Common
    practice, no source."""
    design = design_of(name, host)
    halves = [one for one in design.facts.all(HalfFact) if one.what.startswith("pilot hole")]
    acts = [act.what for route in design.facts.all(Route) for act in route.acts]
    said = str([*assembly_pages(design, ()), *acts])
    assert len(halves) == count
    drilled = re.findall(r"with a [\d.]+ mm drill", said)
    assert len(drilled) == count
    assert said.count("run a steel screw in and out of each") == count
