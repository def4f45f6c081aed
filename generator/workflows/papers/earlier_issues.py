"""What earlier issues say to the next one: what was used, how it was answered, who has met what."""

from collections.abc import Iterable, Mapping

from generator.assembly import Facility, History
from generator.records import Records
from generator.records.issues import exposure, items_met
from generator.records.sittings import shares_of_items


def past_of(connection: Records, people: Iterable[str], versions: Mapping[str, str]) -> History:
    """Return the past of a class.

    people    codes of those who will sit
    versions  of the items as they are now; answers to an earlier wording do not count
    """
    facilities = {
        item: Facility(mean, answers)
        for (item, version), (answers, mean) in shares_of_items(connection).items()
        if versions.get(item) == version
    }
    met = {person: items_met(connection, person) for person in people}
    return History(exposure(connection), facilities, met)
