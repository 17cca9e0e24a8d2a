import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { sideOfWords } from '../part/side-named.ts';
import { inOrder } from '../in-order.ts';
import type { Survey } from '../survey.ts';

type ToldFact = Extract<FactNames['plan'], 'plan.impact_on_other_side'>;

/** What the words on the blow tell otherwise than the rest of the plan. */
export function toldOtherwiseFacts(survey: Survey): Readonly<Record<ToldFact, Fact>> {
  return {
    'plan.impact_on_other_side': computedOr(
      hitOnOtherSide(survey).join('; ') || undefined,
      '/damage/impact',
      'The words on the blow name no side, or one on which a part was hit directly.',
    ),
  };
}

/** Parts that were hit directly, all of them on the side that the words on the blow do not name. By name: their order tells nothing. */
function hitOnOtherSide({ plan, partById }: Survey): readonly string[] {
  const said = sideOfWords(plan.damage?.impact);
  if (said === undefined) return [];
  const sided = (plan.damage?.direct ?? [])
    .flatMap((id) => partById.get(id) ?? [])
    .filter(({ part }) => part.side === 'left' || part.side === 'right');
  return sided.some(({ part }) => part.side === said) ? [] : sided.map(({ name }) => name).toSorted(inOrder);
}
