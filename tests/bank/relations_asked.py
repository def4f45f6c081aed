"""Which relation an item asks in other words, and which relations belong together.

A relation is asked by an item that calls it, and by an item whose plain formula says the same. For
those the pairs below are worked out on draws: the first formula, with the answer put in, must give
the second. Common practice: all of them are the relation's own arithmetic, turned round.
"""

# item: formula with the relation, what it must give
PLAINLY: dict[str, tuple[tuple[str, str], ...]] = {
    "mixing/ratio_to_amounts/thinner_from_total_us": (
        ("split_total(total, parts)['thinner']", "answer"),
    ),
    "mixing/ratio_to_amounts/base_for_the_hardener_left": (
        ("amounts_from_base(answer, parts)['hardener']", "hardener"),
    ),
    "mixing/ratio_to_amounts/base_line_for_a_full_cup": (
        ("cup_marks(answer, parts)['after_thinner']", "full"),
    ),
    "mixing/percent_or_parts/base_for_a_total_us": (
        ("percent_reduction(answer, reduction)['total']", "total"),
    ),
    "mixing/by_weight/mixed_density_in_pounds": (
        ("mixed_density(parts, base_density, hardener_density)", "answer"),
    ),
    "mixing/by_weight/volume_on_the_scale": (
        ("mass_of_volume(wanted - answer, density)", "shown"),
    ),
    "mixing/by_weight/pounds_in_the_tins": (
        ("tins * (mass_of_volume(volume, density) + tin)", "answer"),
    ),
    "metal_preparation/etch_primer/activator_for_one_to_one": (
        ("split_total(total, parts)['hardener']", "answer"),
    ),
    "filler/hardener_amount/filler_for_paste": (
        ("filler_hardener(answer, hardener_percent)", "paste"),
    ),
    "filler/hardener_amount/ounces_of_paste": (
        ("filler_hardener(filler, hardener_percent)", "answer"),
    ),
    "film_build/paint_needed/film_behind_a_claim": (
        ("spreading_rate(volume_solids, answer)", "claim"),
    ),
    "film_build/paint_needed/loss_found_on_the_job": (
        ("practical_spreading_rate(theoretical, answer)", "area / volume"),
    ),
    "film_build/paint_needed/area_from_the_last_tin": (
        ("paint_needed(answer, dry, coats, volume_solids, efficiency)", "volume"),
    ),
    "film_build/paint_needed/film_from_a_quart": (
        ("film_from_volume(volume, area, volume_solids)['dry']", "answer"),
    ),
    "film_build/paint_needed/volume_behind_a_reading": (
        ("film_from_volume(sprayed - answer, area, volume_solids)['dry']", "dry"),
    ),
    "film_build/paint_needed/film_from_a_weighed_card": (
        ("mass_per_area(answer, density)", "gain / area"),
    ),
    "film_build/total_build/room_for_new_film": (
        ("film_stack(existing, answer, sanded_off=sanded)", "build_limit"),
    ),
    "film_build/order_material/transfer_needed_for_a_saving": (
        ("transfer_swap(old, first, answer)['new_amount']", "wanted"),
    ),
    "film_build/order_material/paint_cost_of_a_trailer": (
        ("cost_per_area(price, practical, coats) * area", "answer"),
    ),
    "film_build/convert_units/micrometre_to_mil": (
        ("um_to_mil(film)", "answer"),
        ("mil_to_um(answer)", "film"),
    ),
    "film_build/convert_units/us_gallon_in_litres": (("us_gallon_to_litre(volume)", "answer"),),
    "booth_climate/prepare_booth/air_for_an_open_face_metric": (
        ("air_flow_needed(width, height, velocity)", "answer"),
    ),
    "booth_climate/prepare_booth/flow_for_the_wanted_changes": (
        ("air_changes(answer, length * width * height)", "changes"),
    ),
    "booth_climate/read_manometer/inches_of_water_to_pascals": (
        ("inch_of_water_to_pascal(limit)", "answer"),
    ),
    "curing/heat_limits/bake_above_the_makers_limit": (
        ("fahrenheit_to_celsius(schedule) - limit", "answer"),
    ),
    "spray_gun/set_pressure/wall_pressure_for_the_gun": (
        ("gun_inlet_pressure(answer, couplers, hose)['inlet']", "inlet"),
    ),
    "spray_gun/set_pressure/bar_on_a_psi_gauge": (("bar_to_psi(inlet)", "answer"),),
    "spray_gun/set_pressure/compressor_for_a_metric_shop": (
        ("compressor_demand(sanders, guns, other_air=other, margin=margin)['required']", "answer"),
    ),
    "spray_gun/allowed_guns/paint_to_spray_for_a_gain": (
        ("measured_transfer_efficiency(gain, answer, solids)", "efficiency"),
    ),
    "environment_records/voc_figures/two_part_us": (
        ("voc_of_mix(base, base_voc, thinner, thinner_voc)", "answer"),
    ),
    "environment_records/voc_figures/after_thinning": (
        ("voc_after_thinner(volume, mass, thinner, thinner_voc)", "answer"),
    ),
    "environment_records/voc_figures/most_thinner_us": (
        ("maximum_thinner(volume, mass, thinner_voc, limit)", "wanted - answer"),
    ),
    "environment_records/voc_figures/less_water_pool": (
        ("voc_less_water(mass, coating, water)['less_water']", "answer"),
    ),
    "environment_records/voc_figures/clear_allowed_under_a_system_limit": (
        ("voc_of_two_stages(base, answer)", "limit"),
    ),
}

# the main calculations of the trade; relations that do one thing in two units or for two cases
# stand together
MAIN: tuple[tuple[str, ...], ...] = (
    ("split_total",),
    ("amounts_from_base",),
    ("cup_marks",),
    ("percent_reduction", "percent_reduction_of_mix"),
    ("mixed_density",),
    ("mass_of_volume",),
    ("filler_hardener",),
    ("filler_hardener_percent",),
    ("wet_film",),
    ("dry_film",),
    ("volume_solids_from_films",),
    ("solids_after_thinning",),
    ("solids_of_mix",),
    ("spreading_rate", "spreading_rate_us"),
    ("practical_spreading_rate",),
    ("paint_needed", "area_covered_us"),
    ("film_from_volume",),
    ("coats_needed",),
    ("film_stack",),
    ("film_for_sand_off",),
    ("transfer_swap",),
    ("ready_to_spray",),
    ("job_cost", "cost_per_area"),
    ("mil_to_um", "um_to_mil"),
    ("rim_speed", "highest_speed"),
    ("disc_area", "disc_area_ratio"),
    ("dew_point", "dew_margin", "dew_margin_met"),
    ("difference_to_kelvin",),
    ("cure_time_at",),
    ("pot_life_at",),
    ("oven_time",),
    ("point_lamp_ratio", "disc_lamp_ratio"),
    ("fahrenheit_to_celsius", "celsius_to_fahrenheit"),
    ("air_flow_needed", "face_velocity"),
    ("air_changes",),
    ("dilution_time",),
    ("filter_by_reading", "filter_by_rise"),
    ("gun_inlet_pressure",),
    ("tool_air", "compressor_demand"),
    ("measured_transfer_efficiency",),
    ("wet_film_from_gun", "gun_speed_for_film"),
    ("spray_passes",),
    ("fan_at_distance",),
    ("viscosity_when_warmer", "viscosity_when_warmer_us"),
    ("voc_of_mix", "voc_ready_to_spray"),
    ("voc_after_thinner", "maximum_thinner"),
    ("regulatory_voc", "voc_less_water", "voc_from_weight_percent"),
    ("voc_per_solids", "voc_over_solids"),
    ("voc_of_two_stages", "voc_of_multistage"),
    ("job_emission", "potential_emission", "yearly_emission"),
    ("supplied_air_flow",),
    ("grade_size", "cami_size", "nearest_p_grade"),
    ("grade_step",),
    ("removal_time",),
    ("reference_duration", "permissible_duration", "recommended_duration"),
    ("noise_dose_programme", "noise_dose_limit"),
    ("time_weighted_average", "dust_average"),
    ("ppm_to_mass", "mass_to_ppm"),
    ("share_of_lower_limit", "ppm_at_share"),
    ("ford_small_cup_viscosity", "ford_cup_viscosity", "zahn_cup_viscosity"),
    ("colour_difference_1976", "colour_difference_2000"),
)
ONE_SYSTEM = frozenset(
    {
        # these turn one system into the other
        "mil_to_um",
        "difference_to_kelvin",
        "fahrenheit_to_celsius",
        # one unit everywhere, or none
        "grade_size",
        "grade_step",
        "removal_time",
        "reference_duration",
        "noise_dose_programme",
        "time_weighted_average",
        "ppm_to_mass",
        "share_of_lower_limit",
        "ford_small_cup_viscosity",
        "colour_difference_1976",
    }
)

# relation: why no item asks it
NOT_ASKED = {
    "din_cup_viscosity": "its line stands in no text that was read, and the standard is withdrawn",
}

# fmt: off
US_UNITS = frozenset((
    "mil", "in", "ft", "in2", "ft2", "us_gal", "us_qt", "us_pt", "us_fl_oz", "in3", "ft3", "oz",
    "lb", "us_ton", "lb/us_gal", "ft2/us_gal", "in/s", "ft/min", "degF", "degF_diff", "psi",
    "in_wg", "cfm", "us_fl_oz/min", "hp", "ft3/us_gal", "ft_lbf", "money/us_gal",
))
METRIC_UNITS = frozenset((
    "um", "mm", "cm", "m", "cm2", "m2", "mL", "L", "cm3", "m3", "g", "kg", "g/mL", "kg/L",
    "g/L", "m2/L", "L/m2", "g/m2", "mm/s", "cm/s", "m/s", "degC", "K", "hPa", "kPa", "Pa",
    "bar", "L/min", "m3/h", "mL/min", "mm2/s", "kW", "N_m", "money/L", "money/m2",
))
# fmt: on
