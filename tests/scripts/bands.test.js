import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat, plain } from "./harness.js";

const page = guidecoat(["numbers", "bands"]);

function band(text, step) { return plain(page.bandOf(text, step)); }

test("a band has a middle and half a width, or two ends, or one", () => {
  assert.deepEqual(band("12.5~0.5"), { low: "1200/100", high: "1300/100" });
  assert.deepEqual(band("3..385/3"), { low: "3", high: "385/3" });
  assert.deepEqual(band("..4"), { low: null, high: "4" });
  assert.deepEqual(band("2.."), { low: "2", high: null });
});

function holds(text, step, number) { return page.inBand(page.exact(number), page.bandOf(text, step)); }

test("what rounds to the same step as a number is half a step around it and the rounded one", () => {
  // 28.956 rounds to 29; half a step around both is 28.456 to 29.5
  assert.deepEqual(["28.455", "28.456", "29.5", "29.501"].map((one) => holds("@28.956", "1", one)),
    [false, true, true, false]);
  // 0.24 rounds to 0.2; half a step around both is 0.15 to 0.29
  assert.deepEqual(["0.149", "0.15", "0.29", "0.291"].map((one) => holds("@0.24", "0.1", one)),
    [false, true, true, false]);
});

test("a word that follows from a band is its middle, or an end rounded into it", () => {
  assert.equal(page.wordOfBand("117~1", "1", "m", 0), "117");
  assert.equal(page.wordOfBand("117~1", "1", "l", 1), "116.0");
  assert.equal(page.wordOfBand("1/3..2/3", "1", "l", 2), "0.34");
  assert.equal(page.wordOfBand("1/3..2/3", "1", "h", 2), "0.66");
  assert.equal(page.wordOfBand("1/3..2/3", "1", "m", 0), "1");
});
