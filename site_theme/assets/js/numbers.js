/* Numbers as a learner types them, and exact sums with whole-number fractions {over, under}.
   Reads 12.5, 12,5, 1 1/2, 3/4, ½ and 1½, and parts them from the unit behind. */
"use strict";

(() => {
  /** @type {Record<string, string>} */
  const GLYPHS = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5",
    "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"
  };
  /* the spaces that the marker of papers knows, which are not quite those of \s here */
  const SPACES = /[\t-\r\x1c-\x20\x85\xa0\u1680\u2000-\u200a\u2028\u2029\u202f\u205f\u3000\ufeff]+/g;
  const PARTS = /^([-\u2212+]? ?[0-9.,/\u2044 ½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]+)(.*)$/;
  const THOUSANDS = /^[1-9][0-9]{0,2},[0-9]{3}$/;
  const LONGEST = 60;

  /** @type {(text: string) => Fraction} */
  function decimal(text) {
    const parts = text.replace(",", ".").split(".");
    const places = (parts[1] || "").length;
    return { over: BigInt(parts.join("") || "0"), under: BigInt(10) ** BigInt(places) };
  }

  /** @type {(text: string) => Fraction | null} */
  function unsigned(text) {
    if (THOUSANDS.test(text)) { return null; }
    if (/^([0-9]+([.,][0-9]*)?|[.,][0-9]+)$/.test(text)) { return decimal(text); }
    const mixed = /^(?:([0-9]+) )?([0-9]+) ?\/ ?([0-9]+)$/.exec(text);
    if (!mixed || BigInt(mixed[3]) === 0n) { return null; }
    const under = BigInt(mixed[3]);
    return { over: BigInt(mixed[1] || "0") * under + BigInt(mixed[2]), under };
  }

  /** @type {(text: string) => string} */
  function speltOut(text) {
    const glyph = GLYPHS[text.slice(-1)];
    return glyph ? (text.slice(0, -1).trim() + " " + glyph).trim() : text.replace(/\u2044/g, "/");
  }

  /** @type {(number: string) => string} */
  function whyNot(number) {
    if (/[.,].*[.,]|^[1-9][0-9]{0,2},[0-9]{3}$/.test(number)) {
      return "Commas and points can be read two ways here. " +
        "Write the number without a comma for thousands, such as 1234.5.";
    }
    if (/\/ ?0+$/.test(number)) { return "That divides by zero. Write another number."; }
    return "That cannot be read as one number. Write it like 12.5, 12,5, 3/4 or 1 1/2.";
  }

  /* Give {value, number, unit} or {problem}, a sentence that says what to write instead. */
  Guidecoat.readNumber = (typed) => {
    const text = typed.replace(SPACES, " ").trim();
    if (!text) { return { problem: "Type a number first." }; }
    const split = text.length > LONGEST ? null : PARTS.exec(text);
    if (!split) { return { problem: whyNot("") }; }
    const number = split[1].trim();
    const unit = split[2].trim();
    const minus = /^[-\u2212]/.test(number);
    const size = unsigned(speltOut(number.replace(/^[-\u2212+] */, "")));
    if (!size) { return { problem: whyNot(number) }; }
    if (minus) { size.over = -size.over; }
    return { value: size, number, unit };
  };

  /* Read a number of the key: "12.5", "-3" or "385/3". */
  Guidecoat.exact = (text) => {
    const minus = text.charAt(0) === "-";
    const size = /** @type {Fraction} */ (unsigned(minus ? text.slice(1) : text));
    return minus ? { over: -size.over, under: size.under } : size;
  };

  /* Say whether a value lies in a band; a missing end is open, and both ends pass. */
  Guidecoat.inBand = (value, band) => {
    /** @type {(a: Fraction, b: Fraction) => boolean} */
    function below(a, b) { return a.over * b.under < b.over * a.under; }
    if (band.low !== null && below(value, Guidecoat.exact(band.low))) { return false; }
    return !(band.high !== null && below(Guidecoat.exact(band.high), value));
  };

  /* Write a value in a few figures, for people. */
  Guidecoat.shortNumber = (value) => String(Number((Number(value.over) / Number(value.under)).toPrecision(5)));
})();
