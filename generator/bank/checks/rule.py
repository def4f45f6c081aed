"""A rule of the house: its name, its severity, what it looks at, and the page that explains it."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from generator.bank.bank import Bank
from generator.diagnostics import Problem, Severity

Look = Callable[[Bank], Iterator[Problem]]


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule.

    name      kebab-case, as printed in brackets behind a message
    severity  error stops the build
    why       a sentence or two on what the rule protects
    wrong     a short example that breaks it
    right     the same, mended
    look      gives the problems of a bank; nothing where the reader itself applies the rule
    """

    name: str
    severity: Severity
    why: str
    wrong: str
    right: str
    look: Look | None = None

    def page(self) -> str:
        """Return the page that `guidecoat explain` prints."""
        return (
            f"{self.name} ({self.severity})\n\n{self.why}\n\n"
            f"wrong:\n{_indented(self.wrong)}\n\nright:\n{_indented(self.right)}\n"
        )


def _indented(text: str) -> str:
    return "\n".join(f"    {line}" for line in text.strip("\n").splitlines())
