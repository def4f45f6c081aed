/* Keeps the answers to one form on this device, twice: in a store that has them before the next
   key is pressed, and in one that says when they are on the disk, so that a flat battery takes
   nothing. Either one alone will do. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var PREFIX = "guidecoat-form ", DATABASE = "guidecoat-forms", STORE = "forms";
  var LONGEST_WAIT = 2000;

  function asked(request) {
    return new Promise(function (done, failed) {
      request.onsuccess = function () { done(request.result); };
      request.onerror = request.onblocked = function () { failed(request.error); };
    });
  }

  /* Promise the database, or null where the device has none or does not answer in time. */
  function opened() {
    var late = new Promise(function (done) { setTimeout(done, LONGEST_WAIT, null); });
    var open = new Promise(function (done) {
      var request = indexedDB.open(DATABASE, 1);
      request.onupgradeneeded = function () { request.result.createObjectStore(STORE); };
      asked(request).then(done, function () { done(null); });
    }).catch(function () { return null; });
    return Promise.race([open, late]);
  }

  /* Do one thing in the database and promise that it is on the disk. */
  function changed(database, action) {
    return new Promise(function (done, failed) {
      var transaction = database.transaction(STORE, "readwrite", { durability: "strict" });
      action(transaction.objectStore(STORE));
      transaction.oncomplete = function () { done(); };
      transaction.onerror = transaction.onabort = function () { failed(transaction.error); };
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

  /* `name` is the form's id and its person; `onChange` hears whether answers are kept, and "elsewhere"
     when another window has changed them. */
  Guidecoat.examStore = function (name, onChange) {
    var key = PREFIX + name;
    var database = null, atHand = false, onDisk = false, waiting = null, busy = false, said = "kept";

    function inLocalStorage(action) {
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
      if (now !== said) { said = now; onChange(now); }
    }

    /* One change at a time; of those that come meanwhile only the last one counts. */
    function write() {
      if (busy || waiting === null) { return; }
      var text = waiting;
      busy = true;
      waiting = null;
      changed(database, function (store) { store.put(text, key); })
        .then(function () { onDisk = true; }, function () { onDisk = false; })
        .then(function () { busy = false; tell(); write(); });
    }

    window.addEventListener("storage", function (event) {
      if (event.key === key && event.newValue) { onChange("elsewhere"); }
    });

    return {
      /* Promise what was kept last, or null. */
      load: function () {
        var local = inLocalStorage(function (storage) { return read(storage.getItem(key)); });
        return opened().then(function (found) {
          database = found;
          return database ? asked(database.transaction(STORE).objectStore(STORE).get(key)) : null;
        }).then(read, function () { database = null; return null; }).then(function (stored) {
          onDisk = database !== null;
          return later(local, stored);
        });
      },

      save: function (state) {
        var text = JSON.stringify(state);
        inLocalStorage(function (storage) { storage.setItem(key, text); });
        if (database) { waiting = text; write(); } else { tell(); }
      },

      /* Promise whether nothing of this form is left here. */
      clear: function () {
        waiting = null;
        var isGone = inLocalStorage(function (storage) { storage.removeItem(key); return true; }) || !atHand;
        if (!database) { return Promise.resolve(isGone); }
        return changed(database, function (store) { store.delete(key); })
          .then(function () { return isGone; }, function () { return false; });
      }
    };
  };
})();
