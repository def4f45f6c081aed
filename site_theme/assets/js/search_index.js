/* Finds entries by their words: an index from each word to the entries that have it, made in the
   page from the list that search_list.js brings. */
"use strict";

(() => {
  const SMALL_WORDS = new Set(("a an and are as at be by do does for from how i if in is it my of on or " +
    "that the this to what when why with you").split(" "));
  const IN_TITLE = 8;
  const IN_OTHER_NAME = 6;
  const PARTLY = 0.6;

  /** @type {(text: string) => string[]} */
  function words(text) {
    return text.normalize("NFKD").toLowerCase().replace(/[\u0300-\u036f]/g, "")
      .match(/[a-z0-9\u03bc]+/g) || [];
  }

  /* One word for popping, popped and pops; it need not be a word itself. */
  /** @type {(word: string) => string} */
  function stem(word) {
    if (word.length < 4 || /[0-9]/.test(word)) { return word; }
    let short = word.replace(/ies$/, "y").replace(/(ss|sh|ch|x|z)es$/, "$1").replace(/([^su])s$/, "$1");
    const cut = short.replace(/(ings?|ed|ers?)$/, "");
    if (cut.length >= 3 && /[aeiouy]/.test(cut)) { short = cut.replace(/([bdgklmnprt])\1$/, "$1"); }
    return short.replace(/(.{3})e$/, "$1");
  }

  /* A word with a hyphen is found as one word, too: fish-eye and fisheye. */
  /** @type {(index: SearchIndex["places"], text: string, entry: number, weight: number) => void} */
  function put(index, text, entry, weight) {
    const joined = (text.match(/[a-z]+-[a-z]+/gi) || []).map((word) => word.replace("-", ""));
    words(text + " " + joined.join(" ")).forEach((word) => {
      let places = index.get(word);
      if (!places) { index.set(word, places = new Map()); }
      places.set(entry, (places.get(entry) || 0) + weight);
    });
  }

  /* word -> entry number -> weight, with the stem of each word. */
  /** @type {(entries: SearchEntry[]) => SearchIndex} */
  function indexed(entries) {
    const index = new Map();
    entries.forEach((entry, number) => {
      put(index, entry.title, number, IN_TITLE);
      put(index, entry.names, number, IN_OTHER_NAME);
      put(index, entry.text, number, 1);
    });
    const stems = new Map();
    index.forEach((places, word) => { stems.set(word, stem(word)); });
    return { places: index, stems, size: entries.length };
  }

  /* Two spellings within one slip of the thumb, or two in a long word. */
  /** @type {(one: string, other: string) => boolean} */
  function near(one, other) {
    const most = one.length >= 8 ? 2 : 1;
    if (Math.abs(one.length - other.length) > most) { return false; }
    const row = Array.from({ length: other.length + 1 }, (unused, place) => place);
    for (let i = 1; i <= one.length; i += 1) {
      let corner = row[0];
      row[0] = i;
      for (let j = 1; j <= other.length; j += 1) {
        const above = row[j];
        row[j] = Math.min(row[j] + 1, row[j - 1] + 1, corner + (one[i - 1] === other[j - 1] ? 0 : 1));
        corner = above;
      }
    }
    return row[other.length] <= most;
  }

  /* Every word of the index that a typed word stands for, with how well it fits. */
  /** @type {(index: SearchIndex, typed: string, mayGuess: boolean) => MeantWords} */
  function meant(index, typed, mayGuess) {
    const stemmed = stem(typed);
    const found = new Map();
    index.stems.forEach((own, word) => {
      if (own === stemmed) { found.set(word, 1); }
      else if (typed.length > 2 && word.indexOf(typed) === 0) { found.set(word, PARTLY); }
    });
    if (found.size || !mayGuess || typed.length < 4) { return { words: found, guessed: false }; }
    index.stems.forEach((own, word) => { if (near(typed, word)) { found.set(word, PARTLY); } });
    return { words: found, guessed: found.size > 0 };
  }

  /** @type {(index: SearchIndex, typed: string, mayGuess: boolean) => ScoredWord} */
  function scored(index, typed, mayGuess) {
    const scores = new Map();
    const fitting = meant(index, typed, mayGuess);
    fitting.words.forEach((fit, word) => {
      (index.places.get(word) || new Map()).forEach((weight, entry) => {
        scores.set(entry, Math.max(scores.get(entry) || 0, fit * (1 + Math.log(weight))));
      });
    });
    const rare = Math.log(1 + index.size / (1 + scores.size));
    scores.forEach((score, entry) => { scores.set(entry, score * rare); });
    return { scores, words: fitting.words, guessed: fitting.guessed };
  }

  /* Entries that have at least so many of the words, with the sum of what each word counts. */
  /** @type {(parts: ScoredWord[], least: number) => Map<number, number>} */
  function together(parts, least) {
    const sums = new Map();
    const counts = new Map();
    parts.forEach((part) => {
      part.scores.forEach((score, entry) => {
        sums.set(entry, (sums.get(entry) || 0) + score);
        counts.set(entry, (counts.get(entry) || 0) + 1);
      });
    });
    counts.forEach((count, entry) => { if (count < least) { sums.delete(entry); } });
    return sums;
  }

  /* The other name of what was asked for: a learner who types "boil" means solvent popping too. */
  /** @type {(pairs: [string, string][], typed: string[]) => string[][]} */
  function alsoCalled(pairs, typed) {
    const line = " " + typed.map(stem).join(" ") + " ";
    /** @type {string[][]} */
    const others = [];
    pairs.forEach((pair) => {
      [[0, 1], [1, 0]].forEach((way) => {
        const name = words(pair[way[0]]).map(stem).join(" ");
        if (name && line.includes(" " + name + " ")) {
          const rest = line.replace(" " + name + " ", " ").trim();
          others.push(words(pair[way[1]]).concat(rest ? rest.split(" ") : []));
        }
      });
    });
    return others;
  }

  /* Two words that a learner may have split: fish eye. */
  /** @type {(typed: string[]) => string[][]} */
  function rejoined(typed) {
    return typed.slice(1).map((word, place) =>
      typed.slice(0, place).concat(typed[place] + word, typed.slice(place + 2)));
  }

  /* Two words that a learner may have run together: spraygun. */
  /** @type {(index: SearchIndex, typed: string[]) => string[][]} */
  function parted(index, typed) {
    /** @type {string[][]} */
    const found = [];
    typed.forEach((word, place) => {
      for (let cut = 3; cut <= word.length - 3; cut += 1) {
        const two = [word.slice(0, cut), word.slice(cut)];
        if (index.places.has(two[0]) && index.places.has(two[1])) {
          found.push(typed.slice(0, place).concat(two, typed.slice(place + 1)));
        }
      }
    });
    return found;
  }

  /** @type {(text: string) => string[]} */
  function asked(text) {
    const typed = words(text);
    const strong = typed.filter((word) => !SMALL_WORDS.has(word));
    return strong.length ? strong : typed;
  }

  /** @type {(index: SearchIndex, pairs: [string, string][], text: string) => Found} */
  function ask(index, pairs, text) {
    const typed = asked(text);
    /** @type {Found} */
    const found = { entries: [], words: new Map(), guesses: [], all: true };
    const best = new Map();
    /** @type {(list: string[], least: number, share: number, mayGuess: boolean) => void} */
    function take(list, least, share, mayGuess) {
      const parts = list.map((word) => scored(index, word, mayGuess));
      together(parts, least).forEach((score, entry) => {
        best.set(entry, Math.max(best.get(entry) || 0, score * share));
      });
      parts.forEach((part, place) => {
        part.words.forEach((fit, word) => { found.words.set(word, fit); });
        if (part.guessed) { found.guesses.push({ typed: list[place], words: [...part.words.keys()] }); }
      });
    }
    take(typed, typed.length, 1, false);
    alsoCalled(pairs, typed).concat(rejoined(typed), parted(index, typed)).forEach((other) => {
      take(other, other.length, 0.9, false);
    });
    if (!best.size) { take(typed, typed.length, 1, true); }
    if (!best.size && typed.length > 1) {
      found.all = false;
      take(typed, typed.length - 1, 1, false);
    }
    found.entries = [...best.keys()].sort((a, b) => best.get(b) - best.get(a) || a - b);
    return found;
  }

  Guidecoat.searchIndex = { words, stem, indexed, ask };
})();
