"""What plugins call their files to names that any disk takes, each once."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

_LONGEST = 80
_UNSAFE = re.compile(r"[^A-Za-z0-9_-]+")
# Names that a widespread system keeps for devices, whatever their ending.
_DEVICES = re.compile(r"(?:con|prn|aux|nul|com[0-9]|lpt[0-9])", re.IGNORECASE)


def safe_name(text: str) -> str:
    """Plain letters, figures, `-` and `_`; never empty, hidden, long, or the name of a device."""
    name = _UNSAFE.sub("-", text)[:_LONGEST].strip("-") or "file"
    return f"{name}-" if _DEVICES.fullmatch(name) else name


def unique_names(wanted: Iterable[tuple[str, str]]) -> Iterator[str]:
    """File names from stems and endings, told apart by number where case alone would do it."""
    taken: set[str] = set()
    for stem, ending in wanted:
        first, last = safe_name(stem), safe_name(ending)
        name, count = f"{first}.{last}", 1
        while name.casefold() in taken:
            count += 1
            name = f"{first}-{count}.{last}"
        taken.add(name.casefold())
        yield name
