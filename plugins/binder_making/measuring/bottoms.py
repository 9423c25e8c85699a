"""The bottom of a narrow groove to what tells it: a blade that reaches, else dial and clip."""

from __future__ import annotations

from collections.abc import Iterable

from binder_making.measuring.judging import Grade, Instrument, judge

# Narrower than this the tips of a caliper's jaws stand on the walls, in mm; the anvils of a
# micrometer want four times that. Common practice, no source.
_JAWS_MM = 1.5
_THIN = ("blade", "point", "groove")


def reached_by(
    wide_mm: float, limits_mm: tuple[float, float], way: str, owned: Iterable[Instrument]
) -> str | None:
    """The instrument that reads the bottom of a groove round a shaft, or in a bore.

    `way` is outside or inside. '' where nothing owned reaches it, None where the groove is wide
    enough for jaws: it is read as any other size.
    """
    if wide_mm >= _JAWS_MM:
        return None
    thin = (one for one in owned if any(word in one.name.lower() for word in _THIN))
    verdict = judge(*limits_mm, way, tuple(thin))
    if verdict.instrument is None:
        return ""
    return f"{verdict.instrument.name}{'' if verdict.grade is Grade.GOOD else ', read twice'}"


def fed_mm(from_mm: float, limits_mm: tuple[float, float]) -> tuple[float, float]:
    """The least and the most that the tool is fed from the touch on a diameter, all in mm.

    The dial of a cross-slide is read as it moves: half of what the diameter loses or gains.
    """
    found = sorted(abs(from_mm - one) / 2 for one in limits_mm)
    return found[0], found[1]
