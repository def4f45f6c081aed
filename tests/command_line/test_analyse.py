"""`guidecoat analyse` gives unrounded figures, plain words and located problems."""

import json
from collections.abc import Sequence
from pathlib import Path

import pytest
from click.testing import Result

from generator.marking import TABLE_RULES, analyse, analysis_as_plain
from tests.command_line.running import run
from tests.marking.published_data import DATA, IQ_KEY, iq_items, lsat6
from tests.some import some

KEY = "item,key\n" + "".join(f"{item},1\n" for item in range(1, 11))
TEN = DATA / "worked_ten_by_ten.csv"


def analysed(folder: Path, answers: str | Path, key: str = KEY, *options: str) -> Result:
    """Run the command on two files."""
    (folder / "key.csv").write_text(key, "utf-8")
    if isinstance(answers, str):
        (folder / "answers.csv").write_text(answers, "utf-8")
        answers = folder / "answers.csv"
    return run(folder, "analyse", str(answers), "--key-file", str(folder / "key.csv"), *options)


def as_table(rows: Sequence[tuple[str, ...]], items: int) -> str:
    """Write answers with apprentices in front."""
    header = ",".join(["person", *(f"Q{n}" for n in range(1, items + 1))])
    lines = [",".join([f"Apprentice {n:02}", *row]) for n, row in enumerate(rows, 1)]
    return "\n".join([header, *lines]) + "\n"


def test_the_hand_worked_table_gives_its_printed_figures_unrounded(tmp_path: Path) -> None:
    result = analysed(tmp_path, TEN, KEY, "--cut", "6", "--format", "json")
    assert result.exit_code == 0
    found = json.loads(result.stdout)
    assert (found["people"], found["mean"], found["variance"]) == (10, 6.6, 5.84)
    assert found["kr20"] == pytest.approx(0.6963470319634704, abs=1e-15)
    assert [item["facility"] for item in found["items"]] == [
        0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6
    ]  # fmt: skip
    assert found["items"][0]["item_rest"] == pytest.approx(0.705889, abs=5e-7)
    assert found["decision"]["passed"] == 8
    assert set(found["items"][0]) >= {
        "name", "facility", "item_total", "item_rest", "alpha_if_dropped", "options", "flags"
    }  # fmt: skip


def test_the_command_says_what_the_package_computes(tmp_path: Path) -> None:
    scores = lsat6()
    rows = [tuple(str(int(score)) for score in row) for row in scores.scores]
    key = "item,key\n" + "".join(f"Q{n},1\n" for n in range(1, 6))
    found = json.loads(analysed(tmp_path, as_table(rows, 5), key, "--format", "json").stdout)
    wanted = analysis_as_plain(analyse(scores))
    for name in ("people", "mean", "variance", "alpha", "kr20", "kr21", "sem"):
        assert found[name] == wanted[name]
    assert found["alpha"] == pytest.approx(0.2949972, abs=5e-8)
    assert found["sem"] == pytest.approx(0.869067, abs=5e-7)


def test_the_text_names_the_key_the_options_and_what_to_look_at(tmp_path: Path) -> None:
    table = iq_items()
    place = table.items.index("rotate.3") + 1
    key = "item,key\n" + "".join(f"Q{n},{k}\n" for n, k in enumerate(IQ_KEY.values(), 1))
    lines = analysed(tmp_path, as_table(table.answers, 16), key).stdout.splitlines()
    lines = lines[lines.index(f"Q{place}: 295 of 1523 right") :][:16]
    assert any(line.startswith("  *3") and "295" in line for line in lines)
    assert "  look: a wrong option draws strong learners" in lines


def test_a_small_class_is_shown_counts_only(tmp_path: Path) -> None:
    rows = [("A", "B"), ("A", ""), ("C", "B")]
    text = analysed(tmp_path, as_table(rows, 2), "item,key\nQ1,A\nQ2,B\n").stdout
    assert "Fewer than 10 people: only counts are shown." in text
    assert "Q1: 2 of 3 right" in text
    assert "blank" in text
    assert not [word for word in ("Alpha", "facility", "item-rest", "look") if word in text]


@pytest.mark.parametrize("form", ["text", "json"])
@pytest.mark.parametrize("rows", [[("A", "B")], [("A", "B")] * 35, [("", "")] * 12])
def test_undefined_figures_are_null_and_never_a_crash(
    tmp_path: Path, form: str, rows: list[tuple[str, ...]]
) -> None:
    key = "item,key\nQ1,A\nQ2,B\n"
    result = analysed(tmp_path, as_table(rows, 2), key, "--cut", "2", "--format", form)
    assert result.exit_code == 0
    if form == "json":
        found = json.loads(result.stdout)
        assert found["alpha"] is None
        assert found["reasons"]["alpha"]
        assert found["items"][0]["item_rest"] is None


def test_problems_are_shown_at_their_place_and_give_exit_code_1(tmp_path: Path) -> None:
    table = as_table([("A", "B")], 2) + "Apprentice 01,A\n"
    result = analysed(tmp_path, table, "item,key\nQ1,A\nQ2,B\n")
    assert result.exit_code == 1
    assert result.stdout == ""
    assert "answers.csv:3:1: error: this row has 2 cells, the header has 3 [ragged-row]" in (
        result.stderr
    )
    assert "person 'Apprentice 01' already appears in line 2 [repeated-person]" in result.stderr


def test_an_unknown_item_of_the_key_gets_a_hint(tmp_path: Path) -> None:
    result = analysed(tmp_path, as_table([("A", "B")], 2), "item,key\nQ1,A\nq2,B\n")
    assert result.exit_code == 1
    assert "did you mean 'Q2'?" in result.stderr


def test_a_warning_alone_does_not_stop_the_analysis(tmp_path: Path) -> None:
    table = as_table([("A", "B")] * 2, 2) + "=HYPERLINK(1),A,B\n"
    result = analysed(tmp_path, table, "item,key\nQ1,A\nQ2,B\n")
    assert result.exit_code == 0
    assert "[formula-cell]" in result.stderr
    assert "People: 3" in result.stdout


def test_a_table_that_is_not_utf_8_is_a_problem_at_the_byte(tmp_path: Path) -> None:
    answers = tmp_path / "answers.csv"
    answers.write_bytes(b"person,Q1\nApprentice \xe4,A\n")
    result = analysed(tmp_path, answers, "item,key\nQ1,A\n")
    assert result.exit_code == 1
    assert "answers.csv:2:12: error: this is not UTF-8 text [csv-encoding]" in result.stderr


def test_control_characters_never_reach_the_screen(tmp_path: Path) -> None:
    result = analysed(tmp_path, as_table([("A\x1b[2J", "B")], 2), "item,key\nQ1,A\nQ2,B\n")
    assert result.exit_code == 1
    assert "\x1b" not in result.output


@pytest.mark.parametrize(
    ("options", "says"),
    [(("--cut", "11"), "the cut 11 is above the 10 marks"), (("--cut", "-1"), "not in the range")],
)
def test_a_cut_that_cannot_be_is_misuse(
    tmp_path: Path, options: tuple[str, ...], says: str
) -> None:
    result = analysed(tmp_path, TEN, KEY, *options)
    assert result.exit_code == 2
    assert says in result.stderr


def test_a_missing_file_is_misuse(tmp_path: Path) -> None:
    assert analysed(tmp_path, tmp_path / "nowhere.csv").exit_code == 2


def test_every_rule_of_the_tables_is_explained(tmp_path: Path) -> None:
    for rule, page in some(TABLE_RULES.items()):
        result = run(tmp_path, "explain", rule)
        assert result.exit_code == 0
        assert page.why in result.stdout
