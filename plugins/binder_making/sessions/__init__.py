"""Evenings: the ordered work packed into sessions that end well."""

from binder_making.sessions.job import Day, Evening, Job, Lengths
from binder_making.sessions.pack import evenings

__all__ = ["Day", "Evening", "Job", "Lengths", "evenings"]
