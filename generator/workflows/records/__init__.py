"""Keeping the records: people, practice, dates, certificates, and what leaves."""

from generator.workflows.records.certificates import Page, certify_training, print_certificate_again
from generator.workflows.records.dating import keep_date, plan_date
from generator.workflows.records.erasing import carry_out_erasure, plan_erasure
from generator.workflows.records.exporting import export_records
from generator.workflows.records.keeping_people import add_to_records, correct_person
from generator.workflows.records.mending import plan_take_out, put_back_entry, take_out_entry
from generator.workflows.records.observing import Watched, keep_observation, observation_of
from generator.workflows.records.packing import pack_records
from generator.workflows.records.rosters import one_person, people_of
from generator.workflows.records.soundness import back_up_records, record_problems

__all__ = [
    "Page",
    "Watched",
    "add_to_records",
    "back_up_records",
    "carry_out_erasure",
    "certify_training",
    "correct_person",
    "export_records",
    "keep_date",
    "keep_observation",
    "observation_of",
    "one_person",
    "pack_records",
    "people_of",
    "plan_date",
    "plan_erasure",
    "plan_take_out",
    "print_certificate_again",
    "put_back_entry",
    "record_problems",
    "take_out_entry",
]
