/** The rows of a table of pairs: what stands in them under the settings, which are shown, and what can be done with each. */
const PairRows = (() => {
  'use strict';

  const { make, byId, shownPart, shownText, setText, setHidden, button } = Elements;

  function rowOf(page, question, pair, width) {
    const element = byId('t-' + question.table + '-r' + pair.row);
    if (element === null) {
      return null;
    }
    const cells = {};
    for (const name of ['theirs', 'difference', 'answer', 'standing', 'notes']) {
      const cell = element.cells[question.columns[name]];
      cells[name] = { cell, part: shownPart(cell), report: shownPart(cell).textContent, marks: cell.querySelector('sup') };
    }
    const row = { element, pair, cells, judged: null, words: null, why: null, strip: null, noted: null };
    const last = element.cells[element.cells.length - 1];
    last.append(' ', button(page.say('page.copy.button'), () => copy(page, question, row), {
      class: 'copy', 'aria-label': page.say('page.copy.label', { row: nameOf(pair) }),
    }));
    return row;
  }

  const nameOf = pair => [pair.deviceName, pair.step, pair.beside].filter(t => t !== '').join(', ');

  function copy(page, question, row) {
    const table = row.element.closest('table');
    const heads = [...table.tHead.rows[0].cells].map(Elements.shownText);
    const cells = [...row.element.cells].map((cell, i) => ({ heading: cell.dataset.label || heads[i], text: shownText(cell) }));
    const differences = Differences.list(page.data, page.state.settings);
    Dialogs.copy(page, page.say('page.copy.title'), CopiedRow.text(page.data, question, cells, row.judged, differences));
  }

  /**
   * The rows of a question.
   *
   * @param {Array} judged its pairs as the report judges them
   *
   * @returns {{question: Object, rows: Array, reach: number}} without rows where the document has no such table
   */
  function of(page, question, judged) {
    const rows = question.pairs.map(pair => rowOf(page, question, pair)).filter(r => r !== null);
    return { question, rows, reach: Strip.reach(question, judged) };
  }

  function setCell(cell, text, isReport) {
    setText(cell.part, isReport ? cell.report : text);
    if (cell.marks !== null) {
      setHidden(cell.marks, !isReport); // its notes speak of the answer of the report
    }
  }

  /** The button exists once it was needed. */
  function setWhy(page, row, compared) {
    if (row.why === null && !compared) {
      row.why = button(page.say('page.why.button'), () => WhyDialog.open(page, row.judged), {
        class: 'ask', 'aria-haspopup': 'dialog', 'aria-label': page.say('page.why.label', { row: nameOf(row.pair) }),
      });
      row.cells.theirs.cell.append(' ', row.why);
    }
    if (row.why !== null) {
      setHidden(row.why, compared);
    }
  }

  function setStrip(row, judged, margin, reach) {
    const reading = row.pair.answer.readings[0];
    const drawn = judged.compared && reading !== undefined && reading.low < reading.high;
    if (row.strip === null && drawn) {
      row.strip = Strip.of(reading, reach);
      row.cells.difference.cell.append(' ', row.strip.svg);
    }
    if (row.strip !== null) {
      row.strip.svg.style.display = drawn ? '' : 'none';
      Strip.setMargin(row.strip.band, margin.value, reach);
    }
  }

  /** The words that go with a changed row, so that no colour has to carry it. */
  function setNoted(page, row, report, isChanged) {
    row.element.classList.toggle('changed', isChanged);
    if (row.noted === null && isChanged) {
      row.noted = make('p', { class: 'note noted' });
      row.cells.answer.cell.append(row.noted);
    }
    if (row.noted !== null) {
      setText(row.noted, isChanged ? page.say('page.say.changed', { report: Words.upperFirst(report.sentence) }) : '');
      setHidden(row.noted, !isChanged);
    }
  }

  const notesOf = (page, judged) => Sentences.notes(page.say, judged).join(' ') || page.say('not-applicable');

  /** Sets one row; nothing is touched that would read the same. */
  function setRow(page, row, judged, report, margin, reach) {
    const before = row.judged;
    row.judged = judged;
    const sameAsBefore = before !== null && before.sentence === judged.sentence && before.standing === judged.standing &&
      before.remarks.join() === judged.remarks.join();
    if (!sameAsBefore) {
      const isReport = judged.sentence === report.sentence && judged.standing === report.standing;
      row.words = null;
      setCell(row.cells.theirs, judged.theirs, judged.theirs === report.theirs);
      setCell(row.cells.difference, judged.difference || page.say('not-applicable'), judged.compared === report.compared);
      setCell(row.cells.answer, Words.upperFirst(judged.sentence), isReport);
      setCell(row.cells.notes, notesOf(page, judged), isReport && judged.remarks.join() === report.remarks.join());
      setCell(row.cells.standing, page.say('standing.' + judged.standing), judged.standing === report.standing);
      setNoted(page, row, report, judged.key !== report.key);
      setWhy(page, row, judged.compared);
    }
    setStrip(row, judged, margin, reach);
  }

  /** What a filter looks through. */
  function wordsOf(page, row) {
    if (row.words === null) {
      row.words = [...row.element.cells].map(shownText).join(' ').toLowerCase();
    }
    return row.words;
  }

  function isShown(page, row, view) {
    const { pair } = row;
    return !row.judged.leftOut &&
      (view.device === '' || view.device === pair.device) &&
      (view.beside === '' || view.beside === (pair.source || pair.purpose)) &&
      (view.filter.trim() === '' || wordsOf(page, row).includes(view.filter.trim().toLowerCase()));
  }

  /**
   * Sets all rows of a question.
   *
   * @param {Object} now, report the question as judged now and by the report
   * @returns {{shown: number, of: number, changed: number}}
   */
  function update(page, table, now, report) {
    const count = { shown: 0, of: table.rows.length, changed: 0 };
    const reports = new Map(report.pairs.map(j => [j.pair.row, j]));
    const judged = new Map(now.pairs.map(j => [j.pair.row, j]));
    for (const row of table.rows) {
      const j = judged.get(row.pair.row);
      const r = reports.get(row.pair.row);
      setRow(page, row, j, r, now.margin, table.reach);
      row.isShown = isShown(page, row, page.state.view);
      setHidden(row.element, !row.isShown);
      count.shown += row.isShown ? 1 : 0;
      count.changed += j.key !== r.key ? 1 : 0;
    }
    return count;
  }

  return { of, update, nameOf };
})();
