/** Words without which no text tells of a course; they spare most texts the longer forms. */
const gate = /\b(?:course|exam|training|seminar|test|attend|enrol|lesson|will |next )/i;

/** The same for each of the two. */
const mayBeTaken = /attend|enrol|will |next |ing\b|under ?way|progress|not |starts|begins|to |due|half /i;
const isDated = /\d{4}|ary\b|march|april|may|june|july|august|ber\b/i;

const stillTaken =
  /\b(?:attending|enrolled|will (?:attend|be|do|get|have|pass|sit|take)|next (?:week|month|year|spring|summer|autumn|winter)|(?:course|exam\w*|training|seminar|test|lessons?)(?: is| are| still)* (?:running|ongoing|under way|underway|in progress|not (?:yet )?(?:finished|passed|completed|over)|starts|starting|begins|beginning|to (?:come|follow|be)|due|half ))/i;

const months = 'january february march april may june july august september october november december'.split(
  ' ',
);

/** A course with the day, the month or the year on which it is, within one clause. */
const dated =
  /\b(?:course|exam\w*|training|seminar|test)\b[^,;.()]{0,24}?(?:\b(\d{4}-\d\d(?:-\d\d)?)|\b(?:in|from|of|on|for|this|early|mid|late|until|till) (?:the )?(?:end of )?(?:\d{1,2}(?:st|nd|rd|th)? )?(january|february|march|april|may|june|july|august|september|october|november|december)(?: (\d{4}))?\b)/i;

const over = /\b(?:passed|completed|finished|attended|held|certificate)\b/i;

/**
 * Whether what stands for a qualification is a course that somebody is still on, or has yet to begin. A month without a year is taken
 * for one of this year, unless the text says that the course is over.
 *
 * @param day ISO day on which the paper is to hold; without it only words tell.
 */
export function isCourseToCome(text: string, day: string | undefined): boolean {
  if (!gate.test(text)) return false;
  if (mayBeTaken.test(text) && stillTaken.test(text)) return true;
  if (day === undefined || !isDated.test(text)) return false;
  const found = dated.exec(text);
  if (found === null) return false;
  const [, isoDay, month, year] = found;
  if (isoDay !== undefined) return isoDay > day.slice(0, isoDay.length);
  const number = months.indexOf((month ?? '').toLowerCase()) + 1;
  if (year === undefined && over.test(text)) return false;
  const ofMonth = `${year ?? day.slice(0, 4)}-${String(number).padStart(2, '0')}`;
  return year === undefined ? ofMonth >= day.slice(0, 7) : ofMonth > day.slice(0, 7);
}
