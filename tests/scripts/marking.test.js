import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat, plain } from "./harness.js";
import { needsShared, shared, units } from "./shared.js";

const page = guidecoat(["numbers", "bands", "unit_words", "marking"], { units });

// closure of the pairs, worked by hand: P before Q, R, S, T; Q and R before S and T; S before T
const PAIRS = ["PQ", "PR", "QS", "RS", "ST"];

function order(danger = "") {
  const pairs = PAIRS.map((pair) => ({ first: pair[0], then: pair[1], danger: pair === danger }));
  return { kind: "order", steps: "PQRST", pairs };
}

function ordered(letters) { return { form: "ordered", letters: [...letters] }; }

function chosen(letters) { return { form: "chosen", letters: [...letters] }; }

function share(data, answer) { return page.share(data, answer).join("/"); }

test("every shared vector earns the share that the marker of papers gives", needsShared, () => {
  const vectors = shared("vectors");
  assert.ok(vectors.length >= 2000);
  const differ = vectors.filter((one) => share(one.data, one.answer) !== one.share.join("/"));
  assert.deepEqual(differ, []);
});

test("an order earns the share of the precedences that it keeps", () => {
  const expected = {
    PQRST: "1/1", PRQST: "1/1", PQSRT: "8/9", TPQRS: "5/9", TSRQP: "0/1", PQRS: "5/9", PQRSTT: "5/9"
  };
  for (const [letters, earned] of Object.entries(expected)) {
    assert.equal(share(order(), ordered(letters)), earned, letters);
  }
});

test("a dangerous pair turned round takes everything", () => {
  assert.equal(share(order("RS"), ordered("PQSRT")), "0/1");
  assert.equal(share(order("RS"), ordered("PRQST")), "1/1");
});

test("the pairs turned round are told, and steps left out turn none round", () => {
  assert.deepEqual(plain(page.turnedRound([..."SRPQ"], order().pairs)).map((pair) => pair.first + pair.then),
    ["PR", "QS", "RS"]);
  assert.deepEqual(plain(page.turnedRound([..."ST"], order().pairs)), []);
});

test("several choices earn right less wrong, and never less than nothing", () => {
  const data = { kind: "multiple_response", right: ["A", "C"] };
  const expected = { AC: "1/1", A: "1/2", ACD: "1/2", AB: "0/1", ABCDE: "0/1", BD: "0/1" };
  for (const [letters, earned] of Object.entries(expected)) {
    assert.equal(share(data, chosen(letters)), earned, letters);
  }
});

test("one choice is right, and no two of them", () => {
  const data = { kind: "choice", right: ["B"] };
  assert.deepEqual(["B", "A", "AB", ""].map((letters) => share(data, chosen(letters))), ["1/1", "0/1", "0/1", "0/1"]);
});

test("pairs earn their share and the wrong ones are named", () => {
  const data = { kind: "match", answers: { 1: "B", 2: "A", 3: "C" } };
  const answer = { form: "matched", answers: { 1: "B", 2: "C", 3: "C" } };
  assert.equal(share(data, answer), "2/3");
  assert.deepEqual(plain(page.wrongPairs(data, answer)), ["2"]);
});

test("a blank or illegible answer earns nothing", () => {
  for (const form of ["blank", "illegible"]) { assert.equal(share(order(), { form }), "0/1"); }
});

const KEY = {
  kind: "numeric", unit: "um", symbol: "µm", band: "117~1", step: "1",
  slips: ["42~0.5", "42.."]
};

function mark(text) {
  const { right, wrongUnit, slip } = page.markNumber(text, KEY);
  return { right, wrongUnit, slip };
}

test("a number is right in its band, in any unit that converts", needsShared, () => {
  for (const text of ["117", "116", "118", "117 µm", "0.117 mm", "0,0117 cm"]) {
    assert.deepEqual(mark(text), { right: true, wrongUnit: false, slip: -1 }, text);
  }
  assert.equal(mark("115.999").right, false);
  assert.equal(mark("118,0001").right, false);
});

test("the right number in a wrong unit is told from a wrong number", needsShared, () => {
  assert.deepEqual(mark("117 mm"), { right: false, wrongUnit: true, slip: 1 });
});

test("the first known slip is found, in another unit too", needsShared, () => {
  assert.equal(mark("42").slip, 0);
  assert.equal(mark("0.042 mm").slip, 0);
  assert.equal(mark("90").slip, 1);
  assert.equal(mark("3").slip, -1);
});

test("what cannot be read or converted is not right and fits no slip", needsShared, () => {
  for (const text of ["", "thick", "117 g", "117 spans"]) {
    assert.deepEqual(mark(text), { right: false, wrongUnit: false, slip: -1 }, text);
  }
});
