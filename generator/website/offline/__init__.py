"""Copies without a network: what a device keeps, one file, and what may be published."""

from generator.website.offline.kept_offline import MANIFEST, app_manifest, write_worker
from generator.website.offline.publishing import is_published, stray_files
from generator.website.offline.self_contained import (
    BrokenScript,
    data_address,
    licences,
    policy,
    policy_without_script,
    whole_script,
    with_fonts,
)
from generator.website.offline.single_file import ONE_FILE, one_file

__all__ = [
    "BrokenScript",
    "MANIFEST",
    "ONE_FILE",
    "app_manifest",
    "data_address",
    "is_published",
    "licences",
    "one_file",
    "policy",
    "policy_without_script",
    "stray_files",
    "whole_script",
    "with_fonts",
    "write_worker",
]
