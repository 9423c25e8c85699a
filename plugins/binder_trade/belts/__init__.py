"""Belts: lengths, wraps, stepped pulleys, grip, grooves, sections and what is sold."""
