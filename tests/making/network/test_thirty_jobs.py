"""The critical path of a project of a public library, with its printed length."""

from __future__ import annotations

from binder_making.network import Activity, critical_path

# PSPLIB, set j30, instance j301_1 (read): jobs 1 to 32, duration and successors; MPM-Time 38.
JOBS = """
0: 2 3 4 | 8: 6 11 15 | 4: 7 8 13 | 6: 5 9 10 | 3: 20 | 8: 30 | 5: 27 | 9: 12 19 27
2: 14 | 7: 16 25 | 9: 20 26 | 2: 14 | 6: 17 18 | 3: 17 | 9: 25 | 10: 21 22
6: 22 | 5: 20 22 | 3: 24 29 | 7: 23 25 | 2: 28 | 7: 23 | 2: 24 | 3: 30
3: 30 | 7: 31 | 8: 28 | 3: 31 | 7: 32 | 2: 32 | 2: 32 | 0:
"""


def project() -> list[Activity]:
    """The jobs with what each waits for."""
    rows = [row.partition(":") for line in JOBS.strip().splitlines() for row in line.split("|")]
    follow = [later.split() for _, _, later in rows]
    return [
        Activity(
            str(number),
            float(duration),
            tuple(str(n) for n, later in enumerate(follow, 1) if str(number) in later),
        )
        for number, (duration, _, _) in enumerate(rows, 1)
    ]


def test_the_printed_length() -> None:
    jobs = project()
    assert len(jobs) == 32
    net = critical_path(jobs)
    assert net.length == 38
    assert net.path[0] == "1"
    assert net.path[-1] == "32"
    assert sum(one.duration for one in jobs if one.id in net.path) == 38
