/* Marking one answer: pure functions from the marking data and an answer to a share of the marks.
   Answers have the forms {form: "chosen" | "ordered", letters}, {form: "matched", answers},
   {form: "typed", text} and {form: "awarded", marks}. The rules are those of the marker of papers. */
"use strict";

(() => {
  /** @type {(list: string[], other: string[]) => string[]} */
  function without(list, other) { return list.filter((one) => !other.includes(one)); }

  /** @type {(over: number, under: number) => Share} */
  function reduced(over, under) {
    let a = Math.abs(over);
    let b = under;
    while (b) { const rest = a % b; a = b; b = rest; }
    return a ? [over / a, under / a] : [0, 1];
  }

  /* Every "first before then" that follows from the pairs, as two letters. */
  /** @type {(pairs: Pair[]) => string[]} */
  function implied(pairs) {
    const known = new Set(pairs.map((pair) => pair.first + pair.then));
    let before = -1;
    while (known.size !== before) {
      before = known.size;
      [...known].forEach((a) => {
        known.forEach((b) => { if (a[1] === b[0]) { known.add(a[0] + b[1]); } });
      });
    }
    return [...known];
  }

  /* The pairs whose steps both stand there, the wrong way round. */
  /** @type {(letters: string[], pairs: Pair[]) => Pair[]} */
  function turnedRound(letters, pairs) {
    return pairs.filter((pair) => {
      const first = letters.indexOf(pair.first);
      const then = letters.indexOf(pair.then);
      return first >= 0 && then >= 0 && first > then;
    });
  }

  const shares = {
    /** @type {(data: MarkingOf<"choice">, answer: Chosen) => Share} */
    choice(data, answer) {
      return answer.letters.length === 1 && data.right.includes(answer.letters[0]) ? [1, 1] : [0, 1];
    },

    /* Right ones less wrong ones, over all right ones, never below 0. */
    /** @type {(data: MarkingOf<"multiple_response">, answer: Chosen) => Share} */
    multiple_response(data, answer) {
      const missed = without(data.right, answer.letters).length;
      const hits = data.right.length - missed;
      return reduced(Math.max(0, hits - (answer.letters.length - hits)), data.right.length);
    },

    /* The share of all implied precedences kept; a dangerous pair turned round gives 0. */
    /** @type {(data: MarkingOf<"order">, answer: Ordered) => Share} */
    order(data, answer) {
      const danger = turnedRound(answer.letters, data.pairs).some((pair) => pair.danger);
      if (danger) { return [0, 1]; }
      const pairs = implied(data.pairs);
      /** @type {(letter: string) => number} */
      const place = (letter) => {
        const first = answer.letters.indexOf(letter);
        return answer.letters.lastIndexOf(letter) === first ? first : -1;
      };
      /** @type {(pair: string) => boolean} */
      const isKept = (pair) => place(pair[0]) >= 0 && place(pair[1]) >= 0 && place(pair[0]) < place(pair[1]);
      const kept = pairs.filter(isKept).length;
      const tied = pairs.join("");
      const loose = data.steps.split("").filter((letter) => !tied.includes(letter) && place(letter) < 0).length;
      return pairs.length + loose ? reduced(kept, pairs.length + loose) : [1, 1];
    },

    /** @type {(data: MarkingOf<"match">, answer: Matched) => Share} */
    match(data, answer) {
      const numbers = Object.keys(data.answers);
      return reduced(numbers.length - wrongPairs(data, answer).length, numbers.length);
    },

    /** @type {(data: MarkingOf<"numeric">, answer: Typed) => Share} */
    numeric(data, answer) { return Guidecoat.markNumber(answer.text, data).right ? [1, 1] : [0, 1]; },

    /** @type {(data: MarkingOf<"written">, answer: Awarded) => Share} */
    written(data, answer) {
      /** @type {(list: number[]) => number} */
      function sum(list) { return list.reduce((a, b) => a + b, 0); }
      return reduced(sum(answer.marks), sum(data.marks));
    }
  };

  /** @type {(data: MarkingOf<"match">, answer: Matched) => string[]} */
  function wrongPairs(data, answer) {
    return Object.keys(data.answers).filter((number) => answer.answers[number] !== data.answers[number]);
  }

  /* Give the share of the marks as [numerator, denominator] in lowest terms. */
  Guidecoat.share = (data, answer) => {
    if (answer.form === "blank" || answer.form === "illegible") { return [0, 1]; }
    const share = /** @type {Record<string, (data: Marking, answer: Answer) => Share>} */ (shares)[data.kind];
    return share(data, answer);
  };

  Guidecoat.isRight = (share) => share[0] === share[1];

  Guidecoat.turnedRound = turnedRound;
  Guidecoat.wrongPairs = wrongPairs;

  /* What a typed number comes to: {read, turned, right, wrongUnit, slip}. `turned` is the number in
     the asked unit; `wrongUnit` says that it would be right there; `slip` is the place of the first
     known wrong way that it fits, or -1. */
  Guidecoat.markNumber = (text, data) => {
    const read = Guidecoat.readNumber(text);
    /** @type {Turned} */
    const turned = read.problem ? read : Guidecoat.inAskedUnit(read, data);
    const found = { read, turned, right: false, wrongUnit: false, slip: -1 };
    const { value } = turned;
    if (!value || !read.value) { return found; }
    const band = Guidecoat.bandOf(data.band);
    found.right = Guidecoat.inBand(value, band);
    found.wrongUnit = !found.right && Boolean(turned.from) && Guidecoat.inBand(read.value, band);
    if (!found.right) {
      found.slip = data.slips.findIndex((slip) => Guidecoat.inBand(value, Guidecoat.bandOf(slip, data.step)));
    }
    return found;
  };
})();
