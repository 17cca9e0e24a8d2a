import type { Joint } from '../../generated/plan-types.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { saysNone } from '../step/step-draft.ts';
import { saysScant } from '../step/scant-words.ts';
import { hasAdhesive } from './joint-methods.ts';

/**
 * Whether something keeps unlike metals apart. Bolts, washers and hinges mostly come coated from the factory: silence says neither
 * that they are, nor that they are not.
 */
export function insulatedFact(
  { method, adhesive, insulation }: Joint,
  to: string | undefined,
  at: string,
): Fact {
  const place = `${at}/insulation`;
  if (adhesive !== undefined || (method !== undefined && hasAdhesive(method))) return computed(true, place);
  if (insulation !== undefined) return computed(!saysBare(insulation), place);
  const joint = to === undefined ? 'the joint' : `the joint to ${to}`;
  return unknown(
    `What keeps the unlike metals apart in ${joint} is not stated (\`insulation\`: coated bolts, a film, sealer, or \`none\`).`,
    place,
  );
}

/** A text that names no layer: "none", "bare", "aluminium does not rust". English alone is read. */
function saysBare(text: string): boolean {
  return (
    saysNone(text) ||
    saysRefused(text) ||
    saysScant(text) ||
    /^(?:bare|uncoated|unpainted|metal (?:to|on) metal|direct(?:ly)? (?:contact|on)|in contact|touch(?:es|ing)?)(?![0-9a-zÀ-ɏ])/iu.test(
      text.trim(),
    )
  );
}
