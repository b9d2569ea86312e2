/** Links within the page: what they point to is opened, shown and given the focus, and the address keeps where the reader is. */
const Ladders = (() => {
  'use strict';

  const { byId } = Elements;

  /** Opens a place: closed details around it open, and a hidden section comes back by the question it belongs to. */
  function reveal(page, id) {
    const target = byId(id);
    if (target === null) {
      return false;
    }
    const hiddenSection = target.closest('section[hidden]');
    if (hiddenSection !== null) {
      const question = page.data.questions.find(q => Elements.section(q.section) === hiddenSection);
      page.setView({ question: question === undefined ? '' : question.metric });
    }
    for (let at = target; at !== null; at = at.parentElement) {
      if (at instanceof HTMLDetailsElement) {
        at.open = true;
      }
    }
    const summary = target instanceof HTMLDetailsElement ? target.querySelector('summary') : target;
    if (summary.tabIndex < 0 && !summary.hasAttribute('tabindex')) {
      summary.setAttribute('tabindex', '-1'); // so that reading goes on from here
    }
    summary.focus({ preventScroll: true });
    // at once: on a slow way sections are laid out that were not before, and the place moves on while the reader is led there
    target.scrollIntoView({ block: 'start', behavior: 'instant' });
    return true;
  }

  /** Follows the links of the page by hand, so that the settings stay in the address. */
  function follow(page) {
    document.addEventListener('click', event => {
      const link = event.target instanceof Element ? event.target.closest('a[href^="#"]') : null;
      if (link === null || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) {
        return;
      }
      const id = decodeURIComponent(link.getAttribute('href').slice(1));
      if (byId(id) === null) {
        return;
      }
      event.preventDefault();
      Dialogs.leave(link);
      page.goTo(id);
    });
  }

  return { reveal, follow };
})();
