/** A row as text that can stand alone in a letter: no number leaves the page without its conditions and its place. */
const CopiedRow = (() => {
  'use strict';

  /** One condition of the line, as printed: ours before the bar, theirs behind it. */
  function item(c) {
    const mark = c.shortName + ' ' + Standing.SIGN[c.mark];
    if (c.mark === 'DIFFERS') {
      return mark + ' (' + c.ours + ' | ' + c.theirs + ')';
    }
    return c.mark === 'MADE_SAME' && c.of === 'unit' ? mark + ' (' + c.theirs + ')' : mark;
  }

  /** {@code flow = · Hb ≠ (12.0 g/dL | 10 g/dL) · temp ?} */
  const conditionLine = conditions => conditions.map(item).join(' · ');

  /** A locator with the reference its number stands for. */
  function place(data, pair) {
    const source = data.sources.find(s => s.id === pair.source);
    return source === undefined ? pair.theirsLocator : pair.theirsLocator + ', ' + source.reference;
  }

  /**
   * @param {Array<{heading: string, text: string}>} cells of the row, as shown
   * @param {Object} judged the pair as it is judged now
   * @param {string[]} differences of the settings from the report's; none while they are the report's
   */
  function text(data, question, cells, judged, differences) {
    const say = Words.sayer(data.words);
    const line = (name, words) => name + ': ' + words;
    const run = data.run;
    // what the row itself says is not said twice
    const unsaid = (name, words) => (cells.some(c => c.text.includes(words)) ? [] : [line(name, words)]);
    return [
      ...run.marks,
      question.asks,
      ...cells.map(c => line(c.heading, c.text)),
      ...unsaid(say('page.copy.standing'), say('standing.' + judged.standing)),
      line(say('page.copy.conditions'), conditionLine(judged.conditions)),
      ...judged.remarks.flatMap(r => unsaid(say('page.copy.remark'), r)),
      ...unsaid(say('page.copy.ours'), judged.pair.oursLocator),
      line(say('page.copy.theirs'), place(data, judged.pair)),
      ...differences.map(d => line(say('page.copy.exploring'), d)),
      run.rider,
      [run.title, run.asOf, run.state, run.tool, run.fingerprint.slice(0, 8)].join(', '),
    ].join('\n') + '\n';
  }

  return { text, conditionLine };
})();
