"""The papers of an issue and its place in the records: both are there, or neither is."""

from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from generator.printing import PrintingRefused
from generator.records import Records, RecordsRefused
from generator.records.issues import Issue, drop_pending, issue_of, papers_written, pending_issues
from generator.records.store import OWNER_FOLDER
from generator.workflows.files import write_files
from generator.workflows.papers.paper_files import ANSWERS, PaperSettings, issue_files
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refusing


@dataclass(frozen=True, slots=True)
class Finished:
    """Issues that were stopped halfway and whose papers are written now.

    refused  why the next one of them could not be finished; None where all are
    """

    numbers: tuple[int, ...]
    refused: Refused | None = None


def settings_kept(settings: PaperSettings) -> Mapping[str, Any]:
    """Return settings as the records keep them."""
    return asdict(settings)


def settings_of(issue: Issue) -> PaperSettings:
    """Return the settings that an issue was printed with."""
    return PaperSettings(**issue.settings)


def write_papers(
    project: Project, connection: Records, number: int, files: Mapping[str, bytes]
) -> tuple[Path, ...]:
    """Write the files of an issue that is kept already, and say so in the records.

    A table that somebody has begun to fill in stays as it is. When the disk refuses the files, a
    new issue is taken out of the records again.
    """
    folder = project.issue_folder(number)
    if (folder / ANSWERS).exists():
        files = {name: data for name, data in files.items() if name != ANSWERS}
    try:
        folder.mkdir(mode=OWNER_FOLDER, parents=True, exist_ok=True)
        written = write_files(folder, files)
    except OSError:
        if drop_pending(connection, number):
            _take_away(folder, files)
        raise
    papers_written(connection, number)
    return written


def _take_away(folder: Path, names: Iterable[str]) -> None:
    if folder.is_dir():
        for name in names:
            (folder / name).unlink(missing_ok=True)
        if not any(folder.iterdir()):
            folder.rmdir()


@refusing(RecordsRefused, PrintingRefused)
def print_again(
    project: Project, connection: Records, number: int, settings: PaperSettings | None = None
) -> tuple[Path, ...]:
    """Write the papers of an issue from what the records keep; the same settings, the same bytes.

    settings  others than the issue was printed with first
    """
    issue = issue_of(connection, number)
    forms = [form.content for form in issue.forms]
    files = issue_files(project, forms, settings or settings_of(issue))
    return write_papers(project, connection, number, files)


def finish_pending(project: Project, connection: Records) -> Finished:
    """Write the papers of issues that were stopped halfway."""
    finished: list[int] = []
    for number in pending_issues(connection):
        written = print_again(project, connection, number)
        if isinstance(written, Refused):
            sentence = (
                f"the papers of issue {number} are missing and could not be set: "
                f"{written.sentence}; mend that, or void the issue: "
                f"guidecoat records void {number} --reason ..."
            )
            return Finished(tuple(finished), Refused(sentence))
        finished.append(number)
    return Finished(tuple(finished))
