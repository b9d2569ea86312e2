/** What can be done with tables: download what is visible, and sort by a column. */
const Tables = (() => {
  'use strict';

  const { make, shownText, button } = Elements;

  const NUMBER = /^[^\d+\u2212-]{0,3}([+\u2212-]?\d+(?:[.,]\d+)?)/;

  const visible = row => !row.hidden;

  const headings = table => [...table.tHead.rows[0].cells].map(shownText);

  /** Heading and visible rows, as shown; while exploring, every row says so. */
  function records(table, say, differences) {
    const exploring = differences.length > 0;
    const rows = [...table.tBodies].flatMap(body => [...body.rows]).filter(visible);
    return [
      exploring ? [...headings(table), say('page.csv.settings')] : headings(table),
      ...rows.map(row => {
        const cells = [...row.cells].map(shownText);
        return exploring ? [...cells, say('page.csv.exploring', { differences: differences.join('; ') })] : cells;
      }),
    ];
  }

  function download(page, table) {
    const differences = Differences.list(page.data, page.state.settings);
    const text = Csv.text(records(table, page.say, differences));
    const address = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
    const name = page.data.run.dossier + '-' + table.id.replace(/^t-/, '') + '.csv';
    const link = make('a', { href: address, download: name, hidden: true });
    document.body.append(link);
    link.click();
    link.remove();
    URL.revokeObjectURL(address);
    page.tell(page.say('page.say.downloaded', { file: name }));
  }

  function addDownload(page, table) {
    const caption = table.caption === null ? table.id : shownText(table.caption);
    const tool = button(page.say('page.csv.button'), () => download(page, table), {
      'aria-label': page.say('page.csv.label', { table: caption }),
    });
    (table.closest('.frame') || table).after(make('p', { class: 'tools' }, tool));
  }

  /** What a cell is sorted by: the number it begins with, else its text. */
  function sortKey(row, column) {
    const text = row.cells[column] === undefined ? '' : shownText(row.cells[column]);
    const number = NUMBER.exec(text);
    return { text, number: number === null ? null : Number(number[1].replace(',', '.').replace('\u2212', '-')) };
  }

  function sort(table, column, descending, language) {
    const body = table.tBodies[0];
    const collator = new Intl.Collator(language);
    const rows = [...body.rows].map((row, i) => ({ row, key: sortKey(row, column), first: Number(/r(\d+)$/.exec(row.id)?.[1] ?? i) }));
    rows.sort((a, b) => {
      // numbers before words either way, so that what has no number never leads
      const kinds = (a.key.number === null ? 1 : 0) - (b.key.number === null ? 1 : 0);
      const order = a.key.number !== null ? a.key.number - b.key.number : collator.compare(a.key.text, b.key.text);
      return kinds || (descending ? -order : order) || a.first - b.first;
    });
    body.append(...rows.map(r => r.row));
  }

  /** Marks the heading a table is sorted by; null for the order of the report. */
  function mark(table, column, descending) {
    [...table.tHead.rows[0].cells].forEach((cell, i) => {
      if (i === column) {
        cell.setAttribute('aria-sort', descending ? 'descending' : 'ascending');
      } else {
        cell.removeAttribute('aria-sort');
      }
    });
  }

  /** Turns the headings of a table of pairs into buttons; the state names the column as table.column.a or d. */
  function addSorting(page, table) {
    const name = table.id.replace(/^t-/, '');
    [...table.tHead.rows[0].cells].forEach((cell, column) => {
      const text = shownText(cell);
      const sorter = button('', () => {
        const up = page.state.view.sort === name + '.' + column + '.a';
        page.setView({ sort: name + '.' + column + (up ? '.d' : '.a') });
        page.tell(page.say(up ? 'page.say.sorted-down' : 'page.say.sorted-up', { column: text }));
      }, { class: 'sort', title: page.say('page.sort.label', { column: text }) });
      sorter.append(...cell.childNodes);
      cell.append(sorter);
    });
  }

  /** Brings a table into the order of the state; one that the state does not name is left as it is. */
  function applySort(table, sortState, language) {
    const [name, column, way] = sortState.split('.');
    if (table.id === 't-' + name && table.dataset.sorted !== sortState) {
      sort(table, Number(column), way === 'd', language);
      mark(table, Number(column), way === 'd');
      table.dataset.sorted = sortState;
    }
  }

  return { addDownload, addSorting, applySort, records };
})();
