"""Pairs of wheels settled: teeth and blanks, belts and their lengths, and what the frame has."""
