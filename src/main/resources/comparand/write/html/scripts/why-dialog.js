/** Why two values are not compared, condition by condition, and what would have to be measured or known. */
const WhyDialog = (() => {
  'use strict';

  const { make, ladder } = Elements;

  const head = (...texts) => make('tr', {}, ...texts.map(text => make('th', { scope: 'col', text })));

  function row(say, c) {
    const decides = Standing.decidesAgainst(c);
    return make('tr', decides ? { class: 'decides' } : {},
      make('th', { scope: 'row', text: c.name }),
      make('td', { text: c.ours }),
      make('td', { text: c.theirs }),
      make('td', { text: say('mark.' + c.mark) }),
      make('td', { text: c.tolerance === '' ? say('not-applicable') : c.tolerance }),
      make('td', { text: decides ? say('page.why.decides') : c.role === 'decides' ? say('page.why.would-decide') : say('page.why.qualifies') }));
  }

  function conditions(say, judged) {
    return make('div', { class: 'frame' }, make('table', {},
      make('caption', { text: say('page.why.conditions') }),
      make('thead', {}, head(say('page.why.condition'), say('page.why.ours'), say('page.why.theirs'), say('page.why.found'),
        say('page.why.tolerance'), say('page.why.role'))),
      make('tbody', {}, ...judged.conditions.map(c => row(say, c)))));
  }

  const list = texts => make('ul', {}, ...texts.map(text => make('li', { text })));

  function part(heading, content) {
    return [make('h3', { text: heading }), content];
  }

  function ladderLink(name, text) {
    const target = ladder(name);
    return target === null ? [] : [make('li', {}, make('a', { href: '#' + target.id, text }))];
  }

  function open(page, judged) {
    const say = page.say;
    const { pair } = judged;
    const where = [pair.deviceName, pair.step, pair.beside].filter(t => t !== '').join(', ');
    const directions = Sentences.distortions(say, pair, judged.conditions);
    const ladders = [...ladderLink(pair.ours, say('page.why.ladder-ours')), ...ladderLink(pair.theirs, say('page.why.ladder-theirs'))];
    Dialogs.open(say, say('page.why.title'),
      make('p', { text: where }),
      make('p', {}, make('strong', { text: Words.upperFirst(judged.sentence) + '.' })),
      conditions(say, judged),
      ...(directions.length > 0 ? part(say('page.why.direction'), list(directions)) : []),
      ...part(say('page.why.would'), make('p', { text: Words.upperFirst(Sentences.toMakeComparable(say, judged.conditions)) + '.' })),
      ...(ladders.length > 0 ? part(say('page.why.ladders'), make('ul', {}, ...ladders)) : []));
  }

  return { open };
})();
