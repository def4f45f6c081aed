"""The text from which draws start."""

from typing import Any

import click


class Seed(click.ParamType[str]):
    """Any text that can be read off a paper and typed again."""

    name = "text"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> str:
        """Return the seed, or refuse one that nobody could type again."""
        text = str(value)
        if not text.strip() or not text.isprintable():
            self.fail("a seed is a word that can be read and typed again, such as spring")
        return text
