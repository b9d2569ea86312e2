/** Whether the two sides of a pair are like enough to be compared. */
const Standing = (() => {
  'use strict';

  /** The signs of the marks in condition lines. */
  const SIGN = Object.freeze({ SAME: '=', MADE_SAME: '≈', DIFFERS: '≠', NOT_REPORTED: '?', NOT_APPLICABLE: '·' });

  const decidesAgainst = c => c.role === 'decides' && (c.mark === 'DIFFERS' || c.mark === 'NOT_REPORTED');

  /**
   * A condition under a tolerance that was set. The numbers decide anew; what is not in numbers on both sides stays as found.
   *
   * @param {{mark: string, oursNumbers: ?number[], theirsNumbers: ?number[], madeSame: boolean}} condition
   * @param {{kind: string, perUnit: number}} rule
   * @param {number} amount in place of the rule's own
   * @returns {string} the mark
   */
  function mark(condition, rule, amount) {
    if (!condition.oursNumbers || !condition.theirsNumbers) {
      return condition.mark;
    }
    // an amount set where the report wants equal numbers is a distance
    const kind = rule.kind === 'equal' && amount > 0 ? 'absolute' : rule.kind;
    return !Tolerance.sameEnds(kind, amount, rule.perUnit, condition.oursNumbers, condition.theirsNumbers)
      ? 'DIFFERS'
      : condition.madeSame ? 'MADE_SAME' : 'SAME';
  }

  /**
   * The standing of a pair by its conditions.
   *
   * @param {Array<{of: string, role: string, mark: string}>} conditions
   */
  function of(conditions) {
    const against = conditions.filter(decidesAgainst);
    if (against.some(c => c.mark === 'DIFFERS' && c.of === 'definition')) {
      return 'DIFFERENT_QUANTITY';
    }
    if (against.some(c => c.mark === 'DIFFERS')) {
      return 'CONDITIONS_DIFFER';
    }
    if (against.length > 0) {
      return 'NOT_REPORTED';
    }
    return conditions.some(c => c.mark === 'MADE_SAME') ? 'SAME_AFTER_CONVERSION' : 'SAME';
  }

  const isCompared = standing => standing === 'SAME' || standing === 'SAME_AFTER_CONVERSION';

  /** Which of the four texts of the other value stands beside ours. */
  function bracket(standing) {
    return isCompared(standing)
      ? 'plain'
      : { CONDITIONS_DIFFER: 'differs', NOT_REPORTED: 'asked', DIFFERENT_QUANTITY: 'quantity' }[standing];
  }

  return { SIGN, mark, of, isCompared, bracket, decidesAgainst };
})();
