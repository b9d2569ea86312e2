/** The words of the document's language: texts with places in braces, by their keys. */
const Words = (() => {
  'use strict';

  const PLACE = /\{([A-Za-z]+)\}/g;
  const SPACE = '\u00a0';
  const UNIT =
    '(?:%|°[CF]?|[µnmcdk]?(?:mol|Pa|[LlgmK])[²³₂]?(?:Hg|H2O|H₂O)?|min|h|days|units?|runs?|cases?|patients|samples)' +
    '(?=[/·*\\t\\n\\r .,;:)\\]|?]|$)';
  const BEFORE_UNIT = new RegExp('(?<=\\d) (?=' + UNIT + ')', 'g');
  const BEHIND_SIGN = /(?<=[±≥≤≈=<]) (?=[\d\u2212+])/g;
  const BEFORE_INTERVAL = /(?<=%) (?=CI\b)/g;

  /** Keeps a number and its unit on one line, as the documents do; joining twice changes nothing. */
  function joined(text) {
    return text.includes(' ')
      ? text.replace(BEFORE_UNIT, SPACE).replace(BEHIND_SIGN, SPACE).replace(BEFORE_INTERVAL, SPACE)
      : text;
  }

  /**
   * A frame with what stands in its places.
   *
   * @param {string} frame text with {places}
   * @param {Object<string, string>} places one text for every place
   */
  function fill(frame, places) {
    const text = frame.replace(PLACE, (whole, name) => {
      if (!(name in places)) {
        throw new Error('wants {' + name + '}: ' + frame);
      }
      return places[name];
    });
    return joined(text);
  }

  /**
   * The text of a key with what stands in its places.
   *
   * @param {Object<string, string>} words all texts by their keys
   */
  function say(words, key, places = {}) {
    if (!Object.prototype.hasOwnProperty.call(words, key)) {
      throw new Error('no words for ' + key);
    }
    return fill(words[key], places);
  }

  /** The same for one language: {@code say(key, places)}. */
  const sayer = words => (key, places) => say(words, key, places);

  const upperFirst = text => (text === '' ? text : text[0].toUpperCase() + text.slice(1));

  return { say, sayer, fill, joined, upperFirst };
})();
