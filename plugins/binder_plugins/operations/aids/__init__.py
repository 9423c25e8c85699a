"""The tools, fixtures and gauges of the work: which are owned, made first, or to be had."""
