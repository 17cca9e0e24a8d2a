import type { Scan } from '../../generated/plan-types.ts';

export type Code = NonNullable<Scan['codes']>[number];
type System = NonNullable<Code['system']>;

/** Systems on which a life hangs when the vehicle is driven. */
const safety: ReadonlySet<string> = new Set(['restraint', 'brake', 'steering', 'traction battery']);

export function isSafetySystem(system: string): boolean {
  return safety.has(system);
}

/** What a scan is known by: letter and four digits, as ISO 15031-6 and SAE J2012 write them; another code as it stands. */
export function plainCode({ code = '' }: Code): string {
  const plain = code.toUpperCase().replace(/[\s._-]/gu, '');
  return numbered.test(plain) ? plain.slice(0, 5) : plain;
}

const numbered = /^[BCPU][0-3][0-9A-F]{3}/u;

/** Words that name such a system, in a code that is no number or in the name of a lamp. The lamp of a belt that nobody buckled is none. */
const words: readonly (readonly [System, RegExp])[] = [
  ['restraint', /air ?bag(?! (?:is )?off\b)|pretension|restraint|inflator|\bsrs\b/i],
  ['brake', /\babs\b|\besc\b|\besp\b|stability|(?<!park |parking |hand |hand)\bbrak/i],
  ['steering', /\bsteering\b|\beps\b/i],
  [
    'traction battery',
    /traction (?:battery|voltage)|(?:high[- ]?voltage|\bhv\b)(?! (?:ready|on)\b)|(?:isolation|insulation) (?:fault|warning)/i,
  ],
];

export function systemInWords(text: string): System | undefined {
  return words.find(([, form]) => form.test(text))?.[0];
}

/**
 * The system of a code that bears it by the plan's own word: as stated, as the first scan calls the same code, or as a code in words
 * names it. A system on which a life hangs goes before another.
 */
export function ownSystem(code: Code, before: readonly Code[]): { system?: System; by?: string } {
  const { system } = code;
  if (system !== undefined && isSafetySystem(system)) return { system };
  const plain = plainCode(code);
  const first = before.find((one) => plainCode(one) === plain && isSafetySystem(one.system ?? ''))?.system;
  if (plain !== '' && first !== undefined) return { system: first, by: 'in the first scan' };
  const named = numbered.test(plain) ? undefined : systemInWords(code.code ?? '');
  if (named !== undefined && system !== 'driver assistance') return { system: named, by: 'by its words' };
  return system === undefined ? {} : { system };
}

/** Whether an active code tells that a control unit does not answer: U are the lines between them. */
export function isOfLines(code: Code): boolean {
  const plain = plainCode(code);
  return plain.startsWith('U') && numbered.test(plain) && code.state !== 'stored';
}

/** The sensors of tyre pressure, one to a wheel: they stand among the running gear and are no brake, steering or spring. */
const ofTyres = /^C07(?:50|55|60|65)$/u;

/**
 * What a number says of its system by the ranges of SAE J2012 (from memory; P0AA6 was seen as the isolation fault): B00 restraints,
 * P0A to P0D the electric drive and its battery, C the running gear. Undefined where the stated
 * system may be it. Of what is stored only the first two are asked: they tell of what hurts, the others of what was unplugged.
 */
export function numberSays(code: Code): string | undefined {
  const { system, state, explanation = '' } = code;
  const plain = plainCode(code);
  if (isSafetySystem(system ?? '')) return undefined;
  if (/^B00/u.test(plain)) return 'of the restraints by its number';
  if (/^P0[A-D]/u.test(plain)) return 'of the electric drive or its battery by its number';
  const isActive = state !== 'stored';
  const isOfTyres = (system === 'other' || system === 'body') && ofTyres.test(plain);
  if (plain.startsWith('C') && numbered.test(plain) && !isOfTyres) {
    const isElsewhere =
      system === 'body' || system === 'engine' || (isActive && system !== 'driver assistance');
    return isElsewhere ? 'of brakes, steering or suspension by its number' : undefined;
  }
  if (!isActive) return undefined;
  const named = system === 'driver assistance' ? undefined : systemInWords(explanation);
  return named === undefined ? undefined : `of the ${named} by what is said of it`;
}
