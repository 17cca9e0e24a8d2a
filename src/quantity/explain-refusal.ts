import { dimensions } from './dimension.ts';
import type { Dimension } from './dimension.ts';
import { findUnit } from './find-unit.ts';
import { nearestUnit } from './nearest-unit.ts';
import { sense } from './sense.ts';
import { milliForMega, units } from './units.ts';

interface Written {
  readonly text: string;
  readonly dimension: Dimension;
  /** The number and what follows it, when the text begins with a plain decimal number. */
  readonly number?: string;
  readonly rest: string;
}

type Look = (written: Written) => string | undefined;

/**
 * One sentence on why `text` (trimmed, at most 40 characters) is no quantity of this dimension, and what to write
 * instead. Off the fast path on purpose: it may look at the text as often as it likes.
 */
export function explainRefusal(text: string, dimension: Dimension): string {
  const [, number, rest] = /^([+\-−]?(?:\d+(?:\.\d+)?|\.\d+))(?![\d.])\s*(.*)$/su.exec(text) ?? [];
  const written: Written = { text, dimension, rest: rest ?? '', ...(number === undefined ? {} : { number }) };
  for (const look of looks) {
    const reason = look(written);
    if (reason !== undefined) return reason;
  }
  return unknownUnit(written);
}

// The order matters: a later look may take for its own what an earlier one describes better.
const looks: readonly Look[] = [
  ({ text, dimension }) => (text === '' ? `Nothing is written here; ${need(dimension)}.` : undefined),
  ({ text }) =>
    /(?![0-9])\p{Nd}/u.test(text)
      ? `"${text}" has digits of another script: write them as 0 to 9.`
      : undefined,
  needlessZero,
  bareNumber,
  otherDimension,
  unclearCase,
  comparison,
  tolerance,
  fraction,
  range,
  thousandsMark,
  decimalComma,
  powerOfTen,
  letterAmongDigits,
  ({ text }) =>
    /^[+\-−]?\d+\.(?!\d)/u.test(text) || /^[+\-−]?\d*\.\d+\./u.test(text)
      ? `"${text}" has a point where no decimals follow: write digits after it, or leave it away.`
      : undefined,
  severalQuantities,
  ({ text, number, dimension }) =>
    number === undefined ? `"${text}" does not begin with a number; ${need(dimension)}.` : undefined,
];

function need(dimension: Dimension): string {
  return `${sense[dimension].article} is needed, a number with ${accepted(dimension)}`;
}

function accepted(dimension: Dimension): string {
  const symbols = units[dimension].map((unit) => unit.symbol);
  const last = symbols.pop() ?? '';
  return symbols.length === 0 ? last : `${symbols.join(', ')} or ${last}`;
}

function needlessZero({ text }: Written): string | undefined {
  if (!/^[+\-−]?0\d/u.test(text)) return undefined;
  return `"${text}" begins with a needless zero: a decimal point may be missing, write the number without the zero or with the point.`;
}

function bareNumber({ text, number, rest, dimension }: Written): string | undefined {
  if (number === undefined || rest !== '') return undefined;
  return `"${text}" has no unit: write ${accepted(dimension)} after the number.`;
}

function otherDimension({ text, number, rest, dimension }: Written): string | undefined {
  if (number === undefined || findUnit(rest, dimension) !== undefined) return undefined;
  const other = dimensions.find((candidate) => findUnit(rest, candidate) !== undefined);
  return other === undefined ? undefined : `"${text}" is ${sense[other].article}, but ${need(dimension)}.`;
}

function unclearCase({ text, number, rest, dimension }: Written): string | undefined {
  if (number === undefined || findUnit(rest, dimension) !== 'unclear') return undefined;
  const meant = milliForMega.get(rest);
  if (meant !== undefined) {
    return `"${text}" has the small m of milli, a thousandth; write ${number} ${meant} if mega, a million, is meant.`;
  }
  return `"${text}" can be milli or mega, which only the case of the m tells apart: write mΩ or MΩ.`;
}

function comparison({ text }: Written): string | undefined {
  const before =
    /^(?:[<>=~≈∼≤≥≦≧]|(?:about|approx|around|ca|circa|max|min|maximum|minimum|up to|at least|at most|under|over|below|above|less|more)\b)/iu;
  const after = /\S\s+(?:max|min|maximum|minimum)\.?$/iu;
  if (!before.test(text) && !after.test(text)) return undefined;
  return `"${text}" is a limit or an estimate, not a value: write the one number that is planned or was measured.`;
}

function tolerance({ text }: Written): string | undefined {
  if (!/\d.*(?:±|\+\s*\/?\s*[-−])/u.test(text) && !text.startsWith('±')) return undefined;
  return `"${text}" has a tolerance in it: write the value alone.`;
}

function fraction({ text }: Written): string | undefined {
  if (!/^[+\-−]?(?:\d+\s*[/⁄]\s*\d|\d+[ -]\d+\s*[/⁄]\s*\d|\d*\s*[¼-¾⅐-⅞])/u.test(text)) return undefined;
  return `"${text}" has a fraction: write it as a decimal number, such as 0.25 in for a quarter inch.`;
}

function range({ text }: Written): string | undefined {
  if (!/^[+\-−]?[\d.,]+\s*[^\d]*?(?:[-−–—…]|\.{2,}|\b(?:to|and)\b)\s*[+\-−]?\.?\d/iu.test(text))
    return undefined;
  if (/^[+\-−]?[\d.]+\s*e/iu.test(text)) return undefined;
  return `"${text}" is a range: write the one value that is planned or was measured.`;
}

function thousandsMark({ text }: Written): string | undefined {
  const [head] = /^[+\-−]?[1-9]\d{0,2}(?:[ '’_\u00a0\u2009\u202f]\d{3})+(?!\d)/u.exec(text) ?? [];
  if (head !== undefined) {
    const plain = head.replace(/[ '’_\u00a0\u2009\u202f]/gu, '') + text.slice(head.length);
    return `"${text}" has a thousands mark in its number: write ${plain}.`;
  }
  const [commas] = /^[+\-−]?[1-9]\d{0,2}(?:,\d{3})+(?![\d,])/u.exec(text) ?? [];
  if (commas === undefined) {
    return /^[+\-−]?\d{1,3}(?:\.\d{3})+,\d/u.test(text)
      ? `"${text}" has a thousands mark and a decimal comma: write digits with a decimal point only.`
      : undefined;
  }
  const tail = text.slice(commas.length);
  const whole = commas.replaceAll(',', '') + tail;
  const single = commas.indexOf(',') === commas.lastIndexOf(',') && !tail.startsWith('.');
  const choice = single
    ? `, or ${commas.replace(/,(\d*?)0*$/u, '.$1').replace(/\.$/u, '') + tail} if it is a decimal comma`
    : '';
  return `"${text}" has a thousands mark in its number: write ${whole}${choice}.`;
}

function decimalComma({ text }: Written): string | undefined {
  if (!/^[+\-−]?\d*,\d+(?![\d,.])/u.test(text)) return undefined;
  return `"${text}" has a decimal comma: write ${text.replace(/^([+\-−]?),/u, '$10,').replace(',', '.')}.`;
}

function powerOfTen({ text }: Written): string | undefined {
  if (!/^[+\-−]?[\d.]+\s*(?:e[+\-−]?\d|[x×*·]\s*10\s*[\^⁰-⁹])/iu.test(text)) return undefined;
  return `"${text}" has a power of ten: write the number out.`;
}

function letterAmongDigits({ text, dimension }: Written): string | undefined {
  const [head = ''] = /^[+\-−]?[\dOolI.]+/u.exec(text) ?? [];
  const tail = text.slice(head.length);
  const [letter] = /[OolI]/u.exec(head) ?? [];
  const ends = tail === '' || /^\s/u.test(tail) || findUnit(tail, dimension) !== undefined;
  if (letter === undefined || !/\d/u.test(head) || !ends) return undefined;
  const digits = head.replace(/[Oo]/gu, '0').replace(/[lI]/gu, '1');
  return `"${text}" has the letter ${letter} among its digits: write ${digits}${tail} if that is meant.`;
}

function severalQuantities({ text }: Written): string | undefined {
  if (!/^[+\-−]?[\d.]+[^\d]*[\s,;/(+&x×][\s(]*[+\-−]?\.?\d/iu.test(text)) return undefined;
  return `"${text}" holds more than one number: write one quantity, a number and its unit.`;
}

function unknownUnit({ text, rest, dimension }: Written): string {
  const nearest = nearestUnit(rest, dimension);
  const hint = nearest === undefined ? `write ${accepted(dimension)}` : `the nearest known one is ${nearest}`;
  return `"${text}" has the unknown unit "${rest}": ${hint}.`;
}
