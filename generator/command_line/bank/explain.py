"""`guidecoat explain`."""

import click

from generator.bank.checks import RULES
from generator.diagnostics import did_you_mean
from generator.marking import ISSUED_RULES, TABLE_RULES
from generator.records import ROSTER_RULES

_ALL = {**RULES, **TABLE_RULES, **ISSUED_RULES, **ROSTER_RULES}


@click.command()
@click.argument("rule", required=False)
def explain(rule: str | None) -> None:
    """Say what a check means, with a wrong and a right example.

    Example: guidecoat explain slip-in-band

    Without a rule it lists all of them.
    """
    if rule is None:
        for name, known in _ALL.items():
            click.echo(f"{name:26} {known.severity:8} {known.why}")
        return
    if rule not in _ALL:
        hint = did_you_mean(rule, _ALL) or "run 'guidecoat explain' for the list"
        raise click.UsageError(f"there is no rule '{rule}'; {hint}")
    click.echo(_ALL[rule].page(), nl=False)
