import { readOne } from './read-one.ts';
import { textSplits } from './text-splits.ts';

/** A choice of grades, or a blank with a sheet that is not known: a sentence that names the parts, if more than one is a grade. */
export function severalGrades(text: string): string | undefined {
  const parts = text
    .split(/\s*[+;&|]\s*|\s*,\s+|\s+\/\s+|\s+(?:and|or)\s+/i)
    .map((part) => part.trim())
    .filter((part) => part !== '' && !isCoating(part));
  const like = parts.filter((part) => /[A-Z]/i.test(part) && /\d{2}/.test(part));
  if (like.length >= 2 && parts.some((part) => isGrade(part))) return sentence(like);
  const beside = textSplits(text).find(([left, right]) => gradesIn(left) > 0 && gradesIn(right) > 0);
  return beside === undefined ? undefined : sentence(beside);
}

function isCoating(part: string): boolean {
  return /^(?:ZE|ZN|ZF|ZA|ZM|AZ|AS|Z)\d/i.test(part);
}

/** One for a grade, and for a text that holds several; 0 for any other. */
function gradesIn(text: string): number {
  if (isGrade(text)) return 1;
  return textSplits(text).some(([left, right]) => isGrade(left) && isGrade(right)) ? 1 : 0;
}

/** A name with letters and figures that is read as a grade; not a word, a strength or a size. */
function isGrade(text: string): boolean {
  if (!/\d/.test(text) || !/[A-Z]|^1\.\d{4}/i.test(text)) return false;
  const reading = readOne(text);
  return reading?.known === true && reading.readings.every((one) => one.from !== 'strength');
}

function sentence(parts: readonly string[]): string {
  return `The text names more than one grade (${parts.join(', ')}). State one grade a part; a tailored blank is written with a plus, as "DC04 + HC260LA".`;
}
