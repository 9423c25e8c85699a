"""The example specs are the product's face: each compiles whole and without a finding."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from binder.compiler import Job, compiled
from binder.diagnostics.text import as_text
from binder.host import Host

ROOT = Path(__file__).parent.parent
SPECS = ("screw-jack", "tilt-hammer", "wharf-crane")
INCH = ROOT / "specs" / "workshops" / "inch.yaml"


@pytest.mark.parametrize("workshop", [None, INCH], ids=["default", "inch"])
@pytest.mark.parametrize("name", SPECS)
def test_an_example_compiles_without_a_finding(
    name: str, workshop: Path | None, host: Host
) -> None:
    outcome = compiled(Job(ROOT / "specs" / name / f"{name}.yaml", workshop), host)
    texts = outcome.document.texts if outcome.document else {}
    assert as_text(outcome.findings, texts) == ""
    assert outcome.binder is not None


def test_the_spec_in_the_readme_gives_what_the_readme_says(host: Host, tmp_path: Path) -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    text = re.findall(r"```yaml\n(.*?)```", readme, re.DOTALL)[0]
    spec = tmp_path / "bob.yaml"
    spec.write_text(text, encoding="utf-8")
    outcome = compiled(Job(spec), host)
    assert not outcome.findings
    assert outcome.design is not None
    cut = outcome.design.workings["bob.cut"]
    assert "63.5 mm" in cut.formula
    assert cut.result in readme


def test_every_link_of_a_binder_has_its_target(host: Host) -> None:
    from binder.render import render_html

    outcome = compiled(Job(ROOT / "specs" / "wharf-crane" / "wharf-crane.yaml"), host)
    assert outcome.binder is not None
    page = render_html(outcome.binder)
    targets = set(re.findall(r'id="([^"]+)"', page))
    links = set(re.findall(r'href="#([^"]+)"', page))
    assert links
    assert links <= targets
