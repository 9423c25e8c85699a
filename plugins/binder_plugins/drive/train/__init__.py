"""Parts that turn together, what joins them, and the speed of each."""
