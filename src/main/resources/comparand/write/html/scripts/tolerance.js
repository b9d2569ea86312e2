/** How far two numbers of a condition may lie apart and still count as the same. */
const Tolerance = (() => {
  'use strict';

  /** The last bit of a double must not decide, so a billionth is allowed on top. */
  const slack = size => 1e-9 * Math.max(1e-3, Math.abs(size));

  /**
   * Numbers that differ by exactly the tolerance are the same.
   *
   * @param {string} kind equal, absolute or relative
   * @param {number} amount as written: per cent where relative
   * @param {number} perUnit what brings the amount to the unit of the numbers, or to a share
   */
  function same(kind, amount, perUnit, ours, theirs) {
    const apart = Math.abs(ours - theirs);
    if (kind === 'equal') {
      return apart <= slack(theirs);
    }
    const allowed = amount * perUnit * (kind === 'relative' ? Math.abs(theirs) : 1);
    return apart <= allowed + slack(allowed);
  }

  /** The same at both ends of a range; a single number has both ends alike. */
  function sameEnds(kind, amount, perUnit, ours, theirs) {
    return same(kind, amount, perUnit, ours[0], theirs[0]) && same(kind, amount, perUnit, ours[1], theirs[1]);
  }

  return { same, sameEnds };
})();
