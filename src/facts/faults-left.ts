import type { FactNames } from '../generated/fact-names.ts';
import type { Scan } from '../generated/plan-types.ts';
import { admitsNotLooked } from '../plan/not-looked.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, unknown } from './make-fact.ts';
import { saysNothingLeft } from './refusals.ts';
import { saysNone } from './step/step-draft.ts';

type CodesFact = Extract<
  FactNames['step'],
  'step.codes_left' | 'step.codes_unexplained' | 'step.codes_of_assistance'
>;

/**
 * What a text says of faults that are left: `none`, `left`, or `unclear` where the words are neither. Only a text that says none and
 * nothing else is none: "no isolation" begins like "no faults".
 */
export function faultsLeft(text: string | undefined, at: string): Fact {
  if (text === undefined) return computed('not stated', at);
  const plain = text.trim();
  if (admitsNotLooked(plain)) return computed('unclear', at);
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

/**
 * Codes that are left after the repair: those of a system on which a life hangs, whatever is said of them; active ones of driver
 * assistance; and of the others those that nobody explains.
 */
export function codesFacts(scan: Scan | undefined, at: string): Readonly<Record<CodesFact, Fact>> {
  const place = `${at}/codes`;
  if (scan === undefined) {
    const none = unknown('No scan after the repair is stated, or the step is another.', at);
    return { 'step.codes_left': none, 'step.codes_unexplained': none, 'step.codes_of_assistance': none };
  }
  const left = (scan.codes ?? []).filter(({ state }) => state !== 'cleared');
  const isSafety = ({ system }: Code): boolean => system !== undefined && safety.has(system);
  const isAssistance = ({ system, state }: Code): boolean =>
    system === 'driver assistance' && state === 'active';
  const others = left.filter((code) => !isSafety(code) && !isAssistance(code));
  const unexplained = others.filter(({ explanation }) => saysNone(explanation));
  const none = 'No such code is left.';
  return {
    'step.codes_left': computedOr(named(left.filter(isSafety)), place, none),
    'step.codes_of_assistance': computedOr(named(left.filter(isAssistance)), place, none),
    'step.codes_unexplained': computedOr(named(unexplained), place, none),
  };
}

type Code = NonNullable<Scan['codes']>[number];

function named(codes: readonly Code[]): string | undefined {
  const names = codes.map(({ code, system, state }) => {
    const words = [system, state].filter((word) => word !== undefined).join(', ');
    return words === '' ? (code ?? 'a code') : `${code ?? 'a code'} (${words})`;
  });
  return names.join(', ') || undefined;
}
