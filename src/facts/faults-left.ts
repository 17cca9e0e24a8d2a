import type { FactNames } from '../generated/fact-names.ts';
import type { Scan } from '../generated/plan-types.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, unknown } from './make-fact.ts';
import { saysNothingLeft } from './refusals.ts';

type CodesFact = Extract<FactNames['step'], 'step.codes_left' | 'step.codes_unexplained'>;

/**
 * What a text says of faults that are left: `none`, `left`, or `unclear` where the words are neither. Only a text that says none and
 * nothing else is none: "no isolation" begins like "no faults".
 */
export function faultsLeft(text: string | undefined, at: string): Fact {
  if (text === undefined) return computed('not stated', at);
  const plain = text.trim();
  if (saysNothingLeft(plain)) return computed('none', at);
  const denied = /\b(?:no|not|none|without|never)\b/iu;
  const present =
    /\b(?:active|present|permanent|(?:isolation|insulation) (?:fault|warning)|(?:lamp|light|warning|telltale) (?:is |stays )?(?:on|lit))\b/iu;
  return computed(present.test(plain) && !denied.test(plain) ? 'left' : 'unclear', at);
}

/** Systems on which a life hangs when the vehicle is driven. */
const safety: ReadonlySet<string> = new Set(['restraint', 'brake', 'steering', 'traction battery']);

export function isSafetySystem(system: string): boolean {
  return safety.has(system);
}

/** Codes that are left after the repair: active ones of a safety system, and those that nobody explains. */
export function codesFacts(scan: Scan | undefined, at: string): Readonly<Record<CodesFact, Fact>> {
  const place = `${at}/codes`;
  const left = (scan?.codes ?? []).filter(({ state }) => state !== 'cleared');
  const isStop = ({ system, state }: (typeof left)[number]): boolean =>
    state === 'active' && system !== undefined && safety.has(system);
  const unexplained = left.filter((code) => {
    const { system, state, explanation } = code;
    if (isStop(code) || explanation !== undefined) return false;
    return (
      system === undefined || safety.has(system) || (system === 'driver assistance' && state !== 'stored')
    );
  });
  if (scan === undefined) {
    const none = unknown('No scan after the repair is stated, or the step is another.', at);
    return { 'step.codes_left': none, 'step.codes_unexplained': none };
  }
  return {
    'step.codes_left': computedOr(named(left.filter(isStop)), place, 'No such code is left.'),
    'step.codes_unexplained': computedOr(named(unexplained), place, 'No such code is left.'),
  };
}

function named(codes: NonNullable<Scan['codes']>): string | undefined {
  const names = codes.map(({ code, system }) =>
    [code ?? 'a code', system && `(${system})`].filter(Boolean).join(' '),
  );
  return names.join(', ') || undefined;
}
