/* Accepted bands as a page is sent them, in short, and the words of a question that follow from one. */
"use strict";

(() => {
  /** @type {(over: bigint, under: bigint) => string} */
  function written(over, under) { return over + "/" + under; }

  /* Half a step around a number and the one it rounds to. */
  /** @type {(exact: Fraction, step: Fraction) => Band} */
  function around(exact, step) {
    const steps = (2n * exact.over * step.under + exact.under * step.over) / (2n * exact.under * step.over);
    const nearest = { over: steps * step.over, under: step.under };
    const isLess = exact.over * nearest.under < nearest.over * exact.under;
    const [less, more] = isLess ? [exact, nearest] : [nearest, exact];
    return {
      low: written(2n * less.over * step.under - step.over * less.under, 2n * less.under * step.under),
      high: written(2n * more.over * step.under + step.over * more.under, 2n * more.under * step.under)
    };
  }

  /* Read a band: "12.5~0.5" is a middle and half the width, "3..385/3" has two ends, an empty end is
     open, and "@28.956" is what rounds to the same step. */
  Guidecoat.bandOf = (text, step) => {
    if (text.startsWith("@")) { return around(Guidecoat.exact(text.slice(1)), Guidecoat.exact(step || "")); }
    const ends = text.split("..");
    if (ends.length === 2) { return { low: ends[0] || null, high: ends[1] || null }; }
    const [middle, half] = text.split("~").map((part) => Guidecoat.exact(part));
    const under = middle.under * half.under;
    const over = middle.over * half.under;
    const by = half.over * middle.under;
    return { low: written(over - by, under), high: written(over + by, under) };
  };

  /* A value as a whole number of its last decimal place: half up (m), up (l) or down (h). */
  /** @type {(value: Fraction, end: string, places: number) => bigint} */
  function rounded(value, end, places) {
    const over = value.over * 10n ** BigInt(places);
    if (end === "m") { return (2n * over + value.under) / (2n * value.under); }
    return end === "l" ? (over + value.under - 1n) / value.under : over / value.under;
  }

  /* Write the middle of a band rounded half up (m), its low end rounded up (l) or its high end
     rounded down (h), to so many decimals. The band has both ends, and neither is below 0. */
  Guidecoat.wordOfBand = (text, step, end, places) => {
    const band = Guidecoat.bandOf(text, step);
    const low = Guidecoat.exact(band.low || "");
    const high = Guidecoat.exact(band.high || "");
    const middle = { over: low.over * high.under + high.over * low.under, under: 2n * low.under * high.under };
    const value = /** @type {Record<string, Fraction>} */ ({ m: middle, l: low, h: high })[end];
    const digits = String(rounded(value, end, places)).padStart(places + 1, "0");
    return places ? digits.slice(0, -places) + "." + digits.slice(-places) : digits;
  };
})();
