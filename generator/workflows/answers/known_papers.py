"""What the records know of papers whose answers come in."""

from collections.abc import Iterable
from functools import partial

from generator.marking.tables import Known, by_halves
from generator.records import Records
from generator.records.issues import ids_of_forms
from generator.records.people import all_people, was_erased
from generator.records.sittings import StoredForm, issued_forms, voided_forms


def known_of(
    connection: Records, form_ids: Iterable[str], loaded: dict[str, StoredForm] | None = None
) -> Known:
    """Return what the records know of some forms; all ids only where one of these is unknown.

    loaded  takes the forms as they were read, for whoever marks them next
    """
    ids = tuple(form_ids)
    forms = issued_forms(connection, ids)
    if loaded is not None:
        loaded.update(forms)
    strange = set(ids) - set(forms)
    people = all_people(connection)
    return Known(
        {form_id: form.content for form_id, form in forms.items()},
        by_halves(ids_of_forms(connection) if strange else ()),
        tuple(person.code for person in people),
        voided_forms(connection, strange),
        {person.name.casefold(): person.code for person in people if person.name},
        partial(was_erased, connection),
    )


def seats_of(connection: Records, form_ids: Iterable[str]) -> tuple[str, ...]:
    """Return label, person and id of forms, as a line names them."""
    forms = issued_forms(connection, tuple(form_ids))
    return tuple(
        f"form {found.label} ({', '.join(filter(None, (found.person, form_id)))})"
        for form_id, found in forms.items()
    )
