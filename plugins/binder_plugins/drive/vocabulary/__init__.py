"""What may be written under `drive:`: what turns what, by what, and against what."""
