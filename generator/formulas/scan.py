"""What can be refused from a formula's characters alone, before anything reads it."""

import ast
import warnings

from generator.formulas.syntax import FormulaProblem

LONGEST_TEXT = 500
DEEPEST = 40

_HINTS = {
    "^": "write ** for a power",
    "%": "a percentage is a given value with the unit percent, or a number such as 0.05",
    "#": "put notes outside the formula",
    "×": "write * to multiply",
    "·": "write * to multiply",
    "÷": "write / to divide",
    "−": "write the plain minus sign -",
    "–": "write the plain minus sign -",
    "²": "write **2",
    "³": "write **3",
}
_NEVER = "^%#\\$?!`;@&|~"


def text_problems(text: str) -> tuple[FormulaProblem, ...]:
    """Find what is too long, too deeply nested or outside the allowed characters."""
    if not text.strip():
        return (FormulaProblem("the formula is empty", 1, "formula-syntax"),)
    if len(text) > LONGEST_TEXT:
        message = f"a formula has at most {LONGEST_TEXT} characters, and this has {len(text)}"
        hint = "take one result of a relation in place of long arithmetic"
        return (FormulaProblem(message, LONGEST_TEXT + 1, "formula-size", hint),)
    wrong = [_character_problem(text, index) for index, c in enumerate(text) if _is_wrong(c)]
    if wrong:
        return tuple(wrong)
    return _nesting_problems(text)


def _is_wrong(character: str) -> bool:
    if character == "\n":
        return False
    return not " " <= character <= "~" or character in _NEVER


def _character_problem(text: str, index: int) -> FormulaProblem:
    character = text[index]
    shown = f"'{character}'" if character.isprintable() else f"U+{ord(character):04X}"
    message = f"the character {shown} has no place in a formula"
    hint = _HINTS.get(character, "")
    if not hint and not character.isascii():
        hint = "type it again with the plain letters a to z, digits and operators"
    return FormulaProblem(message, index + 1, "formula-syntax", hint)


def _nesting_problems(text: str) -> tuple[FormulaProblem, ...]:
    depth = 0
    for index, character in enumerate(text):
        depth += (character in "([{") - (character in ")]}")
        if depth > DEEPEST:
            message = f"brackets may be nested at most {DEEPEST} deep"
            return (FormulaProblem(message, index + 1, "formula-size"),)
    return ()


def expression_tree(text: str) -> ast.expr | FormulaProblem:
    """Turn the text into a syntax tree; nothing of it is ever run.

    text  no longer than the limit and without a blank in front
    """
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            return ast.parse(text.replace("\n", " "), mode="eval").body
    except SyntaxError as error:
        return _unreadable(text, error.offset or 0)
    except (ValueError, MemoryError, RecursionError, Warning):
        return FormulaProblem("the formula cannot be read", 1, "formula-size")


def _unreadable(text: str, column: int) -> FormulaProblem:
    # the reader gives column 0 or 1 for a text that stops too early; other starts are in the text
    if column <= 0 or text.rstrip(" \n")[-1:] in tuple("+-*/,"):
        column = len(text.rstrip(" \n")) + 1
    message = "the formula cannot be read from here on"
    hint = "each bracket needs its partner, and one operator goes between two parts"
    return FormulaProblem(message, min(column, len(text) + 1), "formula-syntax", hint)
