"""`binder reckon`: one question at the bench, answered with its working."""

from __future__ import annotations

import json
from pathlib import Path

import click

from binder.api.answers import Answer, Reason, Result
from binder.api.contributions import Reckoning
from binder.cli.report import report
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.parameters import Environment
from binder.parameters.near import did_you_mean
from binder.workshop import Workshop, read_workshop


@click.command("reckon", context_settings={"ignore_unknown_options": True})
@click.argument("question", required=False)
@click.argument("words", nargs=-1, type=click.UNPROCESSED)
@click.option(
    "--workshop",
    type=click.Path(path_type=Path),
    help="The workshop file; a modest metric one is built in.",
)
@click.option(
    "--format",
    "style",
    type=click.Choice(("text", "json")),
    default="text",
    show_default=True,
    help="How the answer is printed.",
)
@click.pass_context
def command(
    ctx: click.Context,
    question: str | None,
    words: tuple[str, ...],
    workshop: Path | None,
    style: str,
) -> None:
    """Answer one QUESTION at the bench, with its working.

    Without a question, all that can be asked is listed.
    """
    host = Host.load()
    asked = host.reckonings()
    if question is None:
        click.echo(_listed(tuple(asked.values())))
        return
    if question not in asked:
        hint = did_you_mean(question, asked) or f"one of: {', '.join(sorted(asked))}"
        click.echo(f"nothing is known of '{question}'; {hint}", err=True)
        ctx.exit(2)
    owned, findings = _workshop(workshop, host)
    if owned is None:
        report(findings, {}, style)
        ctx.exit(1)
    answer = asked[question].run(words, owned)
    findings = (*findings, *_remarks(answer))
    if isinstance(answer, Answer):
        click.echo(_as_json(answer) if style == "json" else _as_text(answer))
    report(findings, {}, style if findings or style == "text" else "text")
    ctx.exit(1 if findings else 0)


def _workshop(path: Path | None, host: Host) -> tuple[Workshop | None, tuple[Diagnostic, ...]]:
    environment = Environment({}, host.series(), host.gauges(), None)
    return read_workshop(path, environment)


def _remarks(answer: Answer | Diagnostic) -> tuple[Diagnostic, ...]:
    return answer.findings if isinstance(answer, Answer) else (answer,)


def _listed(reckonings: tuple[Reckoning, ...]) -> str:
    rows = sorted(reckonings, key=lambda one: one.name)
    return "\n\n".join(f"binder reckon {one.name} {one.usage}\n    {one.says}" for one in rows)


def _as_json(answer: Answer) -> str:
    content = {
        "results": [_result(one) for one in answer.results],
        "working": [_reason(one) for one in answer.working],
        "notes": list(answer.notes),
    }
    return json.dumps(content, ensure_ascii=False, indent=2)


def _result(one: Result) -> dict[str, object]:
    entry: dict[str, object] = {"name": one.name, "value": one.value, "unit": one.unit}
    return {**entry, "designation": one.designation} if one.designation else entry


def _reason(one: Reason) -> dict[str, str]:
    return {"name": one.name, "formula": one.formula, "value": one.value, "source": one.source}


def _as_text(answer: Answer) -> str:
    lines = [answer.title, ""]
    lines += [_line(one) for one in answer.results]
    if answer.working:
        lines += ["", "Working"]
    for step in answer.working:
        lines.append(f"  {step.name} = {step.value}")
        lines.append(f"    from: {step.formula}")
        lines += [f"    source: {step.source}"] if step.source else []
    lines += ["", *answer.notes] if answer.notes else []
    return "\n".join(lines)


def _line(one: Result) -> str:
    title = one.title or one.name.replace("_", " ")
    name = f" ({one.designation})" if one.designation else ""
    unit = f" {_PRINTED.get(one.unit, one.unit)}" if one.unit else ""
    return f"  {title:26} {_figure(one.value)}{unit}{name}"


# Units in scripts are plain letters; on the screen they are the trade's signs.
_PRINTED = {"um": "µm", "deg": "°"}


def _figure(value: float) -> str:
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
