"""What many tests share: the host loaded once, and a spec in a text compiled."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host

Compile = Callable[..., Outcome]

# A property is true or false; how long it takes belongs to the benchmarks.
settings.register_profile("untimed", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("untimed")


@pytest.fixture(scope="session", autouse=True)
def own_cache(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Solids are kept in a folder that the workers of this run share, not among the user's."""
    own = tmp_path_factory.getbasetemp()
    shared = own.parent if "PYTEST_XDIST_WORKER" in os.environ else own
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("BINDER_CACHE", str(shared / "kept"))
        yield


@pytest.fixture(scope="session")
def host() -> Host:
    """The installed plugins."""
    return Host.load()


@pytest.fixture
def compile_text(host: Host, tmp_path: Path) -> Compile:
    """Compiles a spec in a text, as far as a phase."""

    def run(text: str, upto: Phase = Phase.CHECK, *overrides: str) -> Outcome:
        spec = tmp_path / "trial.yaml"
        spec.write_text(text, encoding="utf-8")
        return compiled(Job(spec, None, overrides), host, upto)

    return run
