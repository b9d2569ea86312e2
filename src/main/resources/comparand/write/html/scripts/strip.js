/**
 * A small drawing of an interval against zero and the margin. It is hidden from readers who listen: the numbers stand beside
 * it in words.
 */
const Strip = (() => {
  'use strict';

  const NS = 'http://www.w3.org/2000/svg';
  const WIDTH = 120;
  const HEIGHT = 16;
  const MIDDLE = HEIGHT / 2;

  function part(name, attributes) {
    const element = document.createElementNS(NS, name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    return element;
  }

  /**
   * The largest size that the strips of a question show: that of all the report compares, and the margin of the report well
   * within. What lies beyond ends at the edge; one scale for all, or the strips could not be held against each other.
   */
  function reach(question, judged) {
    const least = question.margin ? 1.5 * question.margin.value : 1e-12;
    return 1.05 * judged
      .filter(j => j.compared)
      .flatMap(j => j.pair.answer.readings)
      .reduce((most, r) => Math.max(most, Math.abs(r.low), Math.abs(r.high)), least);
  }

  const at = (value, reached) => (WIDTH / 2) * (1 + Math.max(-1, Math.min(1, value / reached)));

  /**
   * A strip of a reading.
   *
   * @returns {{svg: SVGElement, band: SVGElement}} the band is that of the margin
   */
  function of(reading, reached) {
    const svg = part('svg', {
      class: 'strip', viewBox: '0 0 ' + WIDTH + ' ' + HEIGHT, width: WIDTH, height: HEIGHT, 'aria-hidden': 'true', focusable: 'false',
    });
    const band = part('rect', { y: 0, height: HEIGHT, fill: 'currentColor', 'fill-opacity': 0.16 });
    const zero = part('line', { x1: WIDTH / 2, x2: WIDTH / 2, y1: 0, y2: HEIGHT, stroke: 'currentColor', 'stroke-dasharray': '2 2' });
    const x = [reading.low, reading.high].map(v => at(v, reached).toFixed(1));
    const interval = part('line', { x1: x[0], x2: x[1], y1: MIDDLE, y2: MIDDLE, stroke: 'currentColor', 'stroke-width': 2 });
    const mark = part('circle', { cx: at(reading.value, reached).toFixed(1), cy: MIDDLE, r: 3, fill: 'currentColor' });
    svg.append(band, zero, interval, mark);
    return { svg, band };
  }

  /** Sets the band to a margin; without one there is no band. */
  function setMargin(band, margin, reached) {
    const low = margin === null ? WIDTH / 2 : at(-margin, reached);
    const width = (margin === null ? 0 : at(margin, reached) - low).toFixed(1);
    if (band.getAttribute('width') !== width) {
      band.setAttribute('x', low.toFixed(1));
      band.setAttribute('width', width);
    }
  }

  return { of, setMargin, reach };
})();
