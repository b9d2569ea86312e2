/** What a question is answered with, line by line, as the list of questions has it. */
const QuestionLines = (() => {
  'use strict';

  const PRESENT = ['against-present-device', 'stated-against-present-device'];
  const PUBLISHED = ['local-against-published'];
  const VERDICT_ALONE = ['tested', 'against-figure'];

  /** The verdict alone, where there is one; else the whole sentence. */
  function brief(say, judged, margin, sign) {
    const { pair, codes, sentence } = judged;
    const a = pair.answer;
    const isEither = judged.compared && a.kind === 'either-reading';
    if (isEither && !Sentences.agree(codes)) {
      return say('verdict.either');
    }
    return isEither || (judged.compared && VERDICT_ALONE.includes(a.kind))
      ? Sentences.verdict(say, a.readings[0], codes[0], margin, a.decimals, sign, false)
      : sentence;
  }

  /** A line with the difference in it, or without: the answer is enough where the difference stands beside it. */
  function lineWith(difference, say, judged, margin, sign) {
    const { pair } = judged;
    const locator = pair.purpose === 'against-present-device' ? pair.oursLocator : pair.theirsLocator;
    if (judged.compared && pair.answer.kind === 'events') {
      // such an answer names both sides
      return say('page.static.line.events', { answer: Words.upperFirst(judged.sentence), locator });
    }
    const at = pair.step === '' ? '' : say('page.static.at', { step: pair.step });
    return say(difference === '' ? 'page.static.line' : 'page.static.line.tested', {
      device: pair.deviceName, at, difference, answer: brief(say, judged, margin, sign), locator,
    });
  }

  /**
   * The line of a pair that is compared.
   *
   * @param {Object} judged a pair as judged
   * @param {{value: ?number, text: string, unit: string}} margin it was judged with
   */
  const line = (say, judged, margin, sign) => lineWith(judged.difference, say, judged, margin, sign);

  /** The line without its difference; of a pair that is not compared it says why. */
  const shortLine = (say, judged, margin, sign) => lineWith('', say, judged, margin, sign);

  /** What is compared, each on a line; then how many are not. Nothing is said of what is left out. */
  function text(say, pairs, margin, sign) {
    const kept = pairs.filter(j => !j.leftOut);
    const lines = kept.filter(j => j.compared).map(j => line(say, j, margin, sign));
    const apart = kept.length - lines.length;
    if (apart > 0) {
      lines.push(say('page.static.apart', { n: String(apart) }));
    }
    return lines.length === 0 ? say('not-applicable') : lines.join('\n');
  }

  const beside = (pairs, purposes) => pairs.filter(j => purposes.includes(j.pair.purpose));

  const ofPresent = pairs => beside(pairs, PRESENT);

  const ofPublished = pairs => beside(pairs, PUBLISHED);

  /**
   * The two texts of a question.
   *
   * @param {{pairs: Array, margin: Object}} judged the question as judged
   * @param {string} sign the decimal sign
   * @returns {{present: string, published: string}}
   */
  function texts(say, judged, sign) {
    return {
      present: text(say, ofPresent(judged.pairs), judged.margin, sign),
      published: text(say, ofPublished(judged.pairs), judged.margin, sign),
    };
  }

  return { shortLine, texts, ofPresent, ofPublished };
})();
