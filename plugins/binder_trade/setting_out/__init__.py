"""Setting out: holes by dividers and by the handwheels of a machine."""

from binder_trade.explained import NotDefined
from binder_trade.setting_out.circle import chord
from binder_trade.setting_out.handwheel import Wound, wound

__all__ = ["NotDefined", "Wound", "chord", "wound"]
