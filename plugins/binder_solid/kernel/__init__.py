"""Forms made into solids by the kernel; the only package that imports OCP."""

from __future__ import annotations

from binder_solid.faults import NoKernel
from binder_solid.presence import is_kernel_there

if not is_kernel_there():
    raise NoKernel("solids need the extra: pip install 'build-binder[solid]'")
