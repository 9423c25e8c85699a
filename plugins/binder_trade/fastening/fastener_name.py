"""A fastener's name as a maker writes it, turned into its kind, thread, size and length."""

from __future__ import annotations

from dataclasses import dataclass, field

from binder_trade.fastening.cursor import Cursor
from binder_trade.fastening.faults import NotAFastener, Unreadable, quoted
from binder_trade.fastening.naming import Kind, say, settle
from binder_trade.fastening.phrases import sort_words
from binder_trade.fastening.sizes import Size
from binder_trade.fastening.sizing import FREE_SIZED, Sizes, settle_sizes
from binder_trade.fastening.thread_words import ThreadWords, take_thread


@dataclass(frozen=True, slots=True)
class FastenerName:
    """What a name says; lengths in mm, None or '' where it does not say.

    `kind` is one of `KIND_NAMES`. `head` is that of a screw, bolt, rivet or wood screw, the
    sort of a nut or washer. `thread_text` is the thread's designation, or the gauge `no. 6` of
    a wood screw; `diameter_mm` is the size of what has no thread (a key's width, with
    `height_mm`), `length_text` the length as it is bought. `also` names what comes with it.
    """

    kind: str
    thread_text: str
    length_mm: float | None
    length_text: str
    point: str
    material: str
    says: str
    head: str = ""
    drive: str = ""
    diameter_mm: float | None = None
    diameter_text: str = ""
    height_mm: float | None = None
    also: tuple[str, ...] = ()
    count: int | None = None


@dataclass(slots=True)
class _Heard:
    """What was taken off the text so far."""

    thread: ThreadWords | None = None
    sizes: list[tuple[Size, str]] = field(default_factory=list)
    words: list[str] = field(default_factory=list)


def read_fastener(text: str) -> FastenerName:
    """A fastener's name in the words of the trade; raises Unreadable, NotAFastener among them.

    What follows the word `for` says what it is for, and is not read. A bare length after a
    metric thread is in mm; after an inch thread or the number of a wood screw in inches; after
    a BA thread only a fraction is read as inches, since BA screws are sold in both.
    """
    name, _, _purpose = text.partition(" for ")
    cursor = Cursor(name)
    count = _count_off(cursor)
    heard = _hear(cursor)
    said = sort_words(tuple(heard.words), text)
    if not said.kinds:
        raise NotAFastener(
            f"{quoted(text)} names no kind of fastener",
            "say screw, bolt, nut, washer, stud, grub screw, wood screw, rivet, pin, circlip or key",
        )
    kind = settle(said, text)
    sizes = settle_sizes(kind.name, heard.thread, heard.sizes, text)
    return _named(kind, heard.thread, sizes, count)


def _count_off(cursor: Cursor) -> int | None:
    if cursor.ahead().kind == "number" and cursor.ahead(1).text == "off":
        count = cursor.count()
        cursor.take("off")
        return count
    return None


def _hear(cursor: Cursor) -> _Heard:
    heard = _Heard()
    while not cursor.is_done:
        thread = take_thread(cursor) if heard.thread is None else None
        if thread is not None:
            heard.thread = thread
        elif cursor.ahead().kind == "number":
            _hear_size(cursor, heard)
        else:
            _hear_word(cursor, heard)
    return heard


def _hear_size(cursor: Cursor, heard: _Heard) -> None:
    size = cursor.size()
    if size is None:
        return
    role = "length" if cursor.take_any("long", "length") else ""
    heard.sizes.append((size, role))


def _hear_word(cursor: Cursor, heard: _Heard) -> None:
    token = cursor.ahead()
    cursor.place += 1
    if token.kind == "sign" or token.text == "x":
        return
    heard.words.append(token.text)


def _named(kind: Kind, thread: ThreadWords | None, sizes: Sizes, count: int | None) -> FastenerName:
    thread_text = thread.text if thread is not None and kind.name not in FREE_SIZED else ""
    size_text = thread.text if thread is not None else sizes.across_text
    return FastenerName(
        kind=kind.name,
        thread_text=thread_text or (thread.text if thread is not None else ""),
        length_mm=sizes.length_mm,
        length_text=sizes.length_text,
        point=kind.point,
        material=kind.material,
        says=say(kind, size_text, sizes.length_text),
        head=kind.head,
        drive=kind.drive,
        diameter_mm=sizes.across_mm,
        diameter_text=sizes.across_text,
        height_mm=sizes.height_mm,
        also=kind.also,
        count=count,
    )
