"""Turns the kind of a screw and its thread into the dimensions of the head."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi

from binder_trade.hardware.by_thread import table_of
from binder_trade.hardware.listing import MM_PER_INCH, Listed, Row, Table, plain
from binder_trade.hardware.thread_keys import ThreadKey, row_key, thread_key

HEAD_KINDS = (
    "cap", "button", "countersunk socket", "cheese", "pan", "round", "fillister",
    "countersunk", "raised countersunk", "pan cross", "countersunk cross",
    "raised countersunk cross", "hexagon", "hexagon bolt",
)  # fmt: skip
_CORNERS = 1 / cos(pi / 6)
_SIXTY_FOURTH = 64


@dataclass(frozen=True, slots=True, kw_only=True)
class Head(Listed):
    """The head of a screw, mm; `dk_mm` is its greatest diameter, across flats of a hexagon.

    `envelope_mm` is the circle that it sweeps when turned. A countersunk head has `angle_deg` and
    `dk_sharp_mm`, the theoretical sharp diameter; `k_mm` then lies within the screw's length, and
    `raised_mm` is the dome above it. `drive_mm` is the key, slot or flats, None for a cross recess.
    """

    kind: str
    thread: str
    dk_mm: float
    envelope_mm: float
    k_mm: float
    drive: str
    drive_mm: float | None
    tool: str
    angle_deg: float | None
    dk_sharp_mm: float | None
    raised_mm: float


def head(kind: str, thread: str) -> Head:
    """The head of a screw of a kind (one of HEAD_KINDS) and a thread's printed name, mm.

    Raises NotListed. Sources: ISO 4762, 7380-1, 10642, 1207, 1580, 2009, 2010, 7045, 7046-1,
    7047, 4014, 4017; BS 57; BS 1083; ASME B18.3, B18.6.3, B18.2.1.
    """
    key = thread_key(thread)
    of = head_table(kind, key)
    size = row_key(of, key)
    row = of.rows[size]
    return Head(
        kind=kind,
        thread=thread,
        dk_mm=row["dk"],
        envelope_mm=_envelope(of, row),
        k_mm=row["k"],
        drive=of.words["drive"],
        drive_mm=row.get("drive"),
        tool=_tool(of, row, thread),
        angle_deg=row.get("angle_deg"),
        dk_sharp_mm=row.get("sharp"),
        raised_mm=row.get("raised", 0.0),
        standard=of.standard,
        status=of.status_of(size),
    )


def head_table(kind: str, key: ThreadKey) -> Table:
    """The table of heads of a kind for a series of threads; raises NotListed."""
    return table_of("heads.yaml", kind, key, "head")


def _envelope(of: Table, row: Row) -> float:
    if of.words["drive"] == "hexagon":
        return row["dk"] * _CORNERS
    return row.get("envelope", row["dk"])


def _tool(of: Table, row: Row, thread: str) -> str:
    """What turns the screw, as it is asked for at the bench."""
    drive = of.words["drive"]
    if drive == "cross recess":
        return f"no. {plain(row['recess_no'])} cross-point driver"
    if drive == "hexagon" and of.series == ("BA",):
        return f"{thread} spanner"
    size = f"{plain(row['drive'])} mm" if of.series == ("M",) else inch_text(row["drive"])
    names = {"hexagon socket": "hexagon key", "slot": "slot", "hexagon": "spanner"}
    return f"{size} {names[drive]}"


def inch_text(size_mm: float) -> str:
    """A length as inches are written: a fraction to 1/64 in where it is one, else decimals."""
    inches = size_mm / MM_PER_INCH
    parts = inches * _SIXTY_FOURTH
    if abs(parts - round(parts)) > 1e-6:
        return f"{inches:.3f} in"
    whole, rest = divmod(round(parts), _SIXTY_FOURTH)
    below = _SIXTY_FOURTH
    while rest and rest % 2 == 0:
        rest, below = rest // 2, below // 2
    words = [str(whole)] if whole else []
    return " ".join([*words, *([f"{rest}/{below}"] if rest else []), "in"])
