"""The trade's tables and sums, apart from any spec: what every plugin may reckon with."""
