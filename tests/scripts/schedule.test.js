/* Half-lives and due days, against values worked out by hand.

   Half-life model: recall = 2 ** (-days / half-life). Ours starts at 2 days; the first right answer of
   a day doubles it, the first wrong one leaves a third and at least half a day, a right one after a
   wrong one on the same day gives 1.3. Due: the nearest whole day to where recall falls to 85 %. */
import assert from "node:assert/strict";
import test from "node:test";
import { guidecoat } from "./harness.js";

const { schedule } = guidecoat(["schedule"]);

function halves(answers, start) {
  let state = start;
  return answers.map(([day, right]) => {
    state = schedule.answered(state, right, day);
    return state.half;
  });
}

function days(from, to, right) {
  return Array.from({ length: to - from + 1 }, (unused, number) => [from + number, right]);
}

test("right answers on new days double from two days up to 256", () => {
  assert.deepEqual(halves(days(10, 18, true)), [4, 8, 16, 32, 64, 128, 256, 256, 256]);
});

test("wrong answers on new days leave a third and never less than half a day", () => {
  const start = { half: 16, day: 1, today: "right", since: 1 };
  assert.deepEqual(halves(days(2, 6, false), start), [5.3333, 1.7778, 0.5926, 0.5, 0.5]);
});

test("a day counts once each way", () => {
  const cases = [
    [[true, true, true], [4, 4, 4]],
    [[false, false], [0.6667, 0.6667]],
    [[true, false], [4, 1.3333]],
    [[false, true], [0.6667, 0.8667]],
    [[false, true, true, false, true], [0.6667, 0.8667, 0.8667, 0.8667, 0.8667]]
  ];
  for (const [ticks, expected] of cases) {
    assert.deepEqual(halves(ticks.map((tick) => [7, tick])), expected, String(ticks));
  }
});

test("a missed objective starts again the day after", () => {
  const answers = [[1, true], [2, true], [4, false], [4, true], [5, true]];
  // 2 x 2, x 2, / 3, x 1.3, x 2
  assert.deepEqual(halves(answers), [4, 8, 2.6667, 3.4667, 6.9334]);
});

test("due days are rounded to the nearest day, one at least", () => {
  const cases = [[0.5, 1], [2, 1], [4, 1], [8, 2], [16, 4], [32, 8], [64, 15], [128, 30], [256, 60]];
  for (const [half, gap] of cases) {
    assert.equal(gap, Math.max(1, Math.floor(half * Math.log2(1 / 0.85) + 0.5)));
    assert.equal(schedule.gap(half), gap, String(half));
  }
});

/* Settles and Meeder, ACL 2016: the half-life model. */
test("recall halves with every half-life", () => {
  for (const [passed, half, recall] of [[3, 4, 0.594604], [7, 10, 0.615572], [14, 30, 0.723635]]) {
    assert.ok(Math.abs(schedule.recall({ half, day: 100 }, 100 + passed) - recall) < 5e-7);
  }
});

test("a date of need cuts the wait to a fifth of what is left", () => {
  for (const [need, due] of [[null, 160], [150, 110], [400, 160], [104, 101], [102, 101], [100, 160]]) {
    assert.equal(schedule.dueDay({ half: 256, day: 100 }, need), due, String(need));
  }
});

test("everything is due before the date of need", () => {
  let seen = 0;
  for (let half = 0.5; half <= 256; half *= 1.37) {
    for (let left = 2; left <= 2000; left += 1 + Math.floor(left / 7)) {
      const due = schedule.dueDay({ half, day: 100 }, 100 + left);
      assert.ok(due > 100 && due < 100 + left, `${half} ${left} ${due}`);
      seen += 1;
    }
  }
  assert.ok(seen > 500);
});

function isDue(last, today, need = null) { return schedule.isDue({ half: 16, day: last }, today, need); }

test("it is due from its day on and not before", () => {
  assert.deepEqual([100, 103, 104, 105, 900].map((day) => isDue(100, day)), [false, false, true, true, true]);
});

test("a date of need that has passed changes nothing", () => {
  assert.equal(isDue(100, 103, 103), false);
  assert.equal(isDue(100, 103, 104), true);
});

test("an answer from a day that lies ahead is due, because a clock was wrong", () => {
  assert.equal(isDue(900, 100), true);
});
