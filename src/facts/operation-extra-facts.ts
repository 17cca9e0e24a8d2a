import type { FactNames } from '../generated/fact-names.ts';
import type { PartKind } from '../generated/plan-types.ts';
import { sameName } from '../vehicle/same-name.ts';
import type { Fact } from './fact.ts';
import { isCutUnjoined } from './joint/joint-at-cut.ts';
import { isWelded } from './joint/joint-methods.ts';
import { computed, computedOr, contradictedBy, statedOr } from './make-fact.ts';
import { openingTold } from './opening-told.ts';
import { citedElsewhere } from './papers/cited-elsewhere.ts';
import { citedForOther, isBody, isRunningGear, mattersOfBolting } from './papers/matter-of.ts';
import { coversVehicle } from './papers/maker-evidence.ts';
import { wasRepaired } from './part/earlier-repairs.ts';
import { isNotAfter } from './step/day-order.ts';
import { listOf, quantityOf, whenOf } from './quantity-of.ts';
import { saysNone } from './step/step-draft.ts';
import type { OperationSurvey, Survey } from './survey.ts';

type ExtraFact = Extract<
  FactNames['operation'],
  | `operation.${'second_cut' | 'opening_told' | 'added_metal' | 'added_metal_cited' | 'film_cited' | 'film' | 'film_limit' | 'film_over'}`
  | `operation.${'cut_unjoined' | 'painted_before_weld'}`
  | `operation.${'loosens_safety_bolts' | 'one_time_bolts' | 'torque_cited' | 'bolts_tightened'}`
  | `operation.${'torque_cited_elsewhere' | 'tightened_before_fitted' | 'cited_for_other_matter'}`
>;

/** What an operation adds, covers with paint, or unbolts. */
export function operationExtraFacts(survey: Survey, one: OperationSurvey): Readonly<Record<ExtraFact, Fact>> {
  const { operation, at } = one;
  const isCited = (cite: typeof operation.cite): boolean =>
    listOf(cite).some(({ reference }) => coversVehicle(survey, reference));
  const film = quantityOf(operation.film, 'length');
  const limit = quantityOf(operation.film_limit, 'length');
  const bolts = operation.fasteners;
  const ofMatter = citedForOtherMatter(survey, one);
  const ofLimit = limitForOtherMatter(survey, one);
  const torque = citedElsewhere(survey, bolts?.cite, `${at}/fasteners/cite`);
  const added = saysNone(operation.added_metal) ? undefined : operation.added_metal;
  return {
    'operation.second_cut': computed(isSecondCut(survey, one), at),
    'operation.cut_unjoined': computed(isCutUnjoined(survey, one), `${at}/at`),
    'operation.painted_before_weld': contradictedBy(`${at}/done`, weldedAfterPaint(one)),
    'operation.opening_told': computedOr(
      openingTold(operation),
      `${at}/do`,
      'Nothing is drilled, or no words tell of an opening.',
    ),
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
    'operation.cited_for_other_matter': computedOr(
      ofMatter ?? ofLimit,
      ofMatter === undefined && ofLimit !== undefined ? `${at}/limit/cite` : `${at}/cite`,
      'A page of body work is cited, or none, or its matter is not told.',
    ),
    'operation.torque_cited': computed(
      isCited(bolts?.cite) || boltedJoints(one).some(({ joint }) => isCited(joint.cite)),
      `${at}/fasteners/cite`,
    ),
    'operation.torque_cited_elsewhere': computedOr(
      torque?.text,
      torque?.at ?? `${at}/fasteners/cite`,
      'A page of this vehicle is cited for the torque, or none at all.',
    ),
    'operation.tightened_before_fitted': contradictedBy(
      `${at}/fasteners/tightened`,
      isTightenedBefore(one) ? [`${at}/done`] : [],
    ),
    'operation.bolts_tightened': computed(bolts?.tightened !== undefined, `${at}/fasteners/tightened`),
  };
}

/** How hot and how often stands in the body procedure, or in none. */
function limitForOtherMatter(survey: Survey, { operation, part }: OperationSurvey): string | undefined {
  if (operation.limit?.cite === undefined || !isBody(part)) return undefined;
  const text = citedForOther(survey, operation.limit.cite, ['body structure'], part);
  return text === undefined ? undefined : `${text}, for how hot it may get`;
}

/** A part of the running gear comes off by a page of body work often enough; what is fitted new is fitted by its own. */
function citedForOtherMatter(survey: Survey, { operation, part }: OperationSurvey): string | undefined {
  if (isBody(part)) return citedForOther(survey, operation.cite, ['body structure'], part);
  const wanted = operation.do === 'replace' && isRunningGear(part) ? mattersOfBolting(part) : undefined;
  return wanted === undefined ? undefined : citedForOther(survey, operation.cite, wanted, part);
}

/** Only what days and times prove: on one day without times the order is the usual one. */
function weldedAfterPaint({ operation, part, offVehicle }: OperationSurvey): readonly string[] {
  if (operation.do !== 'refinish' || offVehicle || operation.off_vehicle === true) return [];
  return part.operations.flatMap(({ operation: other, joints, at: place }) =>
    joints.flatMap(({ joint, at }) =>
      joint.method !== undefined &&
      isWelded(joint.method) &&
      isNotAfter(joint.done ?? other.done, operation.done) === false
        ? [`${joint.done === undefined ? place : at}/done`]
        : [],
    ),
  );
}

/** Kinds that are bolted on and steer, carry a wheel or the traction battery, or hold a person. */
const safetyBolted: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['suspension part', 'steering part', 'subframe', 'seat', 'restraint unit'] as const),
  ...(['battery tray', 'traction battery', 'bumper beam'] as const),
]);

/** By its kind, unless its joints say that it is welded or bonded on; and whatever carries load and is bolted by its joints. */
function loosensSafetyBolts(one: OperationSurvey): boolean {
  const { operation, part, joints } = one;
  if (operation.do !== 'replace' && operation.do !== 'remove and refit') return false;
  const bolted = boltedJoints(one).length > 0;
  const isByKind = part.part.kind !== undefined && safetyBolted.has(part.part.kind);
  return (isByKind && (joints.length === 0 || bolted)) || (bolted && part.structural !== false);
}

function boltedJoints({ joints }: OperationSurvey): OperationSurvey['joints'] {
  return joints.filter(({ joint }) => joint.method === 'bolt');
}

/** Bolts whose day lies before that of the part that they hold. On one day nobody can tell. */
function isTightenedBefore({ operation }: OperationSurvey): boolean {
  const isFitted = operation.do === 'replace' || operation.do === 'remove and refit';
  const [tightened, fitted] = [whenOf(operation.fasteners?.tightened), whenOf(operation.done)];
  return isFitted && tightened !== undefined && fitted !== undefined && tightened.day < fitted.day;
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
