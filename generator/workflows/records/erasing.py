"""A person taken out of the records for good, with the files that name the person."""

from generator.records import Records, RecordsRefused
from generator.records.leaving import Erased, erase_person, stake_of_person
from generator.records.people import person_id
from generator.workflows.project import Project
from generator.workflows.refusals import NeedsConfirmation, refusing


@refusing(RecordsRefused)
def plan_erasure(connection: Records, person: str) -> NeedsConfirmation:
    """Return what goes for good, to be confirmed before `carry_out_erasure`."""
    return NeedsConfirmation(
        f"you are about to erase '{person}': {stake_of_person(connection, person)}",
        "This cannot be undone. Erase?",
    )


@refusing(RecordsRefused)
def carry_out_erasure(project: Project, connection: Records, person: str, at: str) -> Erased:
    """Take a person out of the records, and the files of theirs that lie among them.

    at  the time, as text
    """
    number = person_id(connection, person)
    erased = erase_person(connection, person, at)
    files = [project.certificate(n) for n in (*erased.certificates, *erased.reprint)]
    for path in (*files, project.export(number)):
        path.unlink(missing_ok=True)
    return erased
