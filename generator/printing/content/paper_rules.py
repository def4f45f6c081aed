"""The rules on the first page of a question paper."""

from collections.abc import Mapping
from typing import Any

from generator.wording import gate_rule, time_and_marks, ways


def paper_rules(form: Mapping[str, Any]) -> list[str]:
    """Return time, marks, gate and ways of a form; `form` is its plain JSON."""
    rules = (*time_and_marks(form, "paper"), gate_rule(form), *ways(form, "paper"))
    return [rule for rule in rules if rule]
