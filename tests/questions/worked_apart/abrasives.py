"""Abrasives: grain sizes from the two grade tables, discs and their rims.

Mean sizes of the P grades after the published FEPA table, of the other series after the
table of the US makers' standard; both stand on the paper as extracts.
"""

import math
from fractions import Fraction

from tests.questions.worked_apart.sums import Working

SIZES = {
    80: "201",
    120: "125",
    180: "82",
    240: "58.5",
    280: "52.2",
    320: "46.2",
    360: "40.5",
    400: "35.0",
    500: "30.2",
    600: "25.8",
    800: "21.8",
    1000: "18.3",
    1200: "15.3",
    1500: "12.6",
    2000: "10.3",
}
US_SIZES = {
    240: "53.0",
    320: "36.0",
    360: "28.0",
    400: "23.0",
    500: "20.0",
    600: "16.0",
    800: "12.6",
    1000: "10.3",
}
# the grades of the extract in their order
GRADES = [80, 100, 120, 150, 180, 220, 240, 280, 320, 360, 400, 500]
IN_THE_EXTRACT = [240, 280, 320, 360, 400, 500, 600, 800, 1000, 1200, 1500, 2000]


def size(grade: Fraction) -> Fraction:
    return Fraction(SIZES[int(grade)])


def us_size(grade: Fraction) -> Fraction:
    return Fraction(US_SIZES[int(grade)])


def nearest(wanted: Fraction) -> Fraction:
    return Fraction(min(IN_THE_EXTRACT, key=lambda grade: abs(size(Fraction(grade)) - wanted)))


WORKED: dict[str, Working] = {
    "abrasives/block_and_pad/area_ratio": lambda v: (v["large"] / v["small"]) ** 2,
    "abrasives/block_and_pad/disc_area": lambda v: math.pi * (v["diameter"] / 20) ** 2,
    "abrasives/block_and_pad/more_area_with_a_larger_pad": lambda v: (
        100 * (v["large"] ** 2 - v["small"] ** 2) / v["small"] ** 2
    ),
    "abrasives/extraction/dust_cut": lambda v: 100 - 100 * v["dust_after"] / v["dust_before"],
    "abrasives/grade_ladder/size_ratio": lambda v: size(v["coarse"]) / size(v["fine"]),
    "abrasives/grade_ladder/grades_passed_over": lambda v: Fraction(
        GRADES.index(int(v["to_grade"])) - GRADES.index(int(v["from_grade"])) - 1
    ),
    "abrasives/grade_ladder/first_jump_against_the_second": lambda v: (
        size(v["coarse"]) * size(v["fine"]) / size(v["middle"]) ** 2
    ),
    "abrasives/read_abrasive/p_size": lambda v: size(v["p_grade"]),
    "abrasives/read_abrasive/cami_neighbour": lambda v: nearest(us_size(v["cami_grade"])),
    "abrasives/read_abrasive/cami_beside_p": lambda v: abs(us_size(v["cami"]) - size(v["p"])),
    "abrasives/sander_control/rim_speed": lambda v: (
        math.pi * v["diameter"] / 1000 * v["speed"] / 60
    ),
    "abrasives/sander_control/highest_speed": lambda v: (
        v["rim_limit"] / (math.pi * v["diameter"] / 1000) * 60
    ),
    "abrasives/sander_control/rim_speed_left_in_feet": lambda v: (
        v["limit"] - math.pi * v["diameter"] / 12 * v["speed"]
    ),
}
