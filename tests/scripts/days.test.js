import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";

test("a day is said as seen from today", () => {
  const page = guidecoat(["days"], { today: 20000 });
  const words = [19990, 19999, 20000, 20001, 20012].map((day) => page.dayWords(day));
  assert.deepEqual(words, ["10 days ago", "yesterday", "today", "tomorrow", "in 12 days"]);
});

test("today is the day of this device's calendar", () => {
  const now = new Date();
  const expected = Math.round(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86400000);
  assert.ok(Math.abs(guidecoat(["days"]).today() - expected) <= 1);
  assert.ok(Number.isInteger(guidecoat(["days"]).today()));
});
