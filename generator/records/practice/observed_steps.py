"""The steps of a procedure as an observer sees them on a sheet."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from generator.bank.models import Procedure
from generator.diagnostics import did_you_mean
from generator.records.store import RecordsRefused

Seen = Literal["yes", "no", "not_seen"]
SEEN: tuple[Seen, ...] = ("yes", "no", "not_seen")
SEEN_WORDS: Mapping[str, str] = {"yes": "yes", "no": "no", "not_seen": "not seen"}


@dataclass(frozen=True, slots=True)
class SheetStep:
    """One step of a sheet.

    critical  starred: the order of this step protects people
    optional  done only where the job asks for it
    """

    step: str
    action: str
    critical: bool
    optional: bool


def sheet_steps(procedure: Procedure) -> tuple[SheetStep, ...]:
    """Return the steps in a legal order; those in a danger pair are critical."""
    danger = {
        name
        for pair in procedure.pairs
        if pair.pair_class == "danger"
        for name in (pair.first, pair.then)
    }
    return tuple(
        SheetStep(step.step, step.action, step.step in danger, step.optional)
        for step in procedure.steps
    )


def seen_of(steps: tuple[SheetStep, ...], words: tuple[str, ...]) -> Mapping[str, Seen]:
    """Read 'step=yes', 'step=no' or 'step=not_seen'; a step that is not named was not seen.

    Raises RecordsRefused for a step that the procedure does not have, a step named twice, an
    answer of another kind, or when nothing was seen.
    """
    names = [step.step for step in steps]
    found: dict[str, Seen] = {}
    for word in words:
        name, sign, answer = word.partition("=")
        if not sign or answer not in SEEN:
            raise RecordsRefused(f"'{word}' is not a step with =yes, =no or =not_seen")
        if name not in names:
            hint = did_you_mean(name, names) or f"its steps are {', '.join(names)}"
            raise RecordsRefused(f"the procedure has no step '{name}'; {hint}")
        if name in found:
            raise RecordsRefused(f"the step '{name}' is there twice")
        found[name] = answer
    if all(answer == "not_seen" for answer in found.values()):
        raise RecordsRefused("nothing was seen, so there is nothing to record")
    return {name: found.get(name, "not_seen") for name in names}
