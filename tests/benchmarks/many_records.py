"""A bank of any size for measuring, made by copying a bank's items under new names in new words.

Trade words of a copy get an ending of their own: in a real bank of that size the items would speak
of different things, and thousands of items with the same words would all give one another away.
"""

import re
import shutil
from pathlib import Path

_NAME = re.compile(r"^([a-z0-9_]+):", re.MULTILINE)
_TEXT = re.compile(
    r"^( *(?:- )?(?:stem|text|feedback|left|right|action|model|reason): )(.*)$", re.M
)
# so long that it is hardly a word of a rule, and outside of braces
_WORD = re.compile(r"(?<![{\w])[a-z]{7,}(?![\w}])")
_KEPT = frozenset(("nearest", "rounded", "minutes", "seconds", "millilitres", "milliliters"))


def many_records(project: Path, root: Path, items: int) -> int:
    """Write a project with so many items or a few more; return how many.

    project  the project to copy from; root  a new folder
    """
    shutil.copytree(project / "question_bank", root / "question_bank")
    for name in ("course", "site_theme", "mkdocs.yml"):
        (root / name).symlink_to((project / name).resolve())
    files = sorted((root / "question_bank" / "items").glob("*/*.yml"))
    texts = {file: file.read_text("utf-8").rstrip("\n") + "\n" for file in files}
    known = {
        f"{file.parent.name}/{file.stem}/{name}"
        for file in files
        for name in _NAME.findall(texts[file])
    }
    copies = -(-items // len(known))
    for file, text in texts.items():
        with file.open("w", encoding="utf-8") as stream:
            stream.write(text)
            for copy in range(1, copies):
                stream.write(_copied(text, copy, known))
    return copies * len(known)


def _copied(text: str, copy: int, known: set[str]) -> str:
    ending = f"_c{copy}"
    letters = "".join(chr(ord("a") + int(figure)) for figure in str(copy))
    text = _NAME.sub(rf"\1{ending}:", text)
    text = re.sub(
        r"[a-z0-9_]+/[a-z0-9_]+/[a-z0-9_]+",
        lambda found: found[0] + ending if found[0] in known else found[0],
        text,
    )
    return _TEXT.sub(lambda found: found[1] + _in_new_words(found[2], letters), text)


def _in_new_words(text: str, letters: str) -> str:
    return _WORD.sub(
        lambda found: found[0] if found[0] in _KEPT else f"{found[0]}q{letters}q", text
    )
