import { saysRefused } from './names-nothing.ts';
import { saysNotLooked } from './not-looked.ts';
import { schemaPartAt } from './schema-part.ts';

/**
 * What people put where they have nothing to write. It says no more than an empty place, and must not pass for an answer. Without the
 * flag `u`, whose classes take milliseconds to compile.
 */
const nothingWritten =
  /^(?:n\/a|n\.a\.?|n\.? ?n\.?|tb[acdn]|to ?do|(?:unknown|not (?:known|stated)|(?:still |yet )?to (?:be (?:named|confirmed|decided|determined|announced|advised|assigned|chosen|found)|follow)|(?:none|not (?:known|named|decided|assigned)) yet|not yet (?:known|named|decided|assigned)|nobody|no[ -]one|some(?:body|one)|any(?:body|one)|whoever\b[^.]{0,40}|pending|later)[^\w\s]?)$/i;

/** A dash, a question mark, or nothing at all. */
const noWord = /^[\s\p{P}\p{S}]*$/u;

/**
 * Takes out of a plan, as plain objects, every free text that says nothing: a revision `-`, a place `?`, and where the schema says that
 * the text names something, a word that refuses to: a page `none`. It counts as left out, like a key with nothing behind it. Words and
 * quantities stay: what is wrong with those is told.
 */
export function dropLeftBlank(root: unknown): void {
  const blanks: Blank[] = [];
  findBlanks(root, [], blanks);
  const places = blanks
    .filter(({ steps, says }) => takesFreeText(root, steps, says))
    .map(({ steps }) => steps);
  // From the back, so that the indexes of what is still to be taken out stay right.
  for (const steps of places.reverse()) takeOut(root, steps);
}

interface Blank {
  readonly steps: readonly string[];
  readonly says: 'nothing' | 'not looked' | 'refused';
}

/** One walk over every value of every plan: steps are copied only where something is found. */
function findBlanks(value: unknown, steps: string[], found: Blank[]): void {
  if (typeof value === 'string') {
    const says = saysNothing(value);
    if (says !== undefined) found.push({ steps: [...steps], says });
  } else if (typeof value === 'object' && value !== null) {
    for (const key of Object.keys(value)) {
      const item: unknown = Reflect.get(value, key);
      if (typeof item !== 'string' && typeof item !== 'object') continue;
      steps.push(key);
      findBlanks(item, steps, found);
      steps.pop();
    }
  }
}

function saysNothing(text: string): Blank['says'] | undefined {
  const small = text.trim().toLowerCase();
  const isNothing = /^[a-z]/.test(small)
    ? beginnings.some((beginning) => small.startsWith(beginning)) && nothingWritten.test(small)
    : noWord.test(small);
  if (isNothing) return 'nothing';
  if (saysNotLooked(text.trim())) return 'not looked';
  return saysRefused(text) ? 'refused' : undefined;
}

/** How what is in `nothingWritten` begins: most texts begin otherwise, and the pattern is slow. */
const beginnings = [
  'n/a',
  'n.',
  'nn',
  'n n',
  'tb',
  'to',
  'unknown',
  'not ',
  'still ',
  'yet ',
  'none yet',
  'nobody',
].concat([...['no one', 'no-one', 'some', 'any', 'whoever', 'pending', 'later']]);

function takesFreeText(root: unknown, steps: readonly string[], says: Blank['says']): boolean {
  const part = schemaPartAt(root, steps);
  // "Will be measured" plans a step; that nobody measured is no answer anywhere else.
  const isFreeOrStep = part?.format === undefined || (part.format === 'step-in-words' && says === 'nothing');
  // An id that says nothing is a fault to be told.
  return (
    isFreeOrStep &&
    (says !== 'refused' || part?.namesSomething === true) &&
    part?.minLength === undefined &&
    !isGrade(steps) &&
    part?.enum === undefined &&
    [part?.type].flat().includes('string')
  );
}

/** A grade `?` is a question that was meant to be answered: the strength beside it must not pass for the answer. */
function isGrade(steps: readonly string[]): boolean {
  return steps.at(-1) === 'grade' && !steps.includes('joints');
}

function takeOut(root: unknown, steps: readonly string[]): void {
  const last = steps.at(-1);
  let parent = root;
  for (const step of steps.slice(0, -1)) {
    parent = typeof parent === 'object' && parent !== null ? Reflect.get(parent, step) : undefined;
  }
  if (last === undefined || typeof parent !== 'object' || parent === null) return;
  if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else Reflect.deleteProperty(parent, last);
}
