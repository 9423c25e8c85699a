"""Processor seconds that the phases take for each of the named specs, the start-up taken off.

Run as `python growth.py SPEC ...`; prints one figure for each. All are measured in turns in
one process in which every plugin and table is loaded already; the least of several counts.
"""

from __future__ import annotations

import gc
import sys
import time
from pathlib import Path

from binder.compiler import Job, Phase, compiled
from binder.host import Host

ROUNDS = 3


def main(specs: list[str]) -> None:
    """Measures and prints."""
    gc.disable()  # as the command does
    host = Host.load()
    jobs = [Job(Path(spec)) for spec in specs]
    times: list[list[float]] = [[] for _ in jobs]
    for _ in range(ROUNDS):
        for job, taken in zip(jobs, times, strict=True):
            start = time.process_time()
            compiled(job, host, Phase.CHECK)
            taken.append(time.process_time() - start)
    print(*(min(taken) for taken in times))


if __name__ == "__main__":
    main(sys.argv[1:])
