/* Keeps the answers to one form on this device, twice: in a store that has them before the next
   key is pressed, and in one that says when they are on the disk, so that a flat battery takes
   nothing. Either one alone will do. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var PREFIX = "guidecoat-form ", BASE = "guidecoat-forms", SHELF = "forms";
  var LONGEST_WAIT = 2000;

  function asked(request) {
    return new Promise(function (done, failed) {
      request.onsuccess = function () { done(request.result); };
      request.onerror = request.onblocked = function () { failed(request.error); };
    });
  }

  /* Promise the data base, or null where the device has none or does not answer in time. */
  function opened() {
    var late = new Promise(function (done) { setTimeout(done, LONGEST_WAIT, null); });
    var open = new Promise(function (done) {
      var request = indexedDB.open(BASE, 1);
      request.onupgradeneeded = function () { request.result.createObjectStore(SHELF); };
      asked(request).then(done, function () { done(null); });
    }).catch(function () { return null; });
    return Promise.race([open, late]);
  }

  /* Do one thing in the data base and promise that it is on the disk. */
  function changed(base, action) {
    return new Promise(function (done, failed) {
      var deal = base.transaction(SHELF, "readwrite", { durability: "strict" });
      action(deal.objectStore(SHELF));
      deal.oncomplete = function () { done(); };
      deal.onerror = deal.onabort = function () { failed(deal.error); };
    });
  }

  function read(text) {
    try {
      var found = JSON.parse(text);
      return found && typeof found === "object" && Number.isInteger(found.turn) ? found : null;
    } catch (error) {
      return null;
    }
  }

  function later(one, other) {
    if (!one || !other) { return one || other; }
    return other.turn > one.turn ? other : one;
  }

  /* `name` is the form's id and its person; `told` hears whether answers are kept, and "elsewhere"
     when another window has changed them. */
  Guidecoat.formStore = function (name, told) {
    var key = PREFIX + name;
    var base = null, atHand = false, onDisk = false, waiting = null, busy = false, said = "kept";

    function local(action) {
      try {
        var found = action(window.localStorage);
        atHand = true;
        return found;
      } catch (error) {
        atHand = false;
        return null;
      }
    }

    /* Heard only when it changes, so that nothing else that is said is wiped. */
    function tell() {
      var now = atHand || onDisk ? "kept" : "refused";
      if (now !== said) { said = now; told(now); }
    }

    /* One change at a time; of those that come meanwhile only the last one counts. */
    function write() {
      if (busy || waiting === null) { return; }
      var text = waiting;
      busy = true;
      waiting = null;
      changed(base, function (shelf) { shelf.put(text, key); })
        .then(function () { onDisk = true; }, function () { onDisk = false; })
        .then(function () { busy = false; tell(); write(); });
    }

    window.addEventListener("storage", function (event) {
      if (event.key === key && event.newValue) { told("elsewhere"); }
    });

    return {
      /* Promise what was kept last, or null. */
      load: function () {
        var near = local(function (store) { return read(store.getItem(key)); });
        return opened().then(function (found) {
          base = found;
          return base ? asked(base.transaction(SHELF).objectStore(SHELF).get(key)) : null;
        }).then(read, function () { base = null; return null; }).then(function (far) {
          onDisk = base !== null;
          return later(near, far);
        });
      },

      save: function (state) {
        var text = JSON.stringify(state);
        local(function (store) { store.setItem(key, text); });
        if (base) { waiting = text; write(); } else { tell(); }
      },

      /* Promise whether nothing of this form is left here. */
      clear: function () {
        waiting = null;
        var isGone = local(function (store) { store.removeItem(key); return true; }) || !atHand;
        if (!base) { return Promise.resolve(isGone); }
        return changed(base, function (shelf) { shelf.delete(key); })
          .then(function () { return isGone; }, function () { return false; });
      }
    };
  };
})();
