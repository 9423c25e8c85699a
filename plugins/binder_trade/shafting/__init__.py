"""Thin shafts: stress, twist, deflection, bearing loads and whirling, as orders of magnitude."""
