/* Which questions come, and in which order: due, weak, new, never two of one method in a row. */
import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat, plain } from "./harness.js";

const TODAY = 20000;
const FILES = ["days", "schedule", "progress", "load_questions", "pick_questions"];

/* The state of an objective whose items were last answered so. */
function met(half, day, ticks = "1", since = 1) {
  const items = Object.fromEntries([...ticks].map((tick, place) => ["item" + place, [[day, Number(tick)]]]));
  return { half, day, today: "", since, items };
}

function stocked(objectives = {}) {
  const store = { version: 2, need: null, greeted: true, mistakes: [], objectives };
  const page = guidecoat(FILES, { today: TODAY, stored: { "guidecoat-panel-2": JSON.stringify(store) } });
  assert.deepEqual(plain(page.progress.met()), Object.keys(objectives));
  return page;
}

function entries(names) { return names.map((name) => ({ objective: name, text: name, parts: [name] })); }

function told(slots) { return plain(slots).map((slot) => slot.rank + " " + slot.entry.objective); }

function wanted(page, names, { day = TODAY, need = null } = {}) {
  return told(page.wantedToday(entries(names), day, need));
}

test("due comes first, then weak, then new", () => {
  const page = stocked({ "m/firm": met(64, TODAY - 1), "m/weak": met(8, TODAY - 1, "10"), "m/due": met(4, TODAY - 1) });
  const names = ["m/new", "m/firm", "m/weak", "m/due"];
  assert.deepEqual(wanted(page, names), ["due m/due", "weak m/weak", "new m/new"]);
});

test("a module's own check takes what is firm as well", () => {
  const page = stocked({ "m/firm": met(64, TODAY - 1), "m/due": met(4, TODAY - 1) });
  assert.deepEqual(told(page.wantedOfModule(entries(["m/firm", "m/new", "m/due"]), TODAY, null)),
    ["due m/due", "new m/new", "firm m/firm"]);
});

test("what is least recalled is asked first", () => {
  const page = stocked({ "m/a": met(16, TODAY - 4), "m/b": met(4, TODAY - 9), "m/c": met(64, TODAY - 20) });
  // recall: 2 ** (-4/16) = 0.84, 2 ** (-9/4) = 0.21, 2 ** (-20/64) = 0.81
  assert.deepEqual(wanted(page, ["m/a", "m/b", "m/c"]), ["due m/b", "due m/c", "due m/a"]);
});

test("five new objectives a day at most, and those met today count", () => {
  const names = Array.from({ length: 9 }, (unused, number) => "m/n" + number);
  assert.deepEqual(wanted(stocked(), names), names.slice(0, 5).map((name) => "new " + name));
  const begun = Object.fromEntries(names.slice(0, 3).map((name) => [name, met(4, TODAY, "1", TODAY)]));
  const page = stocked(begun);
  assert.deepEqual(wanted(page, names), ["new m/n3", "new m/n4"]);
  assert.deepEqual(wanted(page, names, { day: TODAY + 1 }),
    [...names.slice(0, 3).map((name) => "due " + name), ...names.slice(3, 8).map((name) => "new " + name)]);
});

test("new objectives of modules already begun come before others", () => {
  const page = stocked({ "later/a": met(64, TODAY - 1) });
  assert.deepEqual(wanted(page, ["first/a", "first/b", "later/a", "later/b"]),
    ["new later/b", "new first/a", "new first/b"]);
});

test("ten objectives at most, and a backlog leaves no room for new ones", () => {
  const late = Array.from({ length: 12 }, (unused, number) => "m/d" + String(number).padStart(2, "0"));
  const page = stocked(Object.fromEntries(late.map((name) => [name, met(4, TODAY - 5)])));
  assert.deepEqual(wanted(page, [...late, "m/new"]), late.slice(0, 10).map((name) => "due " + name));
});

test("a date of need brings what is firm forward", () => {
  const page = stocked({ "m/firm": met(256, TODAY - 10) });
  assert.deepEqual(wanted(page, ["m/firm"]), []);
  assert.deepEqual(wanted(page, ["m/firm"], { need: TODAY + 20 }), ["due m/firm"]);
});

/* The items picked; each is its own method here. */
function picked(page, rank, held) {
  const slots = entries(Object.keys(held)).map((entry) => ({ entry, rank }));
  const questions = (entry) => held[entry.objective].map((item) => ({ id: item, method: item }));
  return plain(page.picked(slots, questions, TODAY)).map((pick) => pick.question.id);
}

test("every objective has one question before any has a second", () => {
  const names = Array.from({ length: 6 }, (unused, number) => "o" + number);
  const held = Object.fromEntries(names.map((name) => ["m/" + name, ["a", "b", "c"].map((end) => name + end)]));
  const found = picked(stocked(), "new", held);
  const counts = names.map((name) => found.filter((item) => item.startsWith(name)).length);
  assert.equal(found.length, 10);
  assert.equal(new Set(found).size, 10);
  assert.equal(Math.min(...counts), 1);
  assert.equal(Math.max(...counts), 2);
});

test("the missed item of an objective is asked before unasked and right ones", () => {
  const state = { ...met(4, TODAY - 3), items: { right: [[TODAY - 9, 1]], missed: [[TODAY - 3, 0]] } };
  assert.deepEqual(picked(stocked({ "m/a": state }), "due", { "m/a": ["right", "unasked", "missed"] }),
    ["missed", "unasked"]);
});

test("a part is asked where something went wrong, else the parts take turns", () => {
  const entry = { objective: "m/a", text: "a", parts: ["a", "k"] };
  const missed = { ...met(4, TODAY), items: { zinc: [[TODAY, 0]] } };
  assert.equal(stocked({ "m/a": missed }).partWanted(entry), "m/a/2");
  assert.equal(stocked().partWanted(entry), "m/a/1");
  assert.equal(stocked({ "m/a": met(4, TODAY) }).partWanted(entry), "m/a/2");
  assert.equal(stocked({ "m/a": met(4, TODAY, "11") }).partWanted(entry), "m/a/1");
});

function row(methods) {
  const picks = [...methods].map((method, place) => ({ question: { method }, place }));
  return plain(stocked().keptApart(picks)).map((pick) => pick.place);
}

test("a row keeps its order where it can and leaves out what cannot be kept apart", () => {
  const cases = {
    abc: [0, 1, 2], aab: [0, 2, 1], aabb: [0, 2, 1, 3], baa: [1, 0, 2], aaab: [0, 3, 1], aaa: [0], "": []
  };
  for (const [methods, places] of Object.entries(cases)) { assert.deepEqual(row(methods), places, methods); }
});

/* Every row of up to seven questions of four methods. */
test("no two neighbors share a method, and nothing is dropped without need", () => {
  const { keptApart } = stocked();
  let rows = [""];
  let seen = 0;
  for (let length = 1; length <= 7; length += 1) {
    rows = rows.flatMap((one) => ["a", "b", "c", "d"].map((method) => one + method));
    for (const methods of rows) {
      const found = keptApart([...methods].map((method, place) => ({ question: { method }, place })));
      const kept = found.map((pick) => pick.question.method);
      assert.ok(kept.every((method, place) => method !== kept[place - 1]), methods);
      assert.equal(new Set(found.map((pick) => pick.place)).size, found.length, methods);
      const most = Math.max(...["a", "b", "c", "d"].map((method) => methods.split(method).length - 1));
      if (most <= (length + 1) / 2) { assert.equal(found.length, length, methods); }
      seen += 1;
    }
  }
  assert.equal(seen, 21844);
});
