"""What `check` looks at and writes: the whole project, editors' schemas, the list of giveaways."""

from generator.workflows.checking.fillable_plans import blueprint_problems
from generator.workflows.checking.giveaway_list import write_giveaways
from generator.workflows.checking.schemas import write_schemas
from generator.workflows.checking.whole_project import whole_project

__all__ = ["blueprint_problems", "whole_project", "write_giveaways", "write_schemas"]
