"""Routes judged: are the tools there, do they reach, and does the metal bear what is done to it."""
