import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat, plain } from "./harness.js";

const { words, stem, indexed, ask } = guidecoat(["search_index"]).searchIndex;
const ENTRIES = [
  { title: "Fish-eye", names: "cratering", text: "Small round holes, often from silicone." },
  { title: "Solvent pop", names: "boil", text: "Bubbles where solvent was trapped." },
  { title: "Spray gun", names: "", text: "Check the pressure at the inlet. Popping has other causes." },
  { title: "Runs", names: "sags", text: "Too much wet film." }
];
const NAMES = [["solvent pop", "boil"], ["runs", "sags"]];
const index = indexed(ENTRIES);

function asked(text) { return plain(ask(index, NAMES, text)); }

test("words are small letters and digits without accents", () => {
  assert.deepEqual(plain(words("Déjà 40 µm, Fish-eye!")), ["deja", "40", "μm", "fish", "eye"]);
});

test("forms of one word have one stem", () => {
  for (const [one, other] of [["popping", "pops"], ["popped", "pop"], ["sanded", "sanding"], ["boxes", "box"],
    ["bodies", "body"], ["primer", "primers"], ["cures", "curing"], ["mixes", "mixed"]]) {
    assert.equal(stem(one), stem(other), `${one} ${other}`);
  }
});

test("words that are not one keep their own stems", () => {
  const stems = ["sand", "sag", "mix", "mist", "prime", "paint", "panel", "pass", "paste", "filler", "gun", "glass"]
    .map((word) => stem(word));
  assert.equal(new Set(stems).size, stems.length);
});

test("a title outweighs the text around it", () => {
  assert.deepEqual(asked("popping").entries, [1, 2]);
});

test("another name finds what is called otherwise", () => {
  assert.equal(asked("boil").entries[0], 1);
  assert.deepEqual(asked("sags").entries, [3]);
});

test("words written apart or together are found", () => {
  assert.deepEqual(asked("fisheye").entries, [0]);
  assert.deepEqual(asked("fish eye").entries, [0]);
  assert.deepEqual(asked("spraygun").entries, [2]);
});

test("a slip of the thumb is guessed, and told", () => {
  const found = asked("solvemt");
  assert.deepEqual(found.entries, [1]);
  assert.deepEqual(found.guesses, [{ typed: "solvemt", words: ["solvent"] }]);
});

test("small words do not count, and words that are nowhere find nothing", () => {
  assert.deepEqual(asked("what is the spray gun").entries, asked("spray gun").entries);
  assert.deepEqual(asked("zzzzzz").entries, []);
});

test("where no entry has all words, most of them will do, and it is told", () => {
  const found = asked("silicone holes qwertyuiop");
  assert.deepEqual(found.entries, [0]);
  assert.equal(found.all, false);
  assert.equal(asked("silicone holes").all, true);
});
