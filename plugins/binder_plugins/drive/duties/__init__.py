"""What each part of the drive does: lifts, trips, rocks, holds, steadies."""
