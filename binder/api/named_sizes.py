"""The words of a question at the bench to sizes by name, or to why they make none."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from binder.api.asked import NotSizeError, asked_size, said_back, with_point
from binder.api.lengths import parse_size
from binder.parameters.near import did_you_mean


class NotAskedError(ValueError):
    """Words that do not make a question; `way_out` says how they would."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(reason)
        self.reason = reason
        self.way_out = way_out


@dataclass(frozen=True, slots=True)
class Asked:
    """What a question tells by name, each as its words; what belongs to no name is under ''."""

    words: dict[str, str]

    def mm(self, name: str) -> float | None:
        """A length in mm, None where it is not told; NotAskedError where it is none."""
        return self._amount(name, "12 mm")

    def degrees(self, name: str) -> float | None:
        """An angle in degrees, None where it is not told; NotAskedError as `mm`."""
        return self._amount(name, "60 deg")

    def newtons(self, name: str) -> float | None:
        """A force in N, None where it is not told; NotAskedError as `mm`."""
        amount = self._amount(name, "200 N")
        return None if amount is None else amount / float(parse_size("1 N").amount)

    def number(self, name: str) -> float | None:
        """A plain number, None where it is not told; NotAskedError as `mm`."""
        return self._amount(name, "2")

    def needed(self, name: str) -> float:
        """A length in mm that must be told; NotAskedError where it is not."""
        found = self.mm(name)
        if found is None:
            raise NotAskedError(f"nothing tells the {name}", f"add `{name} 12 mm`")
        return found

    def _amount(self, name: str, example: str) -> float | None:
        """The amount in the base unit of what the example is."""
        if name not in self.words:
            return None
        wanted = parse_size(example).dimension
        try:
            return float(asked_size(self.words[name], f"`{name} {example}`", wanted).amount)
        except NotSizeError as fault:
            raise NotAskedError(fault.reason, fault.way_out) from fault


def asked(words: Sequence[str], names: Sequence[str]) -> Asked:
    """The words after each of the names; NotAskedError for a name told twice or without more."""
    found: dict[str, str] = {}
    name = ""
    for word in " ".join(words).split():
        if word not in names:
            found[name] = f"{found.get(name, '')} {word}".strip()
            continue
        if word in found:
            raise NotAskedError(f"'{word}' is told twice", "tell each size once")
        name = word
        found[name] = ""
    for key, text in found.items():
        if not text:
            raise NotAskedError(f"'{key}' is told without more", f"as `{key} 12 mm`")
    return Asked(found)


def with_nothing_loose(given: Asked, names: Sequence[str]) -> Asked:
    """The question, where nothing stands before its first name; else NotAskedError."""
    loose = given.words.get("", "")
    if not loose:
        return given
    hint = did_you_mean(loose.split()[0], names) or f"the words are: {', '.join(names)}"
    raise NotAskedError(f"{said_back(loose)} belongs to no size", hint)


def unread(text: str, what: str, way_out: str) -> NotAskedError:
    """Words that are not what was asked for; a decimal comma in them is told first."""
    return NotAskedError(f"{said_back(text)} is {what}", with_point(text) or way_out)
