/** Elements made and found. Texts are set as text and never as markup. */
const Elements = (() => {
  'use strict';

  /**
   * A new element.
   *
   * @param {string} tag
   * @param {Object} attributes by name; `text` is its text, a function is a listener of that event, false is left out
   * @param {...(Node|string)} children
   */
  function make(tag, attributes = {}, ...children) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) {
      if (name === 'text') {
        element.textContent = value;
      } else if (typeof value === 'function') {
        element.addEventListener(name, value);
      } else if (value !== false && value !== null && value !== undefined) {
        element.setAttribute(name, value === true ? '' : value);
      }
    }
    element.append(...children);
    return element;
  }

  /**
   * A table of texts. Each cell carries its heading, which stands before it where rows are set as cards.
   *
   * @param {string} caption
   * @param {string[]} headings
   * @param {Array<{cells: string[], class: (string|undefined)}>} rows the first cell names its row
   */
  function table(caption, headings, rows) {
    const body = rows.map(r => make('tr', { class: r.class },
      ...r.cells.map((text, i) => make(i === 0 ? 'th' : 'td', i === 0 ? { scope: 'row', text } : { 'data-label': headings[i], text }))));
    return make('table', {}, make('caption', { text: caption }),
      make('thead', {}, make('tr', {}, ...headings.map(text => make('th', { scope: 'col', text })))),
      make('tbody', {}, ...body));
  }

  const byId = id => document.getElementById(id);

  /** The part of a cell that holds its shown text; marks of notes and buttons stand beside it. */
  const shownPart = cell => cell.querySelector('.v') || cell;

  const shownText = cell => shownPart(cell).textContent.trim();

  /** Touches the document only where it would read differently. */
  function setText(element, text) {
    if (element.textContent !== text) {
      element.textContent = text;
    }
  }

  function setHidden(element, hidden) {
    if (element.hidden !== hidden) {
      element.hidden = hidden;
    }
  }

  /** The id of a section by its name: lower case, whatever is no letter or digit a hyphen. */
  const slug = name => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');

  /** A section by its name or id; null where there is none. */
  const section = name =>
    byId(name) || byId('s-' + slug(name)) || byId('s-' + slug(name).replace(/^-|-$/g, ''));

  /** A ladder by its name or id. */
  const ladder = name => byId('v-' + name) || byId(name);

  let made = 0;
  const newId = beginning => beginning + '-' + (made += 1);

  /** A control under its label. */
  function field(label, control, ...more) {
    control.id = control.id || newId('c');
    return make('p', { class: 'field' }, make('label', { for: control.id, text: label }), ' ', control, ...more);
  }

  /** A box to tick, before its label. */
  function tick(label, checked, change) {
    const box = make('input', { type: 'checkbox', id: newId('c'), change: () => change(box.checked) });
    box.checked = checked;
    return { box, element: make('p', { class: 'field chosen' }, box, ' ', make('label', { for: box.id, text: label })) };
  }

  /** Controls under one heading. No fieldset: that is as wide as its widest choice, however narrow the window. */
  function group(name, ...children) {
    const heading = make('h2', { id: newId('g'), text: name });
    return make('div', { role: 'group', class: 'controls', 'aria-labelledby': heading.id }, heading, ...children);
  }

  /** Controls in one line, named for those who listen: their labels say what they are. */
  const bar = (name, ...children) => make('div', { role: 'group', class: 'bar', 'aria-label': name }, ...children);

  /** A button takes the focus in every browser when it is pressed, so that a dialog it opens can give it back. */
  function button(text, click, attributes = {}) {
    const pressed = event => {
      event.currentTarget.focus();
      click(event);
    };
    return make('button', { type: 'button', text, click: pressed, ...attributes });
  }

  return { make, table, byId, shownPart, shownText, setText, setHidden, section, ladder, field, tick, group, bar, button, newId };
})();
