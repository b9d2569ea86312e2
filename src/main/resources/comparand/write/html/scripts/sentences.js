/**
 * Answers and their remarks in words. A pair here is one of the exploration; `conditions` are its conditions with the marks they
 * have under the settings; `say` gives the words of the document.
 */
const Sentences = (() => {
  'use strict';

  /**
   * The verdict of one reading.
   *
   * @param {{text: string, unit: string}} margin text as in sentences, empty where none is set; unit of differences
   */
  function verdict(say, reading, code, margin, decimals, sign, nominal) {
    const number = value => Rounding.text(value, decimals, sign);
    return say((nominal ? 'verdict.nominal.' : 'verdict.') + code, {
      margin: margin.text,
      high: number(reading.high),
      low: number(Math.abs(reading.low)),
      unit: margin.unit,
    }).replace('  ', ' ');
  }

  /** One answer for both readings of a spread, where both say the same and it is not that nothing is settled. */
  const agree = codes => codes.length === 2 && codes[0] === codes[1] && codes[0] !== 'NOT_SETTLED';

  /** The sentence of a pair that is compared. */
  function answer(say, pair, codes, margin, sign) {
    const a = pair.answer;
    const nominal = a.kind === 'nominal';
    const said = i => verdict(say, a.readings[i], codes[i], margin, a.decimals, sign, nominal);
    if (codes.length === 0) {
      return a.sentence;
    }
    if (codes.length === 1) {
      return Words.fill(a.sentence, { verdict: said(0) });
    }
    return agree(codes)
      ? Words.fill(a.agree, { asSd: said(0) })
      : Words.fill(a.sentence, { asSd: said(0), asSe: said(1) });
  }

  /** Of the two sides of a label, what is said of the one that left it. */
  const outside = (say, c) => (c.ours === say('stated.within') ? c.theirs : c.ours);

  function parts(conditions, one, missing) {
    const against = conditions.filter(Standing.decidesAgainst);
    const names = against.filter(c => c.mark === 'NOT_REPORTED').map(c => c.name);
    const said = against.filter(c => c.mark !== 'NOT_REPORTED').map(one);
    return (names.length > 0 ? said.concat(missing(names.join(', '))) : said).join('; ');
  }

  /** Why a pair is shown and not compared. */
  function why(say, conditions) {
    return parts(
      conditions,
      c =>
        c.of === 'label'
          ? say('why.label', { where: outside(say, c) })
          : c.id === 'quantity'
            ? say('why.quantity', { ours: c.ours, theirs: c.theirs })
            : say('why.differs', { condition: c.name, ours: c.ours, theirs: c.theirs }),
      names => say('why.not-reported', { conditions: names })
    );
  }

  const shown = (say, conditions) => say('answer.shown', { why: why(say, conditions) });

  /** What would have to be known or measured; empty for a pair that is compared. */
  function toMakeComparable(say, conditions) {
    return parts(
      conditions,
      c =>
        c.of === 'label'
          ? say('comparable.label')
          : c.id === 'quantity'
            ? say('comparable.quantity')
            : say(c.of === 'definition' ? 'comparable.definition' : 'comparable.differs', {
                condition: c.name, ours: c.ours, theirs: c.theirs,
              }),
      names => say('comparable.not-reported', { conditions: names })
    );
  }

  /** The expected direction of every difference that decides, one sentence each. */
  function distortions(say, pair, conditions) {
    const devices = pair.purpose !== 'local-against-published';
    return conditions
      .filter(c => Standing.decidesAgainst(c) && c.mark === 'DIFFERS' && c.of === 'condition')
      .map(c => {
        const explained = c.because.trim() !== '';
        const direction =
          c.effect === 'raises' && explained ? 'higher'
            : c.effect === 'lowers' && explained ? 'lower' : c.effect === 'none' ? 'none' : 'unknown';
        const key = devices
          ? 'distortion.device.' + direction
          : explained && (direction === 'higher' || direction === 'lower')
            ? 'distortion.number.' + direction
            : 'distortion.' + direction;
        return say(key, {
          condition: Words.upperFirst(c.name), ours: c.ours, theirs: c.theirs, because: c.because,
          ourDevice: pair.deviceName, theirDevice: pair.beside,
        });
      });
  }

  /** What qualifies a comparison without forbidding it, one sentence each. */
  function qualifiers(say, conditions) {
    const open = conditions.filter(c => c.role === 'qualifies' && c.of !== 'unit');
    const said = open
      .filter(c => c.mark === 'DIFFERS')
      .map(c => say('qualifies.differs', { condition: Words.upperFirst(c.name), ours: c.ours, theirs: c.theirs }));
    const missing = open.filter(c => c.mark === 'NOT_REPORTED').map(c => c.name);
    return missing.length > 0
      ? said.concat(say('qualifies.not-reported', { conditions: missing.join(', ') }))
      : said;
  }

  /** At which margin a firm answer would change; nothing where two readings of a spread would each say another. */
  function flip(say, pair, codes, margin, sign) {
    const a = pair.answer;
    if (margin.value === null || (a.kind !== 'tested' && a.kind !== 'against-figure')) {
      return [];
    }
    const at = Margins.flipsAt(codes[0], a.readings[0]);
    return at === null
      ? []
      : [say('answer.flips', {
          side: say(Margins.holdsBelow(codes[0]) ? 'answer.flips.below' : 'answer.flips.above'),
          at: Rounding.text(at, a.decimals, sign),
          unit: margin.unit,
        }).replace(/[ \u00a0]+$/, '')];
  }

  /** An answer that is open because its interval is wide tells nothing of the devices. */
  function precision(say, pair, codes, margin) {
    const a = pair.answer;
    if (a.kind !== 'tested' || codes[0] !== 'NOT_SETTLED') {
      return [];
    }
    const half = (a.readings[0].high - a.readings[0].low) / 2;
    const most = margin.value !== null ? margin.value : a.wide === undefined || a.wide === null ? Infinity : a.wide;
    return half > most ? [say('answer.imprecise')] : [];
  }

  /** What belongs to an answer and stands beside it, but for what depends on the other comparisons. */
  function remarks(say, pair, codes, margin, compared, sign) {
    const a = pair.answer;
    return compared
      ? [...flip(say, pair, codes, margin, sign), ...a.remarksFirst, ...precision(say, pair, codes, margin),
          ...a.remarksFixed, ...a.remarksIfCompared]
      : a.remarksFixed.slice();
  }

  /**
   * What a reader would ask next: expected directions, what is not held against the pair, and the remarks; each with its full
   * stop.
   */
  function notes(say, judged) {
    const { pair, conditions } = judged;
    const compared = judged.compared
      ? [...qualifiers(say, conditions), ...pair.means.map(m => m + '.')]
      : [];
    return [...distortions(say, pair, conditions), ...compared, ...judged.remarks.map(r => r + '.')];
  }

  /** That the direction is not clear once the number of comparisons is allowed for; nothing where it is, or never was. */
  function adjusted(say, pair, p, family, sign) {
    const reading = pair.answer.readings[0];
    return p >= 0.05 && !(reading.low <= 0 && 0 <= reading.high)
      ? [say('answer.adjusted.unclear', { m: String(family), p: Rounding.p(p, sign) })]
      : [];
  }

  return { verdict, answer, shown, why, toMakeComparable, distortions, qualifiers, remarks, notes, adjusted, agree };
})();
