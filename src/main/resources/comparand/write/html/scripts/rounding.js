/**
 * The one routine of the page that rounds numbers for print: decimal, half up, from the shortest decimal that stands for the
 * double, as everywhere in the documents.
 */
const Rounding = (() => {
  'use strict';

  /** More decimals than any measurement has; a wish for more is cut to this. */
  const MOST = 12;
  const MINUS = '\u2212';

  /** Whole and fractional digits of a size, with no exponent left: 1.5e-7 is '0' and '00000015'. */
  function digitsOf(size) {
    const [mantissa, exponent = '0'] = String(size).split('e');
    const [whole, fraction = ''] = mantissa.split('.');
    const shift = Number(exponent);
    if (shift >= 0) {
      const moved = fraction.padEnd(shift, '0');
      return { whole: whole + moved.slice(0, shift), fraction: moved.slice(shift) };
    }
    const padded = whole.padStart(1 - shift, '0');
    const cut = padded.length + shift;
    return { whole: padded.slice(0, cut), fraction: padded.slice(cut) + fraction };
  }

  /**
   * With a fixed number of decimals, in plain digits with a point and a hyphen; never a negative zero.
   *
   * @param {number} value finite
   * @param {number} decimals cut to 0 .. 12
   * @returns {string}
   */
  function halfUp(value, decimals) {
    const kept = Math.min(MOST, Math.max(0, decimals));
    const { whole, fraction } = digitsOf(Math.abs(value));
    const padded = fraction.padEnd(kept + 1, '0');
    let units = BigInt(whole + padded.slice(0, kept));
    if (padded[kept] >= '5') {
      units += 1n;
    }
    const text = String(units).padStart(kept + 1, '0');
    const cut = text.length - kept;
    const plain = kept === 0 ? text : text.slice(0, cut) + '.' + text.slice(cut);
    return value < 0 && units > 0n ? '-' + plain : plain;
  }

  function decimalsBeforeCarry(size, digits) {
    const exponent = Math.floor(Math.log10(size) + 1e-12);
    return Math.min(MOST, Math.max(0, digits - 1 - exponent));
  }

  /**
   * How many decimals show a spread with so many significant digits: 1 for 4.1 and two digits, 0 for hundreds. Rounding that
   * carries (0.0996 to two digits is 0.10) is followed.
   */
  function decimalsFor(spread, digits) {
    if (spread === 0 || !Number.isFinite(spread)) {
      return 0;
    }
    const decimals = decimalsBeforeCarry(Math.abs(spread), digits);
    const carried = Number(halfUp(Math.abs(spread), decimals));
    return carried === 0 ? decimals : Math.min(decimals, decimalsBeforeCarry(carried, digits));
  }

  function signed(plain, sign) {
    const text = plain.replace('.', sign);
    return text.startsWith('-') ? MINUS + text.slice(1) : text;
  }

  /** Rounded, with a true minus and the decimal sign of the document. */
  const text = (value, decimals, sign) => signed(halfUp(value, decimals), sign);

  /** A number as somebody set it: all its digits and no more. */
  function asSet(value, sign) {
    const { whole, fraction } = digitsOf(Math.abs(value));
    const plain = fraction === '' || /^0+$/.test(fraction) ? whole : whole + '.' + fraction;
    return signed(value < 0 && plain !== '0' ? '-' + plain : plain, sign);
  }

  /** Two significant digits, at most three decimals, and never less than '<0.001'. */
  function p(value, sign) {
    return value < 0.001
      ? '<' + text(0.001, 3, sign)
      : text(value, Math.min(3, Math.max(2, decimalsFor(value, 2))), sign);
  }

  return { halfUp, decimalsFor, text, asSet, p };
})();
