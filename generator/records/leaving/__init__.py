"""What leaves the records: exports, the inspector's pack, erasure."""

from generator.records.leaving.at_stake import stake_of_issue, stake_of_person
from generator.records.leaving.erase import Erased, erase_person
from generator.records.leaving.inspector_pack import pack_tables
from generator.records.leaving.person_export import export_person

__all__ = [
    "Erased",
    "erase_person",
    "export_person",
    "pack_tables",
    "stake_of_issue",
    "stake_of_person",
]
