/**
 * The state of the page as a fragment of its address, so that a colleague opens the same view:
 * `q=pressure-drop&d=mirrowen-12&m.pressure-drop=12&t.pressure-drop.haemoglobin=2&out=ardley-2023&like=1&at=v-B24`.
 */
const Fragment = (() => {
  'use strict';

  const NUMBER = /^\d+(?:\.\d+)?(?:e-?\d+)?$/;

  const start = () => ({
    view: { question: '', device: '', beside: '', filter: '', sort: '', grey: false, large: false, at: '' },
    settings: { margins: {}, tolerances: {}, left: [], like: false, noFigure: false },
  });

  function numberFrom(text) {
    return NUMBER.test(text) && Number(text) <= 1e12 ? Number(text) : null;
  }

  /** Words that name one of these, or nothing. */
  const oneOf = (text, known) => (known.includes(text) ? text : '');

  /** What a pair can be set beside, as written in the fragment. */
  const besides = data => [...new Set(data.questions.flatMap(q => q.pairs.map(p => p.source || p.purpose)))];

  function readMargins(given, data, margins) {
    for (const q of data.questions) {
      const number = numberFrom(given.get('m.' + q.metric) || '');
      if (number > 0 && number !== (q.margin ? q.margin.number : null)) {
        margins[q.metric] = number;
      }
    }
  }

  function readTolerances(given, data, tolerances) {
    for (const q of data.questions) {
      for (const rule of q.tolerances) {
        const number = numberFrom(given.get('t.' + q.metric + '.' + rule.condition) || '');
        if (number !== null && number !== rule.amount) {
          tolerances[q.metric + '/' + rule.condition] = number;
        }
      }
    }
  }

  /**
   * The state that a fragment names; null for an ordinary anchor. What it names and nobody knows is left aside, never a fault:
   * an address outlives the report it was made for.
   *
   * @param {string} text without the number sign
   */
  function read(text, data) {
    if (text !== '' && !text.includes('=')) {
      return null;
    }
    const given = new URLSearchParams(text);
    const of = key => given.get(key) || '';
    const { view, settings } = start();
    view.question = oneOf(of('q'), data.questions.map(q => q.metric));
    view.device = oneOf(of('d'), data.devices.map(d => d.id));
    view.beside = oneOf(of('b'), besides(data));
    view.filter = of('f').slice(0, 200);
    view.sort = /^[A-Za-z0-9]+\.\d{1,3}\.[ad]$/.test(of('sort')) ? of('sort') : '';
    view.grey = of('grey') === '1';
    view.large = of('large') === '1';
    view.at = /^[A-Za-z][A-Za-z0-9._-]*$/.test(of('at')) ? of('at') : '';
    readMargins(given, data, settings.margins);
    readTolerances(given, data, settings.tolerances);
    const left = of('out').split(',');
    settings.left = data.sources.map(s => s.id).filter(id => left.includes(id));
    settings.like = of('like') === '1';
    settings.noFigure = of('nofig') === '1';
    return { view, settings };
  }

  /** The place an ordinary anchor names; empty where it is no anchor of any page. */
  function anchor(text) {
    try {
      return decodeURIComponent(text);
    } catch (malformed) {
      return '';
    }
  }

  /** The fragment of a state, without the number sign; empty where nothing is chosen and nothing set. */
  function write({ view, settings }) {
    const entries = [['q', view.question], ['d', view.device], ['b', view.beside], ['f', view.filter], ['sort', view.sort]];
    for (const metric of Object.keys(settings.margins).sort()) {
      entries.push(['m.' + metric, String(settings.margins[metric])]);
    }
    for (const where of Object.keys(settings.tolerances).sort()) {
      entries.push(['t.' + where.replace('/', '.'), String(settings.tolerances[where])]);
    }
    entries.push(['out', settings.left.join(',')], ['like', settings.like ? '1' : ''], ['nofig', settings.noFigure ? '1' : '']);
    entries.push(['grey', view.grey ? '1' : ''], ['large', view.large ? '1' : ''], ['at', view.at]);
    return entries
      .filter(([, value]) => value !== '')
      .map(([key, value]) => key + '=' + encodeURIComponent(value).replace(/%2C/g, ','))
      .join('&');
  }

  return { start, anchor, read, write };
})();
