import assert from "node:assert/strict";
import test from "node:test";
import { load, page, plain } from "./harness.js";

const KEY = "guidecoat-panel-2";
const TODAY = 20000;

function opened(stored = {}) {
  const context = page({ stored });
  const made = load(context, ["elements", "days", "schedule"]);
  made.today = () => TODAY;
  load(context, ["progress"]);
  return { context, progress: made.progress };
}

const SLIP = { asked: "How thick?", given: "42", why: "Wet film is thicker." };

test("the first try of the day is kept, and announced to whoever draws it", () => {
  const { context, progress } = opened();
  let heard = 0;
  context.addEventListener("progress", () => { heard += 1; });
  progress.record("film/wet", "target", true);
  assert.equal(heard, 1);
  assert.deepEqual(plain(progress.of("film/wet")), { right: 1, wrong: 0 });
  assert.deepEqual(plain(progress.tries("film/wet", "target")), [[TODAY, 1]]);
  const stored = JSON.parse(context.localStorage.getItem(KEY));
  assert.deepEqual(stored.objectives["film/wet"].items, { target: [[TODAY, 1]] });
});

test("the store draws nothing itself: it needs no panel", () => {
  const { progress } = opened();
  progress.record("film/wet", "target", false, SLIP);
  assert.equal(plain(progress.mistakes())[0].given, "42");
});

test("a mistake leaves the list once its question is answered right", () => {
  const { progress } = opened();
  progress.record("film/wet", "target", false, SLIP);
  progress.record("film/wet", "target", true);
  assert.deepEqual(plain(progress.mistakes()), []);
  assert.equal(progress.wasRight("film/wet", "target"), true);
});

test("what another window stored is taken over and announced; anything else is left alone", () => {
  const { context, progress } = opened();
  let heard = 0;
  context.addEventListener("progress", () => { heard += 1; });
  const other = opened().progress;
  other.record("film/wet", "target", true);
  context.dispatchEvent({ type: "storage", key: KEY, newValue: other.asText() });
  assert.deepEqual(plain(progress.met()), ["film/wet"]);
  context.dispatchEvent({ type: "storage", key: KEY, newValue: "{}" });
  context.dispatchEvent({ type: "storage", key: "another", newValue: other.asText() });
  assert.deepEqual(plain(progress.met()), ["film/wet"]);
  assert.equal(heard, 1);
});

test("a panel that cannot be read is set aside, not lost", () => {
  const { context, progress } = opened({ [KEY]: "{" });
  assert.deepEqual(plain(progress.met()), []);
  assert.match(progress.note(), /set aside/);
  assert.equal(context.localStorage.getItem("guidecoat-panel-set-aside"), "{");
});

test("an older panel is taken over as answered today", () => {
  const { context, progress } = opened({ "guidecoat-panel-1": '{"version":1,"objectives":{"a/b":{"x":1,"y":0}}}' });
  assert.deepEqual(plain(progress.of("a/b")), { right: 1, wrong: 1 });
  assert.equal(progress.greeted(), true);
  assert.equal(context.localStorage.getItem("guidecoat-panel-1"), null);
});
