"""How the noise and exposure calculations of published checks are asked of the relations."""

from fractions import Fraction

from tests.refinishing.published_adapter_inputs import CannotAdapt, Given
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    matched,
    of,
)

NOTHING = Fraction(0)
AT_A_TIME = 4
REFERENCE_LEVEL, REFERENCE_HOURS = 90, 8
TABLE_VOLUME = Fraction("24.45")
PERIODS = "periods spells exposures levels"
Pairs = tuple[tuple[Fraction, Fraction], ...]


def spells(given: Given, units: tuple[str, str]) -> Pairs:
    """Return levels with their times, from one list of pairs or from two lists."""
    pairs = given.pairs(PERIODS, units)
    if pairs:
        return pairs
    levels = given.numbers("levels concentrations conc -", units[0])
    times = given.numbers("times durations -", units[1])
    if not levels or len(levels) != len(times):
        raise CannotAdapt("every level needs its time")
    return tuple(zip(levels, times, strict=True))


def numbered(pairs: Pairs, first: str, second: str) -> dict[str, Fraction]:
    """Name the pairs as a relation does: first_1, second_1, first_2 and so on."""
    named: dict[str, Fraction] = {}
    for number, (one, other) in enumerate(pairs, 1):
        named |= {f"{first}_{number}": one, f"{second}_{number}": other}
    return named


def noise_dose(given: Given) -> Results:
    """Noise dose and average of any number of spells, counted from 80 or from 90 dBA."""
    pairs = spells(given, ("dBA", "h"))
    threshold = given.number("threshold", "dBA", 80)
    relations = {80: "noise_dose_programme", 90: "noise_dose_limit"}
    if threshold not in relations:
        raise CannotAdapt("a dose counts from 80 or from 90 dBA")
    relation = relations[int(threshold)]
    counted = tuple(pair for pair in pairs if pair[0] >= threshold)
    dose = NOTHING
    for start in range(0, len(counted), AT_A_TIME):
        chunk = numbered(counted[start : start + AT_A_TIME], "level", "time")
        dose += ask(relation, **chunk)["dose"].number
    # the same dose as one spell at the reference level leads to the average
    hours = REFERENCE_HOURS * dose / 100
    whole = ask(relation, level_1=Fraction(REFERENCE_LEVEL), time_1=hours)
    return {"dose": of(dose, "percent"), "twa average": whole["average"]}


def day_average(given: Given) -> Results:
    """Average over eight hours of any number of spells, whatever the length of the shift."""
    given.text("shift_h shift")
    for unit, relation in (("ppm", "time_weighted_average"), ("mg/m3", "dust_average")):
        try:
            pairs = spells(given, (unit, "h"))
        except CannotAdapt:
            continue
        average = NOTHING
        for start in range(0, len(pairs), AT_A_TIME):
            chunk = numbered(pairs[start : start + AT_A_TIME], "concentration", "time")
            average += ask_one(relation, **chunk)
        return {"twa average": of(average, unit)}
    raise CannotAdapt("every concentration needs its time")


def mixture(given: Given) -> Results:
    """Sum of shares of any number of vapours, and whether it stays within 1."""
    # only shares count, so any unit will do that is the same on both sides
    unit = "ppm" if given.has("conc concentrations", "ppm") else "mg/m3"
    concentrations = given.numbers("conc concentrations", unit)
    limits = given.numbers("limit limits", unit)
    if not concentrations or len(concentrations) != len(limits):
        raise CannotAdapt("every concentration needs its limit")
    pairs = (*zip(concentrations, limits, strict=True), (NOTHING, Fraction(1)))
    total = NOTHING
    for start in range(0, len(pairs), AT_A_TIME):
        # the relation asks for two vapours, so an empty one goes along
        chunk = (*pairs[start : start + AT_A_TIME], (NOTHING, Fraction(1)))[:AT_A_TIME]
        total += ask_one("mixture_sum", **numbered(chunk, "concentration", "limit"))
    return {"Em sum": of(total, "one"), "within_limit": total <= 1}


def by_molar_volume(relation: str, given: Given) -> Fraction:
    """Ask a conversion between ppm and mass; it stands on 24.45 L, a check may state another."""
    takes = {"molecular_mass": "mol_weight molecular_weight mw"}
    answer = ask_one(relation, **matched(relation, given, takes, {}))
    stated = given.number("molar_volume", "L", TABLE_VOLUME)
    share = TABLE_VOLUME / stated
    return answer * share if relation == "ppm_to_mass" else answer / share


def to_mass(given: Given) -> Results:
    """Vapour in parts per million as a mass in the air."""
    return {"mass": of(by_molar_volume("ppm_to_mass", given), "mg/m3")}


def to_ppm(given: Given) -> Results:
    """A mass of vapour in the air as parts per million."""
    return {"concentration": of(by_molar_volume("mass_to_ppm", given), "ppm")}


CALCULATIONS: dict[str, Calculation] = {
    "noise.osha_T": Direct("reference_duration"),
    "noise.osha_permissible": Direct("permissible_duration"),
    "noise.osha_dose": noise_dose,
    "noise.niosh_T": Direct("recommended_duration"),
    "exposure.twa": day_average,
    "exposure.mixture": mixture,
    "exposure.ppm_to_mgm3": to_mass,
    "exposure.mgm3_to_ppm": to_ppm,
}
