export type YearsReading =
  | {
      readonly ok: true;
      readonly from: number;
      /** The last year, itself included; equal to `from` for a single year. */
      readonly to: number;
    }
  | { readonly ok: false; readonly reason: string };

const firstYear = 1900;
const lastYear = 2199;
const longestShown = 40;

/**
 * Reads model years: one, `2021`, or a closed range, `2020-2022` (hyphen or en dash). An open end is refused: what a
 * document covers ends with the years that were known when it was published.
 */
export function readYears(value: string | number): YearsReading {
  const text = String(value).trim();
  const match = /^(\d{4})(?:\s*[-–]\s*(\d{4}))?$/u.exec(text);
  if (match === null) return { ok: false, reason: explain(text) };
  const from = Number(match[1]);
  const to = Number(match[2] ?? match[1]);
  const outside = [from, to].find((year) => year < firstYear || year > lastYear);
  if (outside !== undefined) {
    return {
      ok: false,
      reason: `${outside} is no model year: write a year from ${firstYear} to ${lastYear}.`,
    };
  }
  if (from > to)
    return { ok: false, reason: `"${text}" begins after it ends: write ${to}-${from} if that is meant.` };
  return { ok: true, from, to };
}

function explain(text: string): string {
  if (text === '') return 'No year is written here: write 2021, or 2020-2022 for a range.';
  if (text.length > longestShown)
    return `This has ${text.length} characters; years are written 2021 or 2020-2022.`;
  if (/(?![0-9])\p{Nd}/u.test(text)) return `"${text}" has digits of another script: write them as 0 to 9.`;
  const [letter] = /[OolI]/u.exec(text) ?? [];
  if (letter !== undefined && /^[\dOolI\s–-]+$/u.test(text) && /\d/u.test(text)) {
    const digits = text.replace(/[Oo]/gu, '0').replace(/[lI]/gu, '1');
    return `"${text}" has the letter ${letter} among its digits: write ${digits} if that is meant.`;
  }
  if (
    /^(?:[-–]\s*\d{4}|\d{4}\s*(?:[-–+]|\.{2,3}|…)|(?:from|since|until|up to|to)\s+\d{4}|\d{4}\s+(?:on|onwards|and later))$/iu.test(
      text,
    )
  ) {
    return `"${text}" is open at one end: write the first and the last year that the document names, such as 2020-2022.`;
  }
  if (
    /^['’]?\d{2}(?:\s*[-–/]\s*['’]?(?:\d{2}|\d{4}))?$/u.test(text) ||
    /^\d{4}\s*[-–/]\s*['’]?\d{1,2}$/u.test(text)
  ) {
    return `"${text}" has a year without its century: write all four digits, such as 2020-2022.`;
  }
  if (/^\d{4}(?:\s*(?:,|;|\/|&|and|to|—|−|\.{2,3}|…|[-–])\s*\d{4})+$/iu.test(text)) {
    return `"${text}" is neither a year nor a range: write 2021, or first and last year with a hyphen, such as 2020-2022.`;
  }
  return `"${text}" is no model year: write 2021, or 2020-2022 for a range.`;
}
