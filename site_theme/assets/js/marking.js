/* Marking one answer: pure functions from the marking data and an answer to a share of the marks.
   Answers have the forms {form: "chosen" | "ordered", letters}, {form: "matched", answers},
   {form: "typed", text} and {form: "awarded", marks}. The rules are those of the marker of papers. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function without(list, other) { return list.filter(function (one) { return other.indexOf(one) < 0; }); }

  function reduced(over, under) {
    var a = Math.abs(over), b = under;
    while (b) { var rest = a % b; a = b; b = rest; }
    return a ? [over / a, under / a] : [0, 1];
  }

  /* Every "first before then" that follows from the pairs, as two letters. */
  function implied(pairs) {
    var known = new Set(pairs.map(function (pair) { return pair.first + pair.then; }));
    var before = -1;
    while (known.size !== before) {
      before = known.size;
      Array.from(known).forEach(function (a) {
        known.forEach(function (b) { if (a[1] === b[0]) { known.add(a[0] + b[1]); } });
      });
    }
    return Array.from(known);
  }

  /* The pairs whose steps both stand there, the wrong way round. */
  function turnedRound(letters, pairs) {
    return pairs.filter(function (pair) {
      var first = letters.indexOf(pair.first), then = letters.indexOf(pair.then);
      return first >= 0 && then >= 0 && first > then;
    });
  }

  var shares = {
    choice: function (data, answer) {
      return answer.letters.length === 1 && data.right.indexOf(answer.letters[0]) >= 0 ? [1, 1] : [0, 1];
    },

    /* Right ones less wrong ones, over all right ones, never below 0. */
    multiple_response: function (data, answer) {
      var missed = without(data.right, answer.letters).length;
      var hits = data.right.length - missed;
      return reduced(Math.max(0, hits - (answer.letters.length - hits)), data.right.length);
    },

    /* The share of all implied precedences kept; a dangerous pair turned round gives 0. */
    order: function (data, answer) {
      var danger = turnedRound(answer.letters, data.pairs).some(function (pair) { return pair.danger; });
      if (danger) { return [0, 1]; }
      var pairs = implied(data.pairs);
      var place = function (letter) {
        var first = answer.letters.indexOf(letter);
        return answer.letters.lastIndexOf(letter) === first ? first : -1;
      };
      var kept = pairs.filter(function (pair) {
        return place(pair[0]) >= 0 && place(pair[1]) >= 0 && place(pair[0]) < place(pair[1]);
      }).length;
      var tied = pairs.join("");
      var loose = data.steps.split("").filter(function (letter) {
        return tied.indexOf(letter) < 0 && place(letter) < 0;
      }).length;
      return pairs.length + loose ? reduced(kept, pairs.length + loose) : [1, 1];
    },

    match: function (data, answer) {
      var numbers = Object.keys(data.answers);
      return reduced(numbers.length - wrongPairs(data, answer).length, numbers.length);
    },

    numeric: function (data, answer) {
      var read = Guidecoat.readNumber(answer.text);
      var turned = read.problem ? read : Guidecoat.inAskedUnit(read, data);
      return turned.value && Guidecoat.inBand(turned.value, Guidecoat.bandOf(data.band)) ? [1, 1] : [0, 1];
    },

    written: function (data, answer) {
      function sum(list) { return list.reduce(function (a, b) { return a + b; }, 0); }
      return reduced(sum(answer.marks), sum(data.marks));
    }
  };

  function wrongPairs(data, answer) {
    return Object.keys(data.answers).filter(function (number) {
      return answer.answers[number] !== data.answers[number];
    });
  }

  /* Give the share of the marks as [numerator, denominator] in lowest terms. */
  Guidecoat.share = function (data, answer) {
    if (answer.form === "blank" || answer.form === "illegible") { return [0, 1]; }
    return shares[data.kind](data, answer);
  };

  Guidecoat.isRight = function (share) { return share[0] === share[1]; };

  Guidecoat.turnedRound = turnedRound;
  Guidecoat.wrongPairs = wrongPairs;

  /* The place of the first known wrong way that a value fits, or -1. */
  Guidecoat.slipOf = function (value, data) {
    return data.slips.findIndex(function (slip) {
      return Guidecoat.inBand(value, Guidecoat.bandOf(slip, data.step));
    });
  };
})();
