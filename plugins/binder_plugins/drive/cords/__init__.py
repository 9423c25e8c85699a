"""The cord of a drum as the model stands: its straight runs, its hand, and what it tips."""
