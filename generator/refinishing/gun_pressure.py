"""Cap pressure of a high-volume low-pressure gun."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Psi
from generator.refinishing.relation import relation

LOWEST_CAP = Fraction("0.1")  # psi
HIGHEST_CAP = 10


@relation(
    equation="cap_pressure_left = 10 - cap_pressure",
    source="maine_153",
    place="section 2(D), from 0.1 to 10 psi",
    status="restated",
    caution="A gun within the limit still makes fine mist: isocyanate paint is sprayed on supplied "
    "air in the booth. Keep hands and face out of the air stream.",
)
def cap_pressure_left(cap_pressure: Psi) -> Psi:
    """Return how far a cap pressure is below the limit of 10 psi; below zero is above the limit.

    Valid: 0.1 psi up; measured at the air cap with the air on, not at the handle; judged in psi,
        as the rule is written.
    Deviates: 0.69 bar, as often printed, is already 10.01 psi; that the cap is measured at its
        centre and its horns is from memory.
    Checked: 9.5 psi has 0.5 psi left, 10.5 psi is 0.5 psi over; arithmetic on the published limit.
    """
    if cap_pressure < LOWEST_CAP:
        raise OutsideValidity("Below 0.1 psi at the cap no air sprays, so check the gauge.")
    return HIGHEST_CAP - Fraction(cap_pressure)
