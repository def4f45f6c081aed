"""Writing the record schemas that editors complete and check with."""

from pathlib import Path

from generator.bank import record_schemas
from generator.workflows.project import Project


def write_record_schemas(project: Project) -> tuple[Path, ...]:
    """Write the schema of every kind of record and return the paths."""
    from generator.workflows.files import write_files

    schemas = {name: text.encode() for name, text in record_schemas().items()}
    return write_files(project.bank / "schemas", schemas)
