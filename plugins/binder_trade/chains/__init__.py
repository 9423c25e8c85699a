"""Chains: roller and bead chains, whole links, centre distances, speed."""
