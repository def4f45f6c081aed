"""`guidecoat calculate`."""

import json

import click

from generator.refinishing import CATALOGUE, RequestRefused, Worked, work_out


@click.command()
@click.argument("relation", required=False)
@click.argument("inputs", nargs=-1, metavar="[NAME=VALUE]...")
@click.option("--list", "listed", is_flag=True, help="List every relation with its inputs.")
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
def calculate(relation: str | None, inputs: tuple[str, ...], listed: bool, form: str) -> None:
    """Work one relation of the trade out, with its working and source.

    Example: guidecoat calculate wet_film dry_film="60 um" volume_solids="48 percent"
    """
    if listed:
        click.echo(_listing())
        return
    if relation is None:
        raise click.UsageError("name a relation, or use --list")
    try:
        worked = work_out(relation, dict(_named(text) for text in inputs))
    except RequestRefused as error:
        raise click.UsageError(str(error)) from error
    if form == "json":
        click.echo(json.dumps(worked.as_plain(), ensure_ascii=False, indent=2))
    else:
        click.echo(_text(worked))


def _named(text: str) -> tuple[str, str]:
    name, sign, value = text.partition("=")
    if not sign or not name or not value:
        raise RequestRefused(f"'{text}' is not name=value")
    return name, value


def _listing() -> str:
    lines = []
    for name, relation in CATALOGUE.items():
        inputs = " ".join(
            f"{p.name}={p.unit.name if p.unit else 'ratio'}" for p in relation.parameters
        )
        lines += [f"{name} {inputs}", f"    {relation.sentence}"]
    return "\n".join(lines)


def _text(worked: Worked) -> str:
    facts = worked.relation.facts
    lines = [*worked.shown(), "", *worked.working, ""]
    if worked.assumed:
        names = {p.name: p.unit.name for p in worked.relation.parameters if p.unit}
        assumed = ", ".join(f"{name} in {names[name]}" for name in worked.assumed)
        lines.append(f"Taken without a unit: {assumed}")
    lines.append(f"Source: {facts.source}, {facts.place} ({facts.status.replace('_', ' ')})")
    if facts.caution:
        lines.append(f"Caution: {facts.caution}")
    return "\n".join(lines)
