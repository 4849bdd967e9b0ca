// Offers to work a recipe out for a typed weight, and loads what that takes only when it is asked for: a page by the
// stove stays light.
(function () {
  'use strict';
  const here = document.currentScript;
  const sheet = here.previousElementSibling;
  if (typeof BigInt === 'undefined' || !sheet || !sheet.content) {
    return;
  }
  sheet.before(sheet.content);
  const fold = document.querySelector('details.batch');
  const load = (file, then) => {
    const script = document.createElement('script');
    script.src = here.src.replace('scripts/open.js', file);
    script.onload = then || null;
    document.body.append(script);
  };
  fold.addEventListener('toggle', () => load('data/batch.js', () => load('scripts/batch.js')), { once: true });
})();
