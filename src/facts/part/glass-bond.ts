import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { secondsApart } from '../joint/cure-time.ts';
import { hasAdhesive } from '../joint/joint-methods.ts';
import { computed, computedOr } from '../make-fact.ts';
import { whenOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type GlassFact = Extract<
  FactNames['operation'],
  `operation.${'glass_bonded' | 'glass_bond_told' | 'driven_before_bond'}`
>;

/** Panes that are bonded in, by their names. The pane of a door runs in its channel. */
const bonded =
  /\bwind ?-?(?:screen|shield)\b|\b(?:front|rear|back) (?:screen|window|light)\b(?!.*\bdoor\b)|\bback-?light\b|\bquarter (?:glass|window|light)\b|\bbonded\b/i;
const framed = /\bgasket\b|\brubber\b|\bclamped\b|\bdoor (?:glass|window)\b/i;

/** No adhesive for panes holds one against an airbag sooner, s; the shortest of their data sheets, from memory. */
const soonestSeconds = 30 * 60;

/** Of a pane that is bonded in: whether anything says with what, and whether the vehicle was driven before any adhesive could bear it. */
export function glassBondFacts(survey: Survey, one: OperationSurvey): Readonly<Record<GlassFact, Fact>> {
  const { operation, joints, at } = one;
  const isBonded = isBondedGlass(one);
  const driven =
    isBonded && operation.done?.includes('T') === true ? drivenTooSoon(survey, operation.done) : undefined;
  return {
    'operation.glass_bonded': computed(isBonded, `${at}/do`),
    'operation.glass_bond_told': computed(joints.length > 0 || operation.material !== undefined, at),
    'operation.driven_before_bond': computedOr(
      driven,
      `${at}/done`,
      'No pane is bonded in, nothing is dated so soon after it, or the hours are not written.',
    ),
  };
}

function isBondedGlass({ operation, part, joints }: OperationSurvey): boolean {
  if (part.part.kind !== 'glass' || (operation.do !== 'replace' && operation.do !== 'remove and refit'))
    return false;
  if (joints.length > 0)
    return joints.some(({ joint: { method } }) => method !== undefined && hasAdhesive(method));
  return bonded.test(part.name) && !framed.test(part.name);
}

function drivenTooSoon({ plan }: Survey, fitted: string): string | undefined {
  const from = whenOf(fitted);
  if (from === undefined) return undefined;
  const drives: readonly (readonly [string, string | undefined])[] = [
    ...(plan.verify?.calibrations ?? [])
      .filter(({ kind }) => kind === 'dynamic' || kind === 'both')
      .map(({ sensor, done }) => [`the driven calibration of ${sensor ?? 'a sensor'}`, done] as const),
    ['the road test', plan.verify?.road_test?.done],
  ];
  const soon = drives.filter(([, done]) => {
    const to = done?.includes('T') === true ? whenOf(done) : undefined;
    if (to === undefined) return false;
    const { atLeast } = secondsApart(from, to);
    return atLeast >= 0 && atLeast < soonestSeconds;
  });
  return soon.map(([name, done]) => `${name} ${done ?? ''}`).join(', ') || undefined;
}
