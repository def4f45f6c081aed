"""Make the training certificate: what the records show, to be signed by people."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from generator.printing.paper import PaperSize, page_setup
from generator.printing.typesetter import typeset

TOPICS_FROM = (
    "Topics: 40 CFR 63.11173(f)(2), as restated in a state's checklist; the rule's own text comes "
    "first."
)
SIGNING = (
    "By signing, the trainer says that the training took place and that the records above are "
    "right. The owner or operator certifies the training for the shop."
)


def certificate(
    number: int,
    content: Mapping[str, Any],
    *,
    paper: PaperSize,
    fonts: Path,
    large_print: bool = False,
) -> bytes:
    """Set a certificate as a tagged PDF.

    content  the plain JSON of the certificate as the records froze it
    Raises PrintingRefused when it cannot be set.
    """
    shown = certificate_content(number, content) | page_setup(paper, large_print)
    return typeset("certificate", shown, fonts=fonts)


def certificate_content(number: int, content: Mapping[str, Any]) -> dict[str, Any]:
    """Choose what a certificate shows."""
    listed = ("papers", "practice", "sign_offs", "topics", "not_said")
    return {
        "title": "Record of painter training",
        "edition": content["edition"],
        "corner": f"Certificate {number}",
        "foot": [f"Certificate {number}", f"Issued {content['issued']}"],
        "facts": _facts(content),
        "topics_from": TOPICS_FROM,
        "signing": f"This is certificate {number}, for {_who(content['person'])}. {SIGNING}",
        # certificates of an earlier version have none
        "reminders": list(content.get("reminders", ())),
    } | {name: list(content[name]) for name in listed}


def _facts(content: Mapping[str, Any]) -> list[list[str]]:
    dates = content["dates"]
    return [
        ["Person", _who(content["person"])],
        ["Trainer", _who(content["trainer"])],
        ["First training", dates["first"]],
        ["Latest refresher", dates["refresher"] or "none yet"],
        ["Next refresher by", _due(dates)],
    ]


def _who(person: Mapping[str, str]) -> str:
    named = person["name"] and person["name"] != person["code"]
    return f"{person['name']} ({person['code']})" if named else person["code"]


def _due(dates: Mapping[str, Any]) -> str:
    leap = ", as 29 February counts as 28 February" if dates["leap"] else ""
    late = "; this day had gone by when the certificate was issued" if dates["overdue"] else ""
    return f"{dates['due']}{leap}{late}" if dates["due"] else "no day entered"
