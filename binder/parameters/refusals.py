"""What the parser says to tokens that do not fit together."""

from __future__ import annotations

from binder.diagnostics import Code
from binder.parameters import codes
from binder.parameters.faults import ExpressionFault, quoted
from binder.parameters.functions import USES
from binder.parameters.lexer import Kind, Token
from binder.parameters.near import did_you_mean


def token_fault(code: Code, message: str, token: Token, help: str = "") -> ExpressionFault:
    """A fault at a token."""
    return ExpressionFault(code, message, token.start, max(1, token.end - token.start), help)


def misused(name: Token, token: Token) -> ExpressionFault:
    """A function whose brackets do not hold what it takes, seen at a token."""
    message = f"{name.text} cannot be used so"
    return token_fault(codes.FUNCTION_MISUSED, message, token, f"write it as {USES[name.text]}")


def unknown_function(name: Token) -> ExpressionFault:
    """A word before a bracket that is no function."""
    near = did_you_mean(name.text, USES)
    times = f"to multiply by a size, write {quoted(name.text)} * ( )"
    message = f"{quoted(name.text)} is no function"
    help = near or f"known are {', '.join(USES)}; {times}"
    return token_fault(codes.FUNCTION_UNKNOWN, message, name, help)


def out_of_place(token: Token) -> ExpressionFault:
    """A token where a value should begin."""
    if token.kind is Kind.END:
        message = "something is missing at the end"
    elif token.text == "[":
        message = "a list may stand in nearest, next_up and next_down only"
    else:
        message = f"something is missing before '{token.text}'"
    return token_fault(codes.EXPRESSION_GARBLED, message, token)


def unexpected(token: Token) -> ExpressionFault:
    """A token where a sign should stand."""
    if token.kind is Kind.SIGN and token.text != "(":
        return token_fault(codes.EXPRESSION_GARBLED, f"'{token.text}' has no meaning here", token)
    message = f"there is no sign before {quoted(token.text)}"
    return token_fault(codes.SIGN_MISSING, message, token, "put + - * or / between the two")


def spaced_fraction(text: str, start: int, over: str, under: str, end: int) -> ExpressionFault:
    """`1 / 4 in`, which can be read in two ways."""
    help = f"write {over}/{under}, or {over} / ({under}) for the division"
    message = f"{quoted(text[start:end])} can be read in two ways"
    return ExpressionFault(codes.SPACED_FRACTION, message, start, end - start, help)
