/** The table of conditions of a question: what a changed tolerance makes of its cells, and which rows are shown. */
const GridRows = (() => {
  'use strict';

  const { byId, shownPart, setText, setHidden } = Elements;

  /** The mark with both sides, or the one they share; in brackets where it is not held against the comparison. */
  function textOf(c) {
    const sides = c.ours === c.theirs ? c.ours : c.ours + ' | ' + c.theirs;
    const text = Standing.SIGN[c.mark] + ' ' + (sides.trim() === '' ? '1' : sides);
    return c.role === 'qualifies' ? '(' + text + ')' : text;
  }

  /** The rows of the grid of a question; none where the document has no such table. */
  function of(question) {
    const rows = question.pairs.map(pair => ({ pair, element: byId('t-' + question.grid + '-r' + pair.row) }));
    return { question, rows: rows.filter(r => r.element !== null), set: new Map() };
  }

  function cellOf(grid, row, id) {
    const at = grid.question.gridColumns.indexOf(id);
    return at < 0 ? undefined : row.element.cells[grid.question.gridFirst + at];
  }

  function setCell(grid, row, now, report) {
    const cell = cellOf(grid, row, now.id);
    if (cell === undefined) {
      return;
    }
    const isChanged = now.mark !== report.mark;
    const part = shownPart(cell);
    if (isChanged && !grid.set.has(part)) {
      grid.set.set(part, part.textContent);
    }
    if (grid.set.has(part)) {
      setText(part, isChanged ? textOf(now) : grid.set.get(part));
      cell.classList.toggle('changed', isChanged);
    }
  }

  /** @param {Array} rows those of the table of pairs, with what they are judged to be and whether they are shown */
  function update(grid, rows) {
    const shown = new Map(rows.map(r => [r.pair.row, r]));
    for (const row of grid.rows) {
      const pairRow = shown.get(row.pair.row);
      if (pairRow === undefined) {
        continue;
      }
      setHidden(row.element, !pairRow.isShown);
      const { conditions } = pairRow.judged;
      // the conditions of the report themselves, where no tolerance was changed, now or before
      if (conditions !== row.pair.conditions || row.touched) {
        conditions.forEach((c, i) => setCell(grid, row, c, row.pair.conditions[i]));
        row.touched = true;
      }
    }
  }

  return { of, update };
})();
