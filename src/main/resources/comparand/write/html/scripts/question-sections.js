/** The sections of the questions, and what is said in them and in the list of questions while somebody explores. */
const QuestionSections = (() => {
  'use strict';

  const { make, byId, section, setHidden, setText } = Elements;

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

  function summaryNotes(question) {
    const row = byId('t-' + question.summary.table + '-r' + question.summary.row);
    const note = column => {
      const cell = row === null ? undefined : row.cells[column];
      const text = make('pre', { class: 'noted', hidden: true });
      if (cell !== undefined) {
        cell.append(' ', text);
      }
      return { cell, text };
    };
    return { present: note(question.summary.present), published: note(question.summary.published) };
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
      question, element: section(question.section), pools: poolPlaces(question), notes: summaryNotes(question),
    }));
    return { questions, notes, lists: [...lists].filter(s => s !== null) };
  }

  /** How many of the answers in a cell of the list of questions are other ones now. */
  function setSummary(page, note, pairs, reports) {
    const out = pairs.filter(j => j.leftOut).length;
    const now = pairs.filter(j => !j.leftOut && j.key !== reports.get(j.pair).key);
    const changed = now.length;
    const texts = [
      ...(changed > 0 ? [page.say('page.say.summary-changed', { changed: String(changed), of: String(pairs.length) })] : []),
      ...(changed <= LISTED ? now.map(j => PairRows.nameOf(j.pair) + ': ' + j.sentence) : []),
      ...(out > 0 ? [page.say('page.say.summary-out', { out: String(out), of: String(pairs.length) })] : []),
    ];
    setText(note.text, texts.join('\n'));
    setHidden(note.text, texts.length === 0);
    if (note.cell !== undefined) {
      note.cell.classList.toggle('changed', texts.length > 0);
    }
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
      const { pairs, pools } = now.questions[i];
      const reports = new Map(report.questions[i].pairs.map(j => [j.pair, j]));
      const isPublished = j => j.pair.purpose === 'local-against-published';
      setSummary(page, s.notes.present, pairs.filter(j => !isPublished(j)), reports);
      setSummary(page, s.notes.published, pairs.filter(isPublished), reports);
      pools.forEach((p, k) => setPool(page, s.pools[k], p, !now.isReport));
    });
    sections.notes.forEach(n => setHidden(n, now.isReport));
  }

  return { of, update };
})();
