"""A joint to the fastener that it asks for: its words, its thread and its thickness."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Design, Diagnostic, Joint, Misread, Span, read_thread
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.about import thread_named
from binder_plugins.fasteners.kinds import FasteningEntry
from binder_trade.explained import NotDefined
from binder_trade.fastening import FastenerName, Unreadable, read_fastener
from binder_trade.threads import NotMade, Thread, from_name

# The kinds of hardware that each kind of joint may be held by.
HELD_BY = {
    "screwed": ("screw", "bolt", "wood screw"),
    "bolted": ("bolt", "screw"),
    "studded": ("stud",),
    "dowelled": ("dowel pin", "roll pin"),
    "pinned": ("dowel pin", "roll pin", "taper pin", "split pin"),
    "keyed": ("parallel key", "woodruff key"),
    "clamped": ("grub screw", "screw"),
    "riveted": ("rivet",),
    "clipped": ("external circlip", "internal circlip", "e-clip"),
    "buttoned": ("wood screw", "screw"),
}
WORDS = {
    "belted": "belt",
    "clipped": "circlip",
    "keyed": "key",
    "pinned": "pin",
    "dowelled": "dowel",
}


@dataclass(frozen=True, slots=True)
class Asked:
    """What was asked for; `bought` is its name in the spec, '' where only words were said."""

    name: FastenerName
    bought: str
    at: Span
    thread: Thread | None
    diameter_mm: float | None

    @property
    def key(self) -> str:
        """The thread as the tables of hardware name it: a metric one without its pitch."""
        if self.thread is None:
            return ""
        is_metric = self.thread.family == "metric"
        return f"M{self.thread.major_mm:g}" if is_metric else self.thread.designation


def asked(joint: Joint, design: Design) -> Asked | Diagnostic | None:
    """The fastener of a joint, a finding where its words are wrong, None where it has none.

    A bought item whose words are no fastener of the trade is left as it is.
    """
    entry = joint.entry
    words = entry.fastener if isinstance(entry, FasteningEntry) else None
    if words is not None:
        return _by_words(joint, str(words), words.span, design)
    item = design.bought.get(joint.held_by)
    if item is None:
        return None
    at = entry.held_by.span if entry.held_by is not None else joint.at
    found = _read(joint, item.what, at, item.name)
    return found if isinstance(found, Asked) else None


def _by_words(joint: Joint, text: str, at: Span, design: Design) -> Asked | Diagnostic:
    try:
        named = thread_named(text, design.workshop)
    except NotDefined as fault:
        return codes.FASTENER_UNREADABLE.at(at, fault.reason, help=fault.way_out)
    return _read(joint, named, at, joint.held_by)


def _read(joint: Joint, text: str, at: Span, bought: str) -> Asked | Diagnostic:
    try:
        name = read_fastener(text)
    except Unreadable as fault:
        return codes.FASTENER_UNREADABLE.at(at, fault.reason, help=fault.way_out)
    wanted = HELD_BY[joint.kind]
    if name.kind not in wanted:
        return codes.FASTENER_UNFIT.at(
            at, f"'{joint.name}' is {joint.kind}, and a {name.kind} does not hold it so",
            help=f"name a {' or a '.join(wanted)}",
        )  # fmt: skip
    try:
        thread = thread_of(name)
    except NotMade as fault:
        return codes.FASTENER_UNREADABLE.at(at, fault.reason, help=fault.way_out)
    diameter = thread.major_mm if thread is not None else thickness_of(name)
    return Asked(name, bought, at, thread, diameter)


def thread_of(name: FastenerName) -> Thread | None:
    """The thread of a machine screw; raises NotMade for one that nobody makes."""
    if not name.thread_text or name.thread_text.startswith("no. "):
        return None
    read = read_thread(name.thread_text)
    if isinstance(read, Misread):
        raise NotMade(read.reason, "write it as M3, 4 BA, 4-40 UNC or 1/4 BSF")
    return from_name(read)


def thickness_of(name: FastenerName) -> float | None:
    """How thick a pin, rivet or wood screw is, in mm; None where that is not known."""
    from binder_trade.hardware import NotListed, inch_taper_pin, wood_screw

    if not name.thread_text.startswith("no. "):
        return name.diameter_mm
    number = name.thread_text.removeprefix("no. ")
    try:
        if name.kind == "wood screw":
            return wood_screw(int(number)).shank_mm
        return inch_taper_pin(number).large_end_mm if name.kind == "taper pin" else None
    except NotListed:
        return None
