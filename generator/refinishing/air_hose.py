"""What is left of the air pressure at the gun."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, CubicFootPerMinute, Inch, Psi
from generator.refinishing.annotations_air_and_cure import Foot
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation


class GunInlet(NamedTuple):
    """The pressure lost on the way, and what arrives at the gun."""

    total_drop: Psi
    inlet: Psi


HOSE_CARE = (
    "Turn the air off and let the pressure out before you uncouple a hose. Set the gun by the "
    "gauge at its inlet with the trigger pulled, to its own sheet."
)


@relation(
    equation="total_drop = first_drop + second_drop + third_drop + fourth_drop; "
    "inlet = start_pressure - total_drop",
    source="air_starvation_article",
    place="measured chain 75, 67, 36, 28 psi",
    status="read",
    caution=HOSE_CARE,
)
def gun_inlet_pressure(
    start_pressure: Psi,
    first_drop: Psi,
    second_drop: Psi = Fraction(0),
    third_drop: Psi = Fraction(0),
    fourth_drop: Psi = Fraction(0),
) -> GunInlet:
    """Return what is left of the wall pressure at the gun after up to four drops on the way.

    Valid: start above zero; drops from zero up, measured with the trigger pulled; together less
        than the start.
    Deviates: each drop belongs to one air flow; with the trigger let go it vanishes.
    Checked: 75 psi less 8, 31 and 8 is 28 psi, as the article measured.
    """
    require_above_zero(pressure_at_the_start=start_pressure)
    require_not_below_zero(first_drop=first_drop, second_drop=second_drop)
    require_not_below_zero(third_drop=third_drop, fourth_drop=fourth_drop)
    total = Fraction(first_drop) + second_drop + third_drop + fourth_drop
    if total >= start_pressure:
        raise OutsideValidity("The drops use up all of the pressure, so the gun gets no air.")
    return GunInlet(total, start_pressure - total)


@relation(
    equation="hose_drop_for_length = drop × new_length ÷ length",
    source="hose_scaling_handbook",
    place="drop in proportion to length",
    status="from_memory",
    caution=HOSE_CARE,
)
def hose_drop_for_length(drop: Psi, length: Foot, new_length: Foot) -> Psi:
    """Return the pressure drop of the same hose at another length.

    Valid: same bore, same air flow; lengths above zero; couplers counted apart.
    Deviates: from memory; a rule of scale, not a table.
    Checked: 31 psi over 25 ft is 62 psi over 50 ft; derived apart, not published.
    """
    require_not_below_zero(drop=drop)
    require_above_zero(length=length, new_length=new_length)
    return Fraction(drop) * new_length / length


@relation(
    equation="hose_drop_ratio = (new_flow ÷ flow)² × (bore ÷ new_bore)^5, with the fifth power"
    " of the two sizes",
    source="hose_scaling_handbook",
    place="drop with the square of flow and the fifth power of bore",
    status="from_memory",
    caution=HOSE_CARE,
)
def hose_drop_ratio(
    bore: Inch, new_bore: Inch, flow: CubicFootPerMinute, new_flow: CubicFootPerMinute
) -> Bare:
    """Return how many times the pressure drop another bore or air flow makes in a hose.

    Valid: same length; inside bores and flows above zero.
    Deviates: from memory; air gets thinner along the hose, which is left out.
    Checked: 1/4 to 3/8 in at the same flow is 0.132, 12 to 18 cfm in the same hose 2.25;
        derived apart, not published.
    """
    require_above_zero(inside_bore=bore, new_inside_bore=new_bore, air_flow=flow)
    require_above_zero(new_air_flow=new_flow)
    return (Fraction(new_flow) / flow) ** 2 * (Fraction(bore) / new_bore) ** 5
