"""The course built as a site, with a specimen paper and its key beside it."""

from dataclasses import dataclass
from pathlib import Path

from generator.assembly import build_forms, form_as_plain, shortages
from generator.bank import Bank
from generator.printing import PrintingRefused
from generator.website import SiteRefused, build_into
from generator.website.offline import ONE_FILE
from generator.workflows.checking import sound, whole_project
from generator.workflows.files import replace_folder, write_files
from generator.workflows.papers import PaperSettings, paper_files
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refused_with

SPECIMEN = "specimen"


@dataclass(frozen=True, slots=True)
class Built:
    """What was built.

    pages      how many pages the site has
    one_file   the course as one file; None where it was not wanted
    papers     the specimen and its key
    """

    pages: int
    one_file: Path | None
    papers: tuple[Path, ...]


def build_course(project: Project, *, single_file: bool = False) -> Built | Refused:
    """Check the project, replace the site, and write the specimen; errors leave all as it was."""
    bank = sound(*whole_project(project))
    if isinstance(bank, Refused):
        return bank
    papers = _specimen(project, bank)
    if isinstance(papers, Refused):
        return papers
    try:
        replace_folder(
            project.site,
            lambda new: build_into(project.settings, new, single_file=single_file, bank=bank),
        )
    except SiteRefused as error:
        return Refused(f"the site could not be built: {error}")
    pages = sum(path.name != ONE_FILE for path in project.site.rglob("*.html"))
    one_file = project.site / ONE_FILE if single_file else None
    return Built(pages, one_file, write_files(project.printed, papers))


def _specimen(project: Project, bank: Bank) -> dict[str, bytes] | Refused:
    entry = bank.blueprints.get(SPECIMEN)
    if entry is None:
        return Refused(f"the bank has no blueprint '{SPECIMEN}'", misuse=True)
    short = shortages(entry, bank)
    if short:
        return refused_with(short)
    (form,) = build_forms(bank, entry, SPECIMEN, ("A",))
    try:
        return dict(paper_files(project, form_as_plain(form), PaperSettings()))
    except PrintingRefused as error:
        return Refused(f"the specimen could not be set: {error}")
