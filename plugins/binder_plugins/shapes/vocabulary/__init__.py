"""The wider vocabulary of shapes: what may be written of each."""
