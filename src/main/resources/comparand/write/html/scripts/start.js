/** Starts the page when the document is there; a page without data for scripts stays the static page it is. */
const Start = (() => {
  'use strict';

  function start() {
    const data = document.getElementById('exploration');
    if (data !== null) {
      Explorer.start(JSON.parse(data.textContent));
    }
  }

  if (typeof document !== 'undefined') {
    if (document.readyState === 'loading') {
      document.addEventListener('DOMContentLoaded', start);
    } else {
      start();
    }
  }
  return { start };
})();
