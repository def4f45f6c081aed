"""Whole numbers that suit relations of cure, air, spraying and flow cups."""

SUITABLE: dict[str, dict[str, int]] = {
    "oven_time": {"oven_air": 70, "panel_start": 22, "panel_wanted": 60},
    "point_lamp_ratio": {"emitter_radius": 2},
    "removal_time": {"mixing_factor": 3},
    "dilution_time": {"start_level": 90, "end_level": 26, "mixing_efficiency": 1},
    "gun_inlet_pressure": {"start_pressure": 150},
    "measured_transfer_efficiency": {"solids_on_part": 3},
    "spray_passes": {"overlap": 50},
    "ford_small_cup_viscosity": {"cup_number": 2, "time": 60},
    "ford_cup_viscosity": {"cup_number": 4},
    "zahn_cup_viscosity": {"cup_number": 2},
    "iso_cup_viscosity": {"orifice": 4, "time": 60},
    "iso_cup_seconds": {"orifice": 4, "viscosity": 100},
    "viscosity_when_warmer": {"fall_per_kelvin": 8, "warming": 9},
    "viscosity_when_warmer_us": {"fall_per_degree": 4, "warming": 9},
}
