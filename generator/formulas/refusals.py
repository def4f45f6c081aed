"""What a formula may not contain, each said in one plain sentence."""

import ast

REFUSED: dict[type[ast.expr], str] = {
    ast.Attribute: "a formula has no dotted names",
    ast.Compare: "a formula is not a comparison",
    ast.BoolOp: "a formula has no 'and' or 'or'",
    ast.Lambda: "a formula cannot define a function",
    ast.IfExp: "a formula has no 'if'",
    ast.NamedExpr: "a formula cannot set a name",
    ast.Starred: "a formula has no starred inputs",
    ast.JoinedStr: "a formula has no text in it",
    ast.List: "a formula has no lists",
    ast.Tuple: "a formula has no comma outside the inputs of a relation",
    ast.Set: "a formula has no sets",
    ast.Dict: "a formula has no braces",
    ast.ListComp: "a formula has no loops",
    ast.SetComp: "a formula has no loops",
    ast.DictComp: "a formula has no loops",
    ast.GeneratorExp: "a formula has no loops",
    ast.Slice: "a formula has no slices",
    ast.UnaryOp: "only a minus may stand in front of a part",
    ast.BinOp: "only + - * / and ** join the parts of a formula",
}
ALLOWED = "a formula has numbers, names, + - * / and ** and relations"


def refused_at(tree: ast.expr | ast.keyword, text: str) -> int:
    """Return where the refused sign stands in the text, from 0; else where the part starts."""
    if isinstance(tree, (ast.BinOp, ast.Compare)):
        before: ast.expr | None = tree.left
    elif isinstance(tree, ast.BoolOp):
        before = tree.values[0]
    elif isinstance(tree, ast.IfExp):
        before = tree.body
    elif isinstance(tree, ast.Attribute):
        before = tree.value
    else:
        before = None
    place = tree.col_offset if before is None else before.end_col_offset or 0
    while before is not None and text[place : place + 1] in (" ", ")", "\n"):
        place += 1
    return place
