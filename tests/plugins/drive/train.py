"""Specs of small trains: plain discs, each a body of its own or fixed on another."""

from __future__ import annotations

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"


def spec(names: str, *drive: str, joints: str = "", more: str = "", parts: str = "") -> str:
    """A spec of brass discs by these names, and the lines of its drive and its joints.

    `parts` are further parts, `more` further sections.
    """
    discs = "".join(
        f"  {name}: {{material: brass, disc: {{diameter: 30 mm, thickness: 4 mm}}}}\n"
        for name in names.split()
    )
    met = f"joints:\n{joints}" if joints else ""
    lines = "".join(f"  {line}\n" for line in drive)
    return f"{HEAD}parts:\n{discs}{parts}{more}{met}drive:\n{lines}"


HAND = "hand: {turns: [a], by: hand, speeds: [60 r/min]}"
