/* Prints a lesson: folded reasons are opened for the paper and folded again afterwards. */
"use strict";

(() => {
  let opened = [];

  window.addEventListener("beforeprint", () => {
    opened = Guidecoat.all(document, ".why-order").filter((part) => !part.open);
    opened.forEach((part) => { part.open = true; });
  });
  window.addEventListener("afterprint", () => {
    opened.forEach((part) => { part.open = false; });
  });

  Guidecoat.startPrint = (button) => {
    button.hidden = false;
    button.addEventListener("click", () => { window.print(); });
  };
})();
