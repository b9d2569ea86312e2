/** The tolerances of the conditions in numbers of the chosen question. */
const ToleranceControl = (() => {
  'use strict';

  const { make, field, group, button, setText, newId } = Elements;

  const behind = (say, rule) => (rule.kind === 'relative' ? say('page.tolerance.of-value') : rule.unit.trim());

  function one(page, question, rule) {
    const say = page.say;
    const key = question.metric + '/' + rule.condition;
    const line = make('span', { id: newId('tolerance'), class: 'report', text: say('page.report-setting', { setting: rule.words }) });
    const fault = make('span', { class: 'fault', role: 'alert' });
    const number = make('input', { type: 'number', min: '0', step: 'any', inputmode: 'decimal', 'aria-describedby': line.id });
    const unit = behind(say, rule);
    const name = Words.upperFirst(rule.name);
    number.addEventListener('input', () => {
      const value = Number(number.value);
      const valid = number.value !== '' && Number.isFinite(value) && value >= 0 && value <= 1e12;
      setText(fault, valid ? '' : say('page.say.tolerance-positive'));
      if (valid) {
        page.setTolerance(key, value === rule.amount ? undefined : value);
      }
    });
    const reset = button(say('page.reset'), () => page.setTolerance(key, undefined), {
      'aria-label': say('page.tolerance.reset-label', { condition: rule.name }),
    });
    const element = field(unit === '' ? name : say('page.tolerance.number', { condition: name, unit }), number, ' ', line, ' ', reset, ' ', fault);
    element.classList.add('tolerance');

    function update() {
      const set = page.state.settings.tolerances[key];
      const value = set === undefined ? rule.amount : set;
      if (document.activeElement !== number || Number(number.value) !== value) {
        number.value = String(value);
        setText(fault, '');
      }
      reset.disabled = set === undefined;
    }
    return { element, update };
  }

  /** The control of one question; without an element where no condition is in numbers. */
  function of(page, question) {
    const fields = question.tolerances.map(rule => one(page, question, rule));
    return {
      element: fields.length === 0 ? null : group(page.say('page.tolerance.title', { question: question.name }), ...fields.map(f => f.element)),
      update: () => fields.forEach(f => f.update()),
    };
  }

  return { of };
})();
