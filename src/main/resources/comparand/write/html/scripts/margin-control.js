/** The margin of the chosen question: a number and a slider for it, and where each answer turns into which other. */
const MarginControl = (() => {
  'use strict';

  const { make, field, group, button, setText, newId } = Elements;

  const SHORT = say => ({
    HIGHER_BEYOND_MARGIN: say('page.verdict.higher-beyond'),
    LOWER_BEYOND_MARGIN: say('page.verdict.lower-beyond'),
    HIGHER_MARGIN_OPEN: say('page.verdict.higher-open'),
    LOWER_MARGIN_OPEN: say('page.verdict.lower-open'),
    NONE_AS_LARGE_AS_MARGIN: say('page.verdict.none-as-large'),
    SMALLER_THAN_MARGIN: say('page.verdict.smaller'),
    NOT_SETTLED: say('page.verdict.not-settled'),
  });

  /** One step of a reading in words: below 12.8 mmHg: higher by more than the margin. */
  function stepText(page, step, pair, unit) {
    const at = value => Rounding.text(value, pair.answer.decimals, page.sign) + (unit === '' ? '' : '\u00a0' + unit);
    const verdict = SHORT(page.say)[step.verdict];
    return step.below === null
      ? page.say('page.flip.above', { at: at(step.above), verdict })
      : step.above === 0
        ? page.say('page.flip.below', { at: at(step.below), verdict })
        : page.say('page.flip.between', { low: at(step.above), high: at(step.below), verdict });
  }

  function readingTexts(page, judged, unit) {
    const { pair } = judged;
    const said = reading => Margins.steps(reading).map(s => stepText(page, s, pair, unit)).join('; ');
    return pair.answer.readings.length === 2
      ? [page.say('page.flip.as-sd', { steps: said(pair.answer.readings[0]) }), page.say('page.flip.as-se', { steps: said(pair.answer.readings[1]) })]
      : [said(pair.answer.readings[0])];
  }

  /** Compared pairs with what is tested, the one that turns at the smallest margin first. */
  function flips(page, now) {
    return now.pairs
      .filter(j => j.compared && !j.leftOut && j.pair.answer.readings.length > 0)
      .map(j => ({ judged: j, first: Margins.steps(j.pair.answer.readings[0])[0].below }))
      .sort((a, b) => a.first - b.first || a.judged.pair.row - b.judged.pair.row)
      .map(({ judged }) => make('li', {}, make('strong', { text: PairRows.nameOf(judged.pair) }), ': ' +
        readingTexts(page, judged, now.question.differenceUnit).join('. ')));
  }

  /** How far the slider goes: past the margin of the report, and past where the last answer turns. */
  function reach(question) {
    const perNumber = question.margin ? question.margin.value / question.margin.number : 1;
    const sizes = question.pairs.flatMap(p => p.answer.readings.flatMap(r => [Math.abs(r.low), Math.abs(r.high)]));
    const wanted = Math.max(question.margin ? 2 * question.margin.number : 0, (1.1 * sizes.reduce((a, b) => Math.max(a, b), 0)) / perNumber) || 1;
    const step = 10 ** (Math.floor(Math.log10(wanted)) - 2);
    const steps = Math.ceil(wanted / step);
    return { step: Number(step.toPrecision(1)), most: Number((steps * step).toPrecision(4)) };
  }

  /**
   * The control of one question.
   *
   * @returns {{element: Element, update: function(Object)}} update takes the question as it is judged
   */
  function of(page, question) {
    const say = page.say;
    const { step, most } = reach(question);
    const report = question.margin || null;
    const line = make('span', { id: newId('margin'), text: report === null
      ? say('page.margin.report-none') : say('page.report-setting', { setting: report.text }) });
    const fault = make('span', { class: 'fault', role: 'alert' });
    const unit = (report === null ? question.differenceUnit : report.unit).trim();
    const number = make('input', { type: 'number', min: String(step), step: 'any', inputmode: 'decimal', 'aria-describedby': line.id });
    const slider = make('input', { type: 'range', min: String(step), max: String(most), step: String(step), 'aria-describedby': line.id });
    let waiting = 0;

    function take(text) {
      const value = Number(text);
      const valid = text !== '' && Number.isFinite(value) && value > 0 && value <= 1e12;
      setText(fault, valid || (text === '' && report === null) ? '' : say('page.say.margin-positive'));
      if (valid || (text === '' && report === null)) {
        page.setMargin(question, valid ? value : undefined);
      }
    }
    number.addEventListener('input', () => take(number.value));
    slider.addEventListener('input', () => {
      // one judgement a frame is as much as a reader sees
      cancelAnimationFrame(waiting);
      waiting = requestAnimationFrame(() => take(slider.value));
    });
    const reset = button(say('page.reset'), () => page.setMargin(question, undefined), {
      'aria-label': say('page.margin.reset-label'),
    });
    const slid = field(say('page.margin.slider'), slider);
    slid.classList.add('slid');
    slid.querySelector('label').classList.add('aside'); // the label of the number beside it is enough to see
    const list = make('ol', { class: 'flips' });
    const where = make('details', { class: 'where' }, make('summary', { text: say('page.flip.title') }), list);
    let now = null;
    const fill = () => {
      if (where.open && now !== null) {
        list.replaceChildren(...flips(page, now));
      }
    };
    where.addEventListener('toggle', fill);
    const element = group(say('page.margin.title', { question: question.name }),
      field(unit === '' ? say('page.margin.number-bare') : say('page.margin.number', { unit }), number),
      slid, make('p', { class: 'report' }, line, ' ', reset), fault, where);
    element.classList.add('margin');

    function update(judged) {
      const set = page.state.settings.margins[question.metric];
      const value = set !== undefined ? set : report === null ? null : report.number;
      const text = value === null ? '' : String(value);
      if (document.activeElement !== number || Number(number.value) !== value) {
        number.value = text;
      }
      slider.value = text === '' ? String(step) : text;
      slider.setAttribute('aria-valuetext', judged.margin.text === '' ? say('page.margin.report-none') : judged.margin.text);
      reset.disabled = set === undefined;
      const before = now;
      now = judged;
      // where answers turn hangs on what is compared, and not on the margin that is set
      if (before === null || before.pairs.some((j, i) => j.compared !== judged.pairs[i].compared || j.leftOut !== judged.pairs[i].leftOut)) {
        fill();
      }
    }
    return { element, update };
  }

  return { of };
})();
