"""The arithmetic of making: speeds, times, order of work, tolerance chains, measuring.

Plain values in, plain values out (mm, N, W, minutes, r/min); it knows no spec and no plugin.
"""
