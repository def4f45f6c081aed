"""Everything the records hold about a person, for that person."""

import json
from pathlib import Path

from generator.records import Records, RecordsRefused
from generator.records.leaving import export_person
from generator.records.people import person_id
from generator.workflows.files import new_file, write_private
from generator.workflows.project import Project
from generator.workflows.refusals import refusing


@refusing(RecordsRefused)
def export_records(
    project: Project, connection: Records, person: str, target: Path | None = None
) -> Path:
    """Write everything the records hold about a person, and return the path.

    target  a new file; None for one among the records, whose name holds no person
    """
    plain = export_person(connection, person)
    own = project.export(person_id(connection, person))
    path = new_file(project, target) if target else own
    text = json.dumps(plain, ensure_ascii=False, indent=1) + "\n"
    write_private(path, text.encode("utf-8"))
    return path
