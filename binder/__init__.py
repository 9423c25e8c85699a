"""A compiler for build specs: one YAML spec of a small machine in, one workshop binder out."""

__version__ = "0.1.0"
