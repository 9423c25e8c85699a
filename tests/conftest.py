"""What many tests share: the host loaded once, and a spec in a text compiled."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host

Compile = Callable[..., Outcome]


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
