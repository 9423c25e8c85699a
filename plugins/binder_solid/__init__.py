"""Solids: forms told without a kernel, and what the kernel makes of them."""
