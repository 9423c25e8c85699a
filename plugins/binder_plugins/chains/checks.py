"""Chains of sizes to findings: does it still move where all of them lie at their worst."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import ChainFact, Design, Diagnostic
from binder_making.chains import Chain
from binder_plugins.chains import codes
from binder_plugins.chains.nipping import Nipped, nipped
from binder_plugins.chains.reckoning import closing_range, printed, reckoned
from binder_plugins.chains.shoulders import LEAST, MOST

# A washer that can be turned, faced and held: common practice, no source.
THINNEST_MM = 0.5
_NEAR = 1e-9
# With so few sizes the worst case is met often enough: common practice, no source.
_FEW = 3


def check_chains(design: Design) -> Iterator[Diagnostic]:
    """All findings about what chains leave."""
    for fact in design.facts.all(ChainFact):
        chain = reckoned(fact)
        if chain is None:
            continue
        if fact.closing:
            yield from _closing(fact, chain, design.units)
        elif fact.kind == "lap":
            yield from _misses(fact, chain, design.units)
        elif fact.kind == "centres":
            yield from _centres(fact, chain, design.units)
        elif fact.jams < chain.nominal_mm and chain.least_mm < fact.jams - _NEAR:
            yield _jams(fact, chain, design.units)
        elif fact.kind == "shoulders" and chain.nominal_mm > fact.most + _NEAR:
            yield _loose(fact, chain, design.units)
    for one in nipped(design):
        yield _nipped(one, design.units)


def _nipped(one: Nipped, units: str) -> Diagnostic:
    short = float(one.thickness - one.length)
    least, most = (printed(each, units) for each in (LEAST, MOST))
    return codes.NIPPED_BETWEEN_SHOULDERS.at(
        one.joint.at,
        f"'{one.joint.name}' has {printed(-short, units)} of end float: the journal is "
        f"{printed(float(one.length), units)} long in a hole of "
        f"{printed(float(one.thickness), units)}, and '{one.closed_by}' closes it",
        help=f"make the journal {printed(short + (LEAST + MOST) / 2, units)} longer, for "
        f"{least} to {most}",
    )


def _loose(fact: ChainFact, chain: Chain, units: str) -> Diagnostic:
    middle = (fact.least + fact.most) / 2
    return codes.STACK_TOO_LOOSE.at(
        fact.at,
        f"the {_named(fact)} is {printed(chain.nominal_mm, units)} as drawn; "
        f"{printed(fact.least, units)} to {printed(fact.most, units)} is wanted",
        help=f"take {printed(chain.nominal_mm - middle, units)} off the journal, and name the "
        "half that is made and measured first as `master:`",
    )


def _jams(fact: ChainFact, chain: Chain, units: str) -> Diagnostic:
    """Few sizes go by the worst case; of many it is told which band it is that jams."""
    if len(fact.links) > _FEW and chain.likely_least_mm >= fact.jams - _NEAR:
        return _at_worst(fact, chain, units)
    spare = printed(fact.least - chain.least_mm, units)
    is_loose = fact.kind == "shoulders" and chain.nominal_mm > fact.most
    wanted = f"{printed(fact.least, units)} to {printed(fact.most, units)}"
    return codes.STACK_MAY_JAM.at(
        fact.at,
        f"the {_named(fact)} may come out at {printed(chain.least_mm, units)}: "
        f"{chain.largest.name} alone strays {printed(chain.largest.half_mm, units)}",
        # As drawn it is too loose, and it may still jam: only one made to the other mends both.
        help=f"measure one half first, and make the other to it with {wanted} of play"
        if is_loose
        else f"{fact.way_out}; or leave {spare} more",
    )


def _at_worst(fact: ChainFact, chain: Chain, units: str) -> Diagnostic:
    likely = f"{printed(chain.likely_least_mm, units)} to {printed(chain.likely_most_mm, units)}"
    return codes.STACK_JAMS_AT_WORST.at(
        fact.at,
        f"the {_named(fact)} is likely to come out at {likely}, and at "
        f"{printed(chain.least_mm, units)} where all {len(fact.links)} sizes are at their worst",
        help=f"{fact.way_out}; or measure them as they are made, and the last one to the sum",
    )


def _closing(fact: ChainFact, chain: Chain, units: str) -> Iterator[Diagnostic]:
    if chain.nominal_mm < fact.jams - _NEAR:
        middle = (fact.least + fact.most) / 2
        yield codes.DRAWN_WITHOUT_FLOAT.at(
            fact.at,
            f"the {_named(fact)} is {printed(chain.nominal_mm, units)} as drawn",
            help=f"draw the {fact.closing} {printed(middle - chain.nominal_mm, units)} shorter; "
            "it is made to the others as measured all the same",
        )
    found = closing_range(fact, chain)
    if found is None or fact.kind != "end float" or found[0] >= THINNEST_MM - _NEAR:
        return
    yield codes.CLOSING_PIECE_THIN.at(
        fact.at,
        f"the {fact.closing} may have to be {printed(found[0], units)} long",
        help=f"shorten another piece by {printed(THINNEST_MM - found[0], units)}, "
        f"or make another one to suit",
    )


def _misses(fact: ChainFact, chain: Chain, units: str) -> Iterator[Diagnostic]:
    """Nothing is in touch at no lap; one that laps as little as that has no lift to speak of."""
    if chain.least_mm > fact.jams:
        return
    yield codes.TRIP_MAY_MISS.at(
        fact.at,
        f"the {_named(fact)} is {printed(chain.nominal_mm, units)} as drawn, and its sizes stray "
        f"by {printed(chain.nominal_mm - chain.least_mm, units)}: there may be no lift at all",
        help=fact.way_out,
    )


def _centres(fact: ChainFact, chain: Chain, units: str) -> Iterator[Diagnostic]:
    """A frame that is wrong as drawn is the matter of another check."""
    if chain.nominal_mm < fact.jams - _NEAR:
        return
    if chain.least_mm < fact.jams - _NEAR:
        yield codes.MESH_MAY_BIND.at(
            fact.at,
            f"the {_named(fact)} may be {printed(chain.least_mm, units)} apart, and bind "
            f"under {printed(fact.jams, units)}",
            help=fact.way_out,
        )
    if fact.fails is not None and chain.nominal_mm <= fact.fails < chain.most_mm - _NEAR:
        yield codes.MESH_MAY_PART.at(
            fact.at,
            f"the {_named(fact)} may be {printed(chain.most_mm, units)} apart, and let go "
            f"over {printed(fact.fails, units)}",
            help=fact.way_out,
        )


def _named(fact: ChainFact) -> str:
    return fact.title[0].lower() + fact.title[1:]
