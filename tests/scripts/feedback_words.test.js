import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";
import { needsShared, units } from "./shared.js";

const page = guidecoat(["numbers", "unit_words", "feedback_words"], { units });
const say = page.feedbackWords;

test("choices are counted, and what is still open with them", () => {
  assert.equal(say.choices(2, 2, 0), "Right, all of them.");
  assert.equal(say.choices(3, 2, 0), "2 of your 3 choices are right.");
  assert.equal(say.choices(2, 1, 2), "1 of your 2 choices is right. 2 right options are still open.");
  assert.equal(say.choices(1, 1, 1), "Your choice is right. 1 right option is still open.");
  assert.equal(say.choices(1, 0, 2), "Your choice is wrong. 2 right options are still open.");
});

test("orders and pairs are counted", () => {
  assert.equal(say.order(0), "Right. Every step that must wait does wait.");
  assert.equal(say.order(1), "1 step comes too early:");
  assert.equal(say.order(2), "2 steps come too early:");
  assert.equal(say.pairs(0, 4), "Right, every pair.");
  assert.equal(say.pairs(1, 4), "3 of 4 pairs are right.");
});

const KEY = { unit: "um", symbol: "µm", band: "1..2", step: "1", slips: [] };

function outcome(text, key) {
  const read = page.readNumber(text);
  return [read, page.inAskedUnit(read, key), key];
}

function problem(text, key) { return say.unitProblem(...outcome(text, key)).replaceAll("\u00a0", " "); }

test("a unit that keeps a number from being marked is told, with what to write", needsShared, () => {
  assert.equal(problem("117 spans", KEY), "“spans” is not a unit that this page knows. Try µm.");
  assert.equal(problem("117 g", KEY), "117 g measures something else. Give the answer in µm.");
  assert.equal(problem("117 g", { ...KEY, asks_unit: true }),
    "117 g measures something else. Look at what is asked, and at your unit.");
  assert.equal(problem("3 coats", { ...KEY, unit: "1", symbol: "" }), "Write the number alone, without “coats”.");
});

test("a missing unit is asked for where the question asks for it, and nowhere else", needsShared, () => {
  assert.equal(problem("117", { ...KEY, asks_unit: true }), "Add the unit after the number.");
  assert.equal(problem("117", KEY), "");
  assert.equal(problem("117 µm", { ...KEY, asks_unit: true }), "");
});

test("a converted number is told in both units, and only then", needsShared, () => {
  assert.equal(say.converted(...outcome("0,0117 cm", KEY)).replaceAll("\u00a0", " "), "0,0117 cm is 117 µm.");
  assert.equal(say.converted(...outcome("117 µm", KEY)), "");
  assert.equal(say.converted(...outcome("117", KEY)), "");
});
