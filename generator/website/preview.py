"""The live preview: an edit is on the page within a second, and a refused one leaves the last page.

Pages are written past the site engine, and only those that changed. Questions are drawn again only
where their records changed, and written again only where they or what they show changed.
"""

import shutil
import sys
import tempfile
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

from jinja2 import TemplateError
from markupsafe import Markup

from generator.bank import Verdicts, frame_digest
from generator.diagnostics import Problem, as_text, has_errors
from generator.questions import DrawnQuestions
from generator.website.context import BuiltPage, SiteMemory, theme_templates
from generator.website.engine import course_folders, serve_folder
from generator.website.gather import line_reader, read_course
from generator.website.offline import is_published
from generator.website.pages import build_site

NOTHING_YET = (
    "<!doctype html><html lang=en><title>Not built</title><body><h1>Not built yet</h1>"
    "<pre>{}</pre></body></html>"
)


class Preview:
    """The pages of a project in a folder of their own, brought up to date by `refresh`."""

    def __init__(self, config_file: Path, site: Path) -> None:
        self._root = config_file.parent
        self._folders = course_folders(config_file)
        self._site = site
        self._drawn = DrawnQuestions()
        self._judged: Mapping[str, Any] = {}
        self._memory = SiteMemory()
        self._pages: dict[str, BuiltPage] = {}
        self._files: dict[str, str] = {}
        self._templates: dict[Path, str] = {}

    @property
    def watched(self) -> tuple[Path, ...]:
        """Return the folders whose files make the site."""
        found = self._folders
        return (found.bank, found.lessons, found.theme)

    def refresh(self) -> str:
        """Bring the pages up to date; return what keeps them as they were, or ""."""
        found = self._folders
        verdicts = Verdicts(frame_digest(found.bank), self._judged)
        course, problems = read_course(
            found.bank, found.lessons, found.theme, self._drawn, verdicts
        )
        self._judged = verdicts.used
        if course is None:
            return self._said(problems)
        templates = _templates_of(found.theme)
        if templates != self._templates:
            self._templates, self._pages, self._memory = templates, {}, SiteMemory()
        try:
            site = build_site(course, found.theme, self._memory)
            if has_errors(site.problems):
                return self._said(site.problems)
            self._write(site.pages, dict(site.files))
        except TemplateError as error:
            return f"a template of the theme: {error.message}"
        return ""

    def _said(self, problems: tuple[Problem, ...]) -> str:
        return as_text(
            [one for one in problems if one.severity == "error"], line_reader(self._root)
        )

    def _write(self, pages: tuple[BuiltPage, ...], files: dict[str, str]) -> None:
        for page in pages:
            if self._pages.get(page.path) != page:
                self._put(page.path, self._framed(page))
        for path, text in files.items():
            if self._files.get(path) != text:
                self._put(path, text)
        new = {page.path: page for page in pages}
        for path in {*self._pages, *self._files} - {*new, *files}:
            (self._site / path).unlink(missing_ok=True)
        self._pages, self._files = new, files
        self._copy_assets()

    def _put(self, path: str, text: str) -> None:
        target = self._site / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(text, encoding="utf-8")

    def _framed(self, page: BuiltPage) -> str:
        """Put the frame of the theme around a page; a preview is never kept offline."""
        template = theme_templates(self._folders.theme).get_template("main.html")
        config = {"site_name": self._folders.name}
        content = {"content": Markup(page.html)}
        return template.render(built=page, page=content, config=config, published=False)

    def _copy_assets(self) -> None:
        theme = self._folders.theme
        for path in sorted((theme / "assets").rglob("*")):
            target = self._site / path.relative_to(theme)
            if not path.is_dir() and is_published(theme, path) and _is_newer(path, target):
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copy2(path, target)


def _templates_of(theme: Path) -> dict[Path, str]:
    return {path: path.read_text("utf-8") for path in sorted(theme.rglob("*.html"))}


def _is_newer(path: Path, target: Path) -> bool:
    return not target.exists() or path.stat().st_mtime > target.stat().st_mtime


def preview(config_file: Path, host: str, port: int) -> None:
    """Serve the site and refresh it whenever lessons, bank or theme change, until stopped."""
    site = Path(tempfile.mkdtemp(prefix="preview-"))
    pages = Preview(config_file, site)
    refused = pages.refresh()
    if refused:
        (site / "index.html").write_text(NOTHING_YET.format(Markup.escape(refused)), "utf-8")
        _tell(refused)
    try:
        _tell(f"serving on http://{host}:{port}/")
        serve_folder(site, (host, port), (*pages.watched, config_file), _telling(pages.refresh))
    except KeyboardInterrupt:
        _tell("stopped")
    finally:
        shutil.rmtree(site, ignore_errors=True)


def _telling(refresh: Callable[[], str]) -> Callable[[], None]:
    """Say what a rebuild came to; what it refuses must never stop the server."""

    def build() -> None:
        refused = refresh()
        _tell(f"{refused}\nthe last good pages stay" if refused else "pages are up to date")

    return build


def _tell(text: str) -> None:
    print(text, file=sys.stderr, flush=True)
