"""Runs the site engine: one build into a folder, or a live preview."""

import logging
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import NamedTuple

from jinja2 import TemplateError
from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, BuildError, ConfigurationError

from generator.bank import Bank
from generator.website.offline import ONE_FILE, BrokenScript, one_file
from generator.website.plugin import CoursePlugin

# seconds between looks at the files, and of quiet before a rebuild begins
LOOK = 0.2
QUIET = 0.05


class SiteRefused(Exception):
    """The site could not be built; the text says why."""


def build_into(
    config_file: Path, target: Path, *, single_file: bool = False, bank: Bank | None = None
) -> None:
    """Build the site of a configuration into a folder; raises SiteRefused with the reason.

    single_file  also write the whole course as one document beside the pages
    bank         the bank of the course where it was read and found sound already; otherwise it is
                 read here, and what the rules refuse is not built
    """
    from mkdocs.commands.build import build

    with _plain_refusals():
        config = _course_settings(config_file, target)
        config.plugins.on_startup(command="build", dirty=False)
        _course_plugin(config).take(bank)
        build(config)
        if single_file:
            _write_one_file(config, target)
        config.plugins.on_shutdown()


def settings(config_file: Path) -> None:
    """Read the settings as a build does; raises SiteRefused with the reason."""
    with _plain_refusals():
        _course_settings(config_file, config_file.parent / "site")


def _course_settings(config_file: Path, target: Path) -> MkDocsConfig:
    config = load_config(str(config_file), site_dir=str(target))
    if not any(isinstance(plugin, CoursePlugin) for plugin in config.plugins.values()):
        raise SiteRefused(
            f"{config_file.name} does not name the plugin 'guidecoat', so that the bare lessons "
            "would be published; write 'plugins:' and below it '  - guidecoat'"
        )
    return config


@contextmanager
def _plain_refusals() -> Iterator[None]:
    """Turn what the engine and the templates refuse into SiteRefused with what was heard."""
    heard = _Listener()
    log = logging.getLogger("mkdocs")
    log.addHandler(heard)
    try:
        yield
    except (Abort, BuildError, ConfigurationError) as error:
        raise SiteRefused("\n".join([*heard.lines, str(error)]).strip()) from error
    except TemplateError as error:
        raise SiteRefused(f"a template of the theme: {error.message}") from error
    except BrokenScript as error:
        raise SiteRefused(str(error)) from error
    finally:
        log.removeHandler(heard)


def _write_one_file(config: MkDocsConfig, target: Path) -> None:
    course = _course_plugin(config)
    text = one_file(target, course.pages, str(config.site_name), Path(str(config.theme.custom_dir)))
    (target / ONE_FILE).write_text(text, encoding="utf-8")


class CourseFolders(NamedTuple):
    """Where the parts of a course lie, and its name."""

    bank: Path
    lessons: Path
    theme: Path
    name: str


def course_folders(config_file: Path) -> CourseFolders:
    """Read where the parts of a course lie; raises SiteRefused with the reason."""
    with _plain_refusals():
        config = _course_settings(config_file, config_file.parent / "site")
        return CourseFolders(
            Path(_course_plugin(config).config.question_bank),
            Path(config.docs_dir),
            Path(str(config.theme.custom_dir)),
            str(config.site_name),
        )


def serve_folder(
    site: Path, place: tuple[str, int], watched: Iterable[Path], rebuild: Callable[[], None]
) -> None:
    """Serve a folder until stopped; call `rebuild` when a watched file changes, then reload."""
    from mkdocs.livereload import LiveReloadServer

    host, port = place
    server = LiveReloadServer(
        builder=rebuild, host=host, port=port, root=str(site), polling_interval=LOOK
    )
    server.build_delay = QUIET
    for path in watched:
        server.watch(str(path))
    try:
        server.serve()  # type: ignore[no-untyped-call]
    finally:
        server.shutdown()


def _course_plugin(config: MkDocsConfig) -> CoursePlugin:
    (course,) = (found for found in config.plugins.values() if isinstance(found, CoursePlugin))
    return course


class _Listener(logging.Handler):
    """Keeps what the engine complains about, for the message."""

    def __init__(self) -> None:
        super().__init__(level=logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(record.getMessage())
