"""The model through one turn of the drive: where everything goes, and what knocks."""
