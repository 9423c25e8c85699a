"""The questions at the bench about belts, gears, trains and dividing."""
