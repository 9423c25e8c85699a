"""Two operations that share what a rule's scope asks for, or do not."""

from binder_making.operation import Operation


def pair(before: str, after: str, scope: str) -> tuple[Operation, Operation]:
    """Two operations that share the scope and nothing else that a scope looks at."""
    first, second = _shared(scope)
    return _operation("first", before, first), _operation("second", after, second)


def apart(before: str, after: str) -> tuple[Operation, Operation]:
    """Two operations of different parts, set-ups, joints and assemblies."""
    return _operation("first", before, _own("1")), _operation("second", after, _own("2"))


def _operation(name: str, words: str, at: dict[str, object]) -> Operation:
    act, *tags = words.split()
    return Operation(id=name, act=act, tags=frozenset(tags), **at)  # type: ignore[arg-type]


def _own(mark: str) -> dict[str, object]:
    return {
        "part": f"part {mark}",
        "feature": f"feature {mark}",
        "end": f"end {mark}",
        "setup": f"set-up {mark}",
        "machine": "lathe",
        "joints": (f"joint {mark}",),
        "assemblies": (f"assembly {mark}",),
    }


def _shared(scope: str) -> tuple[dict[str, object], dict[str, object]]:
    first, second = _own("1"), _own("2")
    if scope in {"joint", "mate"}:
        second["joints"] = first["joints"]
    elif scope == "assembly":
        second["assemblies"] = first["assemblies"]
    elif scope == "setup":
        second["setup"] = first["setup"]
    else:
        second["part"] = first["part"]
        if scope == "neighbour":
            second["meets"] = (first["feature"],)
        elif scope != "part":
            second[scope] = first[scope]
    return first, second
