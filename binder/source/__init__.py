"""YAML text to a tree that knows its places."""

from binder.source.codes import CODES
from binder.source.files import Refusal, read_file, read_file_in
from binder.source.read import read_spec, read_text
from binder.source.tree import Document, Node, Path, Row, Table, Written

__all__ = [
    "CODES",
    "Document",
    "Node",
    "Path",
    "Refusal",
    "Row",
    "Table",
    "Written",
    "read_file",
    "read_file_in",
    "read_spec",
    "read_text",
]
