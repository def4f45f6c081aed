/* Keeps a published course on this device, and says when a new edition is there.
   Nothing changes under a learner's hands: the new edition comes in when its button is pressed. */
"use strict";

(function () {
  var worker = document.querySelector('meta[name="offline"]');
  var overHttp = location.protocol.indexOf("http") === 0;

  /* From a memory stick there is nothing to install, and the browser would only complain. */
  if (!overHttp) {
    document.querySelectorAll('link[rel="manifest"]').forEach(function (link) { link.remove(); });
  }
  if (!overHttp || !("serviceWorker" in navigator)) { return; }

  function say(place, text) {
    var line = document.createElement("p");
    line.textContent = text;
    place.appendChild(line);
    return line;
  }

  function button(place, text, className, press) {
    var made = document.createElement("button");
    made.type = "button";
    made.className = className;
    made.textContent = text;
    made.addEventListener("click", press);
    place.appendChild(made);
  }

  function use(registration) {
    if (!registration.waiting) { location.reload(); return; }
    navigator.serviceWorker.addEventListener("controllerchange", function () { location.reload(); });
    registration.waiting.postMessage("use this edition");
  }

  function announce(registration) {
    var place = document.querySelector(".edition");
    if (place.firstChild) { return; }
    var box = document.createElement("div");
    box.className = "edition-box";
    say(box, "There is a new edition of this course. Finish what you are doing first: " +
      "the page loads anew. Your panel stays as it is.");
    button(box, "Use the new edition", "", function () { use(registration); });
    button(box, "Later", "plain", function () {
      place.textContent = "";
      document.documentElement.classList.remove("has-edition-box");
    });
    place.appendChild(box);
    document.documentElement.classList.add("has-edition-box");
  }

  /* A worker that waits beside a working one is a new edition; the very first one does not wait. */
  function watch(registration) {
    function look() {
      if (registration.waiting && navigator.serviceWorker.controller) { announce(registration); }
    }
    /* One that never got as far as waiting was not stored: no room, or the network went away. */
    function missed(coming) {
      if (coming.state !== "redundant" || !navigator.serviceWorker.controller) { return; }
      var place = document.querySelector(".kept");
      place.textContent = "";
      say(place, "A newer edition could not be stored on this device. What you read here is the " +
        "earlier one: make some room, then open the course again.");
    }
    function follow(coming) {
      if (!coming) { return; }
      var stored = false;
      coming.addEventListener("statechange", function () {
        look();
        stored = stored || coming.state === "installed";
        if (!stored) { missed(coming); }
      });
    }
    look();
    follow(registration.installing);
    registration.addEventListener("updatefound", function () { follow(registration.installing); });
    document.addEventListener("visibilitychange", function () {
      if (!document.hidden) { registration.update().catch(function () {}); }
    });
  }

  function unregisterAll() {
    navigator.serviceWorker.getRegistrations().then(function (found) {
      found.forEach(function (registration) { registration.unregister(); });
    }).catch(function () {});
  }

  /* A live preview names no worker and must not be kept. */
  window.addEventListener("load", function () {
    if (!worker) { return; }
    if (!worker.content) { unregisterAll(); return; }
    navigator.serviceWorker.register(worker.content).then(watch).catch(function () {});
    navigator.serviceWorker.ready.then(function () {
      var place = document.querySelector(".kept");
      if (!place.firstChild) { say(place, "Kept on this device: the course opens without a network."); }
    });
  });
})();
