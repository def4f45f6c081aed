/* What feedback says: pure functions from an answer's outcome to a sentence. The reasons themselves
   are in the page, written by the author of the question. */
"use strict";

(() => {
  const { counted } = Guidecoat;

  /** @type {(number: string, unit: string) => string} */
  function withUnit(number, unit) { return number + (unit ? "\u00a0" + unit : ""); }

  /** @type {(read: ReadNumber, unit: string) => string} */
  function typed(read, unit) { return withUnit(read.number || "", unit); }

  Guidecoat.feedbackWords = {
    choices(chosen, hits, open) {
      if (!open && hits === chosen) { return "Right, all of them."; }
      const tally = chosen === 1 ? "Your choice is " + (hits ? "right." : "wrong.")
        : hits + " of your " + chosen + " choices " + (hits === 1 ? "is right." : "are right.");
      return tally + (open ? " " + counted(open, "right option is", "right options are") + " still open." : "");
    },

    order(broken) {
      return broken ? counted(broken, "step comes", "steps come") + " too early:"
        : "Right. Every step that must wait does wait.";
    },

    pairs(wrong, total) { return wrong ? total - wrong + " of " + total + " pairs are right." : "Right, every pair."; },

    /* What keeps a number from being marked: its unit is missing where it is asked for, or is none. */
    unitProblem(read, turned, key) {
      if (turned.unknown) {
        return key.symbol ? "“" + turned.unknown + "” is not a unit that this page knows. Try " + key.symbol + "."
          : "Write the number alone, without “" + turned.unknown + "”.";
      }
      if (turned.unlike) {
        return typed(read, turned.unlike.symbol) + " measures something else. " +
          (key.asks_unit || !key.symbol ? "Look at what is asked, and at your unit."
            : "Give the answer in " + key.symbol + ".");
      }
      return key.asks_unit && turned.missing ? "Add the unit after the number." : "";
    },

    /* The number in the unit that was asked for, where it was typed in another one. */
    converted(read, turned, key) {
      if (!turned.from || !turned.value) { return ""; }
      const asked = withUnit(Guidecoat.shortNumber(turned.value), key.symbol);
      return typed(read, turned.from.symbol) + " is " + asked + ".";
    },

    wrongUnit(read, key) {
      return "The number fits, but in " + (key.symbol || "no unit") + ", not in " + read.unit + ".";
    },

    unknownSlip: "Go through the working and find the line where yours goes wrong."
  };
})();
