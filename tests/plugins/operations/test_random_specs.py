"""Random parts and joints through the plugin: every must kept, no run like no other.

What goes before what is common practice, no source; the judge knows the reasons alone.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, example, given, settings
from hypothesis import strategies as st

from binder.api import Design
from binder.compiler import Job, compiled
from binder.compiler import Phase as Upto
from binder.host import Host
from binder_making.precedence import edges
from binder_plugins.operations.facts import Route
from binder_plugins.operations.ordered import operations_of, route_edges
from binder_plugins.operations.planning import WorkPlan, plan_work, whole
from tests.making.order.judge import broken, is_missed
from tests.plugins.operations.conftest import HEAD
from tests.plugins.operations.random_specs import specs

# A frame that is glued, and then has a bore: it was once bored first, and glued the same evening.
GLUED = (
    f"{HEAD}  side: {{material: brass, stock: plate, quantity: 2,"
    " plate: {length: 60 mm, width: 40 mm, thickness: 6 mm}}\n"
    "fabrications:\n  frame: {pieces: [2 off side], joined: glued, features:"
    " {bore: {reamed: 6 mm, on: top, depth: through, at: 15 mm from left}}}\n"
)
SOME = settings(max_examples=25, suppress_health_check=list(HealthCheck), deadline=None)
PRINT_PLANS = """
import sys
from tests.plugins.operations.test_random_specs import plans
print(plans(sys.argv[1:]))
"""


class Bench:
    """Specs in texts to designs and plans, all in one folder."""

    def __init__(self, host: Host, folder: Path) -> None:
        self.host = host
        self.spec = folder / "random.yaml"

    def design(self, text: str) -> Design:
        """The design of a spec, which has to check without an error."""
        self.spec.write_text(text, encoding="utf-8")
        outcome = compiled(Job(self.spec), self.host, Upto.CHECK)
        assert outcome.design is not None
        assert not outcome.has_errors, [one.message for one in outcome.findings]
        assert all(one.code.name != "plugin-broken" for one in outcome.findings)
        return outcome.design


@pytest.fixture(scope="module")
def bench(host: Host, tmp_path_factory: pytest.TempPathFactory) -> Bench:
    """A bench with all plugins."""
    return Bench(host, tmp_path_factory.mktemp("random"))


def planned(design: Design) -> WorkPlan:
    """The plan of all work."""
    return next(one for one in plan_work(design).facts if isinstance(one, WorkPlan))


def plans(files: list[str]) -> str:
    """The acts of each file in order, and its evenings, printed."""
    host = Host.load()
    lines: list[str] = []
    for file in files:
        design = compiled(Job(Path(file)), host, Upto.CHECK).design
        assert design is not None
        for route in design.facts.all(Route):
            lines += [f"{route.subject} {setup.grip} {setup.until}" for setup in route.setups]
            lines += [f"{act.what}, {act.tool}, {sorted(act.tags)}" for act in route.acts]
        lines += map(str, planned(design).evenings)
    return "\n".join(lines)


@SOME
@given(text=specs())
def test_every_leaf_keeps_every_must(bench: Bench, text: str) -> None:
    for route in bench.design(text).facts.all(Route):
        assert not route.trouble
        work = operations_of(route.subject, route.setups)
        reasons = [*edges(work), *route_edges(route.subject, route.setups)]
        musts = [one for one in reasons if one.is_must]
        assert not broken([one.id for one in work], musts)


@SOME
@given(text=specs())
@example(text=GLUED)
def test_the_evenings_keep_every_must_and_every_cure(bench: Bench, text: str) -> None:
    """A glued joint is left over night; common practice, and every maker's data sheet."""
    design = bench.design(text)
    found, plan = whole(design), planned(design)
    told = [(name.split(", part ")[0], one.number) for one in plan.evenings for name in one.jobs]
    jobs = [name for name, _ in told]
    assert set(jobs) == set(plan.pieces)
    first = {name: len(jobs) - 1 - place for place, name in enumerate(reversed(jobs))}
    last = {name: place for place, name in enumerate(jobs)}
    evening_of = dict(told)
    cures = {name.split(", part ")[0] for one in plan.evenings for name in one.cures}
    for edge in found.reasons:
        before, after = found.piece_of[edge.before], found.piece_of[edge.after]
        if edge.is_must and before != after:
            assert last[before] < first[after], edge
            assert before not in cures or evening_of[before] < evening_of[after], edge


@SOME
@given(text=specs(), data=st.data())
def test_any_missing_edge_is_seen(bench: Bench, text: str, data: st.DataObject) -> None:
    design = bench.design(text)
    found = whole(design)
    musts = [one for one in found.reasons if one.is_must]
    assert is_missed(found.operations, musts, data.draw(st.sampled_from(musts)))
    route = data.draw(st.sampled_from(list(design.facts.all(Route))))
    work = operations_of(route.subject, route.setups)
    reasons = [*edges(work), *route_edges(route.subject, route.setups)]
    musts = [one for one in reasons if one.is_must]
    assert is_missed(work, musts, data.draw(st.sampled_from(musts)))


def test_the_same_on_every_run_whatever_the_seed_of_hashes(tmp_path: Path) -> None:
    texts: list[str] = []

    @settings(SOME, max_examples=6, derandomize=True, database=None, phases=[Phase.generate])
    @given(text=specs())
    def gather(text: str) -> None:
        texts.append(text)

    gather()
    files = [tmp_path / f"{number}.yaml" for number in range(len(texts))]
    for file, text in zip(files, texts, strict=True):
        file.write_text(text, encoding="utf-8")
    assert _printed(files, "1") == _printed(files, "2")


def _printed(files: list[Path], seed: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", PRINT_PLANS, *map(str, files)],
        env={**os.environ, "PYTHONHASHSEED": seed},
        cwd=Path(__file__).parents[3],
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout
