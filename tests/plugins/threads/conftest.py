"""What the tests of threads share: a spec compiled in a workshop of a few lines."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host

Compile = Callable[..., Outcome]


@pytest.fixture
def shop(host: Host, tmp_path: Path) -> Callable[[str], Compile]:
    """Compiles a spec in a workshop that has just these tools."""

    def with_tools(tools: str) -> Compile:
        workshop = tmp_path / "shop.yaml"
        text = f"format: 1\nname: a small shop\nunits: mm\n{tools}"
        workshop.write_text(text, encoding="utf-8")

        def run(text: str, upto: Phase = Phase.CHECK) -> Outcome:
            spec = tmp_path / "trial.yaml"
            spec.write_text(text, encoding="utf-8")
            return compiled(Job(spec, workshop), host, upto)

        return run

    return with_tools
