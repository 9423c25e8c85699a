"""Tolerance chains: what is left at the end, which link matters, and the one made to suit."""

from binder_making.chains.chain import Chain, Contribution, Link, chain
from binder_making.chains.suit import Suited, made_to_suit

__all__ = ["Chain", "Contribution", "Link", "Suited", "chain", "made_to_suit"]
