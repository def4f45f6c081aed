/* Finds entries by their words: an index from each word to the entries that have it, made in the
   page from the list that search_list.js brings. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var SMALL_WORDS = /^(a|an|and|are|as|at|be|by|do|does|for|from|how|i|if|in|is|it|my|of|on|or|that|the|this|to|what|when|why|with|you)$/;
  var IN_TITLE = 8;
  var IN_OTHER_NAME = 6;
  var PARTLY = 0.6;

  function words(text) {
    return text.normalize("NFKD").toLowerCase().replace(/[\u0300-\u036f]/g, "")
      .match(/[a-z0-9\u03bc]+/g) || [];
  }

  /* One word for popping, popped and pops; it need not be a word itself. */
  function stem(word) {
    if (word.length < 4 || /[0-9]/.test(word)) { return word; }
    var short = word.replace(/ies$/, "y").replace(/(ss|sh|ch|x|z)es$/, "$1").replace(/([^su])s$/, "$1");
    var cut = short.replace(/(ings?|ed|ers?)$/, "");
    if (cut.length >= 3 && /[aeiouy]/.test(cut)) { short = cut.replace(/([bdgklmnprt])\1$/, "$1"); }
    return short.replace(/(.{3})e$/, "$1");
  }

  /* A word with a hyphen is found as one word, too: fish-eye and fisheye. */
  function put(index, text, entry, weight) {
    var joined = (text.match(/[a-z]+-[a-z]+/gi) || []).map(function (word) { return word.replace("-", ""); });
    words(text + " " + joined.join(" ")).forEach(function (word) {
      var places = index.get(word);
      if (!places) { index.set(word, places = new Map()); }
      places.set(entry, (places.get(entry) || 0) + weight);
    });
  }

  /* word -> entry number -> weight, with the stem of each word. */
  function indexed(entries) {
    var index = new Map();
    entries.forEach(function (entry, number) {
      put(index, entry.title, number, IN_TITLE);
      put(index, entry.names, number, IN_OTHER_NAME);
      put(index, entry.text, number, 1);
    });
    var stems = new Map();
    index.forEach(function (places, word) { stems.set(word, stem(word)); });
    return { places: index, stems: stems, size: entries.length };
  }

  /* Two spellings within one slip of the thumb, or two in a long word. */
  function near(one, other) {
    var most = one.length >= 8 ? 2 : 1;
    if (Math.abs(one.length - other.length) > most) { return false; }
    var row = Array.from({ length: other.length + 1 }, function (unused, place) { return place; });
    for (var i = 1; i <= one.length; i += 1) {
      var corner = row[0];
      row[0] = i;
      for (var j = 1; j <= other.length; j += 1) {
        var above = row[j];
        row[j] = Math.min(row[j] + 1, row[j - 1] + 1, corner + (one[i - 1] === other[j - 1] ? 0 : 1));
        corner = above;
      }
    }
    return row[other.length] <= most;
  }

  /* Every word of the index that a typed word stands for, with how well it fits. */
  function meant(index, typed, mayGuess) {
    var stemmed = stem(typed);
    var found = new Map();
    index.stems.forEach(function (own, word) {
      if (own === stemmed) { found.set(word, 1); }
      else if (typed.length > 2 && word.indexOf(typed) === 0) { found.set(word, PARTLY); }
    });
    if (found.size || !mayGuess || typed.length < 4) { return { words: found, guessed: false }; }
    index.stems.forEach(function (own, word) { if (near(typed, word)) { found.set(word, PARTLY); } });
    return { words: found, guessed: found.size > 0 };
  }

  function scored(index, typed, mayGuess) {
    var scores = new Map();
    var fitting = meant(index, typed, mayGuess);
    fitting.words.forEach(function (fit, word) {
      index.places.get(word).forEach(function (weight, entry) {
        scores.set(entry, Math.max(scores.get(entry) || 0, fit * (1 + Math.log(weight))));
      });
    });
    var rare = Math.log(1 + index.size / (1 + scores.size));
    scores.forEach(function (score, entry) { scores.set(entry, score * rare); });
    return { scores: scores, words: fitting.words, guessed: fitting.guessed };
  }

  /* Entries that have at least so many of the words, with the sum of what each word counts. */
  function together(parts, least) {
    var sums = new Map();
    var counts = new Map();
    parts.forEach(function (part) {
      part.scores.forEach(function (score, entry) {
        sums.set(entry, (sums.get(entry) || 0) + score);
        counts.set(entry, (counts.get(entry) || 0) + 1);
      });
    });
    counts.forEach(function (count, entry) { if (count < least) { sums.delete(entry); } });
    return sums;
  }

  /* The other name of what was asked for: a learner who types "boil" means solvent popping too. */
  function alsoCalled(pairs, typed) {
    var asked = " " + typed.map(stem).join(" ") + " ";
    var others = [];
    pairs.forEach(function (pair) {
      [[0, 1], [1, 0]].forEach(function (way) {
        var name = words(pair[way[0]]).map(stem).join(" ");
        if (name && asked.indexOf(" " + name + " ") >= 0) {
          var rest = asked.replace(" " + name + " ", " ").trim();
          others.push(words(pair[way[1]]).concat(rest ? rest.split(" ") : []));
        }
      });
    });
    return others;
  }

  /* Two words that a learner may have split: fish eye. */
  function rejoined(typed) {
    return typed.slice(1).map(function (word, place) {
      return typed.slice(0, place).concat(typed[place] + word, typed.slice(place + 2));
    });
  }

  /* Two words that a learner may have run together: spraygun. */
  function parted(index, typed) {
    var found = [];
    typed.forEach(function (word, place) {
      for (var cut = 3; cut <= word.length - 3; cut += 1) {
        var two = [word.slice(0, cut), word.slice(cut)];
        if (index.places.has(two[0]) && index.places.has(two[1])) {
          found.push(typed.slice(0, place).concat(two, typed.slice(place + 1)));
        }
      }
    });
    return found;
  }

  function asked(text) {
    var typed = words(text);
    var strong = typed.filter(function (word) { return !SMALL_WORDS.test(word); });
    return strong.length ? strong : typed;
  }

  function ask(index, pairs, text) {
    var typed = asked(text);
    var found = { entries: [], words: new Map(), guesses: [], all: true };
    var best = new Map();
    function take(list, least, share, mayGuess) {
      var parts = list.map(function (word) { return scored(index, word, mayGuess); });
      together(parts, least).forEach(function (score, entry) {
        best.set(entry, Math.max(best.get(entry) || 0, score * share));
      });
      parts.forEach(function (part, place) {
        part.words.forEach(function (fit, word) { found.words.set(word, fit); });
        if (part.guessed) { found.guesses.push({ typed: list[place], words: Array.from(part.words.keys()) }); }
      });
    }
    take(typed, typed.length, 1, false);
    alsoCalled(pairs, typed).concat(rejoined(typed), parted(index, typed)).forEach(function (other) {
      take(other, other.length, 0.9, false);
    });
    if (!best.size) { take(typed, typed.length, 1, true); }
    if (!best.size && typed.length > 1) {
      found.all = false;
      take(typed, typed.length - 1, 1, false);
    }
    found.entries = Array.from(best.keys()).sort(function (a, b) { return best.get(b) - best.get(a) || a - b; });
    return found;
  }

  Guidecoat.searchIndex = { words: words, stem: stem, indexed: indexed, ask: ask };
})();
