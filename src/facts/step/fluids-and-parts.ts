import type { Item } from '../../generated/plan-types.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

/** What parts are called that hold a fluid or gas of the fire list. English alone is read. */
const holders: readonly (readonly [item: Item, called: RegExp])[] = [
  [
    'refrigerant line',
    /\b(?:condenser|evaporator|chiller|heat pump|refrigerant|air[- ]?con(?:ditioning)?|a\/c)\b/i,
  ],
  ['fuel tank', /\b(?:fuel|petrol|diesel) tank\b/i],
  ['fuel line', /\b(?:fuel|petrol|diesel) (?:line|pipe|hose|rail|filler)/i],
  ['brake line', /\bbrake (?:line|pipe|hose|tube)/i],
  ['gas cylinder', /\b(?:gas|hydrogen) (?:cylinder|tank|bottle)\b/i],
];

/** Kinds of part that bear such names without holding any of it. */
const holdNothing: ReadonlySet<string> = new Set([
  'bracket',
  'trim',
  'floor',
  'crossmember',
  'reinforcement',
]);

/** What the fire list leaves full although a part that holds it comes off: as `refrigerant line (Condenser)`, with its place in the list. */
export function fluidsAgainstParts(
  survey: Survey,
): { readonly text: string; readonly at: string } | undefined {
  const full = (survey.plan.make_safe?.fire?.fluids ?? []).flatMap(({ item, treatment }, index) =>
    treatment === 'removed' || treatment === 'emptied' || treatment === 'renewed' ? [] : [{ item, index }],
  );
  for (const { item, index } of full) {
    const called = holders.find(([holds]) => holds === item)?.[1];
    const off = survey.operations.find(
      (one) => called !== undefined && comesOff(one) && called.test(one.part.name),
    );
    if (item !== undefined && off !== undefined)
      return { text: `${item} (${off.part.name})`, at: `/make_safe/fire/fluids/${String(index)}` };
  }
  return undefined;
}

function comesOff({ operation, part }: OperationSurvey): boolean {
  const isPlanned = operation.planned !== false || operation.done !== undefined;
  return (
    isPlanned &&
    (operation.do === 'replace' || operation.do === 'remove and refit') &&
    !holdNothing.has(part.part.kind ?? '')
  );
}
