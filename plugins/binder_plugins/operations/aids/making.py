"""A tool that is not owned to how it is made: its stock, steps and minutes."""

from __future__ import annotations

import math
import re
from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING, Any

from binder.api import (
    CutSize,
    MaterialFact,
    Misread,
    SmallWork,
    exact,
    load_data,
    parse_size,
    read_thread,
    shown_length,
)
from binder_plugins.operations.aids.blades import blade
from binder_plugins.operations.aids.for_fly_cutters import for_fly_cutters, for_trial
from binder_plugins.operations.aids.for_meshing import for_meshing
from binder_plugins.operations.aids.for_rivets import for_cup
from binder_plugins.operations.aids.for_stubs import for_stub
from binder_plugins.operations.aids.for_tables import for_table
from binder_plugins.operations.aids.needs import groover, held_with, holed_with
from binder_plugins.operations.aids.owning import in_plain_words
from binder_plugins.operations.aids.suited import Suited
from binder_plugins.operations.aids.worded import worded
from binder_plugins.operations.form_cutters import has_grinder
from binder_trade.threading import screwcutting
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from collections.abc import Mapping

    from binder.api import Design
    from binder_plugins.operations.aids.sizes import Place

_PACKAGE = "binder_plugins.operations"
# What a thread that no table knows is taken to measure, in mm, for the bar it is cut from.
_MOST_THREAD = 6.0
# How thick stock of no told section is taken to be for the choice of its chuck, in mm.
_SOME = 10.0
# Bar that is at hand is taken up to so many times the thickness wanted; common practice, no source.
_MOST = 2.5
# What tells a gap over a measured shaft: + so much goes in, + so much does not.
_GAP = re.compile(r"\+ (\S+) goes in, \+ (\S+) does not")
# What is ground to a blade, and how long that is where the place does not tell it.
_BLADED = frozenset({"grooving tool", "undercut tool"})
_AS_LONG = "longer than it goes in"
_ROUND = frozenset({"round bar", "drawn rod"})


@cache
def _data() -> Mapping[str, Any]:
    found: Mapping[str, Any] = load_data(_PACKAGE, "recipes.yaml")
    return found


def made(recipe: str, words: str, place: Place, said: str = "") -> SmallWork | None:
    """How a tool is made for a place; None where the place does not tell what it must suit.

    `said` is its name on the list, for a recipe that serves several.
    """
    name = recipe
    if recipe == "fitted gauge" and not place.thread:
        name = "piece gauge"
    known = _data()["recipes"][name]
    if not all(_can(need, place) for need in known.get("needs", ())):
        return None
    told_sizes = worded(words)
    size = told_sizes.across if told_sizes is not None else _size(name, place)
    suits = _suited(name, words, place)
    if suits is None:
        return None
    reach = blade(place) if name in _BLADED else 0.0
    told = {**_told(said, words, size, place), **holed_with(size, place), **suits.told}
    told["blade"] = f"{place.mm(reach)} long at least" if reach else _AS_LONG
    printed = " ".join([known["name"], *known["steps"]])
    if any(
        f"{{{key}}}" in printed and not told[key] for key in ("low", "thread", "turn", "engaged")
    ):
        return None
    passed = math.ceil(told_sizes.long) if told_sizes is not None else 0
    long = suits.long or passed + _long(name, known, size, place)
    told["long"] = place.mm(math.ceil(2 * size) if name == "plug gauge" else long)
    over = {**known, "over": 0} if suits.across else known
    stock = _stock(over, suits.across or size, long, place)
    across = float(stock["section"][0]) if "section" in stock else size or _SOME
    return SmallWork(
        subject=_subject(known["name"].format_map(told), place),
        count=1,
        steps=tuple(step for one in known["steps"] if (step := one.format_map(told))),
        minutes=float(known["minutes"]) + suits.minutes,
        of=place.what_for,
        is_kept_in=bool(known.get("in_place")),
        is_to_bore=bool(known.get("to_bore")),
        buys=tuple(bought for one in known.get("buys", ()) if (bought := one.format_map(told))),
        tools=known.get("tools", "").format_map({**told, **held_with(across, size, place)}),
        reach=reach,
        **stock,
    )


def _suited(recipe: str, words: str, place: Place) -> Suited | None:
    """What a recipe is printed with besides; None where the place does not tell it."""
    if recipe == "mandrel":
        return for_stub(words, place)
    if recipe == "table mandrel":
        return for_table(place)
    if recipe in {"rivet snap", "hollowed dolly"}:
        return for_cup(place)
    if recipe in {"fly cutter", "fly cutter holder"}:
        return for_trial(place) if recipe == "fly cutter" else for_fly_cutters(place)
    if recipe in {"setting plug", "footed plug", "pointed pin"}:
        return for_meshing(recipe, place)
    return Suited()


def _subject(words: str, place: Place) -> str:
    """Its name; what is made for parts put together is for what is done to them."""
    title = place.route.title
    if place.design.item(place.route.subject) is None:
        words = words.replace(f"for the {title}", f"to {title}")
    return " ".join(words.split())


def _can(need: str, place: Place) -> bool:
    """Whether the workshop has what a recipe cannot do without."""
    workshop = place.design.workshop
    if need == "grinder":
        return has_grinder(workshop)
    if need == "torch":
        return "torch" in " ".join(in_plain_words(workshop))
    if need == "lathe":
        return bool(workshop.entry.machines.lathes)
    owned = workshop.owns_tap if need == "tap" else workshop.owns_die
    return bool(place.thread) and owned(place.thread) is not None


def _size(recipe: str, place: Place) -> float:
    if recipe in {"tapped ring", "screwed stub", "fitted gauge"}:
        name = read_thread(place.thread)
        try:
            return _MOST_THREAD if isinstance(name, Misread) else float(from_name(name).major_mm)
        except NotMade:
            return _MOST_THREAD
    if recipe in {"pointed rod", "edge pin"}:
        return 0.0
    if recipe == "plug gauge" and place.limits is not None:
        return place.limits[1]
    return place.size


def _told(name: str, words: str, size: float, place: Place) -> dict[str, str]:
    low, high = place.limits or (0.0, 0.0)
    gap = _GAP.search(words)
    return {
        "said": words,
        "name": name,
        "drill": words.partition(",")[0],
        "over": gap[1] if gap else "",
        "under": gap[2] if gap else "",
        "drawn": "the picture of the space below",
        "size": f"⌀{place.mm(size)}" if size else "",
        "low": f"⌀{place.mm(low)}" if low else "",
        "high": f"⌀{place.mm(high)}" if high else "",
        "part": place.route.title,
        "thread": place.thread,
        **_stub(place),
        "wide": place.wide(words) or f"for the {place.what_for}",
        "long": "",
        "deep": place.mm(place.setup.grip.long),
    }


def _stub(place: Place) -> dict[str, str]:
    """The sizes of an outside thread that goes into the part's, nothing where it has none."""
    told = dict.fromkeys(("turn", "engaged", "neck", "neck_wide", "groover", "groover_tool"), "")
    name = read_thread(place.thread)
    if isinstance(name, Misread) or not place.engaged:
        return told
    try:
        figures = screwcutting(from_name(name))
    except NotMade:
        return told
    return {
        "turn": f"⌀{place.mm(round(figures.die_blank_mm, 2))}",
        "engaged": place.mm(round(place.engaged, 1)),
        "neck": f"⌀{place.mm(round(figures.groove_diameter_mm, 1))}",
        "neck_wide": place.mm(round(figures.groove_narrow_mm, 1)),
        **groover(round(figures.groove_narrow_mm, 1), place),
    }


def _long(recipe: str, known: Mapping[str, Any], size: float, place: Place) -> float:
    """What is sawn off in mm: told by the work where it passes a row of bores."""
    asked = place.act.aid_mm if place.act is not None else 0.0
    if recipe == "D-bit" and asked:
        return asked
    return float(math.ceil(known.get("length", 0) + known.get("per", 0) * size))


def _stock(known: Mapping[str, Any], size: float, long: float, place: Place) -> dict[str, Any]:
    """What it is made of: a length of bar of a usual size, or as the recipe says."""
    if "stock" in known:
        return {"stock": known["stock"].format(part=place.route.title)}
    if not size and "at_least" not in known:
        return {"stock": f"{known['material']}, {known['form']} to suit, {place.mm(long)}"}
    least = max(size + known.get("over", 0), known.get("at_least", 0))
    material, form = known["material"], known["form"]
    across = exact(round(size, 3)) if known.get("is_as_bought") else None
    if across is None:
        there = _at_hand(least, (material, *known.get("or", ())), place.design)
        material, form, across = there or (material, form, _bar(least, place.design.units))
    section = f"{shown_length(across, place.design.units)} {form}"
    return {
        "stock": f"{material}, {section}, {place.mm(long)}",
        "material": material,
        "form": form,
        "section": (across,),
        "section_text": section,
        "length": exact(round(long, 3)),
    }


def _at_hand(
    least: float, metals: tuple[str, ...], design: Design
) -> tuple[str, str, Fraction] | None:
    """The thinnest bar of the metals that the model is cut from and that is thick enough.

    No bar is bought for a tool where one that is there gives it, unless most would be turned off.
    """
    able = []
    for cut in design.facts.all(CutSize):
        known = design.facts.about(MaterialFact, cut.subject)
        metal = known.id.replace("-", " ") if known is not None else ""
        if metal in metals and cut.form in _ROUND and least <= cut.section[0] <= _MOST * least:
            able.append((cut.section[0], metals.index(metal), metal, cut.form))
    if not able:
        return None
    across, _, metal, form = min(able)
    return metal, form, across


def _bar(least: float, units: str) -> Fraction:
    """The next larger usual section in mm; of the size itself beyond the table."""
    sizes = [
        parse_size(f"{one} {'in' if units == 'inch' else 'mm'}").amount
        for one in _data()["bars"]["inch" if units == "inch" else "mm"]
    ]
    return next((one for one in sizes if one >= least - 1e-6), exact(math.ceil(least)))
