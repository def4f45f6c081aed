"""`guidecoat draw`."""

import json
import sys
from typing import TYPE_CHECKING, Any

import click

from generator.command_line.project import Project, find_project
from generator.command_line.seeds import Seed
from generator.diagnostics import did_you_mean

if TYPE_CHECKING:
    from generator.questions import Askable

Plain = dict[str, Any]


@click.command()
@click.argument("item")
@click.option("--seed", default="1", type=Seed(), help="The same seed gives the same question.")
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
def draw(item: str, seed: str, form: str) -> None:
    """Draw one question and show it with its key and working.

    Example: guidecoat draw film_build/dry_from_wet/wet_film_for_target --seed 7
    """
    from generator.questions import as_plain

    question = _asked(find_project(), item).make(seed, ())
    if question is None:
        click.echo(f"'{item}' gives no question for this seed", err=True)
        sys.exit(1)
    plain = as_plain(question)
    click.echo(json.dumps(plain, ensure_ascii=False, indent=2) if form == "json" else _text(plain))


def _asked(project: Project, name: str) -> "Askable":
    """Return what was asked for, from its own file and what that stands on."""
    from generator.bank import part_for_question
    from generator.command_line.needed_part import sound_part
    from generator.questions import askable_named

    bank = sound_part(project, part_for_question(project.bank, name))
    asked = askable_named(bank, name)
    if asked is None:
        hint = did_you_mean(name, _all_names(project)) or "items are named module/objective/name"
        raise click.UsageError(f"the bank has no item '{name}'; {hint}")
    return asked


def _all_names(project: Project) -> tuple[str, ...]:
    from generator.bank import load_bank
    from generator.questions import askables

    bank, _ = load_bank(project.bank)
    return tuple(askable.name for askable in askables(bank)) if bank else ()


_TAGS = {
    "published": "",
    "common_practice": "common practice in the trade, no published source; ",
    "from_memory": "from memory, not read again; ",
}


def _text(plain: Plain) -> str:
    key = plain["key"]
    lines = [plain["stem"], ""]
    for exhibit in (plain["sheet"], plain["table"]):
        if exhibit:
            lines += [exhibit["title"], *("  " + " | ".join(r) for r in exhibit["rows"]), ""]
    if plain["caution"]:
        lines += [f"Caution: {plain['caution']}", ""]
    lines += _KEYS[plain["kind"]](key)
    lines += [f"Caution, with the feedback: {caution['text']}" for caution in plain["cautions"]]
    lines += ["", *(f"Source: {_TAGS[s['tag']]}{s['text']}" for s in plain["sources"])]
    return "\n".join(lines)


def _numeric(key: Plain) -> list[str]:
    slips = [f"  {slip['shown']}: {slip['says']}" for slip in key["slips"]]
    answer = f"Key: {key['shown']} {key['unit_symbol']}".rstrip()
    working = [f"  {line}" for line in key["working"]]
    return [f"{answer} (accept {key['band_text']})", "Working:", *working, "Known slips:", *slips]


def _options(key: Plain) -> list[str]:
    return [
        f"{'*' if option['right'] else ' '} {option['letter']}  {option['text']}: {option['says']}"
        for option in key["options"]
    ]


def _order(key: Plain) -> list[str]:
    steps = [f"  {step['letter']}  {step['text']}" for step in key["steps"]]
    pairs = [f"  {p['first']} before {p['then']}: {p['reason']}" for p in key["pairs"]]
    return [*steps, f"{key['rule']} {key['orders']} orders are right.", *pairs]


def _match(key: Plain) -> list[str]:
    left = [f"  {row['number']}  {row['text']}" for row in key["left"]]
    right = [f"  {row['letter']}  {row['text']}" for row in key["right"]]
    joined = ", ".join(f"{number}-{letter}" for number, letter in key["answers"].items())
    return [*left, *right, f"Key: {joined}"]


def _written(key: Plain) -> list[str]:
    return [*(f"  {p['marks']} for: {p['text']}" for p in key["points"]), f"Model: {key['model']}"]


_KEYS = {
    "numeric": _numeric,
    "choice": _options,
    "multiple_response": _options,
    "order": _order,
    "match": _match,
    "written": _written,
}
