"""How a field refuses its text: a finding's contents, carried through pydantic."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pydantic_core import PydanticCustomError

from binder.diagnostics import Code


@dataclass(frozen=True, slots=True)
class Refusal:
    """A code, its headline and help, and which characters of the text are meant."""

    code: Code
    message: str
    help: str = ""
    start: int = 0
    length: int = 0
    label: str = ""


def refused(
    code: Code, message: str, help: str = "", start: int = 0, length: int = 0, label: str = ""
) -> PydanticCustomError:
    """The error to raise from a field's reader; the validate phase makes the finding of it."""
    return refusal_error(Refusal(code, message, help, start, length, label))


def refusal_error(refusal: Refusal) -> PydanticCustomError:
    """The error that carries a refusal through pydantic."""
    return PydanticCustomError("refused", "refused", {"refusal": refusal})


def with_help(error: PydanticCustomError, help: str) -> PydanticCustomError:
    """The same refusal with another way out."""
    refusal: Refusal = (error.context or {})["refusal"]
    return refusal_error(replace(refusal, help=help))
