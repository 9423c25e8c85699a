"""Shapes and features to forms that a kernel can build, and to the places of each feature."""
