import { schemaPartAt } from './schema-part.ts';

/** What people put where they have nothing to write. It says no more than an empty place, and must not pass for an answer. */
const nothingWritten =
  /^(?:[\s\p{P}\p{S}]*|n\/a|n\.a\.?|n\.? ?n\.?|tb[acdn]|to ?do|(?:unknown|not (?:known|stated)|(?:still |yet )?to (?:be (?:named|confirmed|decided|determined|announced|advised|assigned|chosen|found)|follow)|(?:none|not (?:known|named|decided|assigned)) yet|not yet (?:known|named|decided|assigned)|nobody|no[ -]one|some(?:body|one)|any(?:body|one)|whoever\b[^.]{0,40}|pending|later)\p{P}?)$/iu;

/**
 * Takes out of a plan, as plain objects, every free text that says nothing: a revision `-`, a place `?`. It counts as left out,
 * like a key with nothing behind it. Words and quantities stay: what is wrong with those is told.
 */
export function dropLeftBlank(root: unknown): void {
  const blanks: (readonly string[])[] = [];
  findBlanks(root, [], blanks);
  const places = blanks.filter((steps) => takesFreeText(root, steps));
  // From the back, so that the indexes of what is still to be taken out stay right.
  for (const steps of places.reverse()) takeOut(root, steps);
}

/** One walk over every value of every plan: steps are copied only where something is found. */
function findBlanks(value: unknown, steps: string[], found: (readonly string[])[]): void {
  if (typeof value === 'string') {
    if (mayBeNothing(value) && nothingWritten.test(value.trim())) found.push([...steps]);
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

/** Whether it begins as what is in `nothingWritten` does: most texts begin with a number or another letter, and the pattern is slow. */
function mayBeNothing(text: string): boolean {
  const first = text.charCodeAt(0) | 0x20;
  const isLetter = first >= 0x61 && first <= 0x7a;
  return !(isLetter || isDigit(text.charCodeAt(0))) || 'ntuswplay'.includes(String.fromCharCode(first));
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

function takesFreeText(root: unknown, steps: readonly string[]): boolean {
  const part = schemaPartAt(root, steps);
  const isFreeOrStep = part?.format === undefined || part.format === 'step-in-words';
  // An id that says nothing is a fault to be told.
  return (
    isFreeOrStep &&
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
