/* The time of a form: pure sums with moments in milliseconds, and words for what is left. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var MINUTE = 60000, MOST = 99999;

  /* Whole minutes from one moment to another; a minute counts once it has begun. */
  Guidecoat.minutesUsed = function (began, ended) {
    return began ? Math.min(MOST, Math.max(0, Math.ceil((ended - began) / MINUTE))) : 0;
  };

  Guidecoat.minutesOver = function (began, ended, minutes) {
    return Math.max(0, Guidecoat.minutesUsed(began, ended) - minutes);
  };

  Guidecoat.timeIsUp = function (began, now, minutes) { return now - began >= minutes * MINUTE; };

  Guidecoat.timeWords = function (began, now, minutes) {
    var passed = Math.max(0, now - began) / MINUTE;
    if (passed >= minutes) {
      return Guidecoat.counted(Math.floor(passed - minutes) + 1, "minute", "minutes") + " over";
    }
    var left = Math.ceil(minutes - passed);
    return left === 1 ? "the last minute" : left + " minutes left";
  };
})();
