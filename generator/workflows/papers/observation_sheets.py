"""Sheets on which somebody notes what a person was seen to do, one for each procedure."""

from collections.abc import Iterable
from pathlib import Path

from generator.bank import Bank, hazards_met
from generator.bank.models import Procedure
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize, PrintingRefused, observation_sheet
from generator.workflows.files import write_files
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refusing


def procedure_named(bank: Bank, name: str) -> Procedure | Refused:
    """Return the procedure with a name, or the names there are."""
    if name not in bank.procedures:
        hint = did_you_mean(name, bank.procedures) or ", ".join(sorted(bank.procedures))
        return Refused(f"the bank has no procedure '{name}'; {hint}", misuse=True)
    return bank.procedures[name].record


def print_observation_sheets(
    project: Project,
    bank: Bank,
    names: Iterable[str],
    *,
    paper: PaperSize = "a4",
    large_print: bool = False,
) -> tuple[Path, ...] | Refused:
    """Write the sheet of each procedure into the folder for papers: all of them, or none."""
    sheets: dict[str, bytes] = {}
    for name in names:
        record = procedure_named(bank, name)
        if isinstance(record, Refused):
            return record
        sheet = _sheet(project, bank, name, record, paper, large_print)
        if isinstance(sheet, Refused):
            return sheet
        sheets[f"sheet-{name}.pdf"] = sheet
    return write_files(project.printed, sheets)


@refusing(PrintingRefused)
def _sheet(
    project: Project, bank: Bank, name: str, record: Procedure, paper: PaperSize, large: bool
) -> bytes:
    return observation_sheet(
        name,
        record,
        edition=bank.sheet.edition,
        paper=paper,
        fonts=project.fonts,
        hazards=_titles(bank, hazards_met(record)),
        worn=_titles(bank, record.wears),
        large_print=large,
    )


def _titles(bank: Bank, hazards: tuple[str, ...]) -> list[str]:
    return [bank.hazards[name].record.title for name in hazards if name in bank.hazards]
