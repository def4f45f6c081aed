"""Whether the records are intact, closed to others, and without what a stopped command left."""

from collections.abc import Iterator
from pathlib import Path

from generator.records import Records, RecordsRefused
from generator.records.store import OTHERS, back_up, integrity_problems
from generator.workflows.files import leftovers, off_the_site
from generator.workflows.project import Project
from generator.workflows.refusals import refusing


def record_problems(project: Project, connection: Records) -> tuple[str, ...]:
    """Return a sentence for each thing that is wrong with the records or lies beside them."""
    return (
        *integrity_problems(connection),
        *_open_doors(project.records),
        *_left_behind(project),
    )


@refusing(RecordsRefused)
def back_up_records(project: Project, connection: Records, target: Path) -> int:
    """Copy the records into a new file while they are in use, and return its size in bytes."""
    return back_up(connection, off_the_site(project, target))


def _left_behind(project: Project) -> Iterator[str]:
    """Name what a command that was stopped left; it may hold keys, or what is about people."""
    folders = (project.root, project.printed, *_below(project.records))
    for path in (left for folder in folders for left in leftovers(folder)):
        name = path.relative_to(project.root).as_posix()
        yield f"{name} was left by a command that was stopped; delete it once no other one runs"


def _below(folder: Path) -> Iterator[Path]:
    yield folder
    yield from (path for path in sorted(folder.iterdir()) if path.is_dir())


def _open_doors(folder: Path) -> Iterator[str]:
    for path in (folder, *sorted(folder.rglob("*"))):
        if path.stat().st_mode & OTHERS:
            name = path.relative_to(folder.parent).as_posix()
            yield f"{name} can be read by others; take their rights away: chmod go= {name}"
