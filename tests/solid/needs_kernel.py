"""The mark of tests that make solids."""

from __future__ import annotations

import pytest

from binder_solid.presence import is_kernel_there

NEEDS_KERNEL = pytest.mark.skipif(not is_kernel_there(), reason="the extra `solid` is missing")
