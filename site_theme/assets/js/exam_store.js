/* Keeps the answers to one form on this device, twice: in a store that has them before the next
   key is pressed, and in one that says when they are on the disk, so that a flat battery takes
   nothing. Either one alone will do. */
"use strict";

(() => {
  const PREFIX = "guidecoat-form ";
  const DATABASE = "guidecoat-forms";
  const STORE = "forms";
  const LONGEST_WAIT = 2000;

  function asked(request) {
    return new Promise((done, failed) => {
      request.onsuccess = () => { done(request.result); };
      request.onerror = request.onblocked = () => { failed(request.error); };
    });
  }

  /* Promise the database, or null where the device has none or does not answer in time. */
  function opened() {
    const late = new Promise((done) => { setTimeout(done, LONGEST_WAIT, null); });
    const open = new Promise((done) => {
      const request = indexedDB.open(DATABASE, 1);
      request.onupgradeneeded = () => { request.result.createObjectStore(STORE); };
      asked(request).then(done, () => { done(null); });
    }).catch(() => null);
    return Promise.race([open, late]);
  }

  /* Do one thing in the database and promise that it is on the disk. */
  function changed(database, action) {
    return new Promise((done, failed) => {
      const transaction = database.transaction(STORE, "readwrite", { durability: "strict" });
      action(transaction.objectStore(STORE));
      transaction.oncomplete = () => { done(); };
      transaction.onerror = transaction.onabort = () => { failed(transaction.error); };
    });
  }

  function read(text) {
    try {
      const found = JSON.parse(text);
      return found && typeof found === "object" && Number.isInteger(found.turn) ? found : null;
    } catch {
      return null;
    }
  }

  function later(one, other) {
    if (!one || !other) { return one || other; }
    return other.turn > one.turn ? other : one;
  }

  /* `name` is the form's id and its person; `onChange` hears whether answers are kept, and
     "elsewhere" when another window has changed them. */
  Guidecoat.examStore = (name, onChange) => {
    const key = PREFIX + name;
    let database = null;
    let waiting = null;
    let atHand = false;
    let onDisk = false;
    let busy = false;
    let said = "kept";

    function inLocalStorage(action) {
      try {
        const found = action(window.localStorage);
        atHand = true;
        return found;
      } catch {
        atHand = false;
        return null;
      }
    }

    /* Heard only when it changes, so that nothing else that is said is wiped. */
    function tell() {
      const now = atHand || onDisk ? "kept" : "refused";
      if (now !== said) { said = now; onChange(now); }
    }

    /* One change at a time; of those that come meanwhile only the last one counts. */
    function write() {
      if (busy || waiting === null) { return; }
      const text = waiting;
      busy = true;
      waiting = null;
      changed(database, (store) => { store.put(text, key); })
        .then(() => { onDisk = true; }, () => { onDisk = false; })
        .then(() => { busy = false; tell(); write(); });
    }

    window.addEventListener("storage", (event) => {
      if (event.key === key && event.newValue) { onChange("elsewhere"); }
    });

    return {
      /* Promise what was kept last, or null. */
      load() {
        const local = inLocalStorage((storage) => read(storage.getItem(key)));
        return opened().then((found) => {
          database = found;
          return database ? asked(database.transaction(STORE).objectStore(STORE).get(key)) : null;
        }).then(read, () => { database = null; return null; }).then((stored) => {
          onDisk = database !== null;
          return later(local, stored);
        });
      },

      save(state) {
        const text = JSON.stringify(state);
        inLocalStorage((storage) => { storage.setItem(key, text); });
        if (database) { waiting = text; write(); } else { tell(); }
      },

      /* Promise whether nothing of this form is left here. */
      clear() {
        waiting = null;
        const isGone = inLocalStorage((storage) => { storage.removeItem(key); return true; }) || !atHand;
        if (!database) { return Promise.resolve(isGone); }
        return changed(database, (store) => { store.delete(key); })
          .then(() => isGone, () => false);
      }
    };
  };
})();
