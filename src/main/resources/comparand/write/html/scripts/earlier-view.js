/** An earlier result file, opened from the reader's disk and read nowhere else, beside this report. */
const EarlierView = (() => {
  'use strict';

  const { make, table, field, group } = Elements;

  function differences(page, found) {
    const say = page.say;
    const kinds = { another: say('page.earlier.another'), gone: say('page.earlier.gone'), new: say('page.earlier.new') };
    const name = r => (r.judged === null ? r.id : Words.upperFirst(r.question) + ': ' + PairRows.nameOf(r.judged.pair));
    const headings = [say('page.earlier.pair'), say('page.earlier.what'), say('page.earlier.then'), say('page.earlier.now')];
    const none = say('not-applicable');
    return make('div', { class: 'frame', tabindex: '0', role: 'region', 'aria-label': say('page.earlier.title') },
      table(say('page.earlier.caption', { day: found.asOf }), headings,
        found.rows.map(r => ({ cells: [name(r), kinds[r.kind], r.then || none, r.now || none] }))));
  }

  function show(page, text, place) {
    const say = page.say;
    const judged = page.report.questions.flatMap(q => q.pairs);
    let results = null;
    try {
      results = JSON.parse(text);
    } catch (fault) {
      // what is no JSON is no results file either, and is told the same way
    }
    const found = Earlier.compare(results, judged, page.data.run.language);
    if (found === null) {
      place.replaceChildren(make('p', { class: 'fault', role: 'alert', text: say('page.say.earlier-none') }));
      return;
    }
    const names = new Map(page.data.questions.flatMap(q => q.pairs.map(p => [p, q.name])));
    found.rows.forEach(r => (r.question = r.judged === null ? '' : names.get(r.judged.pair)));
    const count = kind => String(found.rows.filter(r => r.kind === kind).length);
    const summary = say('page.say.earlier', {
      same: String(found.same), another: count('another'), gone: count('gone'), added: count('new'), day: found.asOf,
    });
    place.replaceChildren(make('p', { text: summary }), ...(found.rows.length > 0 ? [differences(page, found)] : []));
    page.tell(summary);
  }

  function of(page) {
    const place = make('div', {});
    const file = make('input', { type: 'file', accept: '.json,application/json' });
    file.addEventListener('change', () => {
      const chosen = file.files[0];
      if (chosen !== undefined) {
        chosen.text().then(text => show(page, text, place));
      }
    });
    return group(page.say('page.earlier.title'), make('p', { text: page.say('page.say.earlier-what') }),
      field(page.say('page.earlier.file'), file), place);
  }

  return { of };
})();
