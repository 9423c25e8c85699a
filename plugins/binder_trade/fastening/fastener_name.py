"""A fastener's name as a maker writes it, turned into its kind, thread, size and length."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from binder_trade.fastening.cursor import Cursor
from binder_trade.fastening.faults import NotAFastener, quoted
from binder_trade.fastening.naming import Kind, say, settle
from binder_trade.fastening.phrases import names_a_kind, sort_words
from binder_trade.fastening.sizes import Size
from binder_trade.fastening.sizing import Sizes, settle_sizes
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
    count: int | None = None


def read_fastener(text: str) -> FastenerName:
    """A fastener's name in the words of the trade; raises Unreadable, NotAFastener among them.

    What follows the word `for` says what it is for, and is not read. A bare length after a
    metric thread is in mm; after an inch thread or the number of a wood screw in inches; after
    a BA thread only a fraction is read as inches, since BA screws are sold in both.
    """
    name, _, _purpose = text.partition(" for ")
    if not names_a_kind(name):
        raise NotAFastener(
            f"{quoted(text)} names no kind of fastener",
            "say screw, bolt, nut, washer, stud, rivet, pin, circlip or key, with its kind",
        )
    heard = _hear(Cursor(name))
    kind = settle(sort_words(tuple(heard.words), text), text)
    sizes = settle_sizes(kind.name, heard.thread, heard.sizes, text)
    return _named(kind, heard.thread, sizes, heard.count)


def _hear(cursor: Cursor) -> _Heard:
    heard = _Heard()
    while not cursor.is_done:
        thread = take_thread(cursor) if heard.thread is None else None
        if thread is not None:
            heard.thread = thread
        elif cursor.ahead().kind == "number":
            _hear_number(cursor, heard)
        else:
            _hear_word(cursor, heard)
    return heard


def _hear_number(cursor: Cursor, heard: _Heard) -> None:
    if cursor.ahead(1).text == "off":
        heard.count = cursor.count()
        cursor.take("off")
        return
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
    thread_text = thread.text if thread is not None else ""
    return FastenerName(
        kind=kind.name,
        thread_text=thread_text,
        length_mm=sizes.length_mm,
        length_text=sizes.length_text,
        point=kind.point,
        material=kind.material,
        says=say(kind, thread_text or sizes.across_text, sizes.length_text),
        head=kind.head,
        drive=kind.drive,
        diameter_mm=sizes.across_mm,
        diameter_text=sizes.across_text,
        height_mm=sizes.height_mm,
        also=kind.also,
        count=count,
    )


def with_length(name: FastenerName, length_mm: float, length_text: str) -> FastenerName:
    """The same fastener in a length that was chosen, in mm and as it is bought."""
    kind = Kind(name.kind, name.head, name.drive, name.point, name.material, name.also)
    says = say(kind, name.thread_text or name.diameter_text, length_text)
    return replace(name, length_mm=length_mm, length_text=length_text, says=says)
