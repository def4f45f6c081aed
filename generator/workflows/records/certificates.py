"""Certificates of training: issued from what the records show, printed, printed again."""

from dataclasses import dataclass
from datetime import date
from pathlib import Path

from generator.bank import Bank
from generator.printing import PaperSize, PrintingRefused
from generator.printing import certificate as certificate_pdf
from generator.records import Records, RecordsRefused
from generator.records.certificates import Certificate, Training, certificate_of, certify
from generator.records.store import writing
from generator.workflows.files import write_private
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refusing


@dataclass(frozen=True, slots=True)
class Page:
    """What a certificate is printed on."""

    paper: PaperSize = "a4"
    large_print: bool = False


@refusing(RecordsRefused, PrintingRefused)
def certify_training(
    project: Project,
    connection: Records,
    bank: Bank,
    person: str,
    trainer: str,
    *,
    at: str,
    day: date,
    page: Page | None = None,
) -> Path:
    """Issue a certificate from what the records show, print it, and return where it lies.

    trainer  code of who signs
    at, day  the time, as text, and the day up to which records count
    """
    # inside one writing, so that a certificate that cannot be set is not kept either
    with writing(connection):
        found = certify(connection, person, trainer, _training(bank), at, day)
        data = set_certificate(project, found, page or Page())
    return _written(project, found, data)


@refusing(RecordsRefused, PrintingRefused)
def print_certificate_again(
    project: Project, connection: Records, number: int, person: str, page: Page | None = None
) -> Path:
    """Print a certificate again from what is kept, and return where it lies.

    person  whose it is; another person's is refused
    """
    found = certificate_of(connection, number)
    if found.person != person:
        raise RecordsRefused(f"certificate {number} is another person's")
    return _written(project, found, set_certificate(project, found, page or Page()))


def set_certificate(project: Project, found: Certificate, page: Page) -> bytes:
    """Return a certificate as PDF; raises PrintingRefused with the way out."""
    try:
        return certificate_pdf(
            found.number,
            found.content,
            paper=page.paper,
            fonts=project.fonts,
            large_print=page.large_print,
        )
    except PrintingRefused as refused:
        code = found.person
        raise PrintingRefused(
            f"{refused} Where that is a letter of a name, write the name in Latin, Greek or "
            f'Cyrillic letters: guidecoat records people --person "{code}" --name ... --reason ...'
        ) from refused


def certificate_or_refusal(project: Project, found: Certificate) -> bytes | Refused:
    """Return a certificate as PDF, or why it cannot be set."""
    return refusing(PrintingRefused)(set_certificate)(project, found, Page())


def _training(bank: Bank) -> Training:
    plans = (name for name, plan in bank.blueprints.items() if plan.record.certificate)
    return Training(bank.sheet.edition, frozenset(plans))


def _written(project: Project, found: Certificate, data: bytes) -> Path:
    path = project.certificate(found.number)
    write_private(path, data)
    return path
