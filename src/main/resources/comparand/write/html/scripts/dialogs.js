/** Dialogs: Escape closes them, and the focus goes back to where it was. */
const Dialogs = (() => {
  'use strict';

  const { make, button, newId } = Elements;

  /**
   * Opens a dialog and removes it when it closes.
   *
   * @param {function} say
   * @param {string} title
   * @param {...Node} children
   * @returns {HTMLDialogElement}
   */
  function open(say, title, ...children) {
    const opener = document.activeElement;
    const heading = make('h2', { id: newId('dialog'), text: title });
    const dialog = make('dialog', { 'aria-labelledby': heading.id, class: 'dialog' });
    const close = button(say('page.close'), () => dialog.close(), { class: 'close' });
    dialog.append(heading, ...children, make('p', { class: 'tools' }, close));
    dialog.addEventListener('close', () => {
      dialog.remove();
      // a link in the dialog has moved the focus on purpose
      if (!dialog.dataset.left && opener instanceof HTMLElement && opener.isConnected) {
        opener.focus();
      }
    });
    document.body.append(dialog);
    dialog.showModal();
    close.focus();
    return dialog;
  }

  /** Closes the dialog a link stands in, without taking the focus back. */
  function leave(link) {
    const dialog = link.closest('dialog');
    if (dialog !== null) {
      dialog.dataset.left = 'yes';
      dialog.close();
    }
  }

  /** Text to be copied by hand, where the browser does not let a page copy. */
  function toCopy(say, title, text) {
    const area = make('textarea', { readonly: true, rows: '12', cols: '70', 'aria-label': title });
    area.value = text;
    open(say, title, make('p', { text: say('page.say.copy-by-hand') }), area);
    area.focus();
    area.select();
  }

  /** Puts a text into the clipboard, or shows it to be copied by hand. */
  function copy(page, title, text) {
    const byHand = () => toCopy(page.say, title, text);
    if (!navigator.clipboard || !navigator.clipboard.writeText) {
      byHand();
      return;
    }
    navigator.clipboard.writeText(text).then(() => page.tell(page.say('page.say.copied')), byHand);
  }

  return { open, leave, copy };
})();
