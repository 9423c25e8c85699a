"""The words of a name settled into one kind of fastener, and said again in the trade's order."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.phrases import Said

_SOCKET: Final = "hexagon socket"
# The heads and sorts that each kind may have.
_HEADS: Final[Mapping[str, frozenset[str]]] = {
    "screw": frozenset(
        {"cap", "button", "cheese", "pan", "round", "fillister", "hexagon"}
        | {"countersunk", "raised countersunk"}
    ),
    "bolt": frozenset({"hexagon"}),
    "nut": frozenset({"hexagon", "full", "thin", "locking"}),
    "washer": frozenset({"plain", "large", "small", "spring"}),
    "wood screw": frozenset({"round", "countersunk", "raised countersunk"}),
    "rivet": frozenset({"round", "snap", "countersunk"}),
    "circlip": frozenset({"external", "internal"}),
}
_CROSSED: Final = ("pan", "countersunk", "raised countersunk")
KIND_NAMES: Final = (
    "screw",
    "bolt",
    "nut",
    "washer",
    "stud",
    "grub screw",
    "wood screw",
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


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of fastener with what its words settle about it."""

    name: str
    head: str
    drive: str
    point: str
    material: str
    also: tuple[str, ...]


def settle(said: Said, text: str) -> Kind:
    """One kind from the words; raises Unreadable where they speak against each other."""
    noun, head = _noun(said, text), _one(said.heads, "heads", text)
    also = _also(said, text)
    drive = _one(said.drives, "drives", text)
    if noun == "lock nut":
        noun, head = "nut", head or "thin"
    if noun in ("screw", "bolt", "grub screw") and "set" in said.fillers:
        noun = _set_screw(noun, head, drive, text)
    if head and head not in _HEADS.get(noun, frozenset()):
        raise Unreadable(f"{quoted(text)}: no {noun} is called {head}", _heads_of(noun))
    if noun == "circlip":
        noun, head = _circlip(head, text), ""
    return Kind(
        name=noun,
        head=_full_head(noun, head, drive),
        drive=drive or _usual_drive(noun, head),
        point=_one(said.points, "points", text),
        material=_one(said.materials, "materials", text),
        also=also,
    )


def _noun(said: Said, text: str) -> str:
    first = said.kinds[0]
    if any(kind not in ("nut", "lock nut", "washer") for kind in said.kinds[1:]):
        raise Unreadable(f"{quoted(text)} names two fasteners", "list each by itself")
    return first


def _also(said: Said, text: str) -> tuple[str, ...]:
    """`bolt, nut and washer`: what comes with the first."""
    return tuple("nut" if kind == "lock nut" else kind for kind in said.kinds[1:])


def _one(words: list[str], what: str, text: str) -> str:
    chosen = list(dict.fromkeys(words))
    if len(chosen) > 1:
        raise Unreadable(
            f"{quoted(text)} names two {what}, {chosen[0]} and {chosen[1]}", "name one of them"
        )
    return chosen[0] if chosen else ""


def _set_screw(noun: str, head: str, drive: str, text: str) -> str:
    """In Britain a hexagon screw threaded to the head, in America a grub screw."""
    if noun != "screw" or head:
        return noun
    if drive == _SOCKET:
        return "grub screw"
    raise Unreadable(
        f"{quoted(text)}: a set screw is one thing in Britain and another in America",
        "write grub screw, or hexagon screw",
    )


def _heads_of(noun: str) -> str:
    known = _HEADS.get(noun)
    return f"say one of: {', '.join(sorted(known))}" if known else f"a {noun} has no such word"


def _circlip(head: str, text: str) -> str:
    if not head:
        raise Unreadable(
            f"{quoted(text)}: a circlip sits on a shaft or in a bore",
            "write external circlip (shaft) or internal circlip (bore)",
        )
    return f"{head} circlip"


def _full_head(noun: str, head: str, drive: str) -> str:
    if noun == "screw":
        return _screw_head(head, drive)
    if noun == "nut":
        return "full" if head in ("", "hexagon") else head
    return {("bolt", "hexagon"): "hexagon bolt", ("rivet", "round"): "snap"}.get(
        (noun, head), head or {"bolt": "hexagon bolt", "washer": "plain"}.get(noun, "")
    )


def _screw_head(head: str, drive: str) -> str:
    if drive == _SOCKET and head in ("", "countersunk"):
        return "countersunk socket" if head else "cap"
    return f"{head} cross" if drive == "cross recess" and head in _CROSSED else head


def _usual_drive(noun: str, head: str) -> str:
    if noun == "screw" and head in ("cap", "button"):
        return _SOCKET
    if noun == "screw" and head in ("cheese", "round", "fillister"):
        return "slot"
    return "hexagon" if head == "hexagon" or noun in ("bolt", "nut") else ""


def say(kind: Kind, size: str, length: str) -> str:
    """The name in print: size, length, material, head, kind, point."""
    sizes = " × ".join(part.replace(" x ", " × ") for part in (size, length) if part)
    words = (sizes, kind.material, _printed_head(kind), kind.name)
    name = " ".join(word for word in words if word)
    with_point = f"{name}, {kind.point} point" if kind.point else name
    return " and ".join((with_point, *kind.also))


def _printed_head(kind: Kind) -> str:
    if kind.name == "nut":
        return {"full": "hexagon"}.get(kind.head, kind.head)
    if kind.name == "bolt":
        return "hexagon"
    if kind.name == "washer" and kind.head == "plain":
        return ""
    if kind.head in ("cheese", "pan", "round", "button", "fillister", "snap"):
        return f"{kind.head} head"
    if kind.head.endswith(" cross"):
        return f"cross recess {kind.head.removesuffix(' cross')} head"
    return "countersunk socket head" if kind.head == "countersunk socket" else kind.head
