import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { isWeldedIn } from './part-kinds.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

const opening: ReadonlySet<string> = new Set([
  'replace',
  'remove and refit',
  'cut for access',
  'section',
  'butt weld',
  'drill',
]);

/** Welded layers over a part that is replaced, which no operation takes off, cuts or opens. */
export function closedOver(survey: Survey, { operation, part }: OperationSurvey): Fact {
  const isReplaced =
    operation.do === 'replace' && (operation.planned !== false || operation.done !== undefined);
  const closed = isReplaced ? layersOver(survey, part).filter(staysShut) : [];
  return computedOr(
    closed.map(({ name }) => name).join(', ') || undefined,
    `${part.at}/under`,
    'It is not replaced, or what lies over it is opened or comes off.',
  );
}

function layersOver(survey: Survey, part: PartSurvey): readonly PartSurvey[] {
  const { id, under } = part.part;
  const named = listOf(under).flatMap((one) => survey.partById.get(one) ?? []);
  const pointing =
    id === undefined
      ? []
      : (survey.namedBy.get(id) ?? []).filter((other) => listOf(other.part.over).includes(id));
  return [...new Set([...named, ...pointing])].filter((other) => other !== part);
}

function staysShut({ part, operations }: PartSurvey): boolean {
  return isWeldedIn(part.kind) && !operations.some(({ operation }) => opening.has(operation.do ?? ''));
}
