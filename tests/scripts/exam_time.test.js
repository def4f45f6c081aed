import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";

const page = guidecoat(["exam_time"]);
const MINUTE = 60000;
const BEGAN = 1000 * MINUTE;

function at(minutes) { return BEGAN + minutes * MINUTE; }

test("a minute counts once it has begun", () => {
  const used = [0, 0.001, 1, 1.001, 59.5].map((minutes) => page.minutesUsed(BEGAN, at(minutes)));
  assert.deepEqual(used, [0, 1, 1, 2, 60]);
});

test("an exam that never began used no minutes, nor one whose clock was set back", () => {
  assert.equal(page.minutesUsed(0, at(5)), 0);
  assert.equal(page.minutesUsed(BEGAN, at(-30)), 0);
});

test("a clock set years ahead still gives a number that the file can hold", () => {
  assert.equal(page.minutesUsed(BEGAN, at(1e9)), 99999);
});

test("only minutes beyond the time are over", () => {
  assert.deepEqual([29, 30, 30.2, 45].map((minutes) => page.minutesOver(BEGAN, at(minutes), 30)), [0, 0, 1, 15]);
});

test("the time is up at its last moment, not before", () => {
  assert.equal(page.timeIsUp(BEGAN, at(30) - 1, 30), false);
  assert.equal(page.timeIsUp(BEGAN, at(30), 30), true);
});

test("what is left is told in whole minutes", () => {
  const cases = {
    0: "30 minutes left", 0.5: "30 minutes left", 28.5: "2 minutes left", 29.5: "the last minute",
    30: "1 minute over", 31: "2 minutes over", "-5": "30 minutes left"
  };
  for (const [minutes, words] of Object.entries(cases)) {
    assert.equal(page.timeWords(BEGAN, at(Number(minutes)), 30), words, minutes);
  }
});
