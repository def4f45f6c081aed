"""The course as a site: pages are built from a plain `Course`, and MkDocs only writes them out.

Files: course (what a site is made of) and gather (from the bank to it); site (all pages),
front_pages, lesson_pages, question_pages, reference_pages; desk (templates, sources in words),
prose (Markdown), blocks and worked (what a lesson can ask for), question_html, addresses (links),
draft (a page in the making); panel_picture, drawing and figures_* (pictures); check_pages,
question_parts, packing, methods (mixed checks); search_pages and search_entries; bundles (one
script, one style sheet) and units_script; offline (the worker that keeps the course on a phone);
single_file and page_sections (the course as one document); sitting and sitting_content (a form to
answer on a screen, without its key); report_page (a report); theme_templates (how templates are
filled); self_contained (what a document without neighbours needs). Only plugin (pages) and engine
(runs it) know MkDocs.
"""

from generator.website.engine import SiteRefused, build_into
from generator.website.preview import preview
from generator.website.settings import settings_problems

__all__ = ["SiteRefused", "build_into", "preview", "settings_problems"]
