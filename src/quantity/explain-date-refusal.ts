const longestShown = 40;

/** One sentence on why the trimmed text is no complete date, and what to write instead. */
export function explainDateRefusal(text: string): string {
  if (text === '') return 'No date is written here: write year-month-day, such as 2026-10-05.';
  if (text.length > longestShown)
    return `This has ${text.length} characters; a date has ten, such as 2026-10-05.`;
  if (/(?![0-9])\p{Nd}/u.test(text)) return `"${text}" has digits of another script: write them as 0 to 9.`;
  const [head = ''] = /^[\dOolI-]+/u.exec(text) ?? [];
  const [letter] = /[OolI]/u.exec(head) ?? [];
  if (letter !== undefined && head.length >= 8) {
    const digits = head.replace(/[Oo]/gu, '0').replace(/[lI]/gu, '1');
    return `"${text}" has the letter ${letter} among its digits: write ${digits} if that is meant.`;
  }
  const short = /^(\d{4})-(\d{1,2})-(\d{1,2})$/u.exec(text);
  if (short !== null) {
    const [, year = '', month = '', day = ''] = short;
    return `"${text}" lacks a zero: write ${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}.`;
  }
  const packed = /^(\d{4})(\d\d)(\d\d)$/u.exec(text);
  if (packed !== null) {
    return `"${text}" has no hyphens: write ${packed[1] ?? ''}-${packed[2] ?? ''}-${packed[3] ?? ''} if a date is meant.`;
  }
  if (/^\d{1,4}[./]\d{1,2}[./]\d{1,4}$/u.test(text) || /^\d{1,2}-\d{1,2}-\d{1,4}$/u.test(text)) {
    return `"${text}" leaves open which number is the month: write year-month-day with hyphens, such as 2026-10-05.`;
  }
  if (/^\d{4}-\d{2}-\d{2}[T ]/u.test(text)) {
    return `"${text}" has more than a date in it: write the date alone, ${text.slice(0, 10)}.`;
  }
  if (/^\d{4}(?:-\d{2})?$/u.test(text))
    return `"${text}" lacks the day: write year-month-day, such as 2026-10-05.`;
  if (/^\d{4}-?(?:W\d|\d{3}$)/u.test(text)) {
    return `"${text}" counts weeks or days of the year: write year-month-day, such as 2026-10-05.`;
  }
  return `"${text}" is no date: write year-month-day in digits, such as 2026-10-05.`;
}

/** One sentence on why `time`, the part of `text` after the date, is no time of day. */
export function explainTimeRefusal(text: string, time: string): string {
  if (text.length > longestShown) {
    return `This has ${text.length} characters; a date with a time is written such as 2026-10-06T09:40.`;
  }
  if (/\d\s*(?:Z|[+\-−]\d{2}:?\d{0,2}|UTC|GMT)$/iu.test(time)) {
    return `"${text}" names a time zone: leave it away, times of a plan are the shop's own and only compared with each other.`;
  }
  if (/[ap]\.?m\.?$/iu.test(time))
    return `"${text}" counts to twelve: write the hour from 00 to 23, such as 15:40.`;
  if (/^24:00(?::00)?$/u.test(time))
    return `"${text}" ends a day: write 00:00 with the date of the next day.`;
  if (/^\d{1,2}:\d{2}(?::\d{2})?$/u.test(time)) {
    return /^\d:/u.test(time)
      ? `"${text}" lacks a zero: write the time as 0${time}.`
      : `"${text}" has no such time of day: hours go from 00 to 23, minutes and seconds from 00 to 59.`;
  }
  if (/^\d{2}:\d{2}:\d{2}[.,]/u.test(time)) return `"${text}" has parts of a second: write whole seconds.`;
  return `"${text}" has "${time}" where a time of day is read: write hours and minutes, such as 2026-10-06T09:40.`;
}
