"""`python -m tests.bench.solids`: the time to make, measure and draw solids, and its growth.

What one process does is told in processor time, for the machines are noisy; what two do, and
what a kept answer saves, by the clock.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from binder_solid import bodies, outlines
from binder_solid.cache import Store
from binder_solid.forms import Box, Cut, Cylinder, Form, Frame, Joined, Raised
from binder_solid.jobs import Job
from binder_solid.spread import drawn_all
from binder_solid.views import Projection
from binder_solid.work import worked

SIDES: tuple[Projection, ...] = ("front", "top", "right", "isometric")
ROUNDS = 3


def usual_part(number: int) -> Form:
    """Gives one of the usual kinds of part, no two of the same size."""
    more = 0.01 * number
    kinds: tuple[Callable[[float], Form], ...] = (
        lambda size: bodies.turned_steps([(10 + size, 5), (6, 20 + size), (8, 3)]),
        lambda size: Cut(bodies.round_bar(12 + size, 30), (bodies.drilled(5, 18),)),
        lambda size: Cut(
            bodies.round_bar(12 + size, 40), (Cylinder(1.5, 40, Frame((20, 0, -20))),)
        ),
        lambda size: bodies.flat_on(bodies.round_bar(12, 30 + size), 6, 10, 8, 4),
        lambda size: Cut(
            Box(60 + size, 30, 8),
            tuple(Cylinder(2, 10, Frame((x, y, -1))) for x in (6, 54) for y in (6, 24)),
        ),
        lambda size: Cut(
            Box(40 + size, 25, 20),
            (Box(50, 8, 8, Frame((-1, 9, 13))), Cylinder(3, 30, Frame((20, 26, 6), (0, -1, 0)))),
        ),
        lambda size: Raised(outlines.rounded_rectangle(50 + size, 20, 5), 3),
        lambda size: Joined((Box(40, 30, 5 + size), Cylinder(8, 20, Frame((20, 15, 0))))),
        lambda size: bodies.hexagon_bar(10 + size, 18),
        lambda size: bodies.vee_pulley(40 + size, 12, 5, 40, 2, 6),
    )
    return kinds[number % len(kinds)](more)


def main() -> None:
    """Measures and prints the table."""
    print(f"kernel loaded in {_import_time() * 1000:.0f} ms (target: at most 1,000)")
    worked(Job(Box(1, 1, 1), SIDES))
    times = sorted(_least(Job(usual_part(number), SIDES)) for number in range(40))
    mean = sum(times) / len(times)
    print(f"solid and four views: {mean * 1000:.0f} ms on average (target: at most 50)")
    print(f"the slowest of 40: {times[-1] * 1000:.0f} ms (target: at most 150)")
    print(f"400 holes in a plate: {_least(_sieve()):.2f} s (target: at most 0.5)")
    jobs = [Job(usual_part(n), SIDES) for n in range(1000, 1200)]
    with tempfile.TemporaryDirectory() as folder:
        store = Store(Path(folder))
        one = _seconds(lambda: drawn_all(jobs, workers=1))
        two = _seconds(lambda: drawn_all(jobs, store, workers=2))
        again = _seconds(lambda: drawn_all(jobs, store))
    print(f"200 parts: {one:.1f} s by one process, {two:.1f} s by two: {one / two:.2f} times")
    print(f"200 parts with nothing changed: {again * 1000:.0f} ms")


def _sieve() -> Job:
    places = [(5 + 10 * x, 5 + 10 * y, -1.0) for x in range(20) for y in range(20)]
    holes = tuple(Cylinder(3, 7, Frame((float(x), float(y), z))) for x, y, z in places)
    return Job(Cut(Box(200, 200, 5), holes))


def _import_time() -> float:
    code = "import time; t = time.process_time(); import binder_solid.kernel.project; "
    done = subprocess.run(
        [sys.executable, "-c", f"{code}print(time.process_time() - t)"],
        check=True,
        capture_output=True,
        text=True,
    )
    return float(done.stdout)


def _least(job: Job) -> float:
    from binder_solid.kernel.shapes import solid_of

    found = []
    for _ in range(ROUNDS):
        solid_of.cache_clear()
        start = time.process_time()
        worked(job)
        found.append(time.process_time() - start)
    return min(found)


def _seconds(job: Callable[[], object]) -> float:
    start = time.perf_counter()
    job()
    return time.perf_counter() - start


if __name__ == "__main__":
    main()
