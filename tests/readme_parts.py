"""Cuts the README into the parts that tests follow."""

import re
from pathlib import Path

README = (Path(__file__).parents[1] / "README.md").read_text("utf-8")


def part(heading: str) -> str:
    """Return what stands below a heading, up to the next one."""
    match = re.search(rf"^#+ {re.escape(heading)}\n(.*?)(?=^#)", README, re.MULTILINE | re.DOTALL)
    assert match, f"the README has no part '{heading}'"
    return match[1]


def tables(text: str) -> dict[str, str]:
    """Return the tables that a part tells the reader to write, by their file names."""
    return dict(re.findall(r"^```csv (\S+)\n(.*?)^```", text, re.MULTILINE | re.DOTALL))
