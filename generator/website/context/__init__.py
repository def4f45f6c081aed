"""What every page is made with: the course, addresses, prose, templates and caution boxes."""

from generator.website.context.addresses import lesson_address, questions_address, term_address
from generator.website.context.bundles import bundles, script_of, style_of
from generator.website.context.caution_boxes import caution_box, caution_words, hazard_anchor
from generator.website.context.course import Course, Question, Variants, objective_id
from generator.website.context.page_context import (
    BuiltPage,
    Heading,
    PageContext,
    PageSection,
    SiteFile,
)
from generator.website.context.page_parts import PagePart, page_parts
from generator.website.context.prose import Block, phrase, plain_words, prose, rendered
from generator.website.context.site_context import SiteContext, cited_of_question
from generator.website.context.site_memory import SiteMemory
from generator.website.context.theme_templates import theme_templates
from generator.website.context.worked import readable, relation_tags, worked_example

__all__ = [
    "Block",
    "BuiltPage",
    "Course",
    "Heading",
    "PageContext",
    "PagePart",
    "PageSection",
    "Question",
    "SiteContext",
    "SiteFile",
    "SiteMemory",
    "Variants",
    "bundles",
    "caution_box",
    "caution_words",
    "cited_of_question",
    "hazard_anchor",
    "lesson_address",
    "objective_id",
    "page_parts",
    "phrase",
    "plain_words",
    "prose",
    "questions_address",
    "readable",
    "relation_tags",
    "rendered",
    "script_of",
    "style_of",
    "term_address",
    "theme_templates",
    "worked_example",
]
