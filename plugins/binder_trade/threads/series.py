"""Turns the tables of the series into the threads that are made, in order of size."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.threads.ba import ba_sizes
from binder_trade.threads.basic import FAMILIES, INCH, Size, build
from binder_trade.threads.inches import is_close, size_mm
from binder_trade.threads.thread import NotMade, Thread

_RETIRED: Final = "metric_retired"
_USUAL_ME_UP_TO_MM: Final = 0.25 * INCH


def table(name: str) -> Any:  # noqa: ANN401 - the shape is the table's own
    """A table of data/series.yaml by its key."""
    return load_data("binder_trade.threads", "series.yaml")[name]


@cache
def all_threads(family: str) -> tuple[Thread, ...]:
    """Every listed thread of a family, thin to thick and coarse before fine.

    Raises NotMade for a family that is none. Sources: data/series.yaml, BS 93 for BA.
    """
    if family not in FAMILIES:
        raise NotMade(
            f"there is no family of threads called {str(family)[:40]!r}",
            f"use one of {', '.join(FAMILIES)}",
        )
    listed = sorted(_sizes(family), key=lambda size: (size.major_mm, -size.pitch_mm))
    return tuple(build(size) for size in listed)


def is_listed(thread: Thread) -> bool:
    """Whether the series of its family lists the thread, whichever hand it has."""
    return any(_is_of_size(thread, one) for one in all_threads(thread.family))


def choice(thread: Thread) -> int:
    """1, 2 or 3: how far ISO 261 would have the diameter preferred; 1 for other families."""
    if thread.family != "metric":
        return 1
    rows = (*table("metric")["rows"], *table(_RETIRED)["rows"])
    return min((row[1] for row in rows if is_close(row[0], thread.major_mm)), default=3)


def metric_designation(major_mm: float, pitch_mm: float, *, is_coarse: bool) -> str:
    """`M6`, or `M8 x 1` where the pitch is not the coarse one (ISO 965-1)."""
    return f"M{major_mm:g}" + ("" if is_coarse else f" x {pitch_mm:g}")


def inch_designation(family: str, size: str, tpi: int | None) -> str:
    """`1/4-20 UNC`, `4-40 UNC`, `1/4 BSF`, `1/4 x 40 ME`, `G 1/8`."""
    size = size.removeprefix("no. ")
    if family == "BSP":
        return f"G {size}"
    if family in {"BSW", "BSF"}:
        return f"{size} {family}"
    count = "4 1/2" if tpi is None else str(tpi)
    return f"{size}-{count} {family}" if family.startswith("UN") else f"{size} x {count} {family}"


def _is_of_size(one: Thread, other: Thread) -> bool:
    return is_close(one.major_mm, other.major_mm) and is_close(one.pitch_mm, other.pitch_mm)


def _sizes(family: str) -> Iterator[Size]:
    if family == "metric":
        yield from _metric_sizes()
    elif family == "BA":
        yield from ba_sizes()
    elif family == "BSP":
        yield from _pipe_sizes()
    else:
        yield from _inch_sizes(family)


def _metric_sizes() -> Iterator[Size]:
    for major, _, coarse, fine in (*table("metric")["rows"], *table(_RETIRED)["rows"]):
        for pitch in (coarse, *fine):
            if pitch is not None:
                text = metric_designation(major, pitch, is_coarse=pitch == coarse)
                yield Size("metric", text, float(major), float(pitch), None, pitch == coarse)


def _pipe_sizes() -> Iterator[Size]:
    for size, (tpi, major) in table("BSP")["rows"].items():
        yield Size(
            "BSP", inch_designation("BSP", size, tpi), major, INCH / tpi, tpi, is_coarse=True
        )


def _inch_sizes(family: str) -> Iterator[Size]:
    for size, counts in table(family)["rows"].items():
        for count in counts if isinstance(counts, list) else (counts,):
            yield inch_size(family, size, count)


def inch_size(family: str, size: str, count: float) -> Size:
    """The size of an inch thread that is called by its diameter."""
    major = size_mm(size)
    if major is None:
        raise ValueError(f"{size} is no inch size")
    tpi = int(count) if count == int(count) else None
    text = inch_designation(family, size, tpi)
    return Size(family, text, major, INCH / count, tpi, _is_usual(family, major, count))


def _is_usual(family: str, major_mm: float, count: float) -> bool:
    """Whether a pitch is the one that a diameter of the family usually has.

    Model engineers use 40 to the inch up to 1/4 in and 32 above (common practice, no source).
    """
    if family == "ME":
        usual = 40 if major_mm <= _USUAL_ME_UP_TO_MM else 32
        return count in (usual, 60)
    return family != "UNS"
