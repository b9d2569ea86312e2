/** Tables as text of RFC 4180: commas, CRLF, quotes doubled; with a byte order mark, so that spreadsheets read UTF-8. */
const Csv = (() => {
  'use strict';

  const MARK = '\ufeff';
  const COMPUTED = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;
  const NUMBER = /^[+-]?\d+(?:[.,]\d+)?$/;

  /** What a spreadsheet would take for a formula, also by its wide signs, gets an apostrophe; a plain number is none. */
  const harmless = text => (COMPUTED.test(text) && !NUMBER.test(text) ? "'" + text : text);

  function field(text) {
    const safe = harmless(text);
    return /[",\r\n]/.test(safe) ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }

  /** One record, without its line break. */
  const record = fields => fields.map(field).join(',');

  /**
   * @param {string[][]} records the heading first
   * @returns {string} every record ends with CRLF
   */
  const text = records => MARK + records.map(r => record(r) + '\r\n').join('');

  return { field, record, text };
})();
