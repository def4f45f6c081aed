"""Writing so that nothing is left half done: files whole or not there, folders replaced whole."""

from generator.workflows.files.leftovers import leftovers
from generator.workflows.files.private_files import (
    write_private,
    write_private_files,
    write_private_folder,
)
from generator.workflows.files.private_targets import new_file, off_the_site
from generator.workflows.files.table_files import line_of, text_of
from generator.workflows.files.writing import replace_folder, write_files

__all__ = [
    "leftovers",
    "line_of",
    "new_file",
    "off_the_site",
    "replace_folder",
    "text_of",
    "write_files",
    "write_private",
    "write_private_files",
    "write_private_folder",
]
