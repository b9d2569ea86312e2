/** How the settings of the reader differ from those of the report: in words, and as lines of a dossier. */
const Differences = (() => {
  'use strict';

  const sourceName = (data, id) => data.sources.filter(s => s.id === id).map(s => s.reference + ' (' + s.number + ')').join('');

  /**
   * One text a difference, without full stop; none while the settings are those of the report.
   *
   * @returns {string[]}
   */
  function list(data, settings) {
    const say = Words.sayer(data.words);
    const sign = data.run.decimalSign;
    const texts = [];
    for (const q of data.questions) {
      const number = settings.margins[q.metric];
      if (number !== undefined) {
        const margin = Judging.marginOf(q, number, sign).text;
        texts.push(
          q.margin
            ? say('page.difference.margin', { question: q.name, margin, report: q.margin.text })
            : say('page.difference.margin-none', { question: q.name, margin })
        );
      }
      for (const rule of q.tolerances) {
        const amount = settings.tolerances[q.metric + '/' + rule.condition];
        if (amount !== undefined) {
          texts.push(say('page.difference.tolerance', {
            condition: rule.name, question: q.name, report: rule.words,
            tolerance: Judging.toleranceText(rule, amount, sign),
          }));
        }
      }
    }
    settings.left.forEach(id => texts.push(say('page.difference.left', { source: sourceName(data, id) })));
    if (settings.like) {
      texts.push(say('page.difference.like'));
    }
    if (settings.noFigure) {
      texts.push(say('page.difference.no-figure'));
    }
    return texts;
  }

  const quoted = text => "'" + text.replace(/[\u00a0\n]/g, ' ').replace(/'/g, "''") + "'";

  /** As a dossier writes it: with a point, whatever the language of the document. */
  function within(rule, amount) {
    const number = Rounding.asSet(amount, '.');
    if (rule.kind === 'relative') {
      return number + ' % of the value';
    }
    return amount === 0 ? 'equal' : rule.unit === '' ? number : number + ' ' + rule.unit.replace(/\u00a0/g, ' ');
  }

  /**
   * The lines of a dossier that make a scenario of the settings. A margin belongs to its question, and what is only hidden
   * belongs to nothing: both stand behind a number sign.
   */
  function scenario(data, settings) {
    const say = Words.sayer(data.words);
    const lines = [];
    for (const q of data.questions.filter(asked => settings.margins[asked.metric] !== undefined)) {
      const unit = q.margin ? q.margin.unit : '\u00a0' + q.differenceUnit;
      const number = Rounding.asSet(settings.margins[q.metric], '.');
      lines.push('# ' + say('page.scenario.margin', { question: q.metric }),
        '#   margin: ' + (number + unit).replace(/\u00a0/g, ' ').trim());
    }
    const tolerances = data.questions.flatMap(q =>
      q.tolerances
        .filter(rule => settings.tolerances[q.metric + '/' + rule.condition] !== undefined)
        .map(rule => '      - {condition: ' + rule.condition + ', metric: ' + q.metric + ', within: ' +
          within(rule, settings.tolerances[q.metric + '/' + rule.condition]) + ', set: ' + data.run.asOf + '}'));
    if (tolerances.length === 0 && settings.left.length === 0 && !settings.noFigure) {
      return lines;
    }
    lines.push('scenarios:', '  - suppose: ' + quoted(say('page.scenario.suppose')),
      '    because: ' + quoted(say('page.scenario.because')));
    if (settings.left.length > 0) {
      lines.push('    leave-out: [' + settings.left.join(', ') + ']');
    }
    if (settings.noFigure) {
      lines.push('    leave-out-values: [digitised]');
    }
    return tolerances.length > 0 ? lines.concat('    tolerances:', tolerances) : lines;
  }

  return { list, scenario };
})();
