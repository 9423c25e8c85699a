"""What the checks without trade can report."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

NAME_TWICE = Code(
    "name-twice",
    Severity.ERROR,
    "Two different things have the same name.",
    "A joint that names it could mean either, and the parts list would show one.",
    "parts:\n  pin: {...}\nbought:\n  pin: {...}",
    "Give one of them another name, here and where it is used.",
)
ITEM_UNKNOWN = Code(
    "item-unknown",
    Severity.ERROR,
    "A joint, assembly or fabrication names something that is not in the spec.",
    "The step could not be done: there is nothing to join.",
    "joints:\n  pin in arm: {slides: [pin.rod, amr.bore]}",
    "Take the name that is offered, or write the part.",
)
PLACE_UNKNOWN = Code(
    "place-unknown",
    Severity.ERROR,
    "A joint names a feature or step that its part does not have.",
    "It cannot be told which surfaces meet.",
    "joints:\n  pin in arm: {slides: [pin.rod, arm.boer]}",
    "Take the name that is offered, or add the feature to the part.",
)
MASTER_NOT_AN_END = Code(
    "master-not-an-end",
    Severity.ERROR,
    "The master of a joint is none of the surfaces that meet in it.",
    "The master is the half that is made and measured first, so it must be one of them.",
    "joints:\n  pin in arm: {slides: [pin.rod, arm.bore], master: lever.bore}",
    "Name one of the joint's own ends.",
)
ASSEMBLY_RING = Code(
    "assembly-ring",
    Severity.ERROR,
    "An assembly contains itself, straight or by way of others.",
    "It could never be finished.",
    "assemblies:\n  head: {of: [jack]}\n  jack: {of: [head]}",
    "Take one of them out of the other.",
)
IN_NO_ASSEMBLY = Code(
    "in-no-assembly",
    Severity.WARNING,
    "A thing that is made or bought appears in no assembly or fabrication, though there are some.",
    "It would lie on the bench at the end, and nobody knows where it goes.",
    "assemblies:\n  jack: {of: [body, screw]}   # and the saddle?",
    "Add it to an assembly, or drop it.",
)
SIZE_UNUSED = Code(
    "size-unused",
    Severity.ADVICE,
    "A named size that nothing uses.",
    "Mostly a misspelt name elsewhere, or a left-over; changing it would change nothing.",
    "sizes:\n  bar: 20 mm\n  bra: 20 mm",
    "Use it or drop it.",
)
JOINT_WITH_ITSELF = Code(
    "joint-with-itself",
    Severity.ERROR,
    "Both ends of a joint are the same surface.",
    "A part cannot be fitted to itself; one of the names is wrong.",
    "joints:\n  pin in arm: {slides: [arm.bore, arm.bore]}",
    "Name the other part.",
)

CODES = (
    NAME_TWICE,
    ITEM_UNKNOWN,
    PLACE_UNKNOWN,
    MASTER_NOT_AN_END,
    ASSEMBLY_RING,
    IN_NO_ASSEMBLY,
    SIZE_UNUSED,
    JOINT_WITH_ITSELF,
)
