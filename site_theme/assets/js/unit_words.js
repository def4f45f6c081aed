/* Units as learners write them; the list itself is made from the generator's own. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var list = null;

  function units() {
    list = list || Guidecoat.units.map(function (row) {
      return {
        name: row[0], symbol: row[1], spellings: row[2], factor: Guidecoat.exact(row[3]),
        offset: Guidecoat.exact(row[4]), measures: row[5], point: row[6] === 1, apart: row[7] === 1
      };
    });
    return list;
  }

  function named(name) { return units().find(function (unit) { return unit.name === name; }); }

  function plain(text) {
    return text.toLowerCase().replace(/[\u03bc\u00b5]/g, "u").replace(/²/g, "2").replace(/³/g, "3")
      .replace(/·/g, "").replace(/°/g, "deg").replace(/[\s._^*]/g, "").replace(/gallons?/g, "gal");
  }

  function isDifference(unit) { return unit.measures === named("K").measures && !unit.point; }

  /* The asked unit wins where two could be meant; a temperature beside a difference is one. */
  function unitOf(text, asked) {
    var wanted = plain(text);
    if (asked.spellings.indexOf(wanted) >= 0) { return asked; }
    var found = units().find(function (unit) { return unit.spellings.indexOf(wanted) >= 0; });
    if (found && found.point && isDifference(asked)) { return named(found.name === "degC" ? "K" : "degF_diff"); }
    if (found) { return found; }
    var stateless = ["us_", "imp_"].map(function (country) { return plain(asked.name.replace(country, "")); });
    return stateless.indexOf(wanted) >= 0 ? asked : null;
  }

  function measuresAlike(given, asked) {
    if (given !== asked && (given.apart || asked.apart)) { return false; }
    if (asked.point && given.name === "K") { return true; }
    return given.measures === asked.measures && given.point === asked.point;
  }

  /* (number x factor + offset - asked offset) / asked factor, exact */
  function turned(value, given, asked) {
    var base = plus(times(value, given.factor), given.offset, 1n);
    var rest = plus(base, asked.offset, -1n);
    return { over: rest.over * asked.factor.under, under: rest.under * asked.factor.over };
  }

  function times(a, b) { return { over: a.over * b.over, under: a.under * b.under }; }

  function plus(a, b, sign) {
    return { over: a.over * b.under + sign * b.over * a.under, under: a.under * b.under };
  }

  /* Put a read number into the asked unit: {value, from, missing}; {unknown} or {unlike} where
     that cannot be done. `from` is the unit it was turned out of. */
  Guidecoat.inAskedUnit = function (read, key) {
    if (!read.unit) { return { value: read.value, missing: Boolean(key.symbol) }; }
    var asked = named(key.unit);
    if (!asked) {
      return [plain(key.symbol), plain(key.unit)].indexOf(plain(read.unit)) >= 0
        ? { value: read.value } : { unknown: read.unit };
    }
    var given = unitOf(read.unit, asked);
    if (!given) { return { unknown: read.unit }; }
    if (given === asked) { return { value: read.value }; }
    if (!measuresAlike(given, asked)) { return { unlike: given }; }
    return { value: turned(read.value, given, asked), from: given };
  };
})();
