"""Practice and dates: what was seen, what was done on a day, and what was entered by mistake."""

from generator.workflows.practice.dating import keep_date, plan_date
from generator.workflows.practice.mending import plan_take_out, put_back_entry, take_out_entry
from generator.workflows.practice.observing import Watched, keep_observation, observation_of

__all__ = [
    "Watched",
    "keep_date",
    "keep_observation",
    "observation_of",
    "plan_date",
    "plan_take_out",
    "put_back_entry",
    "take_out_entry",
]
