/**
 * Long tables: the first rows that fit are drawn, the others when a reader asks for them. For every row that changes, a browser
 * lays out the whole table; of thousands of rows nobody would wait for it. What is downloaded holds them all.
 */
const LongTables = (() => {
  'use strict';

  const { make, button, setText, setHidden } = Elements;

  /** More rows than any window shows. */
  const FIRST = 300;

  /** Sets the rows, in the order in which they stand; says how many fit. */
  function draw(table, most) {
    let fit = 0;
    for (const body of table.tBodies) {
      for (const row of body.rows) {
        fit += row.hidden ? 0 : 1;
        const beyond = !row.hidden && fit > most;
        if (row.classList.contains('beyond') !== beyond) {
          row.classList.toggle('beyond', beyond);
        }
      }
    }
    return fit;
  }

  /**
   * A table of a page.
   *
   * @param {Object} page
   * @param {?HTMLTableElement} table
   * @param {number} first how many rows are drawn at first
   *
   * @returns {function(): void} draws the rows after each change; does nothing where the table is short
   */
  function of(page, table, first = FIRST) {
    if (table === null || [...table.tBodies].reduce((n, body) => n + body.rows.length, 0) <= first) {
      return () => {};
    }
    let most = first;
    const said = make('span', {});
    const all = button(page.say('page.rows.all'), () => {
      most = Infinity;
      update();
    });
    const note = make('p', { class: 'note tools', hidden: true }, said, ' ', all);
    (table.closest('.frame') || table).before(note);

    function update() {
      const fit = draw(table, most);
      setText(said, page.say('page.say.beyond', { shown: String(Math.min(most, fit)), of: String(fit) }));
      setHidden(note, fit <= most);
    }
    return update;
  }

  return { of };
})();
