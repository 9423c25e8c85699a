"""Features to the forms that are cut away for them, or put on."""
