"""Make the sheet on which an observer notes what a person does at the panel."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from generator.bank.models import Procedure
from generator.printing.content import block_nodes, inline_nodes, listed
from generator.printing.paper import PaperSize, sheet_of_paper
from generator.printing.typesetter import typeset
from generator.records.practice import sheet_steps

STARRED = (
    "Tick one box a step, and only for what you saw yourself. A star marks a step whose place in "
    "the order protects people: stop the work when it is left out."
)
NO_STAR = (
    "Tick one box a step, and only for what you saw yourself. No step here is starred. Stop the "
    "work whenever anybody is at risk."
)
SAYS = (
    "This sheet says what was seen on one job. It does not say that the person is fit or allowed "
    "to do hazardous work. Data sheet, safety data sheet and local rules come first."
)


def observation_sheet(
    name: str,
    procedure: Procedure,
    *,
    edition: str,
    paper: PaperSize,
    fonts: Path,
    hazards: Sequence[str] = (),
    worn: Sequence[str] = (),
    large_print: bool = False,
) -> bytes:
    """Set the observation sheet of a procedure as a tagged PDF.

    name     of the procedure in the bank, as the record of the observation repeats it
    edition  of the bank
    hazards  titles of the hazards that its steps meet
    worn     titles of those that are guarded against before the first step
    Raises PrintingRefused when it cannot be set.
    """
    content = observation_sheet_content(name, procedure, edition, hazards, worn)
    return typeset("observation_sheet", content | sheet_of_paper(paper, large_print), fonts=fonts)


def observation_sheet_content(
    name: str,
    procedure: Procedure,
    edition: str,
    hazards: Sequence[str] = (),
    worn: Sequence[str] = (),
) -> dict[str, Any]:
    """Choose what an observation sheet shows."""
    steps = sheet_steps(procedure)
    return {
        "title": procedure.title,
        "edition": edition,
        "corner": name,
        "foot": [f"Sheet {name}", "Observation"],
        "rule": STARRED if any(step.critical for step in steps) else NO_STAR,
        "cautions": [
            block_nodes(text) for text in (*_in_words(hazards, worn), *procedure.cautions)
        ],
        "steps": [
            {"step": step.step, "action": inline_nodes(step.action)}
            | {"star": step.critical, "optional": step.optional}
            for step in steps
        ],
        "holds": [inline_nodes(text) for text in procedure.throughout],
        "never": [inline_nodes(text) for text in procedure.never],
        "says": SAYS,
    }


def _in_words(hazards: Sequence[str], worn: Sequence[str]) -> Iterator[str]:
    """Name what can hurt on this job, so that the observer knows when to stop it."""
    if hazards:
        on = f" On before the first step: what guards against {_listed(worn)}." if worn else ""
        yield f"This work meets {_listed(hazards)}. Stop it when a guard is missing.{on}"


def _listed(titles: Sequence[str]) -> str:
    return listed([title[:1].lower() + title[1:] for title in titles])
