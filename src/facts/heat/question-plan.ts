import type { Item, Near, Operation, Plan, StrengthClass } from '../../generated/plan-types.ts';
import type { DerivationContext } from '../context.ts';
import { listedNeighbours } from './exposed-neighbour.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { surveyPlan } from '../survey-plan.ts';

/** The sheet that a question without a plan is about, and what lies beside the heat. */
export interface AskedSheet {
  readonly thickness: string;
  /** Class of the heated sheet. */
  readonly metal?: StrengthClass;
  readonly near: { readonly class: StrengthClass; readonly grade?: string } | { readonly item: Item };
}

interface Asked extends AskedSheet {
  readonly operation: Operation;
  readonly word: 'heat' | 'weld';
  readonly sink?: Near['sink'];
}

export type QuestionContext = Pick<DerivationContext, 'limits' | 'practice' | 'solveStrip' | 'solveLap'>;

/** The question as the plan that would hold it, so that nothing is assumed here otherwise than there. */
export function askedPlan(
  { operation, thickness, metal, near, word, sink }: Asked,
  context: QuestionContext,
): {
  readonly survey: Survey;
  readonly operation: OperationSurvey;
  readonly neighbour: Neighbour | undefined;
} {
  const asked = 'item' in near ? { item: near.item } : { part: 'neighbour' };
  const plan: Plan = {
    format: 1,
    vehicle: {},
    parts: [
      {
        id: 'sheet',
        name: 'the heated sheet',
        thickness,
        ...(metal === undefined ? {} : { class: metal }),
        operations: [
          { ...operation, do: word, near: [{ ...asked, ...(sink === undefined ? {} : { sink }) }] },
        ],
      },
      // Not structural: the class is taken as it is asked about, since nobody here could cite a page for it.
      ...('class' in near
        ? [
            {
              id: 'neighbour',
              name: near.class,
              class: near.class,
              ...(near.grade === undefined ? {} : { grade: near.grade }),
              structural: false,
            },
          ]
        : []),
    ],
  };
  const survey = surveyPlan(plan, { ...context, windows: [], makers: [], asOfDay: 0, stage: 'draft' });
  const [heated] = survey.operations;
  if (heated === undefined) throw new Error('the question has no operation');
  const [neighbour] =
    heated.operation.near?.flatMap((one, n) => listedNeighbours(survey, heated, one, n)) ?? [];
  return { survey, operation: heated, neighbour };
}
