/* Units as learners write them; the list itself is made from the generator's own. */
"use strict";

(() => {
  /** @type {Unit[] | null} */
  let list = null;

  /** @type {() => Unit[]} */
  function units() {
    list = list || Guidecoat.units.map((row) => ({
        name: row[0], symbol: row[1], spellings: row[2], factor: Guidecoat.exact(row[3]),
        offset: Guidecoat.exact(row[4]), measures: row[5], point: row[6] === 1, apart: row[7] === 1
      }));
    return list;
  }

  /** @type {(name: string) => Unit | undefined} */
  function named(name) { return units().find((unit) => unit.name === name); }

  /** @type {(text: string) => string} */
  function plain(text) {
    return text.toLowerCase().replace(/[\u03bc\u00b5]/g, "u").replace(/²/g, "2").replace(/³/g, "3")
      .replace(/·/g, "").replace(/°/g, "deg").replace(/[\s._^*]/g, "").replace(/gallons?/g, "gal");
  }

  function temperature() { return /** @type {Unit} */ (named("K")).measures; }

  /** @type {(unit: Unit) => boolean} */
  function isDifference(unit) { return unit.measures === temperature() && !unit.point; }

  /* The asked unit wins where two could be meant; a temperature beside a difference is one. */
  /** @type {(text: string, asked: Unit) => Unit | null} */
  function unitOf(text, asked) {
    const wanted = plain(text);
    if (asked.spellings.includes(wanted)) { return asked; }
    const found = units().find((unit) => unit.spellings.includes(wanted));
    if (found && found.point && isDifference(asked)) {
      return named(found.name === "degC" ? "K" : "degF_diff") || null;
    }
    if (found) { return found; }
    const stateless = ["us_", "imp_"].map((country) => plain(asked.name.replace(country, "")));
    return stateless.includes(wanted) ? asked : null;
  }

  /** @type {(given: Unit, asked: Unit) => boolean} */
  function measuresAlike(given, asked) {
    if (given !== asked && (given.apart || asked.apart)) { return false; }
    if (asked.point && given.name === "K") { return true; }
    return given.measures === asked.measures && given.point === asked.point;
  }

  /* (number x factor + offset - asked offset) / asked factor, exact */
  /** @type {(value: Fraction, given: Unit, asked: Unit) => Fraction} */
  function turned(value, given, asked) {
    const base = plus(times(value, given.factor), given.offset, 1n);
    const rest = plus(base, asked.offset, -1n);
    return { over: rest.over * asked.factor.under, under: rest.under * asked.factor.over };
  }

  /** @type {(a: Fraction, b: Fraction) => Fraction} */
  function times(a, b) { return { over: a.over * b.over, under: a.under * b.under }; }

  /** @type {(a: Fraction, b: Fraction, sign: bigint) => Fraction} */
  function plus(a, b, sign) {
    return { over: a.over * b.under + sign * b.over * a.under, under: a.under * b.under };
  }

  /* Put a read number into the asked unit: {value, from, missing}; {unknown} or {unlike} where
     that cannot be done. `from` is the unit it was turned out of. */
  Guidecoat.inAskedUnit = (read, key) => {
    if (!read.unit) { return { value: read.value, missing: Boolean(key.symbol) }; }
    const asked = named(key.unit);
    if (!asked) {
      return [plain(key.symbol), plain(key.unit)].includes(plain(read.unit))
        ? { value: read.value } : { unknown: read.unit };
    }
    const given = unitOf(read.unit, asked);
    if (!given) { return { unknown: read.unit }; }
    if (given === asked) { return { value: read.value }; }
    if (!measuresAlike(given, asked)) { return { unlike: given }; }
    return { value: turned(read.value, given, asked), from: given };
  };
})();
