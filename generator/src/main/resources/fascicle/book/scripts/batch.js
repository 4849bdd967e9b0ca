// Works a recipe out for the weight, the vessel and the kitchen that are typed on its page. It reckons as bath.Liquor,
// bath.Pot, measure.Scoops and workings.Scaling do, step by step and in the same order, and writes figures as
// book.figures.Figures does: so page and command agree to the last digit. Change one side, change the other.
self.fascicleBatch = (function (book) {
  'use strict';

  const ZERO = [0, 0];
  const ONE = [1, 0];
  const rules = book.rules;
  const HARDLY_MORE = 1 + 1e-6;

  /** The least that the balance tells, in grams; NaN where the balance is not known. */
  const weighable = rules.steps * book.balance;

  // --- Sizes: [value, rough] or null where not known, as bath.Magnitude ---

  const times = (one, other) => one && other ? [one[0] * other[0], one[1] | other[1]] : null;
  const plus = (one, other) => one && other ? [one[0] + other[0], one[1] | other[1]] : null;
  const over = (one, other) => one && other && other[0] !== 0 ? [one[0] / other[0], one[1] | other[1]] : null;
  const minus = (one, other) => plus(one, times(other, [-1, 0]));
  const rough = (...sizes) => sizes.some(size => size && size[1]);

  // --- Figures ---

  /** A number in millionths, half to even: what data carries. */
  function micro(value) {
    const view = new DataView(new ArrayBuffer(8));
    view.setFloat64(0, Math.abs(value));
    const bits = view.getBigUint64(0);
    const exponent = Number(bits >> 52n);
    const mantissa = (bits & 0xfffffffffffffn) | (exponent ? 0x10000000000000n : 0n);
    const power = (exponent || 1) - 1075;
    const top = mantissa * 1000000n;
    if (power >= 0) {
      return top << BigInt(power);
    }
    const bottom = 1n << BigInt(-power);
    const whole = top / bottom;
    const twice = top % bottom * 2n;
    return whole + (twice > bottom || twice === bottom && whole % 2n ? 1n : 0n);
  }

  /** Millionths as a multiple of a unit, half up. */
  const rounded = (millionths, unit) => (millionths * 2n + unit) / (unit * 2n) * unit;

  const unitOf = decimals => 10n ** BigInt(6 - decimals);

  function text(millionths) {
    const figures = String(millionths).padStart(7, '0');
    return (figures.slice(0, -6) + '.' + figures.slice(-6)).replace(/\.?0+$/, '');
  }

  const atMost = (value, decimals) => text(rounded(micro(value), unitOf(decimals)));

  const decimals = size => size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : size >= 0.01 ? 4 : 5;

  const say = (key, ...given) => book.words[key].replace(/\{(\d)\}/g, (hole, at) => given[at]);

  const tell = (key, ...given) => say('batch.' + key, ...given);

  const withUnit = (figure, unit, about) => {
    const said = figure + '\u202f' + say('unit.' + unit);
    return about ? say('about', said) : said;
  };

  /** Millionths to be told: three figures of what is rough, from a thousand on. */
  function told(value, about) {
    const all = micro(value);
    return about && all >= 1000000000n ? rounded(all, 10n ** BigInt(String(all).length - 3)) : all;
  }

  const amount = (value, unit, about) =>
    withUnit(text(rounded(told(value, about), unitOf(decimals(value)))), unit, about);

  const tenths = cm => withUnit(atMost(cm, 1), 'cm');

  const poured = ([ml, about]) => amount(ml, 'ml', about);

  function weighed(grams, step, about) {
    const finest = step ? micro(step) : 0n;
    const shown = unitOf(decimals(grams));
    return withUnit(text(rounded(told(grams, about), finest > shown ? finest : shown)), 'g', about);
  }

  // --- The bath ---

  /** A batch for so many grams of needles. */
  function reckon(doses, grams, vessel) {
    const needles = [grams, 0];
    const byRatio = times(doses.ratio, needles);
    const basin = vessel && vessel.area;
    const cover = doses.depth && basin ? vessel.area * doses.depth : 0;
    const brim = basin && vessel.height ? vessel.area * vessel.height : 0;
    const pots = brim && byRatio ? potsFor(byRatio[0], grams, cover, rules.full * brim) : 0;
    const total = byRatio && cover * (pots || 1) > byRatio[0] ? [cover * (pots || 1), doses.depthAbout || 0] : byRatio;
    const standing = times(doses.standing, needles);
    const bath = filled(total, standing, needles, doses.bath);
    bath.water = doses.waterUnsaid ? null : bath.water;
    const drawn = one => over(needles, one.needles);
    const soak = one => one.shared
        ? { title: one.title, shared: 1, parts: one.with.map(of => ({ of, g: null, ml: null })), water: null }
        : { ...filled(times(one.ratio, needles), ZERO, needles, one.with), title: one.title };
    const batch = {
      grams, vessel, pots, cover, bath, reused: doses.reused,
      standing: standing && bath.room && bath.room[0] < standing[0] ? bath.room : standing,
      extract: doses.extract.map(one => ({ g: times(one.g, drawn(one)), ml: times(one.ml, drawn(one)) })),
      ratio: total === byRatio ? doses.ratio : [total[0] / grams, total[1]],
      filled: pots && bath.liquor && !bath.tooWeak ? (bath.liquor[0] / pots + rules.room * (grams / pots)) / brim : 0,
      presoak: doses.presoak.map(soak), before: doses.before.map(soak), after: doses.after.map(soak),
      finish: doses.finish.map(part => measured(part, needles, total))
    };
    batch.deep = batch.filled && batch.filled * vessel.height;
    batch.soaks = batch.presoak.concat(batch.before, batch.after);
    batch.everything = batch.soaks.flatMap(one => one.parts).concat(bath.parts, batch.finish);
    return batch;
  }

  function potsFor(liquor, grams, cover, capacity) {
    const room = rules.room * grams;
    const left = capacity - cover;
    return left > 0 ? Math.max(1, Math.ceil(Math.max((liquor + room) / capacity, room / left) - 1e-9)) : 0;
  }

  function filled(liquor, standing, needles, portions) {
    const parts = portions.map(part => measured(part, needles, liquor));
    if (!liquor) {
      return { liquor, water: null, parts };
    }
    let sum = ZERO;
    parts.filter(part => part.of.liquid).forEach(part => sum = plus(sum, part.ml || [0, 1]));
    if (sum[0] > liquor[0] * (1 + 1e-9)) {
      return { liquor, water: null, parts, tooWeak: true };
    }
    const water = minus(minus(liquor, sum), standing);
    return { liquor, water: water && water[0] < 0 ? [0, water[1]] : water, parts, room: minus(liquor, sum) };
  }

  function measured(portion, needles, liquor) {
    const size = portion.by === 'needles' ? needles : portion.by === 'bath' ? liquor : ONE;
    return { of: portion, g: times(portion.g, size), ml: times(portion.ml, size) };
  }

  const shared = (part, pots) => ({ of: part.of, g: over(part.g, [pots, 0]), ml: over(part.ml, [pots, 0]) });

  // --- How a part is measured out ---

  function stockOf(part) {
    if (!part.of.dissolves || !part.g || !(part.g[0] > 0 && part.g[0] < weighable)) {
      return null;
    }
    const usual = part.g[0] * 100 / rules.usual;
    return usual >= rules.least ? [rules.usual, usual] : [rules.weak, part.g[0] * 100 / rules.weak];
  }

  function scoopsOf(wanted, set) {
    const cups = Math.max(0, Math.floor(wanted / set[0][2]) - 1);
    let best = [];
    let held = Infinity;
    const tryAll = (chosen, left, from, sum) => {
      if (left === 0) {
        if (Math.abs(sum - wanted) < Math.abs(held - wanted)) {
          best = chosen;
          held = sum;
        }
        return;
      }
      for (let scoop = from; scoop < set.length; scoop++) {
        tryAll(chosen.concat(scoop), left - 1, scoop, sum + set[scoop][2]);
      }
    };
    const error = () => (held - wanted) / wanted * 100;
    for (let scoops = 1; scoops <= rules.scoops && !(Math.abs(error()) <= rules.near); scoops++) {
      tryAll([], scoops, 0, cups * set[0][2]);
    }
    if (!(Math.abs(error()) <= rules.useless)) {
      return null;
    }
    const said = set.map(([number, measure], at) => {
      const count = best.filter(scoop => scoop === at).length + (at === 0 ? cups : 0);
      return count === 0 ? ''
        : number === '1' ? count + ' ' + (measure === 'cup' && count > 1 ? 'cups' : measure)
          : (count === 1 ? '' : count + ' × ') + number + ' ' + measure;
    }).filter(one => one !== '').join(' + ');
    return { said, error: error() };
  }

  const stock = (size, percent) => tell('stock', poured(size), atMost(percent, 2));

  function ways(part, set) {
    const about = part.of.spooned || part.g && part.g[1];
    if (part.of.stock && part.ml) {
      return [stock(part.ml, part.of.stock)].concat(
        part.g ? tell('in-it', amount(part.g[0], 'g', about)) : []);
    }
    const toMake = stockOf(part);
    const found = part.g ? [weighed(part.g[0], toMake ? 0 : book.balance, about)] : [];
    if (part.ml) {
      found.push(poured(part.ml));
    }
    const scoops = part.of.bySpoon && part.ml && part.ml[0] > 0 ? scoopsOf(part.ml[0], set) : null;
    if (scoops) {
      const off = atMost(Math.abs(scoops.error), 1);
      found.push(off === '0' ? scoops.said
        : tell(scoops.error > 0 ? 'scoops-more' : 'scoops-less', scoops.said, off));
    }
    return toMake ? found.concat(tell('or', stock([toMake[1], about], toMake[0]))) : found;
  }

  // --- The sheet ---

  function rows(batch, kitchen) {
    const set = book.kitchens[kitchen];
    const pots = batch.pots || 1;
    const list = [];
    const line = (key, step, size, unit, shares, about) => {
      const share = parts => size ? [amount(size[0] / parts, unit, about)] : [];
      list.push({ step, thing: say(key), whole: share(1), each: share(shares) });
    };
    const part = (step, one, shares) => list.push({
      step, thing: one.of.row || one.of.called, written: one.of.written, whole: ways(one, set),
      each: ways(shared(one, shares), set)
    });
    const soak = one => {
      line('fact.water', one.title, one.water, 'ml', 1, rough(one.water, one.liquor));
      one.parts.forEach(each => part(one.title, each, 1));
    };
    const about = rough(batch.bath.water, batch.bath.liquor);
    line('fact.water', '', batch.bath.water, 'ml', pots, about);
    line('batch.liquor', '', batch.bath.liquor, 'ml', pots, about);
    if (batch.reused) {
      line('batch.standing', '', batch.standing, 'ml', pots, rough(batch.standing));
    }
    batch.bath.parts.forEach(one => part('', one, pots));
    batch.extract.forEach(({ g, ml }) => {
      line('batch.extract-plant', '', g, 'g', pots, rough(g, ml));
      line('batch.extract-water', '', ml, 'ml', pots, rough(g, ml));
    });
    batch.soaks.forEach(soak);
    batch.finish.forEach(one => part(say('step.finish'), one, 1));
    return list;
  }

  function potsIn(batch) {
    if (!batch.vessel) {
      return '';
    }
    const state = [batch.vessel.called, atMost(batch.filled * 100, 0), tenths(batch.deep)];
    return !batch.pots || !batch.filled ? batch.vessel.called
      : batch.pots === 1 ? tell('pot', ...state)
        : tell('pots', batch.pots, ...state, amount(batch.grams / batch.pots, 'g'));
  }

  function remarks(batch, doses) {
    const said = [];
    const mind = (...given) => said.push(tell(...given));
    const { bath, vessel } = batch;
    const cm = length => amount(length, 'cm');
    const care = vessel && vessel.care && vessel.care[vessel.strains[doses.strain]];
    said.push(...[care, doses.over].filter(one => one));
    if (bath.tooWeak) {
      mind('too-weak');
    }
    said.push(...doses.odd);
    if (batch.reused) {
      const of = batch.standing;
      const { left } = doses;
      if (of && left && of[0] > left[0] * HARDLY_MORE) {
        mind('reused-short', poured(of), poured(left), amount(left[0] * batch.grams / of[0], 'g', rough(of, left)));
      } else {
        mind(left ? 'reused-of' : 'reused', left && poured(left));
      }
    } else if (!bath.liquor && !bath.tooWeak && bath.parts.length) {
      mind('no-liquor');
    }
    if (doses.ratio && batch.ratio && batch.ratio[0] > doses.ratio[0] * HARDLY_MORE) {
      mind('paler', amount(doses.ratio[0], 'ratio'), amount(batch.ratio[0], 'ratio'));
    }
    if (vessel && !(vessel.area && vessel.height)) {
      mind('unmeasured', vessel.called);
    } else if (vessel) {
      if (batch.pots > rules.pots) {
        mind('many-pots', batch.pots, rules.pots);
      }
      if (batch.cover > 0 && !batch.pots && bath.liquor) {
        mind('no-room', doses.depthSaid, cm(rules.full * vessel.height));
      }
      if (batch.deep && batch.deep < rules.shallow) {
        mind('too-shallow', tenths(batch.deep));
      }
      if (doses.length && doses.length > vessel.line) {
        mind('too-long', doses.lengthSaid, cm(vessel.line));
      }
    }
    const pots = batch.pots || 1;
    const inPot = bath.parts.map(part => shared(part, pots));
    batch.soaks.concat({ parts: inPot, water: over(bath.water, [pots, 0]) }).forEach(one => one.parts.forEach(part => {
      const toMake = stockOf(part);
      if (one.water && toMake && toMake[1] > one.water[0] * HARDLY_MORE) {
        mind('too-much-stock', part.of.called, amount(toMake[1], 'ml'));
      }
    }));
    said.push(...batch.soaks.flatMap(one => one.shared ? tell('shared-bin')
      : one.liquor ? [] : tell('no-soak-water', one.title)), ...batch.extract.map(() => tell('drawn')));
    const stocks = batch.everything.concat(inPot).map(stockOf).filter(one => one);
    [rules.weak, rules.usual].filter(percent => stocks.some(one => one[0] === percent))
      .forEach(percent => mind('make-stock', atMost(percent, 2),
        amount(weighable, 'g'), amount(weighable * 100 / percent, 'ml')));
    return [...new Set(batch.everything.some(part => part.of.spooned) ? said.concat(tell('spoons-wander')) : said)];
  }

  // --- The page ---

  /** Grams of a typed weight, to the last digit; NaN where it is none. */
  function gramsOf(typed, unit) {
    const plain = typed.trim();
    const comma = /^(\d{1,9},(\d{1,2}|\d{4,9})|0,\d{1,9})$/.test(plain);
    const number = comma ? plain.replace(',', '.') : plain;
    if (!/^(\d{1,9}(\.\d{0,9})?|\.\d{1,9})$/.test(number)) {
      return NaN;
    }
    const [whole, part = ''] = number.split('.');
    const digits = String(BigInt(whole + part) * BigInt(unit)).padStart(part.length + 10, '0');
    return Number(digits.slice(0, -part.length - 9) + '.' + digits.slice(-part.length - 9));
  }

  function begin(fold) {
    const find = name => fold.querySelector('[name=' + name + ']');
    const slot = name => fold.querySelector('.batch-' + name);
    const doses = JSON.parse(document.querySelector('[data-doses]').dataset.doses);
    const [weight, unit, vessel, kitchen] = ['weight', 'unit', 'vessel', 'kitchen'].map(find);
    book.vessels.forEach(one => vessel.add(new Option(one.called, one.id, false, one.id === doses.vessel)));
    if (doses.vessel) {
      vessel.remove(0);
    }
    book.units.forEach(([called, size]) => unit.add(new Option(called, size)));
    Object.keys(book.kitchens).forEach(key => kitchen.add(new Option(say('kitchen.' + key), key)));
    kitchen.value = book.kitchen;
    const cell = (row, lines, name) => {
      const box = row.appendChild(document.createElement(name || 'td'));
      box.innerText = lines.join('\n');
      return box;
    };
    const show = () => {
      const grams = gramsOf(weight.value, unit.value);
      const good = grams > 0 && grams <= rules.heaviest;
      weight.setAttribute('aria-invalid', String(!good));
      slot('wrong').textContent = good ? '' : tell('wrong');
      slot('found').hidden = !good;
      if (!good) {
        return;
      }
      const batch = reckon(doses, grams, book.vessels.find(one => one.id === vessel.value));
      const body = slot('rows');
      body.textContent = '';
      slot('pots').textContent = potsIn(batch);
      slot('each').hidden = batch.pots < 2;
      rows(batch, kitchen.value).forEach(line => {
        const row = body.insertRow();
        cell(row, [line.step ? say('scaling.in', line.thing, line.step) : line.thing], 'th').scope = 'row';
        // A bin or a treatment is one for all pots.
        (batch.pots < 2 ? [line.whole] : [line.whole, line.step ? [''] : line.each]).forEach(lines =>
          cell(row, lines.length ? lines : [line.written ? tell('unsized', line.written) : say('table.unknown')])
            .className = 'number');
      });
      const list = slot('remarks');
      list.textContent = '';
      remarks(batch, doses).forEach(said => list.appendChild(document.createElement('li')).textContent = said);
    };
    ['input', 'change'].forEach(kind => fold.addEventListener(kind, show));
    show();
  }

  const fold = document.querySelector('details.batch');
  if (fold) {
    begin(fold);
  }
  return { reckon, rows, remarks, potsIn, gramsOf };
})(self.fascicleBatch);
