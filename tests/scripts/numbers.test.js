import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";
import { needsShared, shared } from "./shared.js";

const page = guidecoat(["numbers"]);

function reduced(over, under) {
  let [a, b] = [over < 0n ? -over : over, under];
  while (b) { [a, b] = [b, a % b]; }
  return under / a === 1n ? String(over / a) : `${over / a}/${under / a}`;
}

function read(text) {
  const found = page.readNumber(text);
  return found.problem ? null : [reduced(found.value.over, found.value.under), found.unit];
}

test("numbers are read with point, comma, fraction, glyph, sign and unit", () => {
  const expected = {
    "12.5": ["25/2", ""], "12,5": ["25/2", ""], "1 1/2": ["3/2", ""], "½": ["1/2", ""], "1½ mil": ["3/2", "mil"],
    "-3": ["-3", ""], "\u22123,25 °C": ["-13/4", "°C"], ".5": ["1/2", ""], " 117\u00a0µm ": ["117", "µm"]
  };
  for (const [text, found] of Object.entries(expected)) { assert.deepEqual(read(text), found, text); }
});

test("what can be read two ways, or not at all, is refused in words", () => {
  const expected = {
    "": /Type a number first/, "1,170": /two ways/, "1.2.3": /two ways/, "117/0": /divides by zero/,
    thick: /cannot be read/, "117 118": /cannot be read/, ["1".repeat(61)]: /cannot be read/
  };
  for (const [text, problem] of Object.entries(expected)) {
    assert.match(page.readNumber(text).problem, problem, text);
  }
});

test("every shared text is read as the marker of papers reads it", needsShared, () => {
  const texts = shared("numbers");
  assert.ok(texts.filter((one) => one.read).length > 500);
  assert.ok(texts.filter((one) => !one.read).length > 500);
  assert.deepEqual(texts.filter((one) => JSON.stringify(read(one.text)) !== JSON.stringify(one.read)), []);
});

test("a band takes decimals, fractions and open ends, and both ends pass", () => {
  const value = page.exact("385/3");
  const bands = [["385/3", "386/3", true], ["0.1", null, true], [null, "128.33", false], ["-2", "-1", false]];
  for (const [low, high, inside] of bands) {
    assert.equal(page.inBand(value, { low, high }), inside, `${low} ${high}`);
  }
  assert.equal(page.inBand(value, { low: null, high: "385/3" }), true);
});

test("long decimals are compared exactly", () => {
  const low = "0.1000000000000000000000000001";
  assert.equal(page.inBand(page.exact("0.1"), { low, high: null }), false);
  assert.equal(page.inBand(page.exact(low), { low, high: low }), true);
});

test("a value is shown in five figures", () => {
  assert.deepEqual(["1/3", "117000", "2.50"].map((text) => page.shortNumber(page.exact(text))),
    ["0.33333", "117000", "2.5"]);
});
