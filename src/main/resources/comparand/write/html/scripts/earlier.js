/** An earlier results.json beside this report: which pairs have the same answer, which another, which went and which came. */
const Earlier = (() => {
  'use strict';

  const FORMATS = 'comparand-results-';

  const constant = kebab => kebab.toUpperCase().replace(/-/g, '_');

  /** The key of an answer, as it is formed of what is judged here. */
  function keyOf(pair) {
    const codes = [pair.answer.difference, pair.answer['if-standard-error']]
      .filter(d => d)
      .map(d => constant(d.verdict));
    return Judging.keyOf(pair.answer.kind, constant(pair.standing), codes);
  }

  /** Whether a text is a results file at all; the pairs are looked at one by one. */
  function isResults(results) {
    return results !== null && typeof results === 'object' && typeof results.format === 'string' &&
      results.format.startsWith(FORMATS) && Array.isArray(results.pairs) && results.pairs.every(
        p => p && typeof p.id === 'string' && typeof p.standing === 'string' && p.answer && typeof p.answer.kind === 'string');
  }

  const languageOf = results => (results.run && results.run.language) || '';

  /**
   * Compares by sentence where both speak one language, and by verdict where they do not.
   *
   * @param {Object} results what an earlier run wrote
   * @param {Array} judged the pairs of this report under its own settings
   * @param {string} language of this report
   * @returns {?{asOf: string, same: number, rows: Array<{kind: string, id: string, judged: ?Object, then: string, now: string}>}}
   *     null if it is no results file; kind is another, gone or new
   */
  function compare(results, judged, language) {
    if (!isResults(results)) {
      return null;
    }
    const bySentence = languageOf(results) === language;
    const now = new Map(judged.map(j => [j.pair.id, j]));
    const before = new Map(results.pairs.map(p => [p.id, p]));
    const rows = [];
    let same = 0;
    for (const p of results.pairs) {
      const j = now.get(p.id);
      const then = String(p.answer.sentence || '');
      if (j === undefined) {
        rows.push({ kind: 'gone', id: p.id, judged: null, then, now: '' });
      } else if (bySentence ? then === j.sentence && constant(p.standing) === j.standing : keyOf(p) === j.key) {
        same += 1;
      } else {
        rows.push({ kind: 'another', id: p.id, judged: j, then, now: j.sentence });
      }
    }
    for (const j of judged.filter(one => !before.has(one.pair.id))) {
      rows.push({ kind: 'new', id: j.pair.id, judged: j, then: '', now: j.sentence });
    }
    return { asOf: String((results.run && results.run['as-of']) || ''), same, rows };
  }

  return { compare, isResults };
})();
