"""The pages of the course, and the site as a whole."""

from generator.website.pages.course_problems import course_problems
from generator.website.pages.site import Site, build_site

__all__ = ["Site", "build_site", "course_problems"]
