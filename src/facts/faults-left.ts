import type { FactNames } from '../generated/fact-names.ts';
import type { Scan } from '../generated/plan-types.ts';
import { admitsNotLooked } from '../plan/not-looked.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, unknown } from './make-fact.ts';

type CodesFact = Extract<FactNames['step'], `step.codes_${'left' | 'assistance' | 'unexplained'}`>;

/**
 * What a text says of faults that are left: `none`, `left`, or `unclear` where the words are neither. A text that begins with none
 * and then makes an exception is unclear.
 */
export function faultsLeft(text: string | undefined, at: string): Fact {
  if (text === undefined) return computed('not stated', at);
  const plain = text.trim();
  if (admitsNotLooked(plain)) return computed('unclear', at);
  const none = /^(?:none|no(?:t any)?|nothing|nil|zero|0|all (?:faults? |codes? )?(?:cleared|gone))\b/iu;
  const exception = /\b(?:except|but|apart|other than|still|however|save)\b/iu;
  if (none.test(plain)) return computed(exception.test(plain) ? 'unclear' : 'none', at);
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

/** Codes that are left after the repair: active ones of a safety system or of driver assistance, and those that nobody explains. */
export function codesFacts(scan: Scan | undefined, at: string): Readonly<Record<CodesFact, Fact>> {
  const place = `${at}/codes`;
  const left = (scan?.codes ?? []).filter(({ state }) => state !== 'cleared');
  const isStop = ({ system, state }: (typeof left)[number]): boolean =>
    state === 'active' && system !== undefined && safety.has(system);
  const isAssistance = ({ system, state }: (typeof left)[number]): boolean =>
    state !== 'stored' && system === 'driver assistance';
  const unexplained = left.filter((code) => {
    const { system, state, explanation } = code;
    if (isStop(code) || isAssistance(code) || explanation !== undefined) return false;
    // A trace that is stored matters where a life hangs on the system; a fault that is there now, everywhere.
    return state !== 'stored' || system === undefined || safety.has(system);
  });
  if (scan === undefined) {
    const none = unknown('No scan after the repair is stated, or the step is another.', at);
    return { 'step.codes_left': none, 'step.codes_assistance': none, 'step.codes_unexplained': none };
  }
  return {
    'step.codes_left': computedOr(named(left.filter(isStop)), place, 'No such code is left.'),
    'step.codes_assistance': computedOr(named(left.filter(isAssistance)), place, 'No such code is left.'),
    'step.codes_unexplained': computedOr(named(unexplained), place, 'No such code is left.'),
  };
}

function named(codes: NonNullable<Scan['codes']>): string | undefined {
  const names = codes.map(({ code, system }) =>
    [code ?? 'a code', system && `(${system})`].filter(Boolean).join(' '),
  );
  return names.join(', ') || undefined;
}
