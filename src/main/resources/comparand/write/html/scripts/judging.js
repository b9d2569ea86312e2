/**
 * Judges the pairs of the report under the settings of the reader, by the rules of the report.
 *
 * A setting is what differs from the report, and nothing else, so that settings without entries are the report's:
 * `{margins: {metric: number}, tolerances: {"metric/condition": number}, left: [source], like: bool, noFigure: bool}`,
 * numbers in the units in which the report writes them.
 */
const Judging = (() => {
  'use strict';

  const REPORT = Object.freeze({
    margins: Object.freeze({}), tolerances: Object.freeze({}), left: Object.freeze([]), like: false, noFigure: false,
  });

  const isReport = s =>
    Object.keys(s.margins).length === 0 && Object.keys(s.tolerances).length === 0 &&
    s.left.length === 0 && !s.like && !s.noFigure;

  /** A margin as it stands in sentences: the number as set, and the unit as the report writes it. */
  function marginOf(question, number, sign) {
    const report = question.margin || null;
    const unit = question.differenceUnit;
    if (number === undefined) {
      return report === null
        ? { value: null, text: '', unit }
        : { value: report.value, text: report.text, unit };
    }
    const behind = report !== null ? report.unit : unit === '' ? '' : '\u00a0' + unit;
    const perNumber = report !== null ? report.value / report.number : 1;
    return { value: number * perNumber, text: Rounding.asSet(number, sign) + behind, unit };
  }

  /** A tolerance as printed, with another amount in it. */
  function toleranceText(rule, amount, sign) {
    const number = Rounding.asSet(amount, sign);
    if (rule.kind === 'equal') {
      return '±\u00a0' + number + (rule.unit === '' ? '' : '\u00a0' + rule.unit);
    }
    return rule.words.replace(/\d+(?:[.,]\d+)?/, number);
  }

  /** The tolerances a reader changed on a question, by condition. */
  function changedTolerances(question, tolerances) {
    const changed = new Map();
    for (const rule of question.tolerances) {
      const amount = tolerances[question.metric + '/' + rule.condition];
      if (amount !== undefined) {
        changed.set(rule.condition, { rule, amount });
      }
    }
    return changed;
  }

  /** The conditions of a pair with the marks they have now; those of the report where no tolerance was changed. */
  function conditionsOf(pair, changed, sign) {
    if (changed.size === 0) {
      return pair.conditions;
    }
    return pair.conditions.map(c => {
      const set = c.of === 'condition' ? changed.get(c.id) : undefined;
      return set === undefined
        ? c
        : { ...c, mark: Standing.mark(c, set.rule, set.amount), tolerance: toleranceText(set.rule, set.amount, sign) };
    });
  }

  /** Same answer, same key: what is compared by its verdicts, what is not by its standing. */
  function keyOf(kind, standing, codes) {
    return Standing.isCompared(standing)
      ? [kind, ...(Sentences.agree(codes) ? [codes[0]] : codes)].join(' ')
      : standing;
  }

  /** Unit or form were brought to ours. */
  const CONVERTED = Object.freeze({ of: 'unit', role: 'qualifies', mark: 'MADE_SAME' });

  function judgePair(say, pair, conditions, margin, sign) {
    const standing = Standing.of(pair.converted ? [...conditions, CONVERTED] : conditions);
    const compared = Standing.isCompared(standing);
    const codes = pair.answer.readings.map(r => Verdict.of(r, margin.value));
    return {
      pair, conditions, standing, compared,
      codes: compared ? codes : [],
      key: keyOf(pair.answer.kind, standing, codes),
      sentence: compared ? Sentences.answer(say, pair, codes, margin, sign) : Sentences.shown(say, conditions),
      difference: compared ? pair.answer.shown : '',
      theirs: pair.theirsShown[Standing.bracket(standing)],
      remarks: Sentences.remarks(say, pair, codes, margin, compared, sign),
    };
  }

  /**
   * What Holm's adjustment adds to the remarks, by pair. It is over all local comparisons of the family, whatever is hidden:
   * hiding is no reason to count fewer.
   */
  function ofFamily(say, questions, sign) {
    const family = questions
      .flatMap(q => q.pairs)
      .filter(j => j.pair.family && j.compared && j.pair.answer.kind === 'tested');
    const p = Holm.adjust(family.map(j => j.pair.answer.readings[0].p));
    return new Map(family.map((j, i) => [j.pair, Sentences.adjusted(say, j.pair, p[i], family.length, sign)]));
  }

  const isPublished = pair => pair.source !== undefined && pair.source !== null;

  /** Whether a setting takes a pair out of what is shown. */
  const isLeftOut = (judged, settings) =>
    (isPublished(judged.pair) && settings.left.includes(judged.pair.source)) ||
    (settings.noFigure && judged.pair.fromFigure) ||
    (settings.like && !judged.compared);

  /**
   * What the sources say together under the settings.
   *
   * @returns {{pool: Object, kept: string[], sentences: ?string[]}} null where the choice was not worked out for the report
   */
  function poolOf(pool, pairs, settings) {
    const mine = pairs.filter(j => isPublished(j.pair) && j.pair.id.startsWith(pool.ours + ' | '));
    const left = source =>
      settings.left.includes(source) || (settings.noFigure && pool.digitised.includes(source)) ||
      (mine.some(j => j.pair.source === source) && !mine.some(j => j.pair.source === source && j.compared));
    const kept = pool.sources.filter(s => !left(s));
    // a source that joins only through another tolerance makes a pool that nobody worked out
    const joins = Object.keys(settings.tolerances).length > 0 && mine.some(
      j => j.compared && j.pair.answer.kind === 'tested' && !pool.sources.includes(j.pair.source) && !isLeftOut(j, settings)
    );
    const subset = pool.subsets.find(s => s.kept.length === kept.length && s.kept.every((k, i) => k === kept[i]));
    const known = subset !== undefined && !joins;
    return { pool, kept, sentences: known ? subset.sentences : null };
  }

  /**
   * A judge of one exploration. It keeps what it found of a question until something of that question is set otherwise.
   *
   * @returns {function(Object): {isReport: boolean, questions: Array}} from settings; a question that is judged as before is the
   *     same object as before
   */
  function judgeOf(data) {
    const say = Words.sayer(data.words);
    const sign = data.run.decimalSign;
    const found = new Map();

    function judgeQuestion(question, settings) {
      const margin = marginOf(question, settings.margins[question.metric], sign);
      const changed = changedTolerances(question, settings.tolerances);
      const about = [margin.text, ...[...changed].map(([id, c]) => id + '=' + c.amount)].join('&');
      const before = found.get(question.metric);
      if (before !== undefined && before.about === about) {
        return before.judged;
      }
      const judged = {
        question, margin,
        pairs: question.pairs.map(p => judgePair(say, p, conditionsOf(p, changed, sign), margin, sign)),
      };
      found.set(question.metric, { about, judged });
      return judged;
    }

    /** A question with what hangs on more than its own margin and tolerances; the object of before where nothing differs. */
    function whole(judged, added, settings, before) {
      const more = judged.pairs.map(j => added.get(j.pair) || []);
      const about = JSON.stringify([settings.left, settings.like, settings.noFigure, settings.tolerances, more]);
      if (before !== undefined && before.judged === judged && before.about === about) {
        return before;
      }
      const pairs = judged.pairs.map((j, i) => ({ ...j, remarks: j.remarks.concat(more[i]), leftOut: isLeftOut(j, settings) }));
      const pools = judged.question.pools.map(p => poolOf(p, pairs, settings));
      return { judged, about, question: { ...judged, pairs, pools } };
    }

    let last = [];
    return settings => {
      const judged = data.questions.map(q => judgeQuestion(q, settings));
      const added = ofFamily(say, judged, sign);
      last = judged.map((q, i) => whole(q, added, settings, last[i]));
      return { isReport: isReport(settings), questions: last.map(w => w.question) };
    };
  }

  return { REPORT, isReport, judgeOf, marginOf, toleranceText, keyOf };
})();
