"""The adapter reads checks by meaning: other units, other lengths, other numbers, left-out inputs.

Common practice: every figure here is worked by hand from the definition beside it.
"""

import pytest

from tests.refinishing.conftest import CHECKS
from tests.refinishing.published_adapter import BARE, CALCULATIONS
from tests.refinishing.published_checks import Check, judge, read_checks

# calculation, inputs, expected results with the tolerance of all
FURTHER = (
    (
        "mix.split_total",
        {"total_L": "0.6", "parts": ["4", "1", "1"]},
        {"base_mL": "400.0", "thinner_fl_oz": "3.3814"},
    ),
    (
        "film.wft_from_dft",
        {"dft_mil": "2", "volume_solids_pct": "50"},
        {"wft_um": "101.6", "wft_mil": "4"},
    ),
    (
        "film.stack",
        {"layers_dft_um": ["20", "30", "40", "10", "25", "5"], "sand_off_um": "10"},
        {"total_um": "120"},
    ),
    (
        "air.hose_chain",
        {"start_psi": "100", "drops_psi": ["1", "2", "3", "4", "5", "6"]},
        {"gun_inlet_psi": "79", "total_drop_psi": "21"},
    ),
    (
        "mix.overpour",
        {
            "planned_mL": ["400", "100"],
            "overpoured": "base",
            "actually_poured_mL": "440",
            "cup_capacity_mL": "550",
        },
        {
            "hardener_needed_mL": "110",
            "hardener_extra_vs_plan_mL": "10",
            "new_total_mL": "550",
            "fits_in_cup": "true",
        },
    ),
    (
        "mix.overpour",
        {"planned_mL": ["400", "100", "100"], "overpoured": "thinner", "actually_poured_mL": "110"},
        {"base_needed_mL": "440", "hardener_needed_mL": "110", "new_total_mL": "660"},
    ),
    (
        "climate.dew_margin",
        {"air_F": "68", "rh_pct": "70", "surface_F": "66.2", "required_margin_F": "5"},
        {"margin_F": "8.3535", "margin_K": "4.64082", "ok_to_paint": "true"},
    ),
    (
        "noise.osha_dose",
        {
            "periods_dBA_h": [
                ["95", "1"],
                ["95", "1"],
                ["90", "1"],
                ["90", "1"],
                ["90", "1"],
                ["85", "3"],
            ]
        },
        {"dose_pct": "106.25", "twa_dBA": "90.4373"},
    ),
    (
        "noise.osha_dose",
        {"periods_dBA_h": [["95", "2"], ["90", "3"], ["85", "3"]], "threshold_dBA": "90"},
        {"dose_pct": "87.5"},
    ),
    ("exposure.twa", {"ppm_h": [["100", "10"]], "shift_h": "10"}, {"twa_ppm": "125"}),
    ("exposure.twa", {"mg_per_m3_h": [["12", "2"], ["3", "4"]]}, {"twa_mg_per_m3": "4.5"}),
    (
        "exposure.mixture",
        {"conc": ["100", "20", "20", "30", "10"], "limit": ["200", "100", "100", "100", "100"]},
        {"Em": "1.3", "within_limit": "false"},
    ),
    (
        "voc.mix",
        {"volumes": ["1", "1", "1", "1", "1"], "voc_g_per_L": ["100", "200", "300", "400", "500"]},
        {"voc_g_per_L": "300"},
    ),
    (
        "voc.multistage",
        {"basecoat_lb_per_gal": "5.0", "clearcoat_lb_per_gal": "3.5"},
        {"voc_multi_lb_per_gal": "4.0"},
    ),
    (
        "voc.pte_sum",
        {"vehicles_per_year": "1000", "gal_per_vehicle": ["0.5", "0.25"], "lb_per_gal": ["4", "2"]},
        {"short_tons_per_year": "1.25"},
    ),
    (
        "voc.per_solids_pool",
        {"lb_voc": "33.2", "gal_solids": "28"},
        {"lb_voc_per_gal_solids": "1.1857"},
    ),
    (
        "air.hose_scale_length",
        {"drop_psi": "5", "length_ft": "25", "new_length_ft": "50"},
        {"drop_psi": "10"},
    ),
    (
        "air.purge_time",
        {"volume_m3": "90", "flow_m3_per_min": "90", "c_start_ppm": "400", "c_end_ppm": "20"},
        {"minutes": "2.995732"},
    ),
    (
        "air.cfm",
        {"width_m": "3.048", "height_m": "2.1336", "velocity_m_per_s": "0.508"},
        {"cfm": "7000", "m3_per_min": "198.218"},
    ),
    (
        "air.compressor_demand",
        {
            "tools": [
                ["8", "0.6", "2"],
                ["12", "0.8", "1"],
                ["4", "0.25", "2"],
                ["4", "0.5", "1"],
                ["2", "1", "1"],
            ],
            "margin": "1.3",
        },
        {"average_cfm": "25.2", "required_cfm": "32.76"},
    ),
    ("air.hvlp_ok", {"cap_bar": "0.69"}, {"is_hvlp": "false"}),
    ("air.hvlp_ok", {"cap_psi": "0.05"}, {"is_hvlp": "false"}),
    (
        "air.filter_dp",
        {"dp_clean_Pa": "50", "dp_now_Pa": "130", "change_out_Pa": "125"},
        {"rise_Pa": "80", "change": "true"},
    ),
    (
        "cost.job",
        {
            "litres": ["1", "1", "1", "1", "1", "1"],
            "price_per_litre": ["10", "10", "10", "10", "10", "10"],
            "labour_h": "1",
            "rate_per_h": "50",
        },
        {"materials": "60", "total": "110"},
    ),
    (
        "time.process",
        {"coats": "2", "spray_min_each": "5", "flash_min_each": "10", "flash_after_last": "true"},
        {"minutes": "30", "hours": "0.5"},
    ),
    (
        "mix.mixed_density",
        {
            "parts_by_volume": ["4", "1", "1", "1"],
            "densities_g_per_mL": ["1.4", "1.0", "0.9", "0.8"],
        },
        {"mixed_density_g_per_mL": "1.1857"},
    ),
    (
        "film.te_swap",
        {"gal_old": "1", "te_old_pct": "30", "te_new_pct": "60", "price_per_unit": "100"},
        {"new_gal": "0.5", "saved_gal": "0.5", "saved_money": "50"},
    ),
    ("cure.q10", {"time_ref_min": "60", "ref_C": "20", "new_C": "40"}, {"time_new_min": "15"}),
    (
        "cure.q10",
        {"time_ref_h": "4", "ref_F": "68", "new_F": "86", "q10": "2"},
        {"time_new_h": "2", "time_new_min": "120"},
    ),
    (
        "visc.temperature",
        {"mm2_per_s": "100", "pct_fall_per_F": "5", "delta_F": "4"},
        {"mm2_per_s_compound": "81.4506"},
    ),
    ("visc.gbt1723", {"seconds": "28.3"}, {"mm2_per_s": "100"}),
    ("respirator.muc", {"apf": "50", "oel_ppm": "100", "idlh_ppm": "2000"}, {"muc_ppm": "2000"}),
    ("respirator.sar_air", {"tight_fitting": "3"}, {"min_L_per_min": "345", "min_cfm": "12"}),
    ("gloss.level", {"gloss60_GU": "20", "gloss85_GU": "20"}, {"level": "3"}),
    ("abrasive.disc_area", {"diameter_in": "6"}, {"in2": "28.2743", "ratio_to_75_mm": "4.129024"}),
    (
        "job.rts_split",
        {
            "area_ft2": "23.68",
            "dft_mil_per_coat": "1",
            "coats": "2",
            "volume_solids_rts_pct": "42",
            "transfer_efficiency_pct": "65",
            "parts": ["4", "1", "1"],
        },
        {"rts_mL": "409.367"},
    ),
    ("units.convert", {"value": "20", "from": "celsius", "to": "fahrenheit"}, {"F": "68"}),
    (
        "units.convert",
        {"value": "1", "from": "pound/US_liquid_gallon", "to": "gram/liter"},
        {"g_per_L": "119.826427"},
    ),
    (
        "film.practical_spread",
        {"theoretical_ft2_per_gal": "200", "loss_pct": "40"},
        {"practical_ft2_per_gal": "120"},
    ),
    (
        "voc.job_emission",
        {"litres_rts": "1", "voc_g_per_L": "420"},
        {"voc_kg": "0.42", "voc_g": "420"},
    ),
    (
        "film.litres_needed",
        {"area_m2": "10", "dft_um_per_coat": "50", "volume_solids_rts_pct": "50"},
        {"litres": "1", "mL": "1000", "gallons": "0.264172"},
    ),
    (
        "cure.oven_time",
        {"air_C": "70", "start_metal_C": "20", "target_metal_C": "60", "time_constant_min": "8"},
        {"heat_up_min": "12.8755", "total_min": "12.8755"},
    ),
    ("climate.delta_convert", {"delta_K": "3"}, {"delta_F": "5.4"}),
    (
        "exposure.ppm_to_mgm3",
        {"ppm": "100", "mol_weight": "24.06", "molar_volume_L": "24.06"},
        {"mg_per_m3": "100"},
    ),
    (
        "cure.ir_inverse_square",
        {"distance_ref_cm": "50", "distance_new_cm": "100"},
        {"intensity_ratio": "0.25"},
    ),
    ("respirator.muc", {"apf": "5", "oel": "50", "unit": "ug/m3"}, {"muc": "250"}),
    (
        "film.mass_per_area",
        {"wft_mil": "4", "density_lb_per_gal": "10"},
        {"g_per_m2": "121.744", "oz_per_ft2": "0.398966"},
    ),
    ("lel.percent", {"vol_pct": "0.17", "lel_vol_pct": "1.7"}, {"pct_of_lel": "10"}),
    (
        "climate.rh_from_wet_bulb",
        {"dry_F": "68", "wet_F": "59"},
        {"rh_pct": "58.5682814", "dew_point_F": "52.932"},
    ),
    (
        "mix.percent_reduction",
        {"base_gal": "1", "reduction_pct_of_base": "25"},
        {"thinner_qt": "1", "total_gal": "1.25"},
    ),
    (
        "mix.mass_from_volume",
        {"volumes_L": ["0.4", "0.1", "0.1"], "densities_kg_per_L": ["1.35", "1.05", "0.88"]},
        {"base_g": "540", "total_kg": "0.733"},
    ),
    ("air.fan_law", {"rpm_old": "1000", "rpm_new": "800", "cfm_old": "9000"}, {"cfm_new": "7200"}),
    (
        "respirator.required_pf",
        {"concentration_mg_per_m3": "90", "oel_mg_per_m3": "5"},
        {"hazard_ratio": "18", "min_apf_in_table": "50"},
    ),
    (
        "exposure.twa",
        {"ppm_min": [["150", "120"], ["75", "120"], ["50", "240"]]},
        {"twa_ppm": "81.25"},
    ),
)


def check(calculation: str, inputs: dict[str, object], expected: dict[str, str]) -> Check:
    tolerance = {n: {"value": v, "tol": "0.001"} for n, v in expected.items()}
    return Check("further", calculation, inputs, tolerance)


@pytest.mark.parametrize(("calculation", "inputs", "expected"), FURTHER)
def test_a_further_check_is_read_by_what_its_names_mean(calculation, inputs, expected):
    verdict = judge(check(calculation, inputs, expected))
    assert verdict.problems == ()
    assert verdict.unused == ()


NUMBERS = [row for row in FURTHER if next(iter(row[2].values())) not in ("true", "false")]


@pytest.mark.parametrize(("calculation", "inputs", "expected"), NUMBERS)
def test_a_further_check_with_a_wrong_number_fails(calculation, inputs, expected):
    name, value = next(iter(expected.items()))
    wrong = {name: str(float(value) * 1.01)}
    (problem,) = judge(check(calculation, inputs, wrong)).problems
    assert problem.startswith(f"further: {name} is ")


def test_every_calculation_of_the_file_is_known():
    assert {c.calculation for c in read_checks(CHECKS)} <= CALCULATIONS.keys()


def test_a_check_may_name_a_relation_itself():
    one = check(
        "mix.hardener_mass",
        {
            "base_mass_g": "540",
            "parts": ["4", "1"],
            "base_density_g_per_mL": "1.35",
            "hardener_density_g_per_mL": "1.05",
        },
        {"hardener_mass_g": "105"},
    )
    assert judge(one).problems == ()


def test_an_input_that_means_nothing_is_told():
    one = check(
        "film.mass_per_area",
        {
            "wft_um": "150",
            "density_g_per_mL": "1.1",
            "gloss_of_the_tin": "7",
        },
        {"g_per_m2": "165"},
    )
    verdict = judge(one)
    assert verdict.problems == ()
    assert verdict.unused == ("gloss_of_the_tin",)


def test_a_missing_input_fails_with_one_sentence():
    (problem,) = judge(check("film.wft_from_dft", {"dft_um": "50"}, {"wft_um": "100"})).problems
    assert problem == "further: no input means volume_solids."


def test_a_refusal_of_the_trade_is_no_pass():
    one = check("film.wft_from_dft", {"dft_um": "50", "volume_solids_pct": "120"}, {"wft_um": "41"})
    (problem,) = judge(one).problems
    assert problem.startswith("further: the relation refuses: ")


def test_only_refusals_with_a_written_reason_test_the_bare_formula():
    reasons = {c.name: judge(c).reason for c in read_checks(CHECKS)}
    bare = {name for name, reason in reasons.items() if reason}
    assert bare == {"VIS-05", "VIS-08"}
    assert all(len(entry.reason.split()) > 10 for entry in BARE.values())
