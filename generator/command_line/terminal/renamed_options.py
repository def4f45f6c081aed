"""Options that were renamed: the old spelling is refused, and the new one is named."""

from collections.abc import Callable
from typing import Any, TypeVar

import click

F = TypeVar("F", bound=Callable[..., Any])


def renamed(old: str, new: str) -> Callable[[F], F]:
    """Refuse an old option and name the new one; the old one is not in the help."""

    def refuse(ctx: click.Context, param: click.Parameter, value: str | None) -> None:
        if value is not None:
            raise click.UsageError(f"{old} is now {new}; write {new} '{value}'", ctx)

    # a name of its own: under its former one it would take the value of the new option
    name = f"former_{old.strip('-').replace('-', '_')}"
    return click.option(old, name, hidden=True, expose_value=False, callback=refuse)


def needs_option(new: str) -> Callable[[F], F]:
    """Refuse a bare word where an option has taken its place, and name the option."""

    def refuse(ctx: click.Context, param: click.Parameter, value: str | None) -> None:
        if value is not None:
            raise click.UsageError(f"where it goes is now {new}; write {new} '{value}'", ctx)

    return click.argument("bare", required=False, metavar="", expose_value=False, callback=refuse)
