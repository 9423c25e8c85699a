"""Any text gets a finding or a binder, never an exception: mutants of the example specs.

Bytes, words and lines are changed, dropped and doubled, with a fixed seed. Some mutants must
still compile, else the changes would be too coarse to reach the later phases.
"""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from binder.compiler import Job, Phase, compiled
from binder.host import Host

ROOT = Path(__file__).parent.parent / "specs"
SEEDS = (
    ROOT / "screw-jack" / "screw-jack.yaml",
    ROOT / "tilt-hammer" / "fittings.yaml",
    ROOT.parent / "binder" / "cli" / "starter.yaml",
)
HEAD = "format: 1\nmodel: {title: Mutant, issue: A, units: mm}\n"
MUTANTS = 300
ODD = (
    *("0", "-1", "1e99", "½", "'", '"', "{", "}", "[", "]", ":", "#", "&a", "*a", "!!x", "\t"),
    *("\u202e", "9" * 40, "rest", "through", "mm", "/", "(", ")", ",", "~", "yes", "|", ">", "%"),
)


def _mutated(text: str, dice: random.Random) -> str:
    lines = text.split("\n")
    for _ in range(dice.randint(1, 3)):
        kind = dice.randrange(5)
        place = dice.randrange(len(lines))
        line = lines[place]
        if kind == 0:
            lines[place] = line[: dice.randrange(len(line) + 1)]
        elif kind == 1:
            lines.insert(place, lines[dice.randrange(len(lines))])
        elif kind == 2 and len(lines) > 3:
            del lines[place]
        else:
            words = line.split(" ")
            at = dice.randrange(len(words))
            words[at] = dice.choice(ODD) if kind == 3 else words[dice.randrange(len(words))]
            lines[place] = " ".join(words)
    return "\n".join(lines)


@pytest.mark.parametrize("seed", range(len(SEEDS)), ids=[path.stem for path in SEEDS])
def test_no_mutant_escapes(seed: int, host: Host, tmp_path: Path) -> None:
    text = SEEDS[seed].read_text(encoding="utf-8")
    text = text if "format:" in text else f"{HEAD}{text}"
    dice = random.Random(seed)
    spec = tmp_path / "mutant.yaml"
    passed = 0
    for number in range(MUTANTS):
        spec.write_text(_mutated(text, dice), encoding="utf-8", errors="surrogatepass")
        outcome = compiled(Job(spec), host, Phase.COMPOSE if number % 5 == 0 else Phase.CHECK)
        codes = [one.code.name for one in outcome.findings]
        assert "plugin-broken" not in codes, (number, outcome.findings)
        assert outcome.findings or outcome.design is not None
        passed += not outcome.has_errors
    assert passed >= MUTANTS // 20
