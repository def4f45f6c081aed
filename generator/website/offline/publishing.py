"""Which files go into the site: a list of what may, so that nothing that strays in is sent out."""

from collections.abc import Iterator
from pathlib import Path

from generator.diagnostics import Place, Problem

ASSETS = "assets"
_KINDS = frozenset({".woff2", ".svg", ".png"})
# put into the site's own style sheet and scripts, and not published as they are
_GATHERED = {"css": ".css", "js": ".js"}


def is_published(theme: Path, file: Path) -> bool:
    """Say whether a file of the theme is copied into the site.

    Pictures and typefaces in its assets/, with the licences of the typefaces; nothing hidden, and
    nothing that a link brings in from elsewhere.
    """
    if not file.is_relative_to(theme / ASSETS) or _is_hidden(file.relative_to(theme)):
        return False
    licence = file.suffix == ".txt" and file.name.startswith("LICENCE-")
    return (file.suffix in _KINDS or licence) and _is_really_in(file, theme)


def stray_files(course: Path, theme: Path) -> Iterator[Problem]:
    """Warn of files that lie in the course or among the theme's assets and are no part of them."""
    for path in _all_in(course):
        if not _belongs_to_course(course, path):
            yield _stray(course, path, "lessons are .md files, and drawings figures/*.svg")
    for path in _all_in(theme / ASSETS):
        if not is_published(theme, path) and not _is_gathered(theme, path):
            yield _stray(theme, path, "the site takes pictures, typefaces, styles and scripts")


def _all_in(folder: Path) -> Iterator[Path]:
    # a link to a folder is named itself, and not followed
    return (p for p in sorted(folder.rglob("*")) if p.is_symlink() or not p.is_dir())


def _belongs_to_course(course: Path, path: Path) -> bool:
    inside = path.relative_to(course)
    if _is_hidden(inside) or not _is_really_in(path, course):
        return False
    kinds = {(): ".md", ("figures",): ".svg", ("figures", "readme"): ".png"}
    return kinds.get(inside.parts[:-1]) == path.suffix


def _is_gathered(theme: Path, path: Path) -> bool:
    folder = path.relative_to(theme / ASSETS).parts[0]
    return _GATHERED.get(folder) == path.suffix and _is_really_in(path, theme)


def _is_hidden(inside: Path) -> bool:
    return any(part.startswith((".", "~")) for part in inside.parts)


def _is_really_in(path: Path, folder: Path) -> bool:
    return path.is_file() and path.resolve().is_relative_to(folder.resolve())


def _stray(folder: Path, path: Path, kinds: str) -> Problem:
    place = Place(f"{folder.name}/{path.relative_to(folder).as_posix()}", 1, 1)
    message = "this file is no part of the course and is not published"
    return Problem(place, "warning", "stray-file", message, f"keep it somewhere else; {kinds}")
