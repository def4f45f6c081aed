"""`guidecoat calculate`: relations by name, units said, refusals in one sentence."""

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from generator.quantities import UNITS
from generator.refinishing.catalogue import CATALOGUE
from tests.command_line.running import misuse, run

WET = ("calculate", "wet_film", "dry_film=60 um", "volume_solids=48 percent")


def test_a_relation_shows_result_working_and_source(tmp_path: Path) -> None:
    # wet film = dry film / volume solids; common practice: 60 / 0.48 = 125
    result = run(tmp_path, *WET)
    assert result.exit_code == 0
    lines = result.stdout.splitlines()
    assert lines[0] == "wet_film: 125\u00a0µm"
    assert any(line.startswith("Source: ") for line in lines)
    assert "Taken without a unit" not in result.stdout


def test_units_are_converted_before_working(tmp_path: Path) -> None:
    inputs = ("dry_film=0.06 mm", "volume_solids=0.48 one")
    assert run(tmp_path, "calculate", "wet_film", *inputs).stdout.startswith(
        "wet_film: 125\u00a0µm\n"
    )


def test_an_input_without_a_unit_is_taken_in_the_relations_own_and_said_so(tmp_path: Path) -> None:
    result = run(tmp_path, "calculate", "wet_film", "dry_film=60", "volume_solids=48 percent")
    assert "\nTaken without a unit: dry_film in um\n" in result.stdout


@pytest.mark.parametrize("typed", ["1.5 mil", "1,5 mil", "1 1/2 mil", "1½ mil", "1 1/2", "1.5"])
def test_a_number_may_be_written_as_people_write_it(typed: str, tmp_path: Path) -> None:
    # NIST SP 811: 1 mil is 25.4 micrometres exactly
    result = run(tmp_path, "calculate", "mil_to_um", f"film={typed}")
    assert result.stdout.startswith("mil_to_um: 38.1\u00a0µm\n")


def test_several_results_are_all_shown(tmp_path: Path) -> None:
    # 4:1:1 of 600 mL is 400, 100 and 100; common practice
    result = run(tmp_path, "calculate", "split_total", "total=600 mL", "parts=4:1:1")
    assert result.stdout.splitlines()[:3] == [
        "base: 400\u00a0mL",
        "hardener: 100\u00a0mL",
        "thinner: 100\u00a0mL",
    ]


def test_a_limit_that_guards_people_comes_with_its_caution(tmp_path: Path) -> None:
    result = run(tmp_path, "calculate", "highest_speed", "diameter=125 mm", "rim_limit=80 m/s")
    assert "\nCaution: " in result.stdout


def test_json_holds_inputs_results_working_and_source(tmp_path: Path) -> None:
    plain = json.loads(run(tmp_path, *WET, "--format", "json").stdout)
    assert set(plain) == {
        "relation",
        "inputs",
        "results",
        "working",
        "source",
        "place",
        "status",
        "caution",
    }
    assert plain["relation"] == "wet_film"
    assert plain["results"] == {"wet_film": {"value": 125.0, "unit": "um"}}
    assert set(plain["inputs"]) == {"dry_film", "volume_solids"}
    assert plain["working"]


def test_the_list_holds_every_relation_with_its_inputs(tmp_path: Path) -> None:
    lines = run(tmp_path, "calculate", "--list").stdout.splitlines()
    assert [line.split()[0] for line in lines[::2]] == list(CATALOGUE)
    assert any(line.startswith("wet_film dry_film=um volume_solids=percent") for line in lines)
    assert all(line.startswith("    ") and line.strip() for line in lines[1::2])


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ((), "name a relation, or use --list"),
        (("wet_flim",), "there is no relation 'wet_flim'; did you mean 'wet_film'?"),
        (("qqq",), "there is no relation 'qqq'; ask for the list"),
        (("wet_film",), "wet_film also needs dry_film, volume_solids"),
        (("wet_film", "dry_film=60 um"), "wet_film also needs volume_solids"),
        (("wet_film", "60"), "'60' is not name=value"),
        (("wet_film", "dry_film="), "'dry_film=' is not name=value"),
        (("wet_film", "=60 um"), "'=60 um' is not name=value"),
        (
            ("wet_film", "dryfilm=60 um"),
            "wet_film has no input 'dryfilm'; did you mean 'dry_film'?",
        ),
        (
            ("mil_to_um", "zzz=60 um"),
            "mil_to_um has no input 'zzz'; it takes film",
        ),
        (
            ("mil_to_um", "film=sixty um"),
            "'sixty um' is not a number with a unit; write film=\"12.5 mil\"",
        ),
        (
            ("mil_to_um", "film=1,234.5 mil"),
            "'1,234.5 mil' is not a number with a unit; write film=\"12.5 mil\"",
        ),
        (
            ("split_total", "total=600 mL", "parts=4"),
            "'4' is not a ratio; write parts=4:1:1",
        ),
        (
            ("split_total", "total=600 mL", "parts=4:one"),
            "'4:one' is not a ratio; write parts=4:1:1",
        ),
    ],
)
def test_a_request_that_cannot_be_answered_is_one_sentence(
    arguments: tuple[str, ...], said: str, tmp_path: Path
) -> None:
    assert misuse(tmp_path, "calculate", *arguments) == said


def test_a_unit_of_another_kind_is_refused_by_input_and_unit(tmp_path: Path) -> None:
    sentence = misuse(tmp_path, "calculate", "mil_to_um", "film=60 mL")
    assert sentence.startswith("'film' is in mil: ")
    assert "mL" in sentence


def test_an_unknown_unit_is_named(tmp_path: Path) -> None:
    assert "'mills'" in misuse(tmp_path, "calculate", "mil_to_um", "film=60 mills")


@pytest.mark.parametrize(
    "inputs",
    [
        ("dry_film=60 um", "volume_solids=0 percent"),
        ("dry_film=60 um", "volume_solids=140 percent"),
        ("dry_film=-5 um", "volume_solids=48 percent"),
    ],
)
def test_an_impossible_value_is_refused_in_the_trades_words(
    inputs: tuple[str, ...], tmp_path: Path
) -> None:
    sentence = misuse(tmp_path, "calculate", "wet_film", *inputs)
    assert sentence.endswith(".")
    assert "film" in sentence or "solids" in sentence


ODD = st.one_of(
    st.sampled_from(
        ["0", "-1", "1", "100", "9" * 60, "9" * 5000, "1/0", "1/3", "½", "nan", "inf", "1e999", "٣"]
    ),
    st.text(st.characters(codec="utf-8", exclude_characters="\0"), max_size=8),
    st.integers(-(10**9), 10**9).map(str),
)
UNIT = st.sampled_from(["", *(f" {unit}" for unit in UNITS), " cubits", "  um "])


@settings(
    max_examples=300, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(relation=st.sampled_from(list(CATALOGUE)), data=st.data())
def test_no_input_whatever_brings_more_than_an_answer_or_a_sentence(
    relation: str, data: st.DataObject, tmp_path: Path
) -> None:
    inputs = []
    for parameter in CATALOGUE[relation].parameters:
        if parameter.unit is None:
            typed = ":".join(data.draw(st.lists(ODD, min_size=1, max_size=4)))
        else:
            own = st.just(f" {parameter.unit.name}")
            typed = data.draw(ODD) + data.draw(st.one_of(own, UNIT))
        inputs.append(f"{parameter.name}={typed}")
    form = data.draw(st.sampled_from(["text", "json"]))
    result = run(tmp_path, "calculate", "--format", form, "--", relation, *inputs)
    assert result.exit_code in (0, 2)
    if result.exit_code == 2:
        assert "Error: " in result.stderr
