import { plainCode } from './code-system.ts';
import type { Code } from './code-system.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { Survey } from '../survey.ts';

/** Words that say that a unit went off, and words that take that back. */
const wentOff =
  /\b(?:fired|deploy(?:ed|ment)|ignited|triggered|went off|blown|crash (?:event|stored|detected))\b/i;
const denied = /\b(?:no|not|never|without|undeployed|cleared)\b/i;

/** What the first scan tells and the plan says otherwise elsewhere; unknown where the two agree. */
export function scanBelies({ plan }: Survey, at: string): Fact {
  const codes = plan.verify?.scan_before?.codes ?? [];
  const { restraints, high_voltage: high } = plan.make_safe ?? {};
  const isSomethingFired =
    restraints?.deployed === true || (restraints?.units ?? []).some(({ state }) => state === 'deployed');
  const fired = isSomethingFired ? -1 : codes.findIndex(tellsOfFiring);
  const leaking = high?.battery_condition === 'sound' ? codes.findIndex(tellsOfIsolation) : -1;
  const index = fired >= 0 ? fired : leaking;
  const texts = [
    ...(fired < 0
      ? []
      : [
          `a unit that went off (${nameOf(codes[fired])}), and by the plan none of the restraint units is deployed`,
        ]),
    ...(leaking < 0
      ? []
      : [`an isolation fault (${nameOf(codes[leaking])}), and the plan calls the traction battery sound`]),
  ];
  return computedOr(
    texts.join('; and of ') || undefined,
    index < 0 ? at : `${at}/${String(index)}`,
    'The first scan says nothing that the plan denies.',
  );
}

function tellsOfFiring(code: Code): boolean {
  const text = `${code.code ?? ''} ${code.explanation ?? ''}`;
  const isOfRestraints = code.system === 'restraint' || plainCode(code).startsWith('B00');
  return isOfRestraints && wentOff.test(text) && !denied.test(text);
}

/** P0AA6 is the isolation fault of the traction voltage in SAE J2012 (seen in public code lists). */
function tellsOfIsolation(code: Code): boolean {
  const text = code.explanation ?? '';
  if (code.state === 'cleared') return false;
  const isNamed = code.system === 'traction battery' && /\b(?:isolation|insulation|leakage)\b/i.test(text);
  return (plainCode(code) === 'P0AA6' || isNamed) && !denied.test(text);
}

function nameOf(code: Code | undefined): string {
  return [code?.code, code?.explanation].filter((text) => text !== undefined).join(', ');
}
