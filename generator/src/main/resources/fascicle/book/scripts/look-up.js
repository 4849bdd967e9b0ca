// Looks entries up on the page look-up.html: what is ticked and typed there becomes a question to the engine, the
// answers fill sheets that the theme drew, and the page's address says the question. A classic script for old phones.
(function () {
  'use strict';

  const PARTS = ['condition', 'verdict', 'year', 'family', 'lot', 'dye', 'method'];
  const FIRST = 24; // answers that are there at once
  const MORE = 200; // answers in each later group
  const PRINTED = 1000; // answers on paper, at most
  const QUIET = 400; // milliseconds without a letter, after which the address and the status follow

  const root = document.documentElement;
  // The page is still being read: from here on it shows the questions instead of the plain lists.
  root.classList.add('asks');
  document.addEventListener('DOMContentLoaded', begin);

  let book, question, reply, later = 0, typedAddress = null, shown = 0;
  const choices = new Map(); // part -> id -> {input, counter, label, title, place, count}
  const sayings = new Map();
  const sheets = []; // those of the first answers, which are filled again and again
  const on = {}; // the page's own pieces

  function begin() {
    if (!self.fascicle || !self.fascicleIndex) {
      root.classList.remove('asks');
      return;
    }
    book = self.fascicle.open(self.fascicleIndex);
    const find = selector => document.querySelector(selector);
    on.form = find('form.ask');
    on.words = find('input[name=words]');
    on.near = find('input[name=near]');
    on.pick = find('input[name=pick]');
    on.nearHeed = find('.ask-near-heed');
    on.withoutColour = find('.without-colour');
    on.order = find('select[name=order]');
    ['found', 'answering', 'question', 'clear', 'heed', 'loosen', 'answers']
      .forEach(name => { on[name] = find('.' + name); });
    on.heading = find('.answering h2');
    on.showMore = find('.show-more');
    on.sheet = find('template.sheet').content.querySelector('.answer');
    on.pick.value = '#808080';
    [on.words, on.near].forEach(field => field.setAttribute('autocorrect', 'off')); // only some phones know it
    on.answers.setAttribute('role', 'list'); // some readers forget lists that have no numbers
    find('template.sayings').content.querySelectorAll('[data-say]')
      .forEach(saying => sayings.set(saying.dataset.say, saying.textContent));
    PARTS.forEach(gather);
    markLastYear();
    listen();
    readAddress();
  }

  function say(key, ...given) {
    const single = given[0] === 1 && sayings.has(key + '.one');
    return sayings.get(single ? key + '.one' : key).replace(/\{(\d)\}/g, (hole, number) => given[number]);
  }

  function gather(part) {
    const places = new Map((book.choices[part] || []).map((choice, place) => [choice.id, place]));
    const known = new Map();
    on.form.querySelectorAll('input[name="' + part + '"]').forEach(input => {
      const label = input.closest('.choice');
      known.set(input.value, {
        input, label,
        counter: label.querySelector('.choice-count'),
        title: label.querySelector('.choice-title').textContent,
        place: places.has(input.value) ? places.get(input.value) : -1,
        count: -1
      });
    });
    choices.set(part, known);
  }

  function markLastYear() {
    const last = choices.get('year').get(String(new Date().getFullYear() - 1));
    if (last) {
      const remark = document.createElement('span');
      remark.className = 'choice-remark';
      remark.textContent = say('last-year');
      last.label.insertBefore(remark, last.counter);
      last.label.insertBefore(document.createTextNode(' '), last.counter);
    }
  }

  // --- The question and its address ---

  function blank() {
    const nothing = { words: '', near: null, order: '' };
    PARTS.forEach(part => { nothing[part] = []; });
    return nothing;
  }

  /** Six small signs, or null where the text is no colour. */
  function hexOf(text) {
    const signs = (/^\s*#?([0-9a-f]{6}|[0-9a-f]{3})\s*$/i.exec(text) || ['', ''])[1].toLowerCase();
    return signs === '' ? null : signs.length === 6 ? signs : signs.replace(/./g, '$&$&');
  }

  function decoded(text) {
    try {
      return decodeURIComponent(text);
    } catch (malformed) {
      return text;
    }
  }

  /** Half of a letter that takes two signs cannot stand in an address. */
  function encoded(text) {
    try {
      return encodeURIComponent(text);
    } catch (malformed) {
      return encodeURIComponent(text.replace(/[\ud800-\udfff]/g, ''));
    }
  }

  /** The question of an address, and what in it this book does not know. */
  function read(address) {
    const asked = blank(), unknown = [];
    for (const piece of address.split('&')) {
      const at = piece.indexOf('='), part = decoded(piece.slice(0, at)), value = piece.slice(at + 1);
      if (choices.has(part)) {
        for (const id of value.split(',').map(decoded)) {
          if (!choices.get(part).has(id)) {
            unknown.push(part + '=' + id);
          } else if (!asked[part].includes(id)) {
            asked[part].push(id);
          }
        }
      } else if (part === 'words') {
        asked.words = decoded(value);
      } else if (part === 'near' && hexOf(decoded(value))) {
        asked.near = hexOf(decoded(value));
      } else if (part === 'order' && Array.from(on.order.options, option => option.value).includes(value)) {
        asked.order = value;
      } else if (piece !== '') {
        unknown.push(decoded(piece));
      }
    }
    return { asked, unknown };
  }

  function address() {
    const pieces = PARTS.filter(part => question[part].length)
      .map(part => part + '=' + question[part].map(encoded).join(','));
    if (question.words.trim()) pieces.push('words=' + encoded(question.words.trim()));
    if (question.near) pieces.push('near=' + question.near);
    if (question.order) pieces.push('order=' + question.order);
    return location.href.split('#')[0] + (pieces.length ? '#' + pieces.join('&') : '');
  }

  function readAddress() {
    const asked = location.hash.slice(1);
    if (question && asked && !asked.includes('=')) return; // the way to a place on this page
    clearTimeout(later);
    typedAddress = null;
    const { asked: wanted, unknown } = read(asked.includes('=') ? asked : '');
    question = wanted;
    showQuestion();
    answer(unknown);
    tell();
  }

  /** The order in which the answers stand: nearness, where a colour is asked for and nothing else was chosen. */
  function order() {
    const usual = question.near ? 'near' : 'date';
    return question.order === 'near' && !question.near ? usual : question.order || usual;
  }

  function showQuestion() {
    choices.forEach((known, part) => known.forEach((choice, id) => {
      choice.input.checked = question[part].includes(id);
      const fold = choice.input.checked && choice.input.closest('details');
      if (fold) fold.open = true;
    }));
    on.words.value = question.words;
    showColour();
  }

  function showColour() {
    on.near.value = question.near || '';
    if (question.near) on.pick.value = '#' + question.near;
    on.near.removeAttribute('aria-invalid');
    on.nearHeed.textContent = '';
  }

  // --- What the reader does ---

  function listen() {
    on.form.addEventListener('submit', event => event.preventDefault());
    on.form.addEventListener('keydown', event => {
      if (event.key === 'Enter' && !event.isComposing && event.target.type === 'text') on.heading.focus();
    });
    on.form.addEventListener('change', event => {
      const part = event.target.name;
      if (choices.has(part)) {
        question[part] = Array.from(choices.get(part)).filter(([, choice]) => choice.input.checked).map(([id]) => id);
        touched();
      } else if (part === 'order') {
        question.order = on.order.value;
        touched();
      } else if (part === 'near') {
        const wrong = on.near.value.trim() !== '' && !hexOf(on.near.value);
        on.near.setAttribute('aria-invalid', String(wrong));
        on.nearHeed.textContent = wrong ? say('no-hex') : '';
      }
    });
    on.words.addEventListener('input', () => {
      question.words = on.words.value;
      typed();
    });
    on.near.addEventListener('input', () => {
      const hex = hexOf(on.near.value);
      if (hex) {
        on.pick.value = '#' + hex;
        nearest(hex);
      } else if (on.near.value.trim() === '') {
        nearest(null);
      }
    });
    on.pick.addEventListener('input', () => {
      nearest(hexOf(on.pick.value));
      showColour();
    });
    on.withoutColour.addEventListener('click', () => {
      nearest(null);
      showColour();
      on.near.focus();
    });
    on.clear.addEventListener('click', () => {
      question = blank();
      showQuestion();
      touched();
      on.heading.focus();
    });
    on.showMore.addEventListener('click', () => {
      const group = showMore();
      if (group) group.querySelector('a').focus();
    });
    if ('IntersectionObserver' in self) {
      new IntersectionObserver(seen => {
        if (seen[seen.length - 1].isIntersecting) showMore();
      }, { rootMargin: '600px' }).observe(on.showMore);
    }
    self.addEventListener('beforeprint', () => {
      while (shown < Math.min(PRINTED, reply.entries.length)) showMore();
    });
    self.addEventListener('hashchange', () => {
      const among = on.answering.contains(document.activeElement);
      readAddress();
      if (among) on.heading.focus();
    });
  }

  /** A colour asked for, or another one; the first is a step that the way back undoes, those after it are as typed. */
  function nearest(hex) {
    const another = hex && question.near;
    if (hex === question.near) return;
    if (!another) question.order = '';
    question.near = hex;
    if (another) typed();
    else touched();
  }

  function typed() {
    answer([]);
    typedAddress = address();
    clearTimeout(later);
    later = setTimeout(() => {
      settle();
      tell();
    }, QUIET);
  }

  /** Letters are no steps of their own: they change the address in place. */
  function settle() {
    clearTimeout(later);
    if (typedAddress !== null) history.replaceState(null, '', typedAddress);
    typedAddress = null;
  }

  function touched() {
    settle();
    answer([]);
    if (address() !== location.href) history.pushState(null, '', address());
    tell();
  }

  // --- The answer ---

  function answer(unknown) {
    reply = book.ask(Object.assign({}, question, {
      near: question.near && self.fascicle.labOfHex('#' + question.near),
      order: order()
    }));
    const held = document.activeElement, within = on.answering.contains(held);
    count();
    on.order.value = order();
    Array.from(on.order.options).forEach(option => {
      if (option.value === 'near') option.disabled = !question.near;
    });
    on.withoutColour.hidden = !question.near;
    put(on.question, inWords());
    on.clear.hidden = address() === location.href.split('#')[0];
    fillList(on.heed, unknown.map(what => words(say('unknown', what)))
      .concat(reply.instead.map(slip => words(slip.taken.length
        ? say('instead', slip.typed, slip.taken.join(say('pieces'))) : say('no-word', slip.typed)))));
    fillList(on.loosen, reply.entries.length ? [] : reply.loosen.filter(way => way.found).map(wayOut));
    showFirst();
    if (within && (!on.answering.contains(held) || !held.getClientRects().length)) on.heading.focus();
  }

  function count() {
    choices.forEach((known, part) => known.forEach(choice => {
      const number = choice.place < 0 ? 0 : reply.counts[part][choice.place];
      if (number === choice.count) return;
      choice.count = number;
      choice.counter.textContent = number;
      choice.label.classList.toggle('none', number === 0);
    }));
  }

  function titles(part) {
    return question[part].map(id => choices.get(part).get(id).title).join(say('or'));
  }

  /** The question in words, for those who come back to it, and for paper. */
  function inWords() {
    const pieces = PARTS.filter(part => question[part].length).map(titles);
    if (question.words.trim()) pieces.push(say('asked-words', question.words.trim()));
    if (question.near) pieces.push(say('asked-near', '#' + question.near));
    return pieces.length ? pieces.join(say('and')) : say('everything');
  }

  /** How many were found, and in what order; said aloud too, so not on every letter. */
  function tell() {
    const number = reply.entries.length, option = on.order.options[on.order.selectedIndex];
    put(on.found, number ? say('found', say('count', number), option.textContent) : say('none'));
  }

  function words(text) {
    const line = document.createElement('span');
    line.textContent = text;
    return line;
  }

  function wayOut(way) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = say('loosen', way.part === 'words' ? question.words.trim() : titles(way.part),
      say('count', way.found));
    button.addEventListener('click', () => {
      question[way.part] = way.part === 'words' ? '' : [];
      showQuestion();
      touched();
    });
    return button;
  }

  function fillList(list, pieces) {
    if (!pieces.length && list.hidden) return;
    list.textContent = '';
    pieces.forEach(piece => list.appendChild(document.createElement('li')).appendChild(piece));
    list.hidden = !pieces.length;
  }

  // --- The sheets ---

  function showFirst() {
    while (on.answers.nextElementSibling.matches('.answers')) on.answers.nextElementSibling.remove();
    shown = Math.min(FIRST, reply.entries.length);
    for (let i = 0; i < shown; i++) {
      if (i === sheets.length) sheets.push(newSheet());
      fill(sheets[i], reply.entries[i]);
      if (!sheets[i].sheet.parentNode) on.answers.appendChild(sheets[i].sheet);
    }
    for (let i = shown; i < sheets.length; i++) sheets[i].sheet.remove();
    offerMore();
  }

  function showMore() {
    const end = Math.min(shown + MORE, reply.entries.length);
    if (shown === end) return null;
    const group = on.answers.cloneNode(false);
    group.classList.add('later');
    group.start = shown + 1;
    for (; shown < end; shown++) {
      const slots = newSheet();
      fill(slots, reply.entries[shown]);
      group.appendChild(slots.sheet);
    }
    on.showMore.parentNode.before(group);
    offerMore();
    return group;
  }

  function offerMore() {
    const left = reply.entries.length - shown;
    on.showMore.hidden = left === 0;
    if (left) on.showMore.textContent = say('more', Math.min(MORE, left), left);
  }

  function newSheet() {
    const slots = { sheet: on.sheet.cloneNode(true) };
    slots.sheet.querySelectorAll('[data-slot]').forEach(slot => { slots[slot.dataset.slot] = slot; });
    slots.needles = slots.sheet.querySelectorAll('.needle');
    ['svg', 'svg title', '.thread', '.sheath'].forEach(part => { slots[part] = slots.sheet.querySelector(part); });
    return slots;
  }

  function fill(slots, entry) {
    const card = book.card(entry);
    put(slots.title, card.title);
    slots.title.setAttribute('href', card.href);
    put(slots.tag, card.tag && say('tag', card.tag));
    put(slots.verdict, card.verdictWord || say('no-verdict'));
    slots.verdict.className = card.verdict ? 'verdict ' + card.verdict : '';
    put(slots.condition, card.condition);
    put(slots.date, card.day);
    put(slots.dyes, gist(card.dyes));
    put(slots.acid, gist(card.acids));
    put(slots.hold, card.hold);
    put(slots.evenness, card.evenness && say('evenness', card.evenness));
    put(slots.colour, card.colourName || say('unread'));
    const near = reply.de00 ? reply.de00[entry] : NaN;
    put(slots.difference, isFinite(near) && say('difference', self.fascicle.tenths(near), card.sure));
    const read = card.readings.length > 0;
    slots.alike.hidden = !read;
    if (read) {
      slots.alike.setAttribute('href', '#near=' + mean(card.readings));
      slots.alike.setAttribute('aria-label', say('alike', card.title));
    }
    draw(slots, card);
  }

  function gist(parts) {
    return parts.map(part => part.title + (part.amount ? ' ' + part.amount : '')).join(say('and-part'));
  }

  /** The colour between the readings, near enough to ask for more like it. */
  function mean(readings) {
    return [1, 3, 5].map(at => {
      const sum = readings.reduce((all, reading) => all + parseInt(reading.substr(at, 2), 16), 0);
      return (256 + Math.round(sum / readings.length)).toString(16).slice(1);
    }).join('');
  }

  /** Needles take turns through the readings; more readings than needles are passed through evenly. */
  function draw(slots, card) {
    const readings = card.readings, needles = slots.needles.length;
    put(slots['svg title'], card.colourName || say('unread'));
    slots.svg.classList.toggle('unread', readings.length === 0);
    slots.needles.forEach((needle, place) => {
      const turn = readings.length > needles ? Math.floor(place * readings.length / needles) : place % readings.length;
      colour(needle, 'fill', readings[turn]);
    });
    colour(slots['.sheath'], 'fill', card.sheath);
    colour(slots['.thread'], 'stroke', card.target);
  }

  function colour(shape, paint, hex) {
    if (hex) shape.setAttribute(paint, hex);
    else shape.removeAttribute(paint);
    shape.classList.toggle('none', !hex);
  }

  /** Puts words in a slot; a slot without words is not there for anyone. */
  function put(slot, text) {
    slot.textContent = text || '';
    if (slot.hidden !== undefined) slot.hidden = !text;
  }
})();
