/* The time of a form: pure sums with moments in milliseconds, and words for what is left. */
"use strict";

(() => {
  const MINUTE = 60000;
  const MOST = 99999;

  /* Whole minutes from one moment to another; a minute counts once it has begun. */
  Guidecoat.minutesUsed = (began, ended) =>
    began ? Math.min(MOST, Math.max(0, Math.ceil((ended - began) / MINUTE))) : 0;

  Guidecoat.minutesOver = (began, ended, minutes) => Math.max(0, Guidecoat.minutesUsed(began, ended) - minutes);

  Guidecoat.timeIsUp = (began, now, minutes) => now - began >= minutes * MINUTE;

  Guidecoat.timeWords = (began, now, minutes) => {
    const passed = Math.max(0, now - began) / MINUTE;
    if (passed >= minutes) {
      return Guidecoat.counted(Math.floor(passed - minutes) + 1, "minute", "minutes") + " over";
    }
    const left = Math.ceil(minutes - passed);
    return left === 1 ? "the last minute" : left + " minutes left";
  };
})();
