"""Fits: from the duty that a maker names to classes, clearances, pressures and target sizes."""
