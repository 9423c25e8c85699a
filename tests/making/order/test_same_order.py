"""The same order and the same ring, whatever the seed of Python's hashes."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

SCRIPT = """
from binder_making.operation import Operation
from binder_making.order import Loop, in_order
from binder_making.precedence import Edge, edges
from tests.making.order.many_parts import many_parts

work = many_parts(8)
print(in_order(work, edges(work)))
names = [f"op {n}" for n in range(12)]
ring = [Edge(a, b, "as it is") for a, b in zip(names, [*names[1:], names[0]])]
loop = in_order([Operation(id=name, act="file") for name in names], ring)
assert isinstance(loop, Loop)
print(loop.words)
"""


def printed(seed: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT],
        env={**os.environ, "PYTHONHASHSEED": seed},
        cwd=Path(__file__).parents[3],
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout


def test_hash_seeds() -> None:
    assert printed("1") == printed("2")
