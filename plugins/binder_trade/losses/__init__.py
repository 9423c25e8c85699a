"""What stages lose, and what hands and small motors give."""
