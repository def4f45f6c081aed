"""The rules on the first page of a question paper."""

from generator.issued import IssuedForm
from generator.wording import gate_rule, time_and_marks, ways


def paper_rules(form: IssuedForm) -> list[str]:
    """Return time, marks, gate and ways of a form; `form` is its plain JSON."""
    rules = (*time_and_marks(form, "paper"), gate_rule(form), *ways(form, "paper"))
    return [rule for rule in rules if rule]
