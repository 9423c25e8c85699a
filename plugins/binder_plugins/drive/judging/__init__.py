"""Is the drive right: speeds, strength, teeth, belts, ropes."""
