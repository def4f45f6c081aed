"""`guidecoat check`: text, JSON and annotations of the same findings."""

import json
from pathlib import Path
from typing import Any

import pytest

from generator.bank.schemas import record_schemas
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT, put, small_project
from tests.command_line.running import misuse, run

COUNTS = {
    "items",
    "by_kind",
    "by_module",
    "by_source",
    "by_pool",
    "numeric_templates",
    "procedures",
    "faults",
    "tables",
    "data_sheets",
    "beliefs",
    "figures",
    "lessons",
    "glossary",
}


def document(folder: Path) -> dict[str, Any]:
    result = run(folder, "check", "--format", "json")
    read = json.loads(result.stdout)
    assert isinstance(read, dict)
    return read


@pytest.fixture
def misspelt(tmp_path: Path) -> Path:
    """Return a project with an error, a warning and a note in it."""
    root = small_project(tmp_path)
    put(root, "glossary.yml", "gel_time:\n  term: gel time\n  meaning: Soon.\n  see: [gel_tme]\n")
    put(root, "items/film_build/dry_from_wet.yml", "(removed)")
    sources = (root / "question_bank" / "sources.yml").read_text("utf-8")
    put(root, "sources.yml", sources + "spare: {document: Spare, title: Spare, status: restated}\n")
    return root


def test_a_sound_bank_is_one_line_and_exit_nought() -> None:
    result = run(SMALL_PROJECT, "check")
    assert result.exit_code == 0
    assert result.output == (
        "7 items, 1 procedure, 3 faults, 1 table: 0 errors, 0 warnings, 0 notes\n"
    )


def test_text_shows_each_problem_with_its_line_and_ends_with_the_counts(misspelt: Path) -> None:
    result = run(misspelt, "check")
    assert result.exit_code == 1
    assert (
        "question_bank/glossary.yml:4:9: error: "
        "the glossary has no entry 'gel_tme' [unknown-term]\n"
        "      see: [gel_tme]\n"
        "            ^\n"
        "    hint: did you mean 'gel_time'?\n"
    ) in result.stdout
    assert result.stdout.endswith(": 1 error, 2 warnings, 1 note\n")


def test_notes_are_counted_always_and_shown_when_asked_for(misspelt: Path) -> None:
    assert ": note: " not in run(misspelt, "check").stdout
    assert ": note: nothing cites 'spare'" in run(misspelt, "check", "--notes").stdout


def test_warnings_and_notes_alone_do_not_fail(misspelt: Path) -> None:
    put(misspelt, "glossary.yml", "gel_time: {term: gel time, meaning: Soon.}\n")
    put(misspelt, "blueprints/quick_check.yml", "(removed)")
    result = run(misspelt, "check")
    assert result.exit_code == 0
    assert result.stdout.endswith(": 0 errors, 2 warnings, 1 note\n")


def test_json_has_the_keys_that_programs_rely_on(misspelt: Path) -> None:
    read = document(misspelt)
    assert set(read) == {"counts", "coverage", "problems"}
    assert set(read["counts"]) == COUNTS
    assert set(read["counts"]["by_source"]) == {"published", "common_practice", "from_memory"}
    assert set(read["coverage"]) == {"objectives", "covered"}
    for problem in read["problems"]:
        assert set(problem) == {"path", "line", "column", "severity", "rule", "message", "hint"}
    assert {p["severity"] for p in read["problems"]} == {"error", "warning", "note"}


def test_json_of_the_real_bank_has_the_same_keys_and_no_error() -> None:
    result = run(REPOSITORY, "check", "--format", "json")
    assert result.exit_code == 0
    read = json.loads(result.stdout)
    assert set(read["counts"]) == COUNTS
    assert {p["severity"] for p in read["problems"]} <= {"note"}


def test_json_and_annotations_tell_the_same_problems(misspelt: Path) -> None:
    problems = document(misspelt)["problems"]
    lines = run(misspelt, "check", "--format", "annotations", "--notes").stdout.splitlines()
    kinds = {"error": "error", "warning": "warning", "note": "notice"}
    assert [line.partition(",title=")[0] for line in lines] == [
        f"::{kinds[p['severity']]} file={p['path']},line={p['line']},col={p['column']}"
        for p in problems
    ]


def test_annotations_leave_notes_out_unless_asked_and_fail_alike(misspelt: Path) -> None:
    result = run(misspelt, "check", "--format", "annotations")
    assert result.exit_code == 1
    assert "::error " in result.stdout
    assert "::notice " not in result.stdout


def test_a_sound_bank_has_no_annotations() -> None:
    assert run(SMALL_PROJECT, "check", "--format", "annotations").stdout.strip() == ""


@pytest.mark.parametrize("form", ["text", "json", "annotations"])
def test_a_bank_without_an_outline_is_reported_in_every_form(form: str, tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "outline.yml", "(removed)")
    result = run(root, "check", "--format", form)
    assert result.exit_code == 1
    assert "the file is missing" in result.stdout


def test_an_unfillable_paper_is_found_once_nothing_else_is_wrong(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(
        root,
        "blueprints/long.yml",
        "title: Long\nminutes: 9\npass_percent: 80\ncells: [{module: filler, count: 99}]\n",
    )
    assert [p["rule"] for p in document(root)["problems"]] == ["blueprint-cannot-be-filled"]
    put(root, "tables/spoilt.yml", "title: Spoilt\nrows_from: nowhere\n")
    assert "blueprint-cannot-be-filled" not in {p["rule"] for p in document(root)["problems"]}


def test_schemas_are_written_where_editors_look_and_are_no_strangers(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    assert run(root, "check", "--write-schemas").exit_code == 0
    folder = root / "question_bank" / "schemas"
    assert {path.name: path.read_text("utf-8") for path in folder.iterdir()} == record_schemas()
    assert document(root)["problems"] == []


def test_checking_changes_no_file(tmp_path: Path) -> None:
    root = small_project(tmp_path)

    def state() -> dict[Path, tuple[int, bytes]]:
        files = (path for path in root.rglob("*") if path.is_file())
        return {path: (path.stat().st_mtime_ns, path.read_bytes()) for path in files}

    before = state()
    run(root, "check")
    assert state() == before


def test_an_unknown_form_is_misuse() -> None:
    assert "'xml'" in misuse(SMALL_PROJECT, "check", "--format", "xml")


def test_the_list_of_giveaways_is_written_and_fits_from_then_on(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(
        root,
        "giveaways.yml",
        "found: [{question: a, gives_away: b, words: c}]\ncleared: []  # by hand\n",
    )
    assert [p["rule"] for p in document(root)["problems"]] == ["giveaways-out-of-date"]
    assert run(root, "check", "--write-giveaways").exit_code == 0
    assert document(root)["problems"] == []
    written = (root / "question_bank" / "giveaways.yml").read_text("utf-8")
    assert written.endswith("found: []\ncleared: []  # by hand\n")


@pytest.mark.parametrize("text", ["site_name: Small course\ndocs_dir: course\n", "- cut\n"])
def test_settings_without_the_course_plugin_stop_check_and_build_before_the_site(
    tmp_path: Path, text: str
) -> None:
    root = small_project(tmp_path)
    put(root, "mkdocs.yml", text)
    (root / "site").mkdir()
    (root / "site" / "index.html").write_text("the earlier site", "utf-8")
    for command in ("check", "build", "serve"):
        result = run(root, command)
        assert result.exit_code == 1
        assert "mkdocs.yml:1:1: error: " in result.output and "[site-settings]" in result.output
    assert (root / "site" / "index.html").read_text("utf-8") == "the earlier site"


def test_what_only_a_build_found_is_found_by_check_at_the_same_line(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "course/film_build.md", "# Film\n\nThe [fan](trem:fan).\n\n```text\nx\n```\n")
    checked, built = run(root, "check"), run(root, "build")
    for place in ("course/film_build.md:3:11: error: ", "course/film_build.md:5:4: error: "):
        assert place in checked.stdout and place in built.stderr
    assert checked.exit_code == built.exit_code == 1
    assert not (root / "site").exists() and not (root / "printed").exists()


def test_a_very_long_line_is_shown_around_its_fault(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    words = "[fan](trem:fan) " + "x" * 900_000
    put(root, "course/film_build.md", f"# Film\n\n{'y ' * 5000}{words}\n")
    result = run(root, "check")
    assert "[fan](trem:fan)" in result.stdout
    assert max(map(len, result.stdout.splitlines())) < 200


@pytest.mark.parametrize(
    "line",
    ["hooks: [hook.py]", "extra: !!python/object/apply:pathlib.Path.touch [ran]"],
)
def test_nothing_that_the_settings_bring_along_is_run(tmp_path: Path, line: str) -> None:
    root = small_project(tmp_path)
    settings = (root / "mkdocs.yml").read_text("utf-8")
    put(root, "mkdocs.yml", f"{settings}{line}\n")
    (root / "hook.py").write_text("open('ran', 'w').close()\n", "utf-8")
    for command in ("check", "build", "serve"):
        assert run(root, command).exit_code == 1
    assert not (root / "ran").exists()
