/*
 * Looks entries up in the index of data/look-up.js, as the program's own "recall" does.
 * The index's form is told in the program's IndexFile and Packing; this file only reads it.
 */
(function (self) {
  'use strict';

  var TRAITS = ['condition', 'verdict', 'year', 'family', 'lot', 'dye', 'method'];
  var SHORTEST_SLIP = 4, LONGEST_WORD = 40, GREY_BELOW = 4, CUT = 350, KEPT = 64, DIGITS = 92, BLOCK = 32;

  // ---- Digits: printable ASCII but for the quotation mark, the backslash and the less-than sign.

  var VALUE = new Uint8Array(128);
  for (var code = 32, value = 0; code < 127; code++) {
    if (code !== 34 && code !== 92 && code !== 60) VALUE[code] = value++;
  }

  function digits(text, from, count) {
    var number = 0;
    for (var at = from; at < from + count; at++) number = number * DIGITS + VALUE[text.charCodeAt(at)];
    return number;
  }

  /** Numbers of one digit each, or of the last digit and four more. */
  function smalls(text, count) {
    var numbers = new Int32Array(count);
    for (var i = 0, at = 0; i < count; i++) {
      var number = VALUE[text.charCodeAt(at++)];
      if (number === DIGITS - 1) {
        number = digits(text, at, 4);
        at += 4;
      }
      numbers[i] = number;
    }
    return numbers;
  }

  /**
   * Reads packed sets of numbers below a limit. What comes back adds the sets from one to (not with) another to the
   * bits that a function gives for each.
   */
  function reader(packed, limit, count) {
    var text = packed[0], lengths = smalls(packed[1], Math.ceil(count / BLOCK)), starts = [0];
    var at = 0, end = 0, held = 0, left = 0;
    lengths.forEach((length, i) => { starts.push(starts[i] + length); });

    function more() {
      if (end - at > 1) {
        held = held << 13 | VALUE[text.charCodeAt(at)] * DIGITS + VALUE[text.charCodeAt(at + 1)];
        left += 13;
        at += 2;
      } else {
        held = held << 6 | VALUE[text.charCodeAt(at)];
        left += 6;
        at++;
      }
    }

    /** How many ones stand before a nought. */
    function ones() {
      for (var sum = 0; ; sum++) {
        if (left === 0) {
          held = 0;
          more();
        }
        if (!(held >> --left & 1)) {
          held &= (1 << left) - 1;
          return sum;
        }
      }
    }

    function low(k) {
      while (left < k) more();
      left -= k;
      var number = held >> left;
      held &= (1 << left) - 1;
      return number;
    }

    function set(bits) {
      var width = ones(), told = (1 << width) + low(width) - 1, outside = told > limit >> 1, number = -1, k = 0;
      if (outside) told = limit - told;
      while (k < 18 && told * 10 * Math.pow(2, k + 1) <= 9 * limit) k++;
      for (var i = 0; i < told; i++) {
        var before = number;
        number += (ones() << k) + low(k) + 1;
        if (!bits) continue;
        if (outside) fill(bits, before + 1, number);
        else bits[number >> 5] |= 1 << (number & 31);
      }
      if (outside && bits) fill(bits, number + 1, limit);
    }

    return (from, to, bitsOf) => {
      for (var number = from - from % BLOCK; number < to; number++) {
        if (number % BLOCK === 0) {
          at = starts[number / BLOCK];
          end = starts[number / BLOCK + 1];
          held = left = 0;
        }
        set(number < from ? null : bitsOf(number));
      }
    };
  }

  // ---- Sets of entries, a bit each.

  function setOf(size) {
    return new Uint32Array((size + 31 >> 5) + 1);
  }

  function fill(set, from, to) {
    for (var at = from; at < to; at++) set[at >> 5] |= 1 << (at & 31);
    return set;
  }

  function and(one, other) {
    for (var at = 0; at < one.length; at++) one[at] &= other[at];
    return one;
  }

  function or(one, other) {
    for (var at = 0; at < one.length; at++) one[at] |= other[at];
    return one;
  }

  function has(set, number) {
    return set[number >> 5] >>> (number & 31) & 1;
  }

  /** How many entries two sets share. */
  function shared(one, other) {
    var sum = 0;
    for (var at = 0; at < one.length; at++) {
      var x = one[at] & other[at];
      if (x) {
        x -= x >>> 1 & 0x55555555;
        x = (x & 0x33333333) + (x >>> 2 & 0x33333333);
        sum += Math.imul(x + (x >>> 4) & 0x0f0f0f0f, 0x01010101) >>> 24;
      }
    }
    return sum;
  }

  // ---- Words: without case, accents and ligatures, as in the program's Folding.

  var LETTERS = {'ß': 'ss', 'æ': 'ae', 'œ': 'oe', 'ø': 'o', 'ł': 'l', 'đ': 'd', 'ð': 'd', 'þ': 'th', 'ı': 'i',
    'ħ': 'h', 'ŧ': 't', 'ς': 'σ'};

  function fold(text) {
    if (/^[\x00-\x7f]*$/.test(text)) return text.toLowerCase();
    return text.normalize('NFKD').replace(/\p{M}+/gu, '').toLowerCase()
        .replace(/[ßæœøłđðþıħŧς]/g, letter => LETTERS[letter]);
  }

  function words(text) {
    return fold(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean).map(word => {
      var cut = word.slice(0, LONGEST_WORD);
      return cut.length < word.length ? cut.replace(/[\ud800-\udbff]$/, '') : cut;
    });
  }

  function trimmed(text) {
    return fold(text).replace(/^[\x00-\x20]+|[\x00-\x20]+$/g, '');
  }

  // ---- Colour: Lab under D50, CIEDE2000 after Sharma, Wu and Dalal (2005).

  var DEGREES = 57.29577951308232, OPPOSITE = 180 + 1e-9;

  function hue(a, b) {
    var degrees = Math.atan2(b, a) * DEGREES;
    return degrees < 0 ? degrees + 360 : degrees;
  }

  function saturation(chroma) {
    var cube = chroma * chroma * chroma, seventh = cube * cube * chroma;
    return Math.sqrt(seventh / (seventh + 6103515625));
  }

  function sine(degrees) {
    return Math.sin(degrees / 180 * Math.PI);
  }

  function cosine(degrees) {
    return Math.cos(degrees / 180 * Math.PI);
  }

  function length(a, b) {
    return Math.sqrt(a * a + b * b);
  }

  function ciede2000(one, other) {
    var stretch = 1.5 - 0.5 * saturation((length(one[1], one[2]) + length(other[1], other[2])) / 2);
    var a1 = stretch * one[1], a2 = stretch * other[1];
    var chroma1 = length(a1, one[2]), chroma2 = length(a2, other[2]), chroma = (chroma1 + chroma2) / 2;
    var hue1 = hue(a1, one[2]), hue2 = hue(a2, other[2]), turn = 0, mean = hue1 + hue2;
    if (chroma1 * chroma2 !== 0) {
      turn = hue2 - hue1;
      if (Math.abs(turn) <= OPPOSITE) {
        mean /= 2;
      } else {
        mean = mean < 360 ? (mean + 360) / 2 : (mean - 360) / 2;
        turn += turn > 0 ? -360 : 360;
      }
    }
    var weight = 1 - 0.17 * cosine(mean - 30) + 0.24 * cosine(2 * mean) + 0.32 * cosine(3 * mean + 6)
        - 0.20 * cosine(4 * mean - 63);
    var middle = (one[0] + other[0]) / 2 - 50, square = middle * middle;
    var l = (other[0] - one[0]) / (1 + 0.015 * square / Math.sqrt(20 + square));
    var c = (chroma2 - chroma1) / (1 + 0.045 * chroma);
    var h = 2 * Math.sqrt(chroma1 * chroma2) * sine(turn / 2) / (1 + 0.015 * chroma * weight);
    var blue = (mean - 275) / 25;
    var rotation = -sine(60 * Math.exp(-blue * blue)) * 2 * saturation(chroma);
    return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
  }

  function inverse(m) {
    var r = [[], [], []], cofactor = (i, j) => {
      var k = (i + 1) % 3, l = (i + 2) % 3, n = (j + 1) % 3, o = (j + 2) % 3;
      return m[k][n] * m[l][o] - m[k][o] * m[l][n];
    };
    var determinant = m[0][0] * cofactor(0, 0) + m[0][1] * cofactor(0, 1) + m[0][2] * cofactor(0, 2);
    for (var i = 0; i < 3; i++) for (var j = 0; j < 3; j++) r[j][i] = cofactor(i, j) / determinant;
    return r;
  }

  function times(m, v) {
    return m.map(row => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]);
  }

  function white(x, y) {
    return [x / y, 1, (1 - x - y) / y];
  }

  var D65 = white(0.3127, 0.3290), D50 = white(0.3457, 0.3585);
  var PRIMARIES = [[0.64, 0.30, 0.15], [0.33, 0.60, 0.06], [0.03, 0.10, 0.79]];
  var SHARES = times(inverse(PRIMARIES), D65);
  var BRADFORD = [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]];
  var CONES = inverse(BRADFORD), BEFORE = times(BRADFORD, D65), AFTER = times(BRADFORD, D50);

  /** Lab of '#7f4632', '7f4632' or '#abc'; null where the text is no colour. */
  function labOfHex(text) {
    var short = /^#?([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(text);
    var parts = short || /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(text);
    if (!parts) return null;
    var light = [1, 2, 3].map(i => {
      var c = parseInt(short ? parts[i] + parts[i] : parts[i], 16) / 255;
      return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    });
    var xyz = times(PRIMARIES, light.map((amount, i) => amount * SHARES[i]));
    var cones = times(BRADFORD, xyz).map((cone, i) => cone * AFTER[i] / BEFORE[i]);
    var f = times(CONES, cones).map((amount, i) => {
      var ratio = amount / D50[i];
      return ratio > 216 / 24389 ? Math.cbrt(ratio) : (24389 / 27 * ratio + 16) / 116;
    });
    return [116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])].map(coordinate => {
      return Math.abs(coordinate) < 1e-9 ? 0 : coordinate;
    });
  }

  /** A difference as the book's pages show it: one decimal. */
  function tenths(difference) {
    return (Math.round(Math.round(difference * 1e6) / 1e5) / 10).toFixed(1);
  }

  // ---- The index.

  function open(index) {
    var size = index.size, all = fill(setOf(size), 0, size);

    // Choices and their sets, trait by trait; then colour names, then faults.
    var sets = [];
    var choices = {}, first = {}, next = 0;
    TRAITS.forEach(trait => {
      first[trait] = next;
      choices[trait] = index.choices[trait].map(choice => {
        next++;
        return {id: choice[0], title: choice[1]};
      });
    });
    var firstColour = next, faults = index.faults;
    for (next += index.colours.length + faults; sets.length < next;) sets.push(setOf(size));
    reader(index.sets, size, next)(0, next, at => sets[at]);

    // Words, and the entries and sets that each leads to.
    var vocabulary = [];
    (function () {
      var text = index.words, before = '', at = 0;
      while (at < text.length) {
        var end = at + 1;
        while (end < text.length) {
          var unit = text.charCodeAt(end);
          if (unit >= 65 && unit <= 90) break;
          end++;
        }
        before = before.slice(0, text.charCodeAt(at) - 65) + text.slice(at + 1, end);
        vocabulary.push(before);
        at = end;
      }
    })();
    var leadsOf = reader(index.postings, size + sets.length, vocabulary.length);

    var columns = {};
    function lines(name) {
      return columns[name] || (columns[name] = index[name].split('\n'));
    }

    /** A line of a column whose words stand in one list, the commonest first. */
    function phrase(name, i, between) {
      var line = lines(name)[i], said = [];
      for (var at = 0; at < line.length;) {
        var place = VALUE[line.charCodeAt(at++)];
        if (place === DIGITS - 1) {
          place = digits(line, at, 4);
          at += 4;
        } else if (place >= 60) {
          place = (place - 60) * DIGITS + VALUE[line.charCodeAt(at++)] + 60;
        }
        said.push(lines('tokens')[place]);
      }
      return said.join(between);
    }

    var tagged = new Map();
    lines('tags').forEach((tag, i) => {
      var key = tag && trimmed(tag);
      if (key && i < size) tagged.set(key, (tagged.get(key) || []).concat(i));
    });

    var days = smalls(index.gaps, size);
    for (var i = 0, day = index.newest; i < size; i++) days[i] = day -= days[i];

    // -- Words

    /** The first word that does not stand before a beginning, or (past) the first after all that begin so. */
    function bound(beginning, past) {
      var low = 0, high = vocabulary.length;
      while (low < high) {
        var middle = low + high >> 1, word = vocabulary[middle];
        if (word < beginning || past && word.startsWith(beginning)) low = middle + 1;
        else high = middle;
      }
      return low;
    }

    /** Words whose beginning is one slip away: one letter wrong, missing or too many, or two neighbours swapped. */
    function slips(typed) {
      var found = new Set();
      function take(beginning) {
        for (var at = bound(beginning); at < vocabulary.length && vocabulary[at].startsWith(beginning); at++) {
          found.add(at);
        }
      }
      for (var at = 0; at <= typed.length; at++) {
        var before = typed.slice(0, at), from = bound(before), to = bound(before, true);
        if (from === to) break;
        if (at < typed.length) take(before + typed.slice(at + 1));
        if (at + 1 < typed.length) take(before + typed[at + 1] + typed[at] + typed.slice(at + 2));
        if (vocabulary[from].length === at) from++;
        while (from < to) {
          var other = vocabulary[from].slice(0, at + 1);
          if (at < typed.length) take(other + typed.slice(at + 1));
          take(other + typed.slice(at));
          from = bound(other, true);
        }
      }
      return Array.from(found).sort((one, two) => one - two);
    }

    /** The entries that runs of words lead to, themselves or by a set. */
    function ledTo(runs) {
      var leads = setOf(size + sets.length);
      runs.forEach(run => {
        // A first letter soon leads to everything.
        for (var at = run[0]; at < run[1] && !full(leads); at += 256) {
          leadsOf(at, Math.min(run[1], at + 256), () => leads);
        }
      });
      var found = leads.slice(0, all.length);
      sets.forEach((set, at) => {
        if (has(leads, size + at)) or(found, set);
      });
      return and(found, all);
    }

    function full(leads) {
      for (var at = 0; at < all.length; at++) if ((leads[at] & all[at]) >>> 0 !== all[at]) return false;
      return true;
    }

    // Typing on asks again for the words before. The first letters lead to most and are kept for good.
    var kept = {letters: new Map(), words: new Map()};
    function findWord(word) {
      var before = word.length < 3 ? kept.letters : kept.words, found = before.get(word);
      if (!found) {
        var from = bound(word), to = bound(word, true);
        if (from < to) {
          found = {set: ledTo([[from, to]]), instead: null};
        } else if (word.length < SHORTEST_SLIP) {
          found = {set: setOf(size), instead: null};
        } else {
          var taken = slips(word);
          found = {set: ledTo(taken.map(at => [at, at + 1])), instead: taken};
        }
        if (kept.words.size >= KEPT) kept.words.delete(kept.words.keys().next().value);
        before.set(word, found);
      }
      return found;
    }

    /** The entries that have a tag, or every word; null where no word was typed. */
    function findWords(typed, instead) {
      var tag = tagged.get(trimmed(typed));
      if (tag) {
        return tag.reduce((set, number) => {
          set[number >> 5] |= 1 << (number & 31);
          return set;
        }, setOf(size));
      }
      var set = null;
      new Set(words(typed)).forEach(word => {
        var found = findWord(word);
        if (found.instead) {
          instead.push({typed: word, taken: found.instead.map(at => vocabulary[at])});
        }
        set = and(set || all.slice(), found.set);
      });
      return set;
    }

    // -- Orders: every entry by a key, the unknown last; equals stay newest first.

    function lab(i) {
      var coordinates = [0, 4, 8].map(at => digits(index.lab, 12 * i + at, 4));
      return coordinates[0] > 71500000 ? null : coordinates.map(steps => (steps - 25600000) / 1e5);
    }

    var labs = null;
    function colours() {
      if (!labs) {
        labs = [];
        for (var i = 0; i < size; i++) labs.push(lab(i));
      }
      return labs;
    }

    var KEYS = {
      evenness: i => -VALUE[index.evenness.charCodeAt(i)] || Infinity,
      lightness: i => { var c = colours()[i]; return c ? -c[0] : Infinity; },
      hue: i => {
        var c = colours()[i];
        if (!c) return Infinity;
        var degrees = hue(c[1], c[2]);
        return length(c[1], c[2]) < GREY_BELOW ? 1000 + c[0] : ((degrees < 360 ? degrees : 0) - CUT + 360) % 360;
      },
      owf: i => digits(index.owf, 3 * i, 3) || Infinity
    };

    function sorted(key) {
      var order = [], keys = new Float64Array(size);
      for (var i = 0; i < size; i++) {
        order.push(i);
        keys[i] = key(i);
      }
      return order.sort((one, two) => {
        return keys[one] < keys[two] ? -1 : keys[one] > keys[two] ? 1 : one - two;
      });
    }

    var orders = {}, nearest = {to: '', de00: null, order: null};

    function differences(near) {
      if (nearest.to !== near.join()) {
        var de00 = new Float64Array(size);
        colours().forEach((colour, i) => { de00[i] = colour ? ciede2000(near, colour) : NaN; });
        nearest = {to: near.join(), de00: de00, order: null};
      }
      return nearest.de00;
    }

    function inOrder(found, order, de00) {
      var entries = [], by = null;
      if (order === 'near' && de00) {
        by = nearest.order = nearest.order || sorted(i => isNaN(de00[i]) ? Infinity : de00[i]);
      } else if (KEYS.hasOwnProperty(order)) {
        by = orders[order] = orders[order] || sorted(KEYS[order]);
      }
      for (var at = 0; at < size; at++) {
        var i = by ? by[at] : at;
        if (has(found, i)) entries.push(i);
      }
      return entries;
    }

    // -- Answers

    function chosen(trait, ids) {
      var union = setOf(size);
      choices[trait].forEach((choice, at) => {
        if (ids.indexOf(choice.id) >= 0) or(union, sets[first[trait] + at]);
      });
      return union;
    }

    function without(parts, name) {
      return parts.reduce((found, part) => {
        return part.name === name ? found : and(found, part.set);
      }, all.slice());
    }

    function ask(question) {
      var instead = [], parts = [], near = question.near || null;
      var typed = findWords(question.words || '', instead);
      if (typed) parts.push({name: 'words', set: typed});
      TRAITS.forEach(trait => {
        var ids = question[trait] || [];
        if (ids.length) parts.push({name: trait, set: chosen(trait, ids)});
      });
      var found = without(parts, ''), counts = {}, loosen = [];
      TRAITS.forEach(trait => {
        var others = (question[trait] || []).length ? without(parts, trait) : found;
        counts[trait] = choices[trait].map((choice, at) => shared(others, sets[first[trait] + at]));
      });
      if (!shared(found, all)) {
        loosen = parts.map((part, at) => {
          return {part: part.name, found: shared(without(parts, part.name), all), at: at};
        }).filter(part => {
          return part.found;
        }).sort((one, two) => {
          return two.found - one.found || one.at - two.at;
        }).map(part => {
          return {part: part.part, found: part.found};
        });
      }
      var de00 = near && differences(near);
      return {
        entries: inOrder(found, question.order || (near ? 'near' : 'date'), de00),
        de00: de00, counts: counts, loosen: loosen, instead: instead
      };
    }

    // -- What is told of an entry

    /** Colours of a line: the first in four digits, the next by its channels' changes or after a mark in four. */
    function colourList(line) {
      var list = [], rgb = 0;
      for (var at = 0; at < line.length;) {
        if (at === 0 || VALUE[line.charCodeAt(at)] === DIGITS - 1) {
          at += at && 1;
          rgb = digits(line, at, 4);
          at += 4;
        } else {
          for (var shift = 16; shift >= 0; shift -= 8) rgb += VALUE[line.charCodeAt(at++)] - 45 << shift;
        }
        list.push('#' + (0x1000000 + rgb).toString(16).slice(1));
      }
      return list;
    }

    function text(number) {
      return number ? index.texts[number - 1] : null;
    }

    /** The first choice of a trait that an entry has. */
    function choiceOf(trait, i) {
      for (var at = 0; at < choices[trait].length; at++) if (has(sets[first[trait] + at], i)) return at;
      return -1;
    }

    function colourName(i) {
      for (var at = 0; at < index.colours.length; at++) if (has(sets[firstColour + at], i)) return index.colours[at];
      return null;
    }

    function parts(line) {
      var list = [];
      for (var at = 0; at < line.length; at += 6) {
        list.push({title: text(digits(line, at, 3)), amount: text(digits(line, at + 3, 3))});
      }
      return list;
    }

    function card(i) {
      var iso = new Date(days[i] * 864e5).toISOString().slice(0, 10), date = iso.split('-').map(Number);
      var said = [date[2], index.date[date[1]], date[0]], name = phrase('names', i, '-'), id = iso + '-' + name;
      var lot = choiceOf('lot', i), verdict = choiceOf('verdict', i), condition = choiceOf('condition', i);
      var method = digits(index.method, 2 * i, 2), even = VALUE[index.evenness.charCodeAt(i)];
      return {
        id: id, href: index.links[i] || 'entries/' + id + '.html', title: phrase('titles', i, ' ') || name,
        tag: lines('tags')[i] || null, date: iso,
        day: index.date[0].replace(/\{(\d)\}/g, (all, at) => said[at]),
        verdict: verdict < 0 ? null : choices.verdict[verdict].id,
        verdictWord: verdict < 0 ? null : choices.verdict[verdict].title,
        colourName: colourName(i), lab: lab(i), sure: text(digits(index.sure, 3 * i, 3)), readings: colourList(lines('readings')[i]),
        sheath: lot < 0 ? null : colourList(index.sheaths[lot])[0] || null,
        target: colourList(index.targets[i] || '')[0] || null,
        dyes: parts(lines('dyes')[i]), acids: parts(lines('acids')[i]),
        hold: text(digits(index.hold, 3 * i, 3)), evenness: even ? index.even.replace('{0}', even) : null,
        condition: condition < 0 ? null : choices.condition[condition].title,
        lot: lot < 0 ? null : choices.lot[lot].title, method: method ? choices.method[method - 1].title : null
      };
    }

    return {size: size, choices: choices, ask: ask, card: card};
  }

  self.fascicle = {open: open, labOfHex: labOfHex, ciede2000: ciede2000, fold: fold, words: words, tenths: tenths};
})(self);
