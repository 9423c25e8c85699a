"""The host: loads plugins one by one, orders their steps, and calls their hooks."""

from binder.host.host import Host
from binder.host.plugin import Plugin

__all__ = ["Host", "Plugin"]
