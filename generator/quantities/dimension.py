"""What kind of thing a number measures, as whole powers of five base kinds."""

from dataclasses import dataclass

_NAMED = {
    (0, 0, 0, 0, 0): "a bare number",
    (1, 0, 0, 0, 0): "a length",
    (2, 0, 0, 0, 0): "an area",
    (3, 0, 0, 0, 0): "a volume",
    (0, 1, 0, 0, 0): "a mass",
    (0, 0, 1, 0, 0): "a time",
    (0, 0, 0, 1, 0): "a temperature difference",
    (0, 0, 0, 0, 1): "an amount of money",
    (-3, 1, 0, 0, 0): "a density",
    (-2, 1, 0, 0, 0): "a mass per area",
    (-1, 0, 0, 0, 0): "an area per volume",
    (1, 0, -1, 0, 0): "a speed",
    (0, 0, -1, 0, 0): "a count per time",
    (3, 0, -1, 0, 0): "a flow",
    (-1, 1, -2, 0, 0): "a pressure",
    (2, 0, -1, 0, 0): "a kinematic viscosity",
    (-1, 1, -1, 0, 0): "a viscosity",
    (2, 1, -2, 0, 0): "an energy or a torque",
    (2, 1, -3, 0, 0): "a power",
    (-3, 0, 0, 0, 1): "a price per volume",
    (0, 0, -1, 0, 1): "a price per time",
    (-2, 0, 0, 0, 1): "a price per area",
}
_BASE_WORDS = ("length", "mass", "time", "temperature", "money")


@dataclass(frozen=True, slots=True)
class Dimension:
    """Whole powers of length, mass, time, temperature and money."""

    length: int = 0
    mass: int = 0
    time: int = 0
    temperature: int = 0
    money: int = 0

    @property
    def powers(self) -> tuple[int, int, int, int, int]:
        """Return the five powers in their fixed order."""
        return (self.length, self.mass, self.time, self.temperature, self.money)

    def times(self, other: "Dimension") -> "Dimension":
        """Return the dimension of a product."""
        return Dimension(*(a + b for a, b in zip(self.powers, other.powers, strict=True)))

    def over(self, other: "Dimension") -> "Dimension":
        """Return the dimension of a quotient."""
        return Dimension(*(a - b for a, b in zip(self.powers, other.powers, strict=True)))

    def raised(self, power: int) -> "Dimension":
        """Return the dimension of a whole power."""
        return Dimension(*(a * power for a in self.powers))


BARE = Dimension()
TEMPERATURE = Dimension(temperature=1)


def dimension_words(dimension: Dimension, point: bool = False) -> str:
    """Say in words what a number measures, with its article.

    point  true for a temperature on a scale, false for a difference
    """
    if point:
        return "a temperature"
    named = _NAMED.get(dimension.powers)
    if named is not None:
        return named
    above = _product(dimension.powers, 1)
    below = _product(dimension.powers, -1)
    return f"a measure of {above or '1'}" + (f" per {below}" if below else "")


def _product(powers: tuple[int, ...], sign: int) -> str:
    words = []
    for word, power in zip(_BASE_WORDS, powers, strict=True):
        if power * sign > 0:
            words.append(word if abs(power) == 1 else f"{word} to the power {abs(power)}")
    return " x ".join(words)
