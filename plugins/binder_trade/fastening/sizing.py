"""The sizes in a fastener's name given their parts: what is across, and what is long."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.sizes import Size
from binder_trade.fastening.thread_words import ThreadWords

THREADED: Final = ("screw", "bolt", "nut", "stud", "grub screw")
NUMBERED: Final = ("wood screw", "taper pin", "woodruff key")
FREE_SIZED: Final = (
    "rivet",
    "dowel pin",
    "roll pin",
    "taper pin",
    "split pin",
    "external circlip",
    "internal circlip",
    "e-clip",
    "parallel key",
    "woodruff key",
)
_KEYS: Final = ("parallel key", "woodruff key")
_SLENDER: Final = ("rivet", "dowel pin", "roll pin", "taper pin", "split pin")
_SHORT: Final = ("nut", "washer", "external circlip", "internal circlip", "e-clip")


@dataclass(frozen=True, slots=True)
class Sizes:
    """Lengths in mm with their words; None and '' where the name does not say."""

    across_mm: float | None = None
    across_text: str = ""
    height_mm: float | None = None
    length_mm: float | None = None
    length_text: str = ""


def settle_sizes(
    kind: str, thread: ThreadWords | None, heard: Sequence[tuple[Size, str]], text: str
) -> Sizes:
    """What each size of a name is; raises Unreadable where one is missing, odd or without unit."""
    _check_thread(kind, thread, text)
    known = _with_units(heard, thread, text)
    for size, _role in known:
        if size.value <= 0:
            raise Unreadable(f"{quoted(text)} has a size of nothing", "give its true size")
    length = [size for size, role in known if role == "length"]
    across = [size for size, role in known if role != "length"]
    if thread is not None:
        length, across = length + across, []
    elif not length and len(across) > 1 and not _is_height_last(kind, across):
        length = [across.pop()]
    if len(length) > 1 or len(across) > (2 if kind in _KEYS else 1):
        raise Unreadable(f"{quoted(text)} has more sizes than a {kind}", _example(kind))
    if length and kind in _SHORT:
        raise Unreadable(f"{quoted(text)}: a {kind} has no length", _example(kind))
    _check_slender(kind, across, length, text)
    return _sizes(across, length)


def _check_slender(kind: str, across: Sequence[Size], length: Sequence[Size], text: str) -> None:
    """A pin or rivet is longer than it is thick, so the other way round is a slip."""
    if kind in _SLENDER and across and length and length[0].mm < across[0].mm:
        raise Unreadable(
            f"{quoted(text)} is thicker than it is long",
            f"write the thickness first: {length[0].says} x {across[0].says}",
        )


def _check_thread(kind: str, thread: ThreadWords | None, text: str) -> None:
    if thread is None:
        if kind in THREADED:
            raise Unreadable(f"{quoted(text)} names no thread", _example(kind))
        return
    is_number = thread.text.startswith("no. ")
    if is_number and kind not in NUMBERED:
        raise Unreadable(f"{quoted(text)}: no. says no thread of a {kind}", _example(kind))
    if not is_number and kind in FREE_SIZED:
        raise Unreadable(f"{quoted(text)}: a {kind} has no thread", _example(kind))


def _with_units(
    heard: Sequence[tuple[Size, str]], thread: ThreadWords | None, text: str
) -> list[tuple[Size, str]]:
    return [(_with_unit(size, heard, thread, text), role) for size, role in heard]


def _with_unit(
    size: Size, heard: Sequence[tuple[Size, str]], thread: ThreadWords | None, text: str
) -> Size:
    """A bare number takes the unit of its thread, else of the other sizes of the name."""
    if size.unit:
        return size
    if thread is not None and (thread.takes_whole_inches or size.is_fraction):
        return size.in_unit(thread.length_unit)
    others = {other.unit for other, _role in heard if other.unit}
    if len(others) == 1:
        return size.in_unit(others.pop())
    if size.is_fraction:
        return size.in_unit("in")
    raise Unreadable(
        f"{quoted(text)} gives {size.text} without a unit",
        f"write {size.text} mm or {size.text} in",
    )


def _is_height_last(kind: str, across: Sequence[Size]) -> bool:
    """Of a key's two sizes the second is its height; a long key says its length third."""
    if kind not in _KEYS or len(across) != 2:
        return False
    return kind == "woodruff key" or across[1].mm <= across[0].mm


def _sizes(across: Sequence[Size], length: Sequence[Size]) -> Sizes:
    return Sizes(
        across_mm=across[0].mm if across else None,
        across_text=" × ".join(size.says for size in across),
        height_mm=across[1].mm if len(across) > 1 else None,
        length_mm=length[0].mm if length else None,
        length_text=length[0].says if length else "",
    )


def _example(kind: str) -> str:
    examples = {
        "nut": "M3 hexagon nut",
        "washer": "M3 washer",
        "wood screw": "no. 6 x 3/4 in brass wood screw",
        "rivet": "1 mm round head copper rivet, 6 mm long",
        "taper pin": "2 mm x 20 mm taper pin",
        "parallel key": "3 mm x 3 mm x 12 mm parallel key",
        "woodruff key": "2 mm x 2.6 mm woodruff key",
        "external circlip": "8 mm external circlip",
        "internal circlip": "20 mm internal circlip",
    }
    return f"write for example: {examples.get(kind, _like(kind))}"


def _like(kind: str) -> str:
    return f"M3 x 10 {kind}" if kind in THREADED else f"3 mm x 16 mm {kind}"
