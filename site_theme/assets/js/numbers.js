/* Numbers as a learner types them, and exact comparison with whole-number fractions.
   Reads 12.5, 12,5, 1 1/2, 3/4, ½ and 1½, with or without the unit behind. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var GLYPHS = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5",
    "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"
  };
  var NUMBER = /^([-\u2212+]?)\s*((?:[0-9.,/\u2044 ]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])+)(.*)$/;
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

  function sameUnit(text, names) {
    function plain(name) {
      return name.toLowerCase().replace(/[\u03bc\u00b5]/g, "u").replace(/²/g, "2")
        .replace(/³/g, "3").replace(/[\s._]/g, "");
    }
    return names.some(function (name) { return name && plain(name) === plain(text); });
  }

  function message(number, rest, symbol) {
    if (/[0-9]/.test(number) && /[.,].*[.,]|^[1-9][0-9]{0,2},[0-9]{3}$/.test(number)) {
      return "Commas and points can be read two ways here. Write the number without a thousands mark, such as 1234.5.";
    }
    if (/\/\s*0+\s*$/.test(number)) { return "That divides by zero. Write another number."; }
    return "That cannot be read as one number. Write it like 12.5, 12,5, 3/4 or 1 1/2.";
  }

  /* Give {value} or {problem}, a sentence that says what to write instead. */
  Guidecoat.readNumber = function (typed, unit, symbol) {
    var text = typed.replace(/[\u00a0\u2009\u202f\s]+/g, " ").trim();
    if (!text) { return { problem: "Type a number first." }; }
    var split = text.length > LONGEST ? null : NUMBER.exec(text);
    if (!split) { return { problem: message("", text, symbol) }; }
    var number = split[2].trim();
    var rest = split[3].trim();
    if (rest && !sameUnit(rest, [unit, symbol, unit === "percent" ? "percent" : "", unit === "one" ? "" : unit])) {
      return /^[0-9]|[-+*=]/.test(rest)
        ? { problem: message(number, rest, symbol) }
        : { problem: symbol ? "Give the answer in " + symbol + ". “" + rest + "” was not expected." : "Write the number alone, without “" + rest + "”." };
    }
    var size = unsigned(speltOut(number));
    if (!size) { return { problem: message(number, rest, symbol) }; }
    if (split[1] === "-" || split[1] === "\u2212") { size.over = -size.over; }
    return { value: size };
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
})();
