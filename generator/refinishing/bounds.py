"""Refusing numbers that no job can have; each refusal is one clear sentence."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity

HUNDRED = Fraction(100)


def require_above_zero(**sizes: Fraction) -> None:
    """Refuse a size of zero or less; the keyword is the name the sentence uses."""
    for name, size in sizes.items():
        if size <= 0:
            raise OutsideValidity(f"The {_words(name)} must be above zero.")


def require_not_below_zero(**sizes: Fraction) -> None:
    """Refuse a size below zero."""
    for name, size in sizes.items():
        if size < 0:
            raise OutsideValidity(f"The {_words(name)} must not be below zero.")


def require_share(**percents: Fraction) -> None:
    """Refuse a percentage that is not above 0 % and at most 100 %."""
    for name, percent in percents.items():
        if not 0 < percent <= HUNDRED:
            raise OutsideValidity(f"The {_words(name)} must be above 0 % and at most 100 %.")


def require_whole_count(**counts: Fraction) -> None:
    """Refuse a count that is not a whole number of at least 1."""
    for name, count in counts.items():
        if count < 1 or count % 1 != 0:
            raise OutsideValidity(f"The number of {_words(name)} must be 1, 2, 3 and so on.")


def three_parts(parts: tuple[Fraction, ...]) -> tuple[Fraction, Fraction, Fraction]:
    """Return base, hardener and thinner parts; the thinner is 0 when only two are given.

    Raises OutsideValidity unless two or three parts are given and all are above zero.
    """
    if len(parts) not in (2, 3):
        raise OutsideValidity("Give two or three parts: base, hardener and, if any, thinner.")
    if min(parts) <= 0:
        raise OutsideValidity("Every part of the mixing ratio must be above zero.")
    base, hardener, thinner = [*map(Fraction, parts), Fraction(0)][:3]
    return base, hardener, thinner


def two_parts(parts: tuple[Fraction, ...]) -> tuple[Fraction, Fraction]:
    """Return base and hardener parts; raise OutsideValidity when a thinner part is given too."""
    base, hardener, _ = three_parts(parts)
    if len(parts) == 3:
        raise OutsideValidity("Give base and hardener only; the thinner comes as a percentage.")
    return base, hardener


def _words(name: str) -> str:
    return name.replace("_", " ")
