"""Forms looked at without a kernel: holes out of the metal, thin walls, tools that do not reach."""
