"""The example specs are the product's face: each compiles whole and without a finding."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from binder.api import HardwareFact, ThreadFact
from binder.compiler import Job, Phase, compiled
from binder.diagnostics.text import as_text
from binder.host import Host

ROOT = Path(__file__).parent.parent
SPECS = ("screw-jack", "tilt-hammer", "wharf-crane")
INCH = ROOT / "specs" / "workshops" / "inch.yaml"


# What another workshop may lack, each with a way out: nothing else changes for the worse.
LACKING = {
    "dovetail-cutter-not-owned",
    "drill-not-owned",
    "gear-cutter-not-owned",
    "gib-screws-have-no-room",
    "hardware-not-listed",
    "knurl-not-owned",
    "lookalike-thread",
    "reamer-not-owned",
    "tap-or-die-not-owned",
}


@pytest.mark.parametrize("name", SPECS)
def test_an_example_compiles_without_a_finding(name: str, host: Host) -> None:
    outcome = compiled(Job(ROOT / "specs" / name / f"{name}.yaml"), host)
    texts = outcome.document.texts if outcome.document else {}
    assert as_text(outcome.findings, texts) == ""
    assert outcome.binder is not None


@pytest.mark.parametrize(
    ("name", "upto"),
    [
        ("screw-jack", Phase.COMPOSE),
        ("tilt-hammer", Phase.COMPOSE),
        ("wharf-crane", Phase.CHECK),
    ],
)
def test_in_the_inch_workshop_only_tools_are_lacking_and_each_has_a_way_out(
    name: str, upto: Phase, host: Host
) -> None:
    outcome = compiled(Job(ROOT / "specs" / name / f"{name}.yaml", INCH), host, upto)
    assert (outcome.binder is not None) == (upto is Phase.COMPOSE)
    assert outcome.design is not None
    assert outcome.findings
    assert {one.code.name for one in outcome.findings} <= LACKING
    assert all(one.help for one in outcome.findings)


def test_another_workshop_changes_drills_screws_and_substitutes(host: Host) -> None:
    spec = ROOT / "specs" / "tilt-hammer" / "tilt-hammer.yaml"
    metric, inch = (compiled(Job(spec, shop), host, Phase.CHECK) for shop in (None, INCH))
    assert metric.design is not None
    assert inch.design is not None
    drills = [
        {one.subject: one.drill for one in run.facts.all(ThreadFact) if one.is_internal}
        for run in (metric.design, inch.design)
    ]
    assert drills[0]["pedestal.oil"] == "3.3 mm"
    assert drills[1]["pedestal.oil"] == "no. 30 drill"  # 0.1285 in, the nearest to 3.3 mm
    grubs = [
        {
            one.what
            for one in run.facts.all(HardwareFact)
            if "grub" in one.what and "gib" not in one.what
        }
        for run in (metric.design, inch.design)
    ]
    assert all(what.startswith("M3") for what in grubs[0])
    assert all(what.startswith("4-40 UNC") for what in grubs[1])
    helps = [one.help for one in inch.findings if "no tap for M3" in one.message]
    assert any("5 BA serves: drill 7/64 in" in text for text in helps)


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
