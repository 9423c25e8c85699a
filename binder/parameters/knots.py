"""Names and what each follows from to the knots: those that all follow from one another."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

Links = Mapping[str, Sequence[str]]


def knots(links: Links) -> Iterator[tuple[str, ...]]:
    """The strongly connected parts with a circle in them, by Kosaraju's two passes.

    Linear in names and links, without recursion. Every link must lead to a name in `links`.
    """
    back: dict[str, list[str]] = {name: [] for name in links}
    for name, after in links.items():
        for one in after:
            back[one].append(name)
    seen: set[str] = set()
    finished = [one for name in links for one in _finished(name, links, seen)]
    taken: set[str] = set()
    for name in reversed(finished):
        members = tuple(_finished(name, back, taken))
        if len(members) > 1 or (members and name in links[name]):
            yield members


def _finished(start: str, links: Links, seen: set[str]) -> Iterator[str]:
    """The names reached from one and not seen before, each once all behind it are done."""
    if start in seen:
        return
    seen.add(start)
    path = [(start, iter(links[start]))]
    while path:
        name, rest = path[-1]
        fresh = next((one for one in rest if one not in seen), None)
        if fresh is None:
            path.pop()
            yield name
        else:
            seen.add(fresh)
            path.append((fresh, iter(links[fresh])))
