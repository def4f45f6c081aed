"""What all tests share: one build of the real course, and an order that ends together.

Test processes side by side (`-n`) take whole files, the longest first, and share what is built.
"""

import gc
import os
import shutil
from collections.abc import Iterable
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest

from generator.website.offline.single_file import ONE_FILE
from tests.real import build_whole, made_once

try:
    from hypothesis import settings
except ImportError:  # the developers' environment, which runs the layer tests alone
    pass
else:
    # a busy machine, or a library's first use, is no fault of what is tested
    settings.register_profile("untimed", deadline=None)
    settings.load_profile("untimed")

HERE = Path(__file__).parent
# each may come to 0.8 GB, and a browser beside it
MOST_PROCESSES = 4
# By measured time. A long file that came last would leave every other process idle.
LONGEST_FIRST = (
    "browser/test_one_file.py",
    "test_class_keys.py",
    "browser/test_every_page.py",
    "browser/test_own_settings.py",
    "test_documentation.py",
    "assembly/test_fair_papers.py",
    "command_line/test_build.py",
    "test_reproducible.py",
    "website/test_question_parts.py",
    "questions/test_whole_bank_draws.py",
    "test_recipes.py",
    "test_walk_through.py",
    "records/test_killed_writers.py",
    "command_line/test_killed_marks.py",
)


def pytest_configure(config: pytest.Config) -> None:
    """Keep what the programs under test remember from run to run out of this run."""
    # Banks, papers and read PDFs are many small things that stay: to look through them for rings
    # at every 700 new ones takes a seventh of the time.
    gc.set_threshold(50_000, 20, 100)
    if "PYTEST_XDIST_WORKER" not in os.environ:
        folder = TemporaryDirectory(prefix="cache-of-tests-", ignore_cleanup_errors=True)
        config.add_cleanup(folder.cleanup)
        os.environ["XDG_CACHE_HOME"] = folder.name


def _turn(item: pytest.Item) -> int:
    name = item.path.relative_to(HERE).as_posix()
    return LONGEST_FIRST.index(name) if name in LONGEST_FIRST else len(LONGEST_FIRST)


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Put the longest files first."""
    items.sort(key=_turn)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_auto_num_workers() -> int:
    """Take a process for each core, as far as memory goes."""
    return min(os.cpu_count() or 1, MOST_PROCESSES)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Any) -> Any:
    """Hand out whole files, in the order that stands above."""
    from xdist.scheduler import LoadFileScheduling

    config.option.loadscopereorder = False
    return LoadFileScheduling(config, log)


@pytest.fixture(scope="session")
def shared(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a folder that all processes of this run share."""
    own = tmp_path_factory.getbasetemp()
    return own.parent if "PYTEST_XDIST_WORKER" in os.environ else own


@pytest.fixture(scope="session")
def real_project(shared: Path) -> Path:
    """Return a copy of the project with all that comes of it; to be read, never written."""
    return made_once(shared / "real_project", build_whole)


@pytest.fixture(scope="session")
def real_site(shared: Path, real_project: Path) -> Path:
    """Return the built course without its one file; to be read, never written."""
    return made_once(shared / "real_site", lambda folder: _site_alone(real_project, folder))


def _site_alone(project: Path, folder: Path) -> None:
    shutil.copytree(project / "site", folder, ignore=_one_file)


def _one_file(_: str, names: Iterable[str]) -> set[str]:
    return {ONE_FILE} & set(names)
