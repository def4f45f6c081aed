"""Mixing on a scale; the density rows are those of a painting-inspector exercise sheet."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.mixing_by_mass import (
    density_of,
    hardener_mass,
    mass_of_volume,
    masses_from_volumes,
    mixed_density,
)
from tests.some import some

SIZES = st.fractions("1/2", 3, max_denominator=100)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("volumes", "densities", "expected"),
    [
        (
            (400, 100, 100),
            ("1.35", "1.05", "0.88"),
            ("540", "105", "88", "733", "1.222", "19.4", "16.3"),
        ),
        ((300, 150, 0), ("1.02", "1.06", "1"), ("306", "159", "0", "465", "1.033", "52.0", "0")),
        ((250, 50, 0), ("1.28", "1.1", "1"), ("320", "55", "0", "375", "1.250", "17.2", "0")),
    ],
)
def test_volumes_become_grams(volumes, densities, expected):
    # arithmetic; half a unit of the last printed digit
    found = masses_from_volumes(*exact(*volumes), *exact(*densities))
    for number, printed in some(zip(found, expected, strict=True)):
        places = len(printed.partition(".")[2])
        assert abs(number - Fraction(printed)) <= Fraction(1, 2 * 10**places)


@pytest.mark.parametrize(
    ("ratio", "densities", "printed"),
    [((6, 1), ("1.3", "0.9"), "1.24"), ((1, 1), ("1.4", "0.9"), "1.15")],
)
def test_mixed_density_as_the_exercise_sheet_prints_it(ratio, densities, printed):
    # painting-inspector exercise sheet on density
    found = mixed_density(exact(*ratio), *exact(*densities))
    assert abs(found - Fraction(printed)) <= Fraction("0.005")


def test_the_printed_times_sign_of_the_exercise_sheet_is_a_slip():
    # the sheet prints "1.4 x 0.9" where a plus is meant
    found = mixed_density(exact(1, 1), *exact("1.4", "0.9"))
    assert abs(found - Fraction("1.4") * Fraction("0.9") / 2) > Fraction("0.5")


def test_mass_of_a_volume_as_printed():
    # painting-inspector exercise sheet on density: 16.5 L at 1.45 weigh 23.9 kg
    grams = mass_of_volume(*exact(16500, "1.45"))
    assert abs(grams / 1000 - Fraction("23.9")) <= Fraction("0.05")


@pytest.mark.parametrize(
    ("kilograms", "litres", "printed"), [("9.75", "7.5", "1.3"), ("37.5", "25", "1.5")]
)
def test_density_as_printed(kilograms, litres, printed):
    # painting-inspector exercise sheet on density
    found = density_of(Fraction(kilograms) * 1000, Fraction(litres) * 1000)
    assert found == Fraction(printed)


def test_hardener_by_mass_is_not_hardener_by_volume():
    # arithmetic: 540 g of base is 400 mL, a quarter of that is 100 mL or 105 g
    assert hardener_mass(*exact(540), exact(4, 1), *exact("1.35", "1.05")) == 105
    assert hardener_mass(*exact(540), exact(4, 1), *exact("1.05", "1.05")) == 135


@given(SIZES, SIZES, SIZES, st.integers(1, 9), st.integers(1, 9), st.integers(1, 9))
def test_the_density_of_a_mix_lies_between_those_of_its_cans(db, dh, dt, b, h, t):
    found = mixed_density(exact(b, h, t), db, dh, dt)
    assert min(db, dh, dt) <= found <= max(db, dh, dt)
    weighed = masses_from_volumes(*exact(b, h, t), db, dh, dt)
    assert found == weighed.mixed_density


@given(SIZES, SIZES, st.integers(1, 900), st.integers(1, 9), st.integers(1, 9))
def test_hardener_mass_agrees_with_weighing_the_volumes(db, dh, volume, b, h):
    base_volume = Fraction(volume)
    weighed = masses_from_volumes(base_volume, base_volume * h / b, Fraction(0), db, dh, dh)
    assert hardener_mass(weighed.base, exact(b, h), db, dh) == weighed.hardener


@given(SIZES, st.integers(1, 5000))
def test_density_undoes_mass(density, volume):
    assert density_of(mass_of_volume(Fraction(volume), density), Fraction(volume)) == density


@pytest.mark.parametrize("densities", [("1.3", "0.9"), ("1.3", "0", "0.9"), ("1.3", "-1", "1")])
def test_a_missing_or_impossible_density_is_refused(densities):
    with pytest.raises(OutsideValidity, match=r"density"):
        mixed_density(exact(4, 1, 1), *exact(*densities))


def test_a_thinner_density_without_thinner_is_refused():
    with pytest.raises(OutsideValidity, match="thinner density"):
        mixed_density(exact(4, 1), *exact("1.3", "0.9", "0.8"))
