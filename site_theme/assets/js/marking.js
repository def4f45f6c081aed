/* Marking one answer: pure functions from an answer and the marking data to a verdict.
   A verdict is {right, says: [anchors of reasons], ...}; the words stay in the page. */
"use strict";
var Guidecoat = window.Guidecoat || {};

Guidecoat.marks = {
  choice: function (chosen, data) {
    return { right: chosen.length === 1 && data.right.indexOf(chosen[0]) >= 0, show: chosen };
  },

  multiple_response: function (chosen, data) {
    var hits = chosen.filter(function (letter) { return data.right.indexOf(letter) >= 0; });
    return {
      right: hits.length === data.right.length && chosen.length === hits.length,
      show: chosen,
      hits: hits.length,
      missing: data.right.length - hits.length
    };
  },

  /* Any order that keeps every pair is right. */
  order: function (letters, data) {
    var broken = data.pairs.filter(function (pair) {
      return letters.indexOf(pair.first) > letters.indexOf(pair.then);
    });
    return { right: broken.length === 0, broken: broken };
  },

  match: function (chosen, data) {
    var wrong = Object.keys(data.answers).filter(function (number) {
      return chosen[number] !== data.answers[number];
    });
    return { right: wrong.length === 0, wrong: wrong, total: Object.keys(data.answers).length };
  },

  /* The slip is the place of the first known wrong way that the value fits, or -1. */
  numeric: function (value, key) {
    if (Guidecoat.inBand(value, key)) { return { right: true, slip: -1 }; }
    return { right: false, slip: key.slips.findIndex(function (slip) { return Guidecoat.inBand(value, slip); }) };
  }
};
