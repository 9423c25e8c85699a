"""Forms of parts laid on paper."""
