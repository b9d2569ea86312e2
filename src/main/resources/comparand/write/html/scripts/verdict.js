/** What an interval for a difference says, given a margin or none. */
const Verdict = (() => {
  'use strict';

  /**
   * Reads the interval against the margin; a limit that touches zero or the margin does not go beyond it.
   *
   * @param {{low: number, high: number}} d
   * @param {?number} margin in the unit of the interval; null where none is set
   * @returns {string} name of the verdict
   */
  function of(d, margin) {
    if (margin === null) {
      return d.low > 0 ? 'HIGHER' : d.high < 0 ? 'LOWER' : 'NOT_SETTLED';
    }
    if (d.low > margin) {
      return 'HIGHER_BEYOND_MARGIN';
    }
    if (d.high < -margin) {
      return 'LOWER_BEYOND_MARGIN';
    }
    if (-margin < d.low && d.high < margin) {
      return d.low <= 0 && 0 <= d.high ? 'NONE_AS_LARGE_AS_MARGIN' : 'SMALLER_THAN_MARGIN';
    }
    return d.low > 0 ? 'HIGHER_MARGIN_OPEN' : d.high < 0 ? 'LOWER_MARGIN_OPEN' : 'NOT_SETTLED';
  }

  return { of };
})();
