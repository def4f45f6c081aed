"""Whole numbers that suit relations which a plain row of rising numbers does not fit."""

NOISE = {
    "level_1": 95, "time_1": 2, "level_2": 90, "time_2": 3,
    "level_3": 85, "time_3": 2, "level_4": 100, "time_4": 1,
}  # fmt: skip
SPELLS = {
    "concentration_1": 40, "time_1": 2, "concentration_2": 30, "time_2": 3,
    "concentration_3": 20, "time_3": 2, "concentration_4": 10, "time_4": 1,
}  # fmt: skip

SUITABLE: dict[str, dict[str, int]] = {
    "maximum_thinner": {"volume": 10, "voc_mass": 20, "thinner_voc": 9, "limit": 4},
    "regulatory_voc": {
        "volatiles": 90, "water": 40, "exempt": 10,
        "coating": 100, "water_volume": 40, "exempt_volume": 10,
    },
    "voc_less_water": {"coating": 100},
    "process_time": {"flash_after_last": 1},
    "reference_duration": {"level": 95},
    "permissible_duration": {"level": 95},
    "recommended_duration": {"level": 94},
    "noise_dose_programme": NOISE,
    "noise_dose_limit": NOISE,
    "time_weighted_average": SPELLS,
    "dust_average": SPELLS,
    "protection_needed": {
        "concentration": 40, "exposure_limit": 2, "immediate_danger": 1000,
        "isocyanates": 0, "supplied_air_asked": 0, "oxygen": 21,
    },
    "maximum_use_concentration": {
        "protection_factor": 10, "exposure_limit": 50, "immediate_danger": 1000,
        "cartridge_limit": 300, "isocyanates": 0, "supplied_air_asked": 0, "oxygen": 21,
    },
    "maximum_use_in_dust": {
        "protection_factor": 10, "exposure_limit": 50, "immediate_danger": 1000, "oxygen": 21,
    },
}  # fmt: skip
