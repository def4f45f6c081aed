"""Digests of all that a check looks at: the project's files and the code that judges them."""

import os
from collections.abc import Iterable, Iterator, Sequence
from hashlib import sha256
from pathlib import Path

from generator.workflows.project import Project

_CODE = Path(__file__).parents[2]
_CODE_ENDINGS = (".py", ".tsv", ".typ")
# as in `bank.verdicts`, which a check that finds nothing changed does not load
FRAME = ("bank", "outline", "sources", "hazards", "places", "glossary")


def whole_digest(project: Project, machine: Sequence[str]) -> str:
    """Return a digest of every file that a check of the project may look at, and of the code.

    machine  what the code runs with: the version of Python, the packages that are installed
    """
    folders = (project.bank, project.course, project.theme)
    files = [project.root / "mkdocs.yml"]
    return _digest((code_digest(machine), *_of_files(files), *map(_of_folder, folders)))


def ground_digest(project: Project, machine: Sequence[str]) -> str:
    """Return a digest of the frame of the bank and of the code."""
    frame = (project.bank / f"{name}.yml" for name in FRAME)
    return _digest((code_digest(machine), *_of_files(frame)))


def code_digest(machine: Sequence[str]) -> str:
    """Return a digest of the generator's own files and of what it runs with."""
    files = sorted(p for p in _walk(_CODE) if p.suffix in _CODE_ENDINGS)
    names = (path.relative_to(_CODE).as_posix() for path in files)
    return _digest((*machine, *names, *_of_files(files)))


def _of_folder(folder: Path) -> str:
    paths = sorted(_walk(folder))
    names = (path.relative_to(folder).as_posix() for path in paths)
    return _digest((*names, *_of_files(paths)))


def _walk(folder: Path) -> Iterator[Path]:
    for here, folders, files in os.walk(folder):
        yield from (Path(here, name) for name in (*folders, *files))


def _of_files(paths: Iterable[Path]) -> Iterator[str]:
    """Return the digest of each file; of a link where it leads as well."""
    for path in paths:
        led = str(path.readlink()) if path.is_symlink() else ""
        try:
            yield led + sha256(path.read_bytes()).hexdigest()
        except IsADirectoryError:
            yield f"{led} folder"
        except OSError as error:
            yield f"{led} {error.errno}"


def _digest(parts: Iterable[str]) -> str:
    return sha256("\n".join(parts).encode("utf-8", "surrogateescape")).hexdigest()
