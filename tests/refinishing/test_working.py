"""Working as a learner reads it."""

from fractions import Fraction

import pytest

from generator.refinishing import CATALOGUE


def lines(name, wanted=None, **given):
    relation = CATALOGUE[name]
    exact = {
        key: tuple(Fraction(part) for part in value)
        if isinstance(value, tuple)
        else Fraction(value)
        for key, value in given.items()
    }
    shown = relation.working(exact, wanted or relation.results)
    return [line.replace("\u00a0", " ") for line in shown]


def test_one_result_shows_equation_numbers_and_result():
    assert lines("wet_film", dry_film="60", volume_solids="47", thinner="10") == [
        "wet film = dry film × (100 % + thinner) ÷ volume solids",
        "wet film = 60 µm × (100 % + 10 %) ÷ 47 %",
        "wet film ≈ 140.43 µm",
    ]


def test_a_default_of_nothing_drops_out_of_the_numbers():
    found = lines("wet_film", dry_film="60", volume_solids="40")
    assert found[1:] == ["wet film = 60 µm × 100 % ÷ 40 %", "wet film = 150 µm"]


def test_a_quotient_of_nothing_drops_out_of_a_sum():
    found = lines(
        "mixture_sum", concentration_1="500", limit_1="1000", concentration_2="45", limit_2="200"
    )
    assert found[1:] == [
        "mixture sum = 500 ppm ÷ 1000 ppm + 45 ppm ÷ 200 ppm",
        "mixture sum = 0.725",
    ]


def test_spells_that_are_not_there_have_no_working():
    found = lines("noise_dose_limit", ("dose",), level_1="95", time_1="2", level_2="90", time_2="3")
    assert found[-2:] == ["dose = 50 % + 37.5 %", "dose = 87.5 %"]
    assert not [line for line in found if line.startswith("share 3")]


def test_a_can_that_is_not_in_the_ratio_has_no_working():
    found = lines("split_total", total="900", parts=("2", "1"))
    assert found[1::3] == ["base = 900 mL × 2 ÷ 3", "hardener = 900 mL × 1 ÷ 3"]
    assert not [line for line in found if line.startswith("thinner")]


def test_one_wanted_result_brings_along_only_what_it_rests_on():
    job = {
        "area": "2.2",
        "dry_film": "25",
        "coats": "2",
        "volume_solids": "42",
        "transfer_efficiency": "65",
        "margin": "10",
        "parts": ("4", "1", "1"),
        "cup": "600",
    }
    found = lines("ready_to_spray", ["fills"], **job)
    assert [line.partition(" = ")[0] for line in found[::3]] == ["total", "fills"]
    assert found[-1] == "fills = 1 fill"


def test_a_squared_size_is_bracketed_with_its_unit():
    found = lines("disc_area", diameter="150")
    assert found[1] == "disc area = π × (150 mm)² ÷ 4 ÷ 100"
    assert found[2] == "disc area ≈ 176.71 cm²"


@pytest.mark.parametrize(
    ("name", "given", "words"),
    [
        ("grade_size", {"p_grade": "80"}, "grade size = mean size in the table beside P grade"),
        ("cami_size", {"cami_grade": "240"}, "beside CAMI grade"),
    ],
)
def test_grades_are_spoken_as_the_trade_writes_them(name, given, words):
    assert words in lines(name, **given)[0]


def test_an_answer_whose_decimals_do_not_end_is_shown_as_about():
    assert (
        lines("parts_to_reduction", base_parts="3", thinner_parts="1")[2] == "reduction ≈ 33.333 %"
    )
    assert lines("parts_to_reduction", base_parts="4", thinner_parts="1")[2] == "reduction = 25 %"


def test_a_small_answer_keeps_its_digits():
    found = lines(
        "paint_needed",
        area="1.8",
        dry_film="25",
        coats="2",
        volume_solids="40",
        transfer_efficiency="65",
    )
    assert found[2] == "paint needed ≈ 0.34615 L"
