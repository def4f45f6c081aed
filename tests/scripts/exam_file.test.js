import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";

const page = guidecoat(["exam_time", "exam_file"]);

test("the file says what was answered, to which form, by whom, and in what time", () => {
  const form = { id: "3f6a9c21", label: "3-A", edition: "e1", minutes: 30 };
  const responses = { 1: { form: "chosen", letters: ["B"] } };
  const state = { person: "Apprentice 01", responses, written: { 2: "Sand it." }, began: 60000, ended: 60000 * 34 };
  assert.deepEqual(JSON.parse(page.answersText(form, state)), {
    kind: "guidecoat answers", version: 1, form_id: "3f6a9c21", label: "3-A", edition: "e1",
    person: "Apprentice 01", responses, written: { 2: "Sand it." }, minutes_used: 33, minutes_over: 3
  });
  assert.equal(page.answersName(form), "answers-3f6a9c21.json");
});
