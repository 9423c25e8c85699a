"""A job on standard input to a PDF on standard output, under limits of memory and time.

Run by `binder.render.pdf` as `python -P -m binder.render.pdf_child MEMORY SECONDS`; ends with
one of the codes of `Ending`.
"""

from __future__ import annotations

import gc
import os
import sys
from datetime import UTC, datetime
from io import BytesIO
from typing import TYPE_CHECKING, BinaryIO, Protocol

from binder.render.pdf_job import Ending, PdfJob

if TYPE_CHECKING:
    from weasyprint import Attachment


# A page is thousands of objects that all live until the end: to look them through for rings as
# often as Python does by itself costs a quarter of the whole time.
COLLECT_AFTER = (100_000, 20, 50)


class PdfObjects(Protocol):
    """The PDF before it is written, as the maker hands it over."""

    objects: list[object]


def main(memory: int, seconds: int) -> int:
    """Makes the PDF; what went wrong goes to standard error, its kind is the exit code."""
    pdf_output = _private_output()
    limit_process(memory, seconds)
    sys.addaudithook(refuse_network)
    try:
        content = make_pdf(PdfJob.from_bytes(sys.stdin.buffer.read()))
    except BaseException as fault:
        ending = ending_of(fault)
        if ending is None:
            raise
        sys.stderr.write(f"{fault}\n")
        return ending
    pdf_output.write(content)
    pdf_output.close()
    return Ending.DONE


def _private_output() -> BinaryIO:
    """Standard output kept for the PDF alone; what a library prints goes to standard error."""
    kept = os.dup(1)
    os.dup2(2, 1)
    return os.fdopen(kept, "wb")


def limit_process(memory: int, seconds: int) -> None:
    """Bytes of address space and seconds of work, where the system can set them."""
    try:
        import resource
    except ImportError:
        return
    for limit, amount in ((resource.RLIMIT_AS, memory), (resource.RLIMIT_CPU, seconds)):
        try:
            resource.setrlimit(limit, (amount, amount))
        except (ValueError, OSError) as refusal:
            sys.stderr.write(f"limit not set: {refusal}\n")


def refuse_network(event: str, _arguments: tuple[object, ...]) -> None:
    """Ends any attempt to look up a name or to connect."""
    if event in {"socket.connect", "socket.getaddrinfo", "socket.sendto", "urllib.Request"}:
        raise PermissionError("the PDF is made without a network")


def make_pdf(job: PdfJob) -> bytes:
    """The PDF: tagged after PDF/UA-1, dated as the job says or not at all."""
    from weasyprint import HTML

    from binder.render.fetcher import OwnFonts

    gc.set_threshold(*COLLECT_AFTER)
    fetcher = OwnFonts()
    document = HTML(string=job.html, base_url="binder:", url_fetcher=fetcher)
    content: bytes = document.write_pdf(
        pdf_variant="pdf/ua-1",
        attachments=_attachments(job),
        finisher=None if job.made_on else _undate,
    )
    fetcher.stop_if_refused()
    return content


def _attachments(job: PdfJob) -> list[Attachment]:
    """In the order of their names, which PDF's own index needs (ISO 32000-1, 7.9.6)."""
    from weasyprint import Attachment

    moment = datetime.fromisoformat(job.made_on) if job.made_on else datetime.fromtimestamp(0, UTC)
    return [
        Attachment(
            file_obj=BytesIO(one.content),
            name=one.name,
            description=one.description,
            created=moment,
            modified=moment,
            relationship="Source",
        )
        for one in sorted(job.attachments, key=lambda one: one.name)
    ]


def _undate(_document: object, pdf: PdfObjects) -> None:
    """Takes the dates off the attached files: without a given date the PDF carries none."""
    for item in pdf.objects:
        parameters = getattr(item, "extra", {}).get("Params", {})
        parameters.pop("CreationDate", None)
        parameters.pop("ModDate", None)


def ending_of(fault: BaseException) -> Ending | None:
    """Which foreseen ending a fault is, None for one that is not foreseen."""
    words = str(fault)
    if isinstance(fault, MemoryError) or "allocate memory" in words or "failed to map" in words:
        return Ending.NO_MEMORY
    if isinstance(fault, ModuleNotFoundError) and fault.name == "weasyprint":
        return Ending.NO_WEASYPRINT
    if isinstance(fault, OSError) and "cannot load library" in words:
        return Ending.NO_PANGO
    if type(fault).__name__ == "FatalURLFetchingError":
        return Ending.ASKED_FOR
    return None


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), int(sys.argv[2])))
