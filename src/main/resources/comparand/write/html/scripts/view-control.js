/** What is shown: a question, a device, what stands beside it, words to filter by; and how it is shown. */
const ViewControl = (() => {
  'use strict';

  const { make, field, tick, group, bar, button, setHidden } = Elements;

  function choice(label, entries, change) {
    const select = make('select', {}, ...entries.map(([value, text]) => make('option', { value, text })));
    select.addEventListener('change', () => change(select.value));
    return { select, element: field(label, select) };
  }

  /** Sources by their references, and the kinds of pairs that have none. */
  function besides(page) {
    const say = page.say;
    const pairs = page.data.questions.flatMap(q => q.pairs);
    const local = {
      'against-present-device': say('page.beside.present'),
      'within-centre': say('page.beside.centre'),
      'stated-against-present-device': say('page.beside.stated'),
      'local-against-published': say('page.beside.published'),
    };
    const purposes = [...new Set(pairs.filter(p => !p.source).map(p => p.purpose))];
    const used = new Set(pairs.map(p => p.source));
    return [
      ['', say('page.beside.all')],
      ...purposes.map(p => [p, local[p] || p]),
      ...page.data.sources.filter(s => used.has(s.id)).map(s => [s.id, s.number + ' ' + s.reference]),
    ];
  }

  function of(page) {
    const say = page.say;
    const question = choice(say('page.question'),
      [['', say('page.question.all')], ...page.data.questions.map(q => [q.metric, Words.upperFirst(q.name)])], value => page.setView({ question: value }));
    const device = choice(say('page.device'),
      [['', say('page.device.all')], ...page.data.devices.map(d => [d.id, d.name])], value => page.setView({ device: value }));
    const beside = choice(say('page.beside'), besides(page), value => page.setView({ beside: value }));
    const filter = make('input', { type: 'search' });
    let waiting = 0;
    filter.addEventListener('input', () => {
      // once a frame, however fast somebody types
      cancelAnimationFrame(waiting);
      waiting = requestAnimationFrame(() => page.setView({ filter: filter.value }));
    });
    const grey = tick(say('page.grey'), false, on => page.setView({ grey: on }));
    const large = tick(say('page.large'), false, on => page.setView({ large: on }));
    const back = button(say('page.question.all'), () => {
      page.setView({ question: '' });
      question.select.focus(); // the button goes
    }, { class: 'back' });
    const element = bar(say('page.view.title'), question.element, device.element, beside.element, field(say('page.filter'), filter), back);
    const look = group(say('page.look.title'), grey.element, large.element);

    function update(view) {
      question.select.value = view.question;
      device.select.value = view.device;
      beside.select.value = view.beside;
      if (document.activeElement !== filter) {
        filter.value = view.filter;
      }
      setHidden(back, view.question === '');
      grey.box.checked = view.grey;
      large.box.checked = view.large;
    }
    return { element, look, update };
  }

  /** Greyscale and larger text hold for the whole page. */
  function apply(view) {
    const root = document.documentElement;
    root.toggleAttribute('data-grey', view.grey);
    root.toggleAttribute('data-large', view.large);
  }

  return { of, apply };
})();
