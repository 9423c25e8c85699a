"""A fastener to the lengths that are sold of it, in mm and as they are asked for."""

from __future__ import annotations

from fractions import Fraction

from binder_plugins.fasteners.asking import Asked
from binder_trade.fastening import FastenerName
from binder_trade.hardware import GRUB_DRIVES, Grub, NotListed, grub

_MM_PER_INCH = Fraction(254, 10)
_FINEST = 64


def sold(asked: Asked) -> dict[float, str]:
    """The lengths sold, each with its words, short to long; raises NotListed."""
    from binder_trade import hardware

    name = asked.name
    if name.kind in ("screw", "bolt"):
        head = name.head or usual_head(asked)
        return dict(
            zip(
                hardware.lengths(head, asked.key),
                hardware.length_texts(head, asked.key),
                strict=True,
            )
        )
    if name.kind == "wood screw":
        screw = hardware.wood_screw(_number(name.thread_text))
        return dict(zip(screw.lengths_mm, screw.length_texts, strict=True))
    if name.kind == "rivet":
        rivet = hardware.rivet(name.diameter_text, name.head or "snap")
        return dict(zip(rivet.lengths_mm, rivet.length_texts, strict=True))
    is_inch = asked.thread is not None and asked.thread.family != "metric"
    is_inch = is_inch or _is_numbered(name)
    return {mm: bought_text(mm, is_inch=is_inch) for mm in _plain(asked)}


def _plain(asked: Asked) -> tuple[float, ...]:
    from binder_trade import hardware

    name, across = asked.name, asked.diameter_mm or 0.0
    if name.kind == "grub screw":
        return _grub(asked).lengths_mm
    if name.kind == "dowel pin":
        return hardware.dowel(across).lengths_mm
    if name.kind == "roll pin":
        return hardware.spring_pin(across).lengths_mm
    if _is_numbered(name):
        return hardware.inch_taper_pin(name.thread_text.removeprefix("no. ")).lengths_mm
    if name.kind == "taper pin":
        return hardware.taper_pin(across).lengths_mm
    if name.kind == "split pin":
        return hardware.split_pin(across).lengths_mm
    raise hardware.NotListed(f"no lengths are listed for a {name.kind}", "write its length")


def _is_numbered(name: FastenerName) -> bool:
    """A taper pin of the inch table, named by its number."""
    return name.kind == "taper pin" and name.thread_text.startswith("no. ")


def _grub(asked: Asked) -> Grub:
    """As asked for; where no drive is named, the one that this size is sold with."""
    point, drive = asked.name.point or "cup", asked.name.drive
    for one in (drive,) if drive else GRUB_DRIVES[:-1]:
        try:
            return grub(point, asked.key, one)
        except NotListed:
            continue
    return grub(point, asked.key, drive or GRUB_DRIVES[-1])


def usual_head(asked: Asked) -> str:
    """The head of a screw whose words name none: what is commonest in its system."""
    if asked.name.kind == "bolt":
        return "hexagon bolt"
    family = asked.thread.family if asked.thread is not None else ""
    return "cheese" if family == "BA" else "hexagon bolt" if family.startswith("BS") else "cap"


def bought_text(mm: float, *, is_inch: bool) -> str:
    """A length as it is asked for: `16 mm`, `3/8 in`."""
    if not is_inch:
        return f"{mm:g} mm"
    inches = (Fraction(mm).limit_denominator(10**6) / _MM_PER_INCH).limit_denominator(_FINEST)
    whole, rest = divmod(inches.numerator, inches.denominator)
    parts = [str(whole)] if whole else []
    return " ".join([*parts, *([f"{rest}/{inches.denominator}"] if rest else []), "in"])


def _number(text: str) -> int:
    return int(text.removeprefix("no. "))
