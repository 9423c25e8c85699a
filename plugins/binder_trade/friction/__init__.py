"""Friction wheels."""
