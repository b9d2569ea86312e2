/** Why two values are not compared, condition by condition, and what would have to be measured or known. */
const WhyDialog = (() => {
  'use strict';

  const { make, table, ladder } = Elements;

  function row(say, c) {
    const decides = Standing.decidesAgainst(c);
    const role = decides ? say('page.why.decides') : c.role === 'decides' ? say('page.why.would-decide') : say('page.why.qualifies');
    const tolerance = c.tolerance === '' ? say('not-applicable') : c.tolerance;
    return { class: decides ? 'decides' : undefined, cells: [c.name, c.ours, c.theirs, say('mark.' + c.mark), tolerance, role] };
  }

  function conditions(say, judged) {
    const headings = [say('page.why.condition'), say('page.why.ours'), say('page.why.theirs'), say('page.why.found'),
      say('page.why.tolerance'), say('page.why.role')];
    return make('div', { class: 'frame' }, table(say('page.why.conditions'), headings, judged.conditions.map(c => row(say, c))));
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
