"""Numbers on the edges of reading and of bands, written by hand."""

from dataclasses import dataclass

from tests.marking.issued import Plain, numeric

# texts that are clear numbers, or clear to nobody, whatever the question asks
WRITINGS = (
    "0.8", "0,8", ".8", ",8", "0.80", "00.8", "4/5", "8/10", "0 4/5", "+0.8", "-0.8", "\u22120.8",
    " 0.8 ", "\u00a00.8\u202f", "0.8.", "0.8000000000000000000000001",
    "0.7999999999999999999999999", "0.6", "0.5999999999", "0.7", "7/10", "0.70000", "1", "1.",
    "1,", "01", "1 0/3", "1,000", "1,0000", "1.000", "1.000,0", "1,000.0", "1'000", "1 000",
    "1_000", "1e0", "1E3", "½", "¾", "1½", "1 ½", "-½", "½½", "1/0", "0/1", "0/0", "3/4/5",
    "1 1/2", "1 1/2/3", "1.5 1/2", "1\u20442", "0,1,2", "1..2", "--1", "+-1", ".", ",", "-", "/",
    "1/", "/2", "nan", "inf", "Infinity", "0x1", "٣", "²", "one", "1 or 2", "1 2", "1-2", "1+1",
    "1*1", "=1", "'1", "%", "9" * 60, "9" * 61, "1" + " " * 70, "0" * 59 + "1", "\t1\n",
    "1\u2009", "1\u3000", "\ufeff1",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Edge:
    """A question with what is typed into it.

    in_other_units  readable, but not in the unit that the question asks for
    """

    question: Plain
    texts: tuple[str, ...]
    in_other_units: tuple[str, ...] = ()


EDGES = (
    # binary floating point fails each of these three bands at its upper end
    Edge(numeric("0.7", "0.6", "0.8", "one", "", step="0.1"), WRITINGS),
    Edge(
        numeric("1.0", "0.9", "1.1", "one", "", step="0.1"), (*WRITINGS, "1.1", "0.9", "1.1000001")
    ),
    Edge(
        numeric("10.2", "10.1", "10.3", "one", "", step="0.1"),
        ("10.3", "10.1", "10.30000001", "103/10"),
    ),
    # a maximum and a minimum, and ends without a last decimal
    Edge(
        numeric("0.90", None, "0.9", "us_gal", "US gal"), (*WRITINGS, "0.9", "0.90", "0.91", "-5")
    ),
    Edge(numeric("0.5", "0.5", None, "one", ""), (*WRITINGS, "0.5", "0.49999", "1" * 50)),
    Edge(
        numeric("1.00", "1/3", "4/3", "one", ""),
        (*WRITINGS, "1/3", "0.3333", "4/3", "1.3334", "1.3333"),
    ),
    Edge(
        numeric("128", "127.5", "128.5", slips=[("41", "43", "first"), ("42", "44", "second")]),
        (
            "128",
            "128 µm",
            "128µm",
            "128 μm",
            "128um",
            "128 UM",
            "128 u m",
            "42",
            "43.5",
            "128 µm 1",
        ),
        ("0.128 mm", "0,0128 cm", "5.04 mil", "128 mm", "128 g", "128 microns", "42 microns"),
    ),
    Edge(
        numeric("20", "19.5", "20.5", "degC", "°C"),
        ("20", "20 °C", "20°c", "-20 °C"),
        ("68 °F", "68 F", "293.15 K", "20 F", "20 C"),
    ),
    Edge(
        numeric("40", "39.5", "40.5", "percent", "%"),
        ("40", "40%", "40 %", "40 percent", "0.4", "40 % %"),
        ("40 pct", "0.4 one"),
    ),
    Edge(
        numeric("3", "3", "3", "coats", "coats"), ("3", "3 coats", "3.0", "6/2", "4"), ("3 fills",)
    ),
    Edge(
        numeric("12.5", "12.45", "12.55", "m2/L", "m²/L", step="0.1"),
        ("12.5 m²/L", "12,5 m2/l", "12.50", "12 1/2 m2/L"),
        ("509.3 ft2/us_gal",),
    ),
)
