"""`guidecoat draw`: one question of every kind, repeatable from its seed."""

import json
from pathlib import Path
from typing import Any

import pytest

from generator.command_line.main import main
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT, put, small_project
from tests.command_line.running import misuse, read_the_real_bank_once, run

ITEMS = {
    "numeric": "film_build/dry_from_wet/wet_for_target",
    "choice": "filler/mix/streaks",
    "multiple_response": "filler/mix/ready_to_mix",
    "order": "filler/mix/mixing_order",
    "match": "filler/mix/what_it_shows",
    "written": "filler/mix/tell_why",
}


def drawn(item: str, *more: str, folder: Path = SMALL_PROJECT) -> dict[str, Any]:
    result = run(folder, "draw", item, "--format", "json", *more)
    assert result.exit_code == 0, result.output
    plain = json.loads(result.stdout)
    assert isinstance(plain, dict)
    return plain


@pytest.mark.parametrize("kind", ITEMS)
def test_every_kind_of_item_is_drawn_as_text_and_as_json(kind: str) -> None:
    plain = drawn(ITEMS[kind])
    assert (plain["id"], plain["kind"]) == (ITEMS[kind], kind)
    shown = run(SMALL_PROJECT, "draw", ITEMS[kind])
    assert shown.exit_code == 0
    assert shown.stdout.startswith(plain["stem"])
    assert "{" not in plain["stem"]
    for source in plain["sources"]:
        assert f"{source['text']}\n" in shown.stdout.partition("\nSource: ")[2]
    if plain["caution"]:
        assert f"\nCaution: {plain['caution']}\n" in shown.stdout


def test_text_of_a_numeric_question_has_key_band_working_slips_and_sheet() -> None:
    key = drawn(ITEMS["numeric"])["key"]
    text = run(SMALL_PROJECT, "draw", ITEMS["numeric"]).stdout
    assert f"Key: {key['shown']} µm (accept {key['band_text']})" in text
    assert "\nWorking:\n" in text
    assert "Made-up data sheet, surfacer\n  Volume solids of the mix | " in text
    for slip in key["slips"]:
        assert f"\n  {slip['shown']}: {slip['says']}" in text


def test_text_of_a_choice_marks_the_right_option_alone() -> None:
    lines = run(SMALL_PROJECT, "draw", ITEMS["choice"]).stdout.splitlines()
    marked = [line for line in lines if line.startswith("* ")]
    assert len(marked) == 1
    assert "The hardener is not spread evenly" in marked[0]


def test_text_of_an_order_question_names_the_pairs_and_how_many_orders_are_right() -> None:
    key = drawn(ITEMS["order"])["key"]
    text = run(SMALL_PROJECT, "draw", ITEMS["order"]).stdout
    assert f"{key['orders']} orders are right" in text
    for pair in key["pairs"]:
        assert f"{pair['first']} before {pair['then']}: {pair['reason']}" in text


def test_text_of_a_match_question_gives_the_joined_letters() -> None:
    answers = drawn(ITEMS["match"])["key"]["answers"]
    joined = ", ".join(f"{number}-{letter}" for number, letter in answers.items())
    assert f"\nKey: {joined}\n" in run(SMALL_PROJECT, "draw", ITEMS["match"]).stdout


@pytest.mark.parametrize("kind", ITEMS)
def test_the_same_seed_gives_the_same_question(kind: str) -> None:
    assert drawn(ITEMS[kind], "--seed", "spring") == drawn(ITEMS[kind], "--seed", "spring")


def test_other_seeds_give_other_values() -> None:
    stems = {
        drawn(ITEMS["numeric"], "--seed", str(seed))["stem"] for seed in range(8)
    }  # fmt: skip
    assert len(stems) > 2


@pytest.mark.parametrize("seed", ["µ ½", "a" * 500, "--", "../../x"])
def test_any_text_may_be_a_seed(seed: str) -> None:
    assert drawn(ITEMS["numeric"], f"--seed={seed}")["key"]["shown"]


def test_an_unknown_item_is_guessed() -> None:
    assert misuse(SMALL_PROJECT, "draw", "filler/mix/streks") == (
        "the bank has no item 'filler/mix/streks'; did you mean 'filler/mix/streaks'?"
    )
    assert misuse(SMALL_PROJECT, "draw", "9") == (
        "the bank has no item '9'; items are named module/objective/name"
    )


def test_no_item_at_all_is_misuse() -> None:
    assert "Missing argument" in misuse(SMALL_PROJECT, "draw")


def test_an_item_with_errors_is_not_drawn_and_says_why(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    path = root / "question_bank" / "items" / "filler" / "mix.yml"
    text = path.read_text("utf-8")
    path.write_text(text.replace("level: ", "levl: ", 1), "utf-8")
    first = next(iter(text.splitlines())).rstrip(":")
    result = run(root, "draw", f"filler/mix/{first}")
    assert result.exit_code == 1
    assert result.stdout == ""
    assert "[unknown-key]" in result.stderr


def test_an_item_that_breaks_a_rule_is_not_drawn(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    path = root / "question_bank" / "items" / "filler" / "mix.yml"
    path.write_text(path.read_text("utf-8").replace("right: true", "right: false"), "utf-8")
    result = run(root, "draw", ITEMS["choice"])
    assert result.exit_code == 1
    assert result.stdout == ""
    assert "[key-count]" in result.stderr
    # the same file holds others, which are not told here
    assert run(root, "draw", ITEMS["order"]).exit_code == 0


@pytest.mark.parametrize("broken", ["items/filler/mix.yml", "items/film_build/dry_from_wet.yml"])
def test_a_broken_record_elsewhere_does_not_stop_a_draw(tmp_path: Path, broken: str) -> None:
    root = small_project(tmp_path)
    before = run(root, "draw", ITEMS["choice"])
    with (root / "question_bank" / broken).open("a", encoding="utf-8") as file:
        file.write("\nspoilt: {colour: blue}\n")
    result = run(root, "draw", ITEMS["choice"])
    assert result.exit_code == 0, result.output
    assert result.stdout == before.stdout
    # what is not read is not judged either
    told = "1 error elsewhere in the bank; guidecoat check shows all\n"
    assert result.stderr == (told if "filler" in broken else "")


def test_a_draw_without_the_frame_of_the_bank_says_why(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "hazards.yml", "fire: {title: Fire}\n")
    result = run(root, "draw", ITEMS["choice"])
    assert result.exit_code == 1
    assert "[missing-key]" in result.stderr


def test_the_example_of_the_help_can_be_drawn_from_the_real_bank(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    read_the_real_bank_once(monkeypatch)
    item = next(word for word in (main.commands["draw"].help or "").split() if "/" in word)
    assert drawn(item, "--seed", "7", folder=REPOSITORY)["kind"] == "numeric"
