"""The order of the work: every must kept, little spent on set-ups and tools, loops told."""

from binder_making.order.cost import Prices, Spent, spent
from binder_making.order.graph import Graph, graph
from binder_making.order.loop import Loop
from binder_making.order.solve import Order, in_order

__all__ = ["Graph", "Loop", "Order", "Prices", "Spent", "graph", "in_order", "spent"]
