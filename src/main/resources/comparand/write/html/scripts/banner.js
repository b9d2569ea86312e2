/** Says that the settings are not those of the report, and which; it is printed with the page. */
const Banner = (() => {
  'use strict';

  const { make, byId, setHidden, button } = Elements;

  /** @returns {function(): void} brings the banner up to date */
  function of(page) {
    const say = page.say;
    const place = byId('exploring');
    if (place === null) {
      return () => {};
    }
    const list = make('ul', {});
    const lines = make('pre', { tabindex: '0', 'aria-label': say('page.scenario.title') });
    const scenario = make('details', {}, make('summary', { text: say('page.scenario.title') }),
      make('p', { text: say('page.say.scenario') }), lines,
      make('p', { class: 'tools' }, button(say('page.scenario.copy'), () => Dialogs.copy(page, say('page.scenario.title'), lines.textContent))));
    place.append(make('p', {}, make('strong', { text: say('page.say.exploring') })), list,
      make('p', { text: say('page.say.exploring-rest') }));
    // among the controls and not in the banner: what is announced and printed is the list, and not the lines
    const tools = make('div', { class: 'others', hidden: true }, make('p', { class: 'tools' },
      button(say('page.reset-all'), () => page.reset())), scenario);
    const choosers = document.querySelector('#controls .bar');
    if (choosers !== null) {
      choosers.after(tools);
    }
    let before = '';
    return () => {
      const differences = Differences.list(page.data, page.state.settings);
      const isChanged = differences.join('\n') !== before;
      if (isChanged) {
        before = differences.join('\n');
        list.replaceChildren(...differences.map(text => make('li', { text })));
        const made = Differences.scenario(page.data, page.state.settings);
        lines.textContent = made.join('\n');
        setHidden(scenario, made.length === 0);
      }
      setHidden(place, differences.length === 0);
      setHidden(tools, differences.length === 0);
      if (!isChanged) {
        return;
      }
      // where the banner stays in sight, nothing that is scrolled to hides behind it
      const height = getComputedStyle(place).position === 'sticky' ? place.offsetHeight + 'px' : '';
      if (document.documentElement.style.scrollPaddingTop !== height) {
        document.documentElement.style.scrollPaddingTop = height;
      }
    };
  }

  return { of };
})();
