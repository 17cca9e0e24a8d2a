import type { FactNames } from '../generated/fact-names.ts';
import type { PartKind } from '../generated/plan-types.ts';
import { sameName } from '../vehicle/same-name.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, statedOr } from './make-fact.ts';
import { coversVehicle } from './papers/maker-evidence.ts';
import { wasRepaired } from './part/part-history-facts.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import { saysNone } from './step/step-draft.ts';
import type { OperationSurvey, Survey } from './survey.ts';

type ExtraFact = Extract<
  FactNames['operation'],
  | `operation.${'second_cut' | 'added_metal' | 'added_metal_cited' | 'film_cited' | 'film' | 'film_limit' | 'film_over'}`
  | `operation.${'loosens_safety_bolts' | 'one_time_bolts' | 'torque_cited' | 'bolts_tightened'}`
>;

/** What an operation adds, covers with paint, or unbolts. */
export function operationExtraFacts(survey: Survey, one: OperationSurvey): Readonly<Record<ExtraFact, Fact>> {
  const { operation, at } = one;
  const isCited = (cite: typeof operation.cite): boolean =>
    listOf(cite).some(({ reference }) => coversVehicle(survey, reference));
  const film = quantityOf(operation.film, 'length');
  const limit = quantityOf(operation.film_limit, 'length');
  const bolts = operation.fasteners;
  const added = saysNone(operation.added_metal) ? undefined : operation.added_metal;
  return {
    'operation.second_cut': computed(isSecondCut(survey, one), at),
    'operation.added_metal': computedOr(added, `${at}/added_metal`, 'No added plate or sleeve is stated.'),
    'operation.added_metal_cited': computed(isCited(operation.added_metal_cite), `${at}/added_metal_cite`),
    'operation.film_cited': computed(isCited(operation.film_cite), `${at}/film_cite`),
    'operation.film_limit': statedOr(limit, `${at}/film_limit`, 'The limit of the page is not stated.'),
    'operation.film': statedOr(film, `${at}/film`, 'The thickness of the paint film is not stated.'),
    'operation.film_over': computedOr(
      film === undefined || limit === undefined ? undefined : film - limit,
      `${at}/film`,
      'The thickness of the paint film, or the limit of the page, is not stated.',
    ),
    'operation.loosens_safety_bolts': computed(loosensSafetyBolts(one), `${at}/do`),
    'operation.one_time_bolts': statedOr(
      bolts?.one_time,
      `${at}/fasteners/one_time`,
      'What becomes of bolts that are used once only is not stated.',
    ),
    'operation.torque_cited': computed(isCited(bolts?.cite), `${at}/fasteners/cite`),
    'operation.bolts_tightened': computed(bolts?.tightened !== undefined, `${at}/fasteners/tightened`),
  };
}

/** Kinds that are bolted on and steer, carry a wheel or the traction battery, or hold a person. */
const safetyBolted: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['suspension part', 'steering part', 'subframe', 'seat', 'restraint unit'] as const),
  ...(['battery tray', 'traction battery'] as const),
]);

function loosensSafetyBolts({ operation, part: { part } }: OperationSurvey): boolean {
  const isBolted = part.kind !== undefined && safetyBolted.has(part.kind);
  return isBolted && (operation.do === 'replace' || operation.do === 'remove and refit');
}

/** One cut and its joints the maker draws; a second one in the same member nobody does. */
function isSecondCut(survey: Survey, { part, operation, cutsPartWay }: OperationSurvey): boolean {
  if (cutsPartWay !== true) return false;
  // A cut and its weld are often two operations; only two places make two cuts.
  const isElsewhere = ({ operation: other, cutsPartWay: cuts }: OperationSurvey): boolean =>
    cuts === true &&
    other.at !== undefined &&
    operation.at !== undefined &&
    !sameName(other.at, operation.at);
  return part.operations.some(isElsewhere) || wasRepaired(survey, part);
}
