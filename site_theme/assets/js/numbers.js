/* Numbers as a learner types them, and exact sums with whole-number fractions {over, under}.
   Reads 12.5, 12,5, 1 1/2, 3/4, ½ and 1½, and parts them from the unit behind. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var GLYPHS = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5",
    "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"
  };
  /* the spaces that the marker of papers knows, which are not quite those of \s here */
  var SPACES = /[\t-\r\x1c-\x20\x85\xa0\u1680\u2000-\u200a\u2028\u2029\u202f\u205f\u3000\ufeff]+/g;
  var PARTS = /^([-\u2212+]? ?[0-9.,/\u2044 ½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]+)(.*)$/;
  var THOUSANDS = /^[1-9][0-9]{0,2},[0-9]{3}$/;
  var LONGEST = 60;

  function decimal(text) {
    var parts = text.replace(",", ".").split(".");
    var places = (parts[1] || "").length;
    return { over: BigInt(parts.join("") || "0"), under: BigInt(10) ** BigInt(places) };
  }

  function unsigned(text) {
    if (THOUSANDS.test(text)) { return null; }
    if (/^([0-9]+([.,][0-9]*)?|[.,][0-9]+)$/.test(text)) { return decimal(text); }
    var mixed = /^(?:([0-9]+) )?([0-9]+) ?\/ ?([0-9]+)$/.exec(text);
    if (!mixed || BigInt(mixed[3]) === 0n) { return null; }
    var under = BigInt(mixed[3]);
    return { over: BigInt(mixed[1] || "0") * under + BigInt(mixed[2]), under: under };
  }

  function speltOut(text) {
    var glyph = GLYPHS[text.slice(-1)];
    return glyph ? (text.slice(0, -1).trim() + " " + glyph).trim() : text.replace(/\u2044/g, "/");
  }

  function whyNot(number) {
    if (/[.,].*[.,]|^[1-9][0-9]{0,2},[0-9]{3}$/.test(number)) {
      return "Commas and points can be read two ways here. Write the number without a thousands mark, such as 1234.5.";
    }
    if (/\/ ?0+$/.test(number)) { return "That divides by zero. Write another number."; }
    return "That cannot be read as one number. Write it like 12.5, 12,5, 3/4 or 1 1/2.";
  }

  /* Give {value, number, unit} or {problem}, a sentence that says what to write instead. */
  Guidecoat.readNumber = function (typed) {
    var text = typed.replace(SPACES, " ").trim();
    if (!text) { return { problem: "Type a number first." }; }
    var split = text.length > LONGEST ? null : PARTS.exec(text);
    if (!split) { return { problem: whyNot("") }; }
    var number = split[1].trim();
    var unit = split[2].trim();
    var minus = /^[-\u2212]/.test(number);
    var size = unsigned(speltOut(number.replace(/^[-\u2212+] */, "")));
    if (!size) { return { problem: whyNot(number) }; }
    if (minus) { size.over = -size.over; }
    return { value: size, number: number, unit: unit };
  };

  /* Read a number of the key: "12.5", "-3" or "385/3". */
  Guidecoat.exact = function (text) {
    var minus = text.charAt(0) === "-";
    var size = unsigned(minus ? text.slice(1) : text);
    return minus ? { over: -size.over, under: size.under } : size;
  };

  /* Say whether a value lies in a band; a missing end is open, and both ends pass. */
  Guidecoat.inBand = function (value, band) {
    function below(a, b) { return a.over * b.under < b.over * a.under; }
    if (band.low !== null && below(value, Guidecoat.exact(band.low))) { return false; }
    return !(band.high !== null && below(Guidecoat.exact(band.high), value));
  };

  function written(over, under) { return over + "/" + under; }

  /* Half a step around a number and the one it rounds to. */
  function around(exact, step) {
    const steps = (2n * exact.over * step.under + exact.under * step.over) / (2n * exact.under * step.over);
    const rounded = { over: steps * step.over, under: step.under };
    const [less, more] = exact.over * rounded.under < rounded.over * exact.under ? [exact, rounded] : [rounded, exact];
    return {
      low: written(2n * less.over * step.under - step.over * less.under, 2n * less.under * step.under),
      high: written(2n * more.over * step.under + step.over * more.under, 2n * more.under * step.under)
    };
  }

  /* Read a band: "12.5~0.5" is a middle and half the width, "3..385/3" has two ends, an empty end is
     open, and "@28.956" is what rounds to the same step. */
  Guidecoat.bandOf = function (text, step) {
    if (text.charAt(0) === "@") { return around(Guidecoat.exact(text.slice(1)), Guidecoat.exact(step)); }
    const ends = text.split(".."), [middle, half] = text.split("~").map(part => Guidecoat.exact(part));
    if (ends.length === 2) { return { low: ends[0] || null, high: ends[1] || null }; }
    const under = middle.under * half.under;
    const over = middle.over * half.under, by = half.over * middle.under;
    return { low: (over - by) + "/" + under, high: (over + by) + "/" + under };
  };

  /* Write the middle of a band rounded half up (m), its low end rounded up (l) or its high end
     rounded down (h), to so many decimals. */
  Guidecoat.wordOfBand = function (text, step, end, places) {
    const band = Guidecoat.bandOf(text, step), low = Guidecoat.exact(band.low), high = Guidecoat.exact(band.high);
    const middle = { over: low.over * high.under + high.over * low.under, under: 2n * low.under * high.under };
    const value = { m: middle, l: low, h: high }[end], over = value.over * 10n ** BigInt(places);
    const rounded = end === "m" ? (2n * over + value.under) / (2n * value.under)
      : end === "l" ? (over + value.under - 1n) / value.under : over / value.under;
    const digits = String(rounded).padStart(places + 1, "0");
    return places ? digits.slice(0, -places) + "." + digits.slice(-places) : digits;
  };

  /* Write a value in a few figures, for people. */
  Guidecoat.shortNumber = function (value) {
    return String(Number((Number(value.over) / Number(value.under)).toPrecision(5)));
  };
})();
