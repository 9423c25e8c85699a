"""What can be reported of metals that do not bear what is done to them."""

from __future__ import annotations

from binder.api import Code, Severity

E, W = Severity.ERROR, Severity.WARNING

MELTS_IN_FLAME = Code(
    "melts-in-flame",
    E,
    "A material that melts, chars or crazes below the heat of the joint that it is in.",
    "The alloy does not run, and the part does.",
    "joints: {boss on plate: {silver_soldered: [boss.foot, plate.top]}}   # a plate of aluminium",
    "Screw, rivet or glue it, take a solder that melts well below it, or another material.",
)
METAL_TAKES_NO_SOLDER = Code(
    "metal-takes-no-solder",
    W,
    "A metal whose skin the usual fluxes do not take off, in a soldered or brazed joint.",
    "The alloy balls up and rolls away, however hot it gets.",
    "joints: {lug on plate: {soft_soldered: [lug.foot, plate.top]}}   # a plate of titanium",
    "Screw, rivet or glue it, or use the flux and alloy that are sold for that metal alone.",
)
METAL_DOES_NOT_WELD = Code(
    "metal-does-not-weld",
    W,
    "A metal that cracks or boils when it is welded: free-cutting and leaded steel, steel with "
    "much carbon, cast iron, brass.",
    "The weld looks sound, and tears along its edge as it cools or at the first knock.",
    "fabrications: {frame: {pieces: [2 off bar], joined: welded}}   # bar of free-cutting steel",
    "Mild steel for what is welded; silver solder or screw the rest.",
)
PLATING_IN_FLAME = Code(
    "plating-in-flame",
    W,
    "Something plated or galvanised is soldered, brazed or welded.",
    "The alloy does not wet it, and zinc or cadmium comes off as a fume that poisons.",
    "scrap_box: {plate: {what: a galvanised plate, ...}}\n"
    "joints: {lug on plate: {silver_soldered: [lug.foot, plate]}}",
    "Take the coating off first, by pickling or cutting, or join it cold.",
)
BEND_CRACKS = Code(
    "bend-cracks",
    W,
    "A bend tighter than its metal bears in the condition in which it is sold.",
    "It opens on the outside, often a day later.",
    "bracket: {material: engraving brass, sheet: {..., bends: [{..., inside: 0.5 mm}]}}",
    "A larger radius inside, softening first, or a metal that bends.",
)
SPRING_HARD_TO_WIND = Code(
    "spring-hard-to-wind",
    W,
    "A spring whose mean diameter is under 4 or over 20 times its wire (EN 13906-1).",
    "Tighter, the wire cracks on the mandrel; wider, the coils tangle and come out unlike.",
    "spring: {kind: compression, wire: 1 mm, mean: 3 mm, coils: 8, free: 20 mm}",
    "Thinner or thicker wire, or another diameter.",
)

METAL_CODES = (
    MELTS_IN_FLAME,
    METAL_TAKES_NO_SOLDER,
    METAL_DOES_NOT_WELD,
    PLATING_IN_FLAME,
    BEND_CRACKS,
    SPRING_HARD_TO_WIND,
)
