/* Prints a lesson: folded reasons are opened for the paper and folded again afterwards. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var opened = [];

  window.addEventListener("beforeprint", function () {
    opened = Array.prototype.filter.call(document.querySelectorAll(".why-order"), function (part) {
      return !part.open;
    });
    opened.forEach(function (part) { part.open = true; });
  });
  window.addEventListener("afterprint", function () {
    opened.forEach(function (part) { part.open = false; });
  });

  Guidecoat.startPrint = function (button) {
    button.hidden = false;
    button.addEventListener("click", function () { window.print(); });
  };
})();
