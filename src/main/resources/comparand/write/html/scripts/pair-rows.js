/** The rows of a table of pairs: what stands in them under the settings, which are shown, and what can be done with each. */
const PairRows = (() => {
  'use strict';

  const { make, byId, shownPart, shownText, setText, setHidden, button } = Elements;

  function rowOf(page, question, pair) {
    const element = byId('t-' + question.table + '-r' + pair.row);
    if (element === null) {
      return null;
    }
    const cells = {};
    for (const name of ['theirs', 'difference', 'answer', 'standing', 'notes']) {
      const cell = element.cells[question.columns[name]];
      cells[name] = { cell, part: shownPart(cell), report: shownPart(cell).textContent, marks: cell.querySelector('sup') };
    }
    const parts = [...element.cells].map(shownPart);
    const row = { element, pair, cells, parts, isShown: true, judged: null, words: null, why: null, strip: null, noted: null };
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
   * @returns {{question: Object, rows: Array, reach: number, judged: ?Object, changed: number}} without rows where the document has no such table
   */
  function of(page, question, judged) {
    const rows = question.pairs.map(pair => rowOf(page, question, pair)).filter(r => r !== null);
    return { question, rows, reach: Strip.reach(question, judged), judged: null, changed: 0 };
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

  /** What a filter looks through: the words of the row in lower case, kept until the row says something else. */
  function wordsOf(row) {
    if (row.words === null) {
      row.words = row.parts.map(p => p.textContent).join(' ').toLowerCase();
    }
    return row.words;
  }

  /** Whether a row is shown under a view. */
  function filterOf(view) {
    const words = view.filter.trim().toLowerCase();
    return row =>
      !row.judged.leftOut &&
      (view.device === '' || view.device === row.pair.device) &&
      (view.beside === '' || view.beside === (row.pair.source || row.pair.purpose)) &&
      (words === '' || wordsOf(row).includes(words));
  }

  /** What the rows say; nothing to do while the question is judged as it was. */
  function judge(page, table, now, report) {
    const reports = new Map(report.pairs.map(j => [j.pair, j]));
    const judged = new Map(now.pairs.map(j => [j.pair, j]));
    table.changed = 0;
    for (const row of table.rows) {
      const j = judged.get(row.pair);
      const r = reports.get(row.pair);
      setRow(page, row, j, r, now.margin, table.reach);
      table.changed += j.key !== r.key ? 1 : 0;
    }
    table.judged = now;
  }

  /**
   * Sets all rows of a question.
   *
   * @param {Object} now, report the question as judged now and by the report
   * @returns {{shown: number, of: number, changed: number}}
   */
  function update(page, table, now, report) {
    if (table.judged !== now) {
      judge(page, table, now, report);
    }
    const isShown = filterOf(page.state.view);
    let shown = 0;
    for (const row of table.rows) {
      const show = isShown(row);
      if (row.isShown !== show) {
        row.isShown = show;
        row.element.hidden = !show;
      }
      shown += show ? 1 : 0;
    }
    return { shown, of: table.rows.length, changed: table.changed };
  }

  /** Reads the words of all rows while the reader reads, so that the first filter need not. */
  function prepare(tables) {
    const rows = tables.flatMap(t => t.rows);
    const later = window.requestIdleCallback || (work => setTimeout(() => work({ timeRemaining: () => 8 }), 200));
    let next = 0;
    const work = idle => {
      for (let end = next + 50; next < rows.length; end += 50) {
        for (; next < Math.min(end, rows.length); next += 1) {
          wordsOf(rows[next]);
        }
        if (idle.timeRemaining() < 2) {
          later(work);
          return;
        }
      }
    };
    later(work);
  }

  return { of, update, prepare, nameOf };
})();
