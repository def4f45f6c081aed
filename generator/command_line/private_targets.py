"""Where files about people may be written: never into what is published, never over a file."""

from pathlib import Path

from generator.command_line.project import Project
from generator.command_line.records_desk import records_folder
from generator.records import RecordsRefused


def off_the_site(project: Project, target: Path) -> Path:
    """Return the target; raises RecordsRefused where every phone would be sent what lies there.

    Links on the way to the target are followed first.
    """
    for folder in (project.site, project.course, project.theme, project.bank):
        if _lies_in(target, folder):
            raise RecordsRefused(
                f"'{target.as_posix()}' lies in {folder.name}/, which is published or read for "
                "the site; write files about people somewhere else"
            )
    return target


def new_file(project: Project, target: Path) -> Path:
    """Return the target back; raises RecordsRefused for a name that is taken, or in the records."""
    off_the_site(project, target)
    if target.exists() or target.is_symlink():
        raise RecordsRefused(f"'{target.as_posix()}' is there already; give another name")
    if _lies_in(target, records_folder(project)):
        raise RecordsRefused(
            f"'{target.as_posix()}' lies among the records themselves; write it somewhere else"
        )
    return target


def _lies_in(target: Path, folder: Path) -> bool:
    return target.resolve().is_relative_to(folder.resolve())
