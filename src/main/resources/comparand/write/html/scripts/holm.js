/** P values adjusted for the number of comparisons, step-down (Holm, Scand J Stat 1979;6:65-70). */
const Holm = (() => {
  'use strict';

  /**
   * With p(1) <= ... <= p(m): adjusted(i) = max over j <= i of min(1, (m - j + 1) p(j)).
   *
   * @param {number[]} p
   * @returns {number[]} in the order given
   */
  function adjust(p) {
    const order = p.map((_, i) => i).sort((a, b) => p[a] - p[b]);
    const adjusted = p.slice();
    let largest = 0;
    order.forEach((i, j) => {
      largest = Math.max(largest, Math.min(1, (p.length - j) * p[i]));
      adjusted[i] = largest;
    });
    return adjusted;
  }

  return { adjust };
})();
