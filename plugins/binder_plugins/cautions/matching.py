"""Signs to the cautions that they call for, and to those of which none is known."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from binder_plugins.cautions.signs import Sign, SignKind
from binder_plugins.cautions.table import Caution, CautionTable

# Of these each sign must find a caution or an explicit none; the others are only searched.
ANSWERED: Mapping[SignKind, str] = {
    SignKind.MATERIAL: "Material",
    SignKind.HAZARD: "Hazard",
    SignKind.SHAPE: "Shape",
    SignKind.FEATURE: "Feature",
    SignKind.JOINT: "Joint",
    SignKind.FINISH: "Finish",
    SignKind.ACT: "Act",
}


@dataclass(frozen=True, slots=True)
class Applied:
    """A caution and the items that call for it; none where it is the model as a whole."""

    caution: Caution
    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Unanswered:
    """Something of which the table knows nothing, and the items that have it."""

    kind: SignKind
    said: str
    items: tuple[str, ...]

    @property
    def title(self) -> str:
        """`Finish: hammertone`."""
        return f"{ANSWERED[self.kind]}: {self.said}"


def applied(table: CautionTable, signs: Iterable[Sign]) -> Iterator[Applied]:
    """The general cautions and those called for, in the order of the table."""
    by_word = _by_word(table)
    met: dict[str, dict[str, None]] = {}
    for sign in signs:
        words = by_word.get(sign.kind, {})
        for word in sign.phrases & words.keys():
            for row in words[word]:
                met.setdefault(row, {})[sign.item] = None
    for caution in table.cautions:
        if caution.is_general or caution.id in met:
            items = {} if caution.is_whole else met.get(caution.id, {})
            yield Applied(caution, _items(items))


def _by_word(table: CautionTable) -> dict[SignKind, dict[str, list[str]]]:
    """By kind and word the ids of the rows that it calls for."""
    found: dict[SignKind, dict[str, list[str]]] = {}
    for caution in table.cautions:
        for kind, words in caution.triggers.items():
            for word in words:
                found.setdefault(kind, {}).setdefault(word, []).append(caution.id)
    return found


def unanswered(table: CautionTable, signs: Iterable[Sign]) -> Iterator[Unanswered]:
    """What the table is silent about, each said once, in the order met."""
    known = {kind: table.known(kind) for kind in ANSWERED}
    silent: dict[tuple[SignKind, str], dict[str, None]] = {}
    for sign in signs:
        if sign.kind in ANSWERED and not sign.phrases & known[sign.kind]:
            silent.setdefault((sign.kind, sign.said), {})[sign.item] = None
    for (kind, said), items in silent.items():
        yield Unanswered(kind, said, _items(items))


def _items(met: Mapping[str, None]) -> tuple[str, ...]:
    return tuple(item for item in met if item)
