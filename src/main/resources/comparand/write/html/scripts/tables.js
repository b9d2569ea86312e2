/** What can be done with tables: download what is visible, and sort by a column. */
const Tables = (() => {
  'use strict';

  const { make, shownText, field, button } = Elements;

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

  const NO_KEY = Object.freeze({ text: '', number: null });

  /** Sorts the rows by a column; into the order of the report by none. */
  function sort(table, column, descending, language) {
    const body = table.tBodies[0];
    const collator = new Intl.Collator(language);
    const rows = [...body.rows].map((row, i) => ({ row, key: column === null ? NO_KEY : sortKey(row, column), first: Number(/r(\d+)$/.exec(row.id)?.[1] ?? i) }));
    rows.sort((a, b) => {
      // numbers before words either way, so that what has no number never leads
      const kinds = (a.key.number === null ? 1 : 0) - (b.key.number === null ? 1 : 0);
      const order = a.key.number !== null ? a.key.number - b.key.number : collator.compare(a.key.text, b.key.text);
      return kinds || (descending ? -order : order) || a.first - b.first;
    });
    body.append(...rows.map(r => r.row));
  }

  /** Marks the heading a table is sorted by; none for the order of the report. */
  function mark(table, column, descending) {
    [...table.tHead.rows[0].cells].forEach((cell, i) => {
      if (i === column) {
        cell.setAttribute('aria-sort', descending ? 'descending' : 'ascending');
      } else {
        cell.removeAttribute('aria-sort');
      }
    });
  }

  const nameOf = table => table.id.replace(/^t-/, '');

  function sortBy(page, sortState, column) {
    page.setView({ sort: sortState });
    page.tell(sortState === '' ? page.say('page.sort.none')
      : page.say(sortState.endsWith('.d') ? 'page.say.sorted-down' : 'page.say.sorted-up', { column }));
  }

  /** Where rows are cards there are no headings to press: a list of all orders, shown there by the style sheet. */
  function sortList(page, table) {
    const name = nameOf(table);
    const orders = headings(table).flatMap((column, i) => [
      { value: name + '.' + i + '.a', column, text: page.say('page.sort.up', { column }) },
      { value: name + '.' + i + '.d', column, text: page.say('page.sort.down', { column }) },
    ]);
    const select = make('select', {}, make('option', { value: '', text: page.say('page.sort.none') }),
      ...orders.map(({ value, text }) => make('option', { value, text })));
    select.addEventListener('change', () => sortBy(page, select.value, orders.find(o => o.value === select.value)?.column));
    const element = field(page.say('page.sort.by'), select);
    element.classList.add('orders', 'tools');
    (table.closest('.frame') || table).before(element);
    return select;
  }

  /**
   * Turns the headings of a table of pairs into buttons; the state names the column as table.column.a or d.
   *
   * @returns {function(): void} brings the table into the order of the state; the report's where the state does not name it
   */
  function addSorting(page, table) {
    const name = nameOf(table);
    const select = sortList(page, table);
    [...table.tHead.rows[0].cells].forEach((cell, column) => {
      const text = shownText(cell);
      const press = () => sortBy(page, name + '.' + column + (page.state.view.sort === name + '.' + column + '.a' ? '.d' : '.a'), text);
      const sorter = button('', press, { class: 'sort', title: page.say('page.sort.label', { column: text }) });
      sorter.append(...cell.childNodes);
      cell.append(sorter);
    });
    let sorted = '';
    return () => {
      const { sort: given } = page.state.view;
      const wanted = [...select.options].some(o => o.value === given) ? given : '';
      if (wanted !== sorted) {
        sorted = wanted;
        select.value = wanted;
        const [, number, way] = wanted.split('.');
        const column = wanted === '' ? null : Number(number);
        sort(table, column, way === 'd', page.data.run.language);
        mark(table, column, way === 'd');
      }
    };
  }

  return { addDownload, addSorting, records };
})();
