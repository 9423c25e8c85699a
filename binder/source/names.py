"""A file name in a spec to the folders and the file that it names, or why it is refused."""

from __future__ import annotations

import re

from binder.source.characters import is_hidden

_FORBIDDEN = re.compile(r'[\\:%~*?"<>|]')
_RESERVED = re.compile(r"(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)", re.IGNORECASE)
_LONGEST_NAME = 200
_LONGEST_PART_BYTES = 255
_MOST_PARTS = 5


def parts_of(name: str) -> tuple[str, ...] | str:
    """The steps of a name from the spec's folder down, or a sentence on what is wrong with it.

    The same on every system, so that a spec that builds here builds there.
    """
    if not name or len(name) > _LONGEST_NAME:
        return f"a file name has 1 to {_LONGEST_NAME} characters"
    if any(map(is_hidden, name)) or any(mark in name for mark in "\t\r\n\ufffd"):
        return "it holds a character that cannot be seen"
    forbidden = _FORBIDDEN.search(name)
    if forbidden:
        return f"`{forbidden[0]}` may not stand in a file name here"
    if name.startswith("/"):
        return "it begins at the root of the disk"
    parts = tuple(name.split("/"))
    if len(parts) > _MOST_PARTS:
        return f"it goes more than {_MOST_PARTS - 1} folders down"
    return next(filter(None, map(_fault_of_part, parts)), parts)


def _fault_of_part(part: str) -> str:
    if part == "..":
        return "it leads out of the spec's folder"
    if not part or part == ".":
        return "it has an empty step, or one that is a dot"
    if part.startswith((".", " ")) or part.endswith((".", " ")):
        return "no step may begin or end with a dot or a space"
    if _RESERVED.match(part):
        return f"`{part}` is the name of a device on Windows"
    if len(part.encode()) > _LONGEST_PART_BYTES:
        return f"no step may be longer than {_LONGEST_PART_BYTES} bytes"
    return ""
