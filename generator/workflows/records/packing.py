"""What an inspector of painter training asks for, written into a new folder."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from generator.records import Records, RecordsRefused
from generator.records.certificates import Certificate, all_certificates
from generator.records.leaving import pack_tables
from generator.workflows.files import off_the_site, write_private_folder
from generator.workflows.project import Project
from generator.workflows.records.certificates import certificate_or_refusal
from generator.workflows.refusals import Refused, refusing


@dataclass(frozen=True, slots=True)
class Packed:
    """What a pack holds.

    left_out  a sentence for each certificate that cannot be set
    """

    files: int
    left_out: tuple[str, ...]


@refusing(RecordsRefused)
def pack_records(
    project: Project,
    connection: Records,
    folder: Path,
    day: date,
    *,
    certificates: bool = True,
    watched: Callable[[Sequence[Certificate]], Iterable[Certificate]] = iter,
) -> Packed:
    """Write tables, and certificates to print, into a new folder; its owner alone can read it.

    day      up to which things count as due
    watched  goes through the certificates one by one, so that somebody can be told how far it is
    """
    off_the_site(project, folder)
    contents = dict(pack_tables(connection, day))
    left_out = []
    for found in watched(tuple(all_certificates(connection)) if certificates else ()):
        data = certificate_or_refusal(project, found)
        if isinstance(data, Refused):
            # one that cannot be set must not keep the others from the inspector
            left_out.append(f"certificate {found.number} is left out: {data.sentence}")
        else:
            contents[project.certificate(found.number).name] = data
    write_private_folder(folder, contents)
    return Packed(len(contents), tuple(left_out))
