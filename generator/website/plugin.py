"""Hands finished pages over to MkDocs and keeps everything else out of the site."""

from pathlib import Path
from typing import Any

from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import AnchorLink, TableOfContents

from generator.bank import Bank
from generator.diagnostics import Problem, as_text, has_errors
from generator.website.context import BuiltPage, Course
from generator.website.gather import course_of, line_reader, read_course
from generator.website.offline import MANIFEST, app_manifest, is_published, write_worker
from generator.website.pages import Site, build_site

NO_SITE = Site((), ())
HOME = "index.html"


class CourseOptions(Config):  # type: ignore[no-untyped-call]
    """Where the question bank is, from the folder of mkdocs.yml."""

    question_bank = config_options.Dir(default="question_bank", exists=True)


class CoursePlugin(BasePlugin[CourseOptions]):  # type: ignore[no-untyped-call]
    """Gives MkDocs the pages of the course as files that exist only in memory."""

    _published = True
    _bank: Bank | None = None
    _site: Site = NO_SITE
    _pages: dict[str, BuiltPage]

    def take(self, bank: Bank | None) -> None:
        """Take a bank that was read and found sound already, so that it is not read again."""
        self._bank = bank

    def on_startup(self, *, command: str, dirty: bool) -> None:
        """Note whether this is a live preview, which must never be kept offline."""
        self._published = command != "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Leave out the sitemap, whose date would differ from build to build."""
        config.theme.static_templates.discard("sitemap.xml")
        return config

    def on_pre_build(self, *, config: MkDocsConfig) -> None:
        """Build all pages before the engine clears the folder of the last ones away."""
        self._site = self._built(config)

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Replace the author's files by the built pages; keep pictures and typefaces."""
        site = self._site
        self._pages = {page.path: page for page in site.pages}
        theme = _theme(config)
        kept = [file for file in files if is_published(theme, Path(str(file.abs_src_path)))]
        made = [File.generated(config, _source_name(path), content="") for path in self._pages]
        made += [File.generated(config, path, content=text) for path, text in site.files]
        if self._published:
            manifest = app_manifest(self._pages[HOME].title)
            made.append(File.generated(config, MANIFEST, content=manifest))
        return Files([*kept, *made])

    def on_page_content(self, html: str, *, page: Page, config: MkDocsConfig, files: Files) -> str:
        """Return the page its finished HTML, its title and its contents list."""
        built = self._pages[page.file.dest_uri]
        page.title = built.title
        page.toc = TableOfContents([AnchorLink(h.text, h.anchor, 1) for h in built.contents])
        return built.html

    def on_page_context(self, context: Any, *, page: Page, config: MkDocsConfig, nav: Any) -> Any:
        """Let the page frame know what it frames."""
        context["built"] = self._pages[page.file.dest_uri]
        context["published"] = self._published
        return context

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Write the worker last, from the bytes of all that was written."""
        if self._published:
            write_worker(Path(config.site_dir), _theme(config))

    @property
    def pages(self) -> tuple[BuiltPage, ...]:
        """Return every page that was built, in reading order."""
        return tuple(self._pages.values())

    def _built(self, config: MkDocsConfig) -> Site:
        course, problems = self._course(config)
        site = build_site(course, _theme(config)) if course else NO_SITE
        found = (*problems, *site.problems)
        if has_errors(found):
            raise PluginError(
                "\n" + as_text(found, line_reader(Path(config.config_file_path).parent))
            )
        return site

    def _course(self, config: MkDocsConfig) -> tuple[Course | None, tuple[Problem, ...]]:
        lessons = Path(config.docs_dir)
        if self._bank is not None:
            return course_of(self._bank, lessons), ()
        return read_course(Path(self.config.question_bank), lessons, _theme(config))


def _theme(config: MkDocsConfig) -> Path:
    return Path(str(config.theme.custom_dir))


def _source_name(path: str) -> str:
    return path.removesuffix(".html") + ".md"
