"""Reference data that travels inside a plugin's package."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import Any

import yaml

_Loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


@cache
def load_data(package: str, name: str) -> Any:  # noqa: ANN401 - the shape is the plugin's own
    """The YAML file `data/NAME` of a package, read once.

    It is the plugin's own file, not a stranger's: YAML types its values.
    """
    text = files(package).joinpath("data", name).read_text(encoding="utf-8")
    return yaml.load(text, Loader=_Loader)
