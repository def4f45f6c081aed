"""The engine: only what may be published is, and what it refuses is a sentence."""

import shutil
from pathlib import Path

import pytest

from generator.website.engine import SiteRefused, build_into
from generator.website.offline.single_file import ONE_FILE
from tests.bank.small_bank import REPOSITORY, put, small_project

STRAYS = (
    *("course/answers.csv", "course/class-key.pdf", "course/training_records.sqlite"),
    *("course/film_build.md.bak", "course/~$film.docx", "course/.env", "course/notes/draft.md"),
    *("course/figures/photo.jpg", "course/assets/own.csv", "site_theme/assets/answers.csv"),
    *("site_theme/assets/fonts/.notes.txt", "site_theme/assets/todo.txt", "site_theme/key.pdf"),
    "site_theme/assets/icons/records.sqlite",
)


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """Return the small project with a theme of its own."""
    root = small_project(tmp_path)
    (root / "site_theme").unlink()
    shutil.copytree(REPOSITORY / "site_theme", root / "site_theme")
    return root


def built(root: Path, *, single_file: bool = False) -> dict[str, bytes]:
    """Build a project and give every file of the site by its path there."""
    site = root.parent / "built"
    shutil.rmtree(site, ignore_errors=True)
    build_into(root / "mkdocs.yml", site, single_file=single_file)
    return {p.relative_to(site).as_posix(): p.read_bytes() for p in site.rglob("*") if p.is_file()}


def test_nothing_that_strays_into_course_or_theme_is_published(project: Path) -> None:
    before = built(project)
    assert "assets/mark.svg" in before and "assets/fonts/hepta-slab-700.woff2" in before
    for name in STRAYS:
        (project / name).parent.mkdir(exist_ok=True)
        (project / name).write_text("SECRET", "utf-8")
    records = project / "records"
    records.mkdir()
    (records / "training_records.svg").write_text("SECRET", "utf-8")
    (project / "course" / "rec").symlink_to(records, target_is_directory=True)
    (project / "site_theme" / "assets" / "rec").symlink_to(records, target_is_directory=True)
    picture = project / "site_theme" / "assets" / "icons" / "of_records.svg"
    picture.symlink_to(records / "training_records.svg")
    after = built(project)
    assert after == before
    assert not any(b"SECRET" in data for data in after.values())


@pytest.mark.parametrize(
    "text",
    [
        "site_name: Small course\ndocs_dir: course\nsite_dir: site\nstrict: true\n",
        "site_name: Small course\ndocs_dir: course\nplugins: []\n"
        "theme:\n  name: null\n  custom_dir: site_theme\n",
    ],
)
def test_a_site_without_the_course_plugin_is_refused_in_a_sentence(
    project: Path, text: str
) -> None:
    put(project, "mkdocs.yml", text)
    with pytest.raises(SiteRefused, match="does not name the plugin 'guidecoat'"):
        built(project)
    assert not (project.parent / "built").exists()


def test_a_template_that_is_broken_is_a_sentence(project: Path) -> None:
    (project / "site_theme" / "main.html").write_text("{{ built.nothing.at.all }}", "utf-8")
    with pytest.raises(SiteRefused, match="a template of the theme"):
        built(project)


@pytest.mark.parametrize("words", ["`<!-- a note -->`", "`</script>`", "a < b"])
def test_signs_that_would_end_a_script_do_not_break_the_one_file(project: Path, words: str) -> None:
    put(project, "course/film_build.md", f"# Film build\n\nThe sheet writes {words} there.\n")
    page = built(project, single_file=True)[ONE_FILE].decode("utf-8")
    script = page.rpartition("<script>")[2].partition("</script>")[0]
    assert "guidecoatSearchList" in script and "<!--" not in script


def test_titles_are_written_as_text_wherever_they_stand(project: Path) -> None:
    put(project, "course/film_build.md", "# Film <b>build</b> & more\n\nA film wears.\n")
    pages = built(project)
    for name, data in pages.items():
        if name.endswith(".html"):
            assert b"<b>build" not in data, name
    assert b"<title>Film &lt;b&gt;build&lt;/b&gt; &amp; more" in pages["film_build.html"]


def test_a_lesson_with_a_mark_at_its_start_is_read(project: Path) -> None:
    lesson = project / "course" / "film_build.md"
    before = built(project)["film_build.html"]
    lesson.write_bytes(b"\xef\xbb\xbf" + lesson.read_bytes())
    assert built(project)["film_build.html"] == before
