/** For which margins an answer is the one it is, and where it turns into which other. */
const Margins = (() => {
  'use strict';

  const BEYOND = ['HIGHER_BEYOND_MARGIN', 'LOWER_BEYOND_MARGIN'];
  const WITHIN = ['NONE_AS_LARGE_AS_MARGIN', 'SMALLER_THAN_MARGIN'];

  const sizes = d => [Math.abs(d.low), Math.abs(d.high)].sort((a, b) => a - b);

  /**
   * The margins that give a verdict for an interval.
   *
   * @returns {{above: number, below: ?number}} above is 0 and below is null where there is no such limit
   */
  function range(verdict, d) {
    const [nearer, farther] = sizes(d);
    if (BEYOND.includes(verdict)) {
      return { above: 0, below: nearer };
    }
    if (WITHIN.includes(verdict)) {
      return { above: farther, below: null };
    }
    if (verdict === 'NOT_SETTLED') {
      return { above: 0, below: farther };
    }
    return verdict.endsWith('_MARGIN_OPEN') ? { above: nearer, below: farther } : { above: 0, below: null };
  }

  /** The margin at which a firm answer would change; null for one that is open or has no margin. */
  function flipsAt(verdict, d) {
    const { above, below } = range(verdict, d);
    return BEYOND.includes(verdict) ? below : WITHIN.includes(verdict) ? above : null;
  }

  /**
   * Every verdict an interval can have, from the smallest margin to the largest.
   *
   * @returns {Array<{verdict: string, above: number, below: ?number}>}
   */
  function steps(d) {
    const [nearer, farther] = sizes(d);
    const side = d.low > 0 ? 'HIGHER' : d.high < 0 ? 'LOWER' : '';
    const names =
      side === ''
        ? ['NOT_SETTLED', 'NONE_AS_LARGE_AS_MARGIN']
        : nearer === farther // a difference of stated figures has no interval
          ? [side + '_BEYOND_MARGIN', 'SMALLER_THAN_MARGIN']
          : [side + '_BEYOND_MARGIN', side + '_MARGIN_OPEN', 'SMALLER_THAN_MARGIN'];
    return names.map(verdict => ({ verdict, ...range(verdict, d) }));
  }

  const holdsBelow = verdict => BEYOND.includes(verdict);

  return { range, flipsAt, steps, holdsBelow };
})();
