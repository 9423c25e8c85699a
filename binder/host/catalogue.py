"""The codes of binder itself, gathered from the packages that report them."""

from __future__ import annotations

from itertools import chain

import binder.checks.codes as check_codes
import binder.host.codes as host_codes
import binder.pages.codes as page_codes
import binder.parameters.codes as parameter_codes
import binder.source.codes as source_codes
import binder.spec.codes as spec_codes
import binder.workshop.codes as workshop_codes

CORE_CODES = tuple(
    chain(
        source_codes.CODES,
        parameter_codes.CODES,
        spec_codes.CODES,
        workshop_codes.CODES,
        check_codes.CODES,
        page_codes.CODES,
        host_codes.CODES,
    )
)
