import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { OperationSurvey } from '../survey.ts';
import { heatWords } from './heat-words.ts';
import { tells } from './told-in-notes.ts';

const places = ['note', 'reason', 'zone'] as const;

/** What the words of a cold straightening tell of a heat that no key of it states. Heat that nobody states is judged by nothing. */
export function heatTold({
  operation,
  straightens,
  heats,
  at,
}: OperationSurvey): Readonly<Record<'operation.heat_told', Fact>> {
  const key =
    straightens === true && heats === false
      ? places.find((one) => tells(operation[one] ?? '', heatWords))
      : undefined;
  return {
    'operation.heat_told': computedOr(
      key === undefined ? undefined : operation[key]?.trim(),
      `${at}/${key ?? 'note'}`,
      'It is not straightened cold, or its words tell of no heat.',
    ),
  };
}
