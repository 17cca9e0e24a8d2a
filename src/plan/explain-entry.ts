import type { EntryFaultWord } from './entry-fault.ts';
import { excerpt } from './excerpt.ts';
import { formatFaults } from './formats.ts';
import { nearestWords } from './nearest-word.ts';
import type { LocatedNode } from './node.ts';
import type { SchemaError } from './schema-error.ts';
import type { SchemaPart } from './schema-keywords.ts';

export interface EntryExplanation {
  readonly fault: EntryFaultWord;
  readonly sentence: string;
}

/** How many known words a sentence lists when none is near. */
const mostListed = 16;

/** One error of the plan's schema in plain words. `part` is what the schema says of the place, `given` what stands there. */
export function explainEntry(
  error: SchemaError,
  part: SchemaPart | undefined,
  given: LocatedNode | undefined,
): EntryExplanation {
  const written = given?.kind === 'scalar' ? excerpt(given.source) : undefined;
  switch (error.keyword) {
    case 'enum':
      return given?.kind === 'scalar' && written !== undefined
        ? unknownWord(written, part)
        : wrongKind('one of the known words', given);
    case 'format':
      return written === undefined ? wrongKind('text', given) : badFormat(written, part);
    case 'type':
      return part?.format !== undefined && part.format !== 'step-in-words' && written !== undefined
        ? badFormat(written, part)
        : wrongKind(expectedKind(part), given);
    case 'minimum':
    case 'maximum':
      return {
        fault: 'outside the range',
        sentence: `${written ?? 'This'} lies outside ${String(part?.minimum ?? 'any lowest value')} to ${String(part?.maximum ?? 'any highest value')}.`,
      };
    case 'maxLength':
      return { fault: 'too long', sentence: 'This text is longer than the key takes.' };
    case 'maxItems':
      return { fault: 'too long', sentence: entryCount(error, part, given) };
    case 'minItems':
      return { fault: 'wrong kind', sentence: entryCount(error, part, given) };
    case 'minLength':
      return { fault: 'wrong kind', sentence: 'Something is missing here: too little is written.' };
    default:
      return wrongKind(expectedKind(part), given);
  }
}

/** How many entries stand in a list, and how many may: "2 entries stand here; 3 are needed." */
function entryCount(
  { keyword, params }: SchemaError,
  part: SchemaPart | undefined,
  given: LocatedNode | undefined,
): string {
  const count = given?.kind === 'list' ? given.items.length : 0;
  const stand = count === 1 ? 'stands 1 entry' : `stand ${count === 0 ? 'no' : String(count)} entries`;
  const limit = String(params['limit']);
  const bound =
    part?.['minItems'] !== undefined && part['minItems'] === part['maxItems']
      ? `${limit} are needed`
      : keyword === 'minItems'
        ? `at least ${limit} are needed`
        : `at most ${limit} can be taken`;
  return `Here ${stand}; ${bound}.`;
}

/** A key that the schema does not know at this place. */
export function explainUnknownKey(key: string, part: SchemaPart | undefined): EntryExplanation {
  const known = Object.keys(part?.properties ?? {});
  // A word that the plan takes elsewhere would send the author to the wrong place.
  const synonyms = new Map([...keySynonyms].filter(([, word]) => known.includes(word)));
  const near = nearestWords(key, known, synonyms);
  return {
    fault: 'unknown key',
    sentence: `\`${excerpt(key)}\` is not a key that a plan has here.${hint(near, known)}`,
  };
}

/** What people write for a key of the plan. */
export const keySynonyms: ReadonlyMap<string, string> = new Map([
  ['year', 'model_year'],
  ['make', 'maker'],
  ['manufacturer', 'maker'],
  ['operation', 'operations'],
  ['part', 'parts'],
  ['vehicle_pack', 'rules'],
  ['citation', 'cite'],
  ['cites', 'cite'],
  ['temp', 'temperature'],
  ['material', 'grade'],
  ['tensile', 'strength'],
  ['location', 'at'],
  ['place', 'at'],
  ['page', 'at'],
  ['signature', 'sign_off'],
  ['signed', 'sign_off'],
  ['rev', 'revision'],
]);

function unknownWord(written: string, part: SchemaPart | undefined): EntryExplanation {
  const known = part?.enum ?? [];
  const bare = written.replace(/^(["'])(.*)\1$/su, '$2');
  const near = nearestWords(bare, known, new Map(Object.entries(part?.synonyms ?? {})));
  return { fault: 'unknown word', sentence: `\`${bare}\` is not a word known here.${hint(near, known)}` };
}

function hint(near: readonly string[], known: readonly string[]): string {
  if (near.length > 0) return ` Nearest known: ${listed(near)}.`;
  if (known.length === 0) return '';
  const more = known.length - mostListed;
  return ` Known: ${listed(known.slice(0, mostListed))}${more > 0 ? ` and ${more} more` : ''}.`;
}

function listed(words: readonly string[]): string {
  return words.map((word) => `\`${word}\``).join(', ');
}

function badFormat(written: string, part: SchemaPart | undefined): EntryExplanation {
  const format = part?.format ?? '';
  const reason = formatFaults[format]?.(written.replace(/^(["'])(.*)\1$/su, '$2'));
  return {
    fault: faultOfFormat[format] ?? 'unreadable quantity',
    sentence: reason ?? `${written} cannot be read here.`,
  };
}

const faultOfFormat: Readonly<Record<string, EntryFaultWord>> = {
  'calendar-date': 'no such date',
  moment: 'no such date',
  years: 'no such date',
  'step-in-words': 'wrong kind',
};

function wrongKind(expected: string, given: LocatedNode | undefined): EntryExplanation {
  return { fault: 'wrong kind', sentence: `Here stands ${givenKind(given)}; expected is ${expected}.` };
}

function expectedKind(part: SchemaPart | undefined): string {
  if (part?.enum !== undefined) return 'one of the known words';
  const types = typeof part?.type === 'string' ? [part.type] : (part?.type ?? []);
  const names = types.map((type) => kindNames[type] ?? type);
  return names.length === 0 ? 'something else' : names.join(' or ');
}

const kindNames: Readonly<Record<string, string>> = {
  string: 'text',
  integer: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a block of keys',
};

function givenKind(given: LocatedNode | undefined): string {
  switch (given?.kind) {
    case 'map':
      return 'a block of keys';
    case 'list':
      return 'a list';
    case 'scalar':
      return given.value === null ? 'nothing' : `\`${excerpt(given.source)}\``;
    case undefined:
      return 'nothing';
  }
}
