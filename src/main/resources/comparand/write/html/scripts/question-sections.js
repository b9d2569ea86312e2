/** The sections of the questions, and what is said in them and in the list of questions while somebody explores. */
const QuestionSections = (() => {
  'use strict';

  const { make, byId, section, setHidden, setText, shownPart } = Elements;

  /** More changed answers than these are counted, and not listed. */
  const LISTED = 8;

  /** Sources together, where the sentences of the choice made are put; behind the table of the pool. */
  function poolPlaces(question) {
    return question.pools.map(pool => {
      const table = byId('t-' + pool.table);
      const place = make('div', { class: 'noted', hidden: true });
      if (table !== null) {
        (table.closest('.frame') || table).after(place);
      }
      return place;
    });
  }

  /** The row of a question in the list of questions, as the report has it; null where there is none. */
  function summaryOf(question) {
    const element = byId('t-' + question.summary.table + '-r' + question.summary.row);
    const cell = name => {
      const found = element.cells[question.summary[name]];
      const part = shownPart(found);
      return { cell: found, part, report: part.textContent, note: null };
    };
    return element === null ? null
      : { element, margin: cell('margin'), present: cell('present'), published: cell('published') };
  }

  function figureNotes(page, element) {
    return [...element.querySelectorAll('figure[id^="f-"]')].map(figure => {
      const note = make('p', { class: 'note noted', hidden: true, text: page.say('page.say.figure') });
      figure.prepend(note);
      return note;
    });
  }

  function of(page) {
    const notes = figureNotes(page, document);
    const lists = new Set(page.data.questions.map(q => byId('t-' + q.summary.table)).filter(t => t !== null).map(t => t.closest('section')));
    const questions = page.data.questions.map(question => ({
      question, element: section(question.section), pools: poolPlaces(question), summary: summaryOf(question), shown: null,
    }));
    return { questions, notes, lists: [...lists].filter(s => s !== null) };
  }

  /** What the report says where a cell now says something else, and how many answers are left out. */
  function noteTexts(page, pairs, reports, margin) {
    const say = page.say;
    const out = pairs.filter(j => j.leftOut).length;
    const changed = pairs.filter(j => !j.leftOut && j.key !== reports.get(j.pair).key);
    const of = String(pairs.length);
    return [
      ...(changed.length > 0 ? [say('page.say.summary-changed', { changed: String(changed.length), of })] : []),
      ...(changed.length <= LISTED ? changed.map(j =>
        say('page.say.summary-report', { line: QuestionLines.shortLine(say, reports.get(j.pair), margin, page.sign) })) : []),
      ...(out > 0 ? [say('page.say.summary-out', { out: String(out), of })] : []),
    ];
  }

  function setCell(at, text, notes) {
    setText(at.part, text);
    if (at.note === null && notes.length > 0) {
      at.note = make('p', { class: 'note noted' });
      at.cell.append(at.note);
    }
    if (at.note !== null) {
      setText(at.note, notes.join('\n'));
      setHidden(at.note, notes.length === 0);
    }
    return notes.length > 0;
  }

  /** The row of a question in the list: to the letter the report's while its settings are the report's. */
  function setSummary(page, summary, now, report) {
    const { pairs, margin } = now;
    const reports = new Map(report.pairs.map(j => [j.pair, j]));
    const notes = of => noteTexts(page, of(pairs), reports, report.margin);
    const texts = QuestionLines.texts(page.say, now, page.sign);
    const changes = [
      setCell(summary.margin, margin.text === report.margin.text ? summary.margin.report : margin.text, []),
      setCell(summary.present, texts.present, notes(QuestionLines.ofPresent)),
      setCell(summary.published, texts.published, notes(QuestionLines.ofPublished)),
    ];
    summary.element.classList.toggle('changed', changes.includes(true));
  }

  function setPool(page, place, now, exploring) {
    const isWhole = now.kept.length === now.pool.sources.length && now.sentences !== null;
    const texts = isWhole ? [] : now.sentences === null ? [page.say('page.say.pool-none')] : now.sentences;
    const shown = exploring && texts.length > 0;
    if (shown && place.dataset.said !== texts.join('\n')) {
      place.dataset.said = texts.join('\n');
      place.replaceChildren(make('p', {}, make('strong', { text: page.say('page.pool.title') })), ...texts.map(text => make('p', { text })));
    }
    setHidden(place, !shown);
  }

  function update(page, sections, now, report) {
    const chosen = page.state.view.question;
    sections.lists.forEach(s => setHidden(s, chosen !== ''));
    sections.questions.forEach((s, i) => {
      if (s.element !== null) {
        setHidden(s.element, chosen !== '' && chosen !== s.question.metric);
      }
      const { pools } = now.questions[i];
      if (s.summary !== null && s.shown !== now.questions[i]) {
        s.shown = now.questions[i];
        setSummary(page, s.summary, now.questions[i], report.questions[i]);
      }
      pools.forEach((p, k) => setPool(page, s.pools[k], p, !now.isReport));
    });
    sections.notes.forEach(n => setHidden(n, now.isReport));
  }

  return { of, update };
})();
