"""Faults and polishing: clear that is left, waits, the rim of a pad, the log of a month."""

import math

from tests.questions.worked_apart.sums import Working

WORKED: dict[str, Working] = {
    "faults_polishing/nibs_and_runs/clear_left": lambda v: (
        v["coats"] * v["each"] - (v["level"] + v["polish"] + v["least"])
    ),
    "faults_polishing/nibs_and_runs/film_off_a_run": lambda v: (
        v["build"] - (v["first"] + v["second"] + v["third"] + v["pads"])
    ),
    "faults_polishing/cure_before_polish/minutes_to_wait": lambda v: (
        v["cool"] + v["wait"] * 60 - v["passed"]
    ),
    "faults_polishing/polish/rim_of_the_pad": lambda v: (
        math.pi * v["diameter"] / 1000 * v["speed"] / 60
    ),
    "faults_polishing/sort_causes/share_of_one_family": lambda v: (
        100 * v["surface"] / sum(v.values())
    ),
}
"""The second working of each item by its name."""
