/** The page at work: one state, judged once after each change, shown where it reads differently. */
const Explorer = (() => {
  'use strict';

  const { make, byId, group } = Elements;

  /** Browsers give a page some twenty entries a second, and one that takes more, as a slider would, is stopped. */
  const PAUSE = 100;

  /**
   * Writes states into the address; a new place is a step back can return from, a setting is not.
   *
   * @returns {function(Object, boolean): void} takes the state, and whether it is a step
   */
  function addressWriter() {
    let next = 0;
    let waiting = 0;

    function write(state, isStep) {
      const address = '#' + Fragment.write(state);
      if (address === location.hash || (address === '#' && location.hash === '')) {
        return;
      }
      next = performance.now() + PAUSE;
      const here = address === '#' ? location.pathname + location.search : address;
      try {
        history[isStep ? 'pushState' : 'replaceState'](null, '', here);
      } catch (refused) {
        location.hash = address; // some browsers keep the history of local files to themselves
      }
    }
    return (state, isStep) => {
      clearTimeout(waiting);
      const wait = next - performance.now();
      if (isStep || wait <= 0) {
        write(state, isStep);
      } else {
        waiting = setTimeout(() => write(state, false), wait);
      }
    };
  }

  function controls(page) {
    const say = page.say;
    const view = ViewControl.of(page);
    const evidence = EvidenceControl.of(page);
    const byQuestion = new Map();
    const place = make('div', { class: 'of-question' });
    const choose = group(say('page.margin-and-tolerances'), make('p', { text: say('page.say.choose') }));
    const more = make('details', { class: 'settings' },
      make('summary', { text: say('page.controls') }), make('p', { class: 'note', text: say('page.say.what') }),
      place, make('div', { class: 'of-all' }, evidence.element, view.look, EarlierView.of(page)));
    const box = byId('controls');
    if (box !== null) {
      box.append(view.element, more);
      box.hidden = false;
    }
    let shownFor = null;

    function ofQuestion(question) {
      if (!byQuestion.has(question)) {
        byQuestion.set(question, [MarginControl.of(page, question), ToleranceControl.of(page, question)]);
      }
      return byQuestion.get(question);
    }
    function update() {
      const { view: shown, settings } = page.state;
      view.update(shown);
      evidence.update(settings);
      const at = page.data.questions.findIndex(q => q.metric === shown.question);
      if (shownFor !== at) {
        shownFor = at;
        const parts = at < 0 ? [choose] : ofQuestion(page.data.questions[at]).map(c => c.element);
        place.replaceChildren(...parts.filter(e => e !== null));
      }
      if (at >= 0) {
        ofQuestion(page.data.questions[at]).forEach(c => c.update(page.now.questions[at]));
      }
    }
    return { update, open: () => (more.open = true) };
  }

  /** Tells those who listen, once a change has come to rest. */
  function teller() {
    const place = byId('said');
    let waiting = 0;
    return text => {
      clearTimeout(waiting);
      waiting = setTimeout(() => {
        if (place !== null) {
          place.textContent = text;
        }
      }, 300);
    };
  }

  /** Rows of the questions that can be seen; the others are set when they are chosen. */
  function showRows(page, tables) {
    const count = { shown: 0, of: 0, changed: 0 };
    const chosen = page.state.view.question;
    tables.forEach((t, i) => {
      if (chosen !== '' && chosen !== t.rows.question.metric) {
        return;
      }
      const found = PairRows.update(page, t.rows, page.now.questions[i], page.report.questions[i]);
      GridRows.update(t.grid, t.rows.rows);
      t.order();
      t.draw.forEach(draw => draw());
      count.shown += found.shown;
      count.of += found.of;
      count.changed += found.changed;
    });
    return count;
  }

  /** Starts the page with the data of its report. */
  function start(data) {
    const say = Words.sayer(data.words);
    const judge = Judging.judgeOf(data);
    const report = judge(Judging.REPORT);
    const page = { data, say, sign: data.run.decimalSign, state: Fragment.start(), report, now: report, tell: teller() };
    const tables = data.questions.map((question, i) => ({
      rows: PairRows.of(page, question, report.questions[i].pairs), grid: GridRows.of(question), table: byId('t-' + question.table), order: () => {},
      draw: [],
    }));
    const sections = QuestionSections.of(page);
    let settings = null;
    let refreshBanner = () => {};

    const writeAddress = addressWriter();
    let judgedFor = page.state.settings;

    function show(isStep) {
      if (judgedFor !== page.state.settings) {
        judgedFor = page.state.settings;
        page.now = judge(judgedFor);
      }
      ViewControl.apply(page.state.view);
      const count = showRows(page, tables);
      QuestionSections.update(page, sections, page.now, page.report);
      settings.update();
      refreshBanner();
      writeAddress(page.state, isStep);
      return count;
    }
    function change(part, values) {
      page.state = { ...page.state, [part]: { ...page.state[part], ...values } };
      const { shown, of, changed } = show(false);
      page.tell(say('page.say.rows', { shown: String(shown), of: String(of) }) +
        (page.now.isReport ? '' : ' ' + say('page.say.changed-count', { changed: String(changed) })));
    }
    const without = (map, key, value) => {
      const { [key]: gone, ...rest } = map;
      return value === undefined ? rest : { ...rest, [key]: value };
    };
    page.setView = values => change('view', values);
    page.setSettings = values => change('settings', values);
    page.setMargin = (question, number) => {
      const isReport = question.margin && question.margin.number === number;
      change('settings', { margins: without(page.state.settings.margins, question.metric, isReport ? undefined : number) });
    };
    page.setTolerance = (key, amount) =>
      change('settings', { tolerances: without(page.state.settings.tolerances, key, amount) });
    page.reset = () => change('settings', Fragment.start().settings);
    page.goTo = id => {
      if (Ladders.reveal(page, id)) {
        page.state = { ...page.state, view: { ...page.state.view, at: id } };
        writeAddress(page.state, true);
      }
    };

    /** An ordinary anchor moves the reader and leaves the settings. */
    function readAddress() {
      const text = location.hash.slice(1);
      const state = Fragment.read(text, data);
      page.state = state === null ? { ...page.state, view: { ...page.state.view, at: Fragment.anchor(text) } } : state;
      show(false);
      if (!page.now.isReport) {
        settings.open(); // and nothing but the reader closes it
      }
      if (page.state.view.at !== '') {
        Ladders.reveal(page, page.state.view.at);
      }
    }
    tables.filter(t => t.rows.rows.length > 0).forEach(t => {
      t.order = Tables.addSorting(page, t.table);
      t.draw = [t.table, byId('t-' + t.rows.question.grid)].map(table => LongTables.of(page, table));
    });
    document.querySelectorAll('table[id^="t-"]').forEach(table => table.tHead !== null && Tables.addDownload(page, table));
    settings = controls(page);
    refreshBanner = Banner.of(page);
    Ladders.follow(page);
    window.addEventListener('popstate', readAddress);
    readAddress();
    PairRows.prepare(tables.map(t => t.rows));
    return page;
  }

  return { start };
})();
