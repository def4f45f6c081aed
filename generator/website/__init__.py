"""The course as a site: pages are built from a plain `Course`, and MkDocs writes them out.

Only plugin, engine (a build) and preview (its server) know MkDocs; gather turns the bank into what
pages are made of, by the same rules as the check.
"""

from generator.website.engine import SiteRefused, build_into
from generator.website.preview import preview
from generator.website.settings import settings_problems

__all__ = ["SiteRefused", "build_into", "preview", "settings_problems"]
