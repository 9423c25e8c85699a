"""Mechanisms: cranks, linkages, cams, tappets, step motions, hoists, flywheels, scale speed."""
