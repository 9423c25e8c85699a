"""Cams: told by a law or as drawn, to their motion, their outline and the maker's table."""
