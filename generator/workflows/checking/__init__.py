"""What `check` looks at and writes: the whole project, editors' schemas, the list of giveaways."""

from generator.workflows.checking.giveaway_list import write_giveaway_list
from generator.workflows.checking.loading import readable_bank, sound, sound_part
from generator.workflows.checking.project_problems import whole_project
from generator.workflows.checking.schemas import write_record_schemas

__all__ = [
    "readable_bank",
    "sound",
    "sound_part",
    "whole_project",
    "write_giveaway_list",
    "write_record_schemas",
]
