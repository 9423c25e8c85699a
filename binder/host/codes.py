"""What the host can report."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

QUESTION_TOO_LONG = Code(
    "question-too-long",
    Severity.ERROR,
    "A word of a question has more letters than any size or name of the trade.",
    "Something was pasted by mistake; no table has it.",
    "binder reckon thread xxxxxxxx...",
    "Ask again with the size or the name alone.",
)
PLUGIN_BROKEN = Code(
    "plugin-broken",
    Severity.WARNING,
    "An installed plugin could not be loaded, or one of its functions failed.",
    "What it would have checked or printed is missing, and nobody would notice.",
    "(a plugin whose import fails)",
    "Update or uninstall the distribution that is named; report the fault to its author.",
)
PLUGIN_CLASH = Code(
    "plugin-clash",
    Severity.WARNING,
    "Two plugins claim the same name, key, series or code.",
    "The same word would mean two things.",
    "(two plugins that both add a feature `dimpled`)",
    "Uninstall one of the two distributions that are named.",
)
STEP_ORDER = Code(
    "plugin-step-order",
    Severity.ERROR,
    "The steps of plugins cannot be put in an order: a fact is needed that no plugin gives, "
    "or steps wait for one another in a ring.",
    "Whatever builds on that fact would be missing from the binder.",
    "(a plugin that needs a fact which none gives)",
    "Install the plugin that gives the fact, or uninstall the one that asks for it.",
)

CODES = (QUESTION_TOO_LONG, PLUGIN_BROKEN, PLUGIN_CLASH, STEP_ORDER)
