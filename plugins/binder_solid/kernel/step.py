"""Solids written as STEP (ISO 10303-21, AP242 or AP214), the same bytes for the same solids."""

from __future__ import annotations

import io
import itertools
import re
from collections.abc import Sequence
from typing import Literal

from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.STEPCAFControl import STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Controller, STEPControl_Reader
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDataStd import TDataStd_Name
from OCP.TDocStd import TDocStd_Document
from OCP.TopLoc import TopLoc_Location
from OCP.XCAFDoc import XCAFDoc_DocumentTool

from binder_solid.faults import Unbuildable
from binder_solid.forms import Form, Frame
from binder_solid.solid import NamedForm

from .shapes import solid_of, volume_of
from .words import Shape, move_to

Schema = Literal["AP242", "AP214"]
_SCHEMAS: dict[Schema, str] = {"AP242": "AP242DIS", "AP214": "AP214IS"}
_HEADER = re.compile(r"HEADER;.*?FILE_SCHEMA", re.DOTALL)
_USE = re.compile(r"NEXT_ASSEMBLY_USAGE_OCCURRENCE\('[0-9]+'")
_FOREIGN = re.compile(r"[^\x00-\x7f]")


def step_bytes(
    parts: Sequence[NamedForm], title: str = "", schema: Schema = "AP242", stamp: str = ""
) -> bytes:
    """Writes parts under their names where they stand; raises Unbuildable.

    `stamp` is the time in ISO 8601, for a caller that wants one in the file.
    """
    if not parts:
        raise Unbuildable("no part to write")
    _quiet()
    document = TDocStd_Document(TCollection_ExtendedString("binder"))
    _enter(document, parts, title or parts[0].name)
    writer = STEPCAFControl_Writer()
    Interface_Static.SetCVal_s("write.step.schema", _SCHEMAS[schema])
    if not writer.Transfer(document, STEPControl_AsIs):
        raise Unbuildable("parts that STEP cannot hold")
    stream = io.BytesIO()
    if writer.WriteStream(stream) != IFSelect_RetDone:
        raise Unbuildable("parts that STEP cannot hold")
    text = _recounted(_plain(stream.getvalue().decode("utf-8")))
    header = _header(title or parts[0].name, stamp)
    return _HEADER.sub(lambda _: header, text, count=1).encode("ascii")


def step_volume(data: bytes) -> float:
    """Reads STEP and gives the volume of all that is in it, in mm³; raises Unbuildable."""
    _quiet()
    reader = STEPControl_Reader()
    if reader.ReadStream("binder", io.BytesIO(data)) != IFSelect_RetDone:
        raise Unbuildable("no STEP")
    reader.TransferRoots()
    return volume_of(reader.OneShape())


def _enter(document: Shape, parts: Sequence[NamedForm], title: str) -> None:
    tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    if len(parts) == 1 and parts[0].frame == Frame():
        _name(tool.AddShape(solid_of(parts[0].form), makeAssembly=False), parts[0].name)
        return
    whole = tool.NewShape()
    _name(whole, title)
    known: dict[Form, Shape] = {}
    for part in parts:
        if part.form not in known:
            known[part.form] = tool.AddShape(solid_of(part.form), makeAssembly=False)
            _name(known[part.form], part.name)
        place = TopLoc_Location(move_to(part.frame))
        _name(tool.AddComponent(whole, known[part.form], place), part.name)
    tool.UpdateAssemblies()


def _name(label: Shape, name: str) -> None:
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(name, theIsMultiByte=True))


def _quiet() -> None:
    """The kernel tells of its work on the screen unless it is told not to."""
    STEPControl_Controller.Init_s()
    Message.DefaultMessenger_s().ChangePrinters().Clear()


def _header(title: str, stamp: str) -> str:
    """Gives the head of the file without the time, the user and the machine."""
    name = _quoted(title)
    return (
        "HEADER;\n"
        "FILE_DESCRIPTION((''),'2;1');\n"
        f"FILE_NAME('{name}','{_quoted(stamp)}',(''),(''),'','','');\n"
        "FILE_SCHEMA"
    )


def _recounted(text: str) -> str:
    """Numbers the uses of parts from 1; the kernel goes on counting from file to file."""
    count = itertools.count(1)
    return _USE.sub(lambda _: f"NEXT_ASSEMBLY_USAGE_OCCURRENCE('{next(count)}'", text)


def _quoted(text: str) -> str:
    """Writes text as ISO 10303-21 wants it within quotes: those and backslashes doubled."""
    return _plain(text.replace("\\", "\\\\").replace("'", "''"))


def _plain(text: str) -> str:
    """Writes signs beyond the plain ones in hex, as ISO 10303-21 has it for all its editions."""
    return _FOREIGN.sub(lambda sign: f"\\X4\\{ord(sign[0]):08X}\\X0\\", text)
