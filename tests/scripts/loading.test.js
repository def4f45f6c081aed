/* The order in which the scripts are loaded, and what they need of one another. */
import assert from "node:assert/strict";
import test from "node:test";
import { readdirSync } from "node:fs";
import { SCRIPTS } from "./harness.js";
import { loaded, round, written } from "./members.js";
import { needsShared, shared } from "./shared.js";

// made by the generator, not by a file of the theme
const GENERATED = ["units", "patterns", "wholeIndex"];
const PRESENT = {
  course: [], search: [".search-form"], exam: ["*"],
  "one file": [".one-file", "main", ".one-page", ".all-parts"]
};
const FILES = readdirSync(SCRIPTS).map((name) => name.replace(/\.js$/, "")).sort();

for (const name of Object.keys(PRESENT)) {
  test(`every file of the bundle "${name}" is loaded after what it needs while it is loaded`, needsShared, () => {
    const files = shared("bundles")[name];
    assert.equal(new Set(files).size, files.length);
    const taken = loaded(files, PRESENT[name]);
    assert.ok(taken.length > 4);
    assert.deepEqual(taken.filter((one) => !one.from), []);
  });

  test(`the bundle "${name}" holds all that its files use at any time`, needsShared, () => {
    const files = shared("bundles")[name].map(written);
    const made = new Set(files.flatMap((one) => [...one.makes]));
    const missing = files.flatMap((one) => [...one.uses]).filter((member) => !made.has(member));
    assert.deepEqual(missing.filter((member) => !GENERATED.includes(member)), []);
  });
}

test("a file that is loaded too early is found out", needsShared, () => {
  const files = shared("bundles").course;
  const early = ["answering", ...files.filter((file) => file !== "answering" && file !== "elements")];
  const taken = loaded(["elements", ...early], []);
  assert.ok(taken.some((one) => one.file === "answering" && one.name === "feedback" && !one.from));
});

test("every file is loaded by some page", needsShared, () => {
  const listed = new Set(Object.values(shared("bundles")).flat());
  assert.deepEqual(FILES.filter((file) => !listed.has(file)), []);
  assert.deepEqual([...listed].filter((file) => !FILES.includes(file)), []);
});

test("no two files make the same member", () => {
  const makers = new Map();
  for (const file of FILES) {
    for (const member of written(file).makes) { makers.set(member, [...makers.get(member) || [], file]); }
  }
  assert.ok(makers.size > 50);
  assert.deepEqual([...makers].filter(([, files]) => files.length > 1), []);
});

test("no files need one another in a round", () => {
  const makers = new Map(FILES.flatMap((file) => [...written(file).makes].map((member) => [member, file])));
  const needs = new Map(FILES.map((file) => {
    const uses = [...written(file).uses].filter((member) => makers.has(member));
    return [file, new Set(uses.map((member) => makers.get(member)))];
  }));
  assert.ok([...needs.values()].reduce((sum, files) => sum + files.size, 0) > 40);
  assert.deepEqual(round(needs), []);
});

test("a round would be found", () => {
  const needs = new Map([["a", ["b"]], ["b", ["c"]], ["c", ["b"]]]);
  assert.deepEqual(round(needs), ["b", "c", "b"]);
});
