"""Screws that move: dials, travel, force, differential screws."""
