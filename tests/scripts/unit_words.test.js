import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";
import { needsShared, units } from "./shared.js";

const page = guidecoat(["numbers", "unit_words"], { units });

function turned(text, unit, symbol) {
  const read = page.readNumber(text);
  const found = page.inAskedUnit(read, { unit, symbol });
  return found.value ? page.shortNumber(found.value) : found;
}

/* Sizes of units: NIST SP 811, Appendix B. */
test("units of one kind are converted exactly", needsShared, () => {
  assert.equal(turned("0.128 mm", "um", "µm"), "128");
  assert.equal(turned("128 microns", "um", "µm"), "128");
  assert.equal(turned("5 mil", "um", "µm"), "127");
  assert.equal(turned("1 US gal", "L", "L"), "3.7854");
});

test("a temperature and a difference of temperatures are told apart by what is asked", needsShared, () => {
  assert.equal(turned("68 °F", "degC", "°C"), "20");
  assert.equal(turned("293.15 K", "degC", "°C"), "20");
  assert.equal(turned("18 °F", "K", "K"), "10");
  assert.equal(turned("10 °C", "K", "K"), "10");
});

test("the asked unit wins where a word could mean two", needsShared, () => {
  assert.equal(turned("1.5 gallons", "us_gal", "US gal"), "1.5");
  assert.equal(turned("1.5 gallons", "imp_gal", "imp gal"), "1.5");
  assert.equal(turned("1.5 gallons", "L", "L").unknown, "gallons");
});

test("a unit of another kind, and one that is none, are told apart", needsShared, () => {
  assert.equal(turned("117 g", "um", "µm").unlike.symbol, "g");
  assert.equal(turned("117 spans", "um", "µm").unknown, "spans");
});

test("a missing unit is told, but not where none is asked", needsShared, () => {
  assert.equal(page.inAskedUnit(page.readNumber("76.2"), { unit: "um", symbol: "µm" }).missing, true);
  assert.equal(page.inAskedUnit(page.readNumber("76.2"), { unit: "1", symbol: "" }).missing, false);
});
