/** Which evidence counts: like with like only, nothing read from a figure, without a source. */
const EvidenceControl = (() => {
  'use strict';

  const { make, tick, group } = Elements;

  function of(page) {
    const say = page.say;
    const like = tick(say('page.like'), false, on => page.setSettings({ like: on }));
    const noFigure = tick(say('page.no-figure'), false, on => page.setSettings({ noFigure: on }));
    const used = new Set(page.data.questions.flatMap(q => q.pairs.map(p => p.source)));
    const sources = page.data.sources.filter(s => used.has(s.id)).map(s => ({
      id: s.id,
      ...tick(say('page.left.source', { number: String(s.number), reference: s.reference }), false, on => {
        const left = page.state.settings.left.filter(id => id !== s.id);
        page.setSettings({ left: page.data.sources.map(x => x.id).filter(id => left.includes(id) || (on && id === s.id)) });
      }),
    }));
    const left = make('details', {}, make('summary', { text: say('page.left.title') }), ...sources.map(s => s.element));
    const element = group(say('page.evidence.title'), like.element, noFigure.element, ...(sources.length > 0 ? [left] : []));

    function update(settings) {
      like.box.checked = settings.like;
      noFigure.box.checked = settings.noFigure;
      sources.forEach(s => (s.box.checked = settings.left.includes(s.id)));
    }
    return { element, update };
  }

  return { of };
})();
