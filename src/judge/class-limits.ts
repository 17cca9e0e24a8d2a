import type { Limit, Rule } from '../packs/pack.ts';
import { heatVictimOfClass } from '../steel/heat-victim.ts';
import type { StrengthClass } from '../steel/strength-class.ts';
import type { ClassRule } from './class-rules.ts';

/** What a limit says where a rule asks for the margin above it. Temperatures in °C. */
const margins: Readonly<Record<string, (limit: Limit) => string | undefined>> = {
  'exposure.over_stop_limit': ({ stopAboveCelsius }) =>
    stopAboveCelsius === undefined
      ? undefined
      : `Beside hot work the part may not become hotter than ${stopAboveCelsius} °C.`,
  'exposure.over_limit': ({ holdAboveCelsius }) =>
    holdAboveCelsius === undefined
      ? undefined
      : `Beside hot work the part may become ${holdAboveCelsius} °C hot without a question.`,
  'exposure.over_time': ({ timeAbove }) =>
    timeAbove === undefined
      ? undefined
      : `Beside hot work the part may be at ${timeAbove.celsius} °C or more for ${timeAbove.atMostSeconds} s at most.`,
};

/** What the rules on neighbours of hot work say of a strength class, with the limits of the pack; nothing for an unknown class, which counts as the strongest. */
export function classLimits(
  rules: readonly Rule[],
  limits: readonly Limit[],
  strengthClass: StrengthClass,
): readonly ClassRule[] {
  const victim = heatVictimOfClass(strengthClass);
  const limit = limits.find((one) => one.victim === victim);
  if (limit === undefined) return [];
  const told = new Map<string, ClassRule>();
  for (const rule of rules.filter((one) => isOnHotWork(one))) {
    for (const { fact, test } of rule.when) {
      if (!('range' in test) || test.range.above !== 0 || !Object.hasOwn(margins, fact)) continue;
      const sentence = margins[fact]?.(limit);
      // Several rules ask for one margin, each for another kind of work.
      const key = `${rule.severity} ${sentence ?? ''}`;
      if (sentence === undefined || told.has(key)) continue;
      told.set(key, { rule: rule.id, severity: rule.severity, sentence, maker_may_permit: false });
    }
  }
  return [...told.values()];
}

/** Rules on the paint oven speak of what lies in it, the battery, and not of the sheet. */
export function isOnHotWork({ when }: Rule): boolean {
  return when.some(
    ({ fact, test }) => fact === 'exposure.from' && 'anyOf' in test && test.anyOf.includes('heat'),
  );
}
