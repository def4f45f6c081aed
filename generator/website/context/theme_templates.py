"""The templates of the theme, filled in the same strict way for every kind of page."""

from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined


def theme_templates(theme: Path) -> Environment:
    """Return the templates of a theme: values are escaped, and a missing name is an error."""
    return Environment(
        loader=FileSystemLoader(theme),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
