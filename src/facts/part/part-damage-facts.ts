import type { Part } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { isPermanent } from '../joint/joint-methods.ts';
import { computed, computedOr, stated, unknown } from '../make-fact.ts';
import { graverInWords } from './damage-words.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

type DamageFact =
  | 'part.damage'
  | 'part.damaged'
  | 'part.damage_not_looked_at'
  | 'part.damage_words'
  | 'part.has_operation'
  | 'part.replaced'
  | 'part.joined_anew'
  | 'part.may_stay';

/** What was found on a part, and what the plan answers to it. */
export function partDamageFacts(survey: Survey, one: PartSurvey): Readonly<Record<DamageFact, Fact>> {
  const { part, at, operations } = one;
  const damage = damageKinds(part);
  const none = unknown('No damage is stated for the part, not even that there is none.', `${at}/damage`);
  const place = `${at}/operations`;
  return {
    'part.damage': damage.length === 0 ? none : stated(damage, `${at}/damage`),
    'part.damaged': damagedFact(damage, none, at),
    'part.damage_not_looked_at': computed(
      part.damage?.found_by === 'not looked at' && !damage.includes('not yet seen'),
      `${at}/damage/found_by`,
    ),
    'part.damage_words': computedOr(
      graverInWords(part.damage?.extent, damage),
      `${at}/damage/extent`,
      'The words for its extent tell of nothing graver than its kind.',
    ),
    'part.has_operation': computed(
      operations.some(
        ({ operation }) =>
          operation.do === undefined || answers(operation.do, damage, one.structural === true),
      ),
      place,
    ),
    'part.replaced': computed(operations.some(takesMetalAway), place),
    'part.joined_anew': computed(operations.some(joinsAnew), place),
    'part.may_stay': computed(
      listOf(part.damage?.tolerable_by).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/damage/tolerable_by`,
    ),
  };
}

/** Each kind once, in the order of the plan. */
export function damageKinds({ damage }: Part): readonly NonNullable<NonNullable<Part['damage']>['kind']>[] {
  return [...new Set([...(damage?.kind === undefined ? [] : [damage.kind]), ...(damage?.kinds ?? [])])];
}

/** Operations that answer damage, or that another rule asks about; paint, sanding and taking off and on do not. */
const answersDamage: ReadonlySet<string> = new Set([
  ...['replace', 'section', 'butt weld', 'heat', 'straighten', 'leave'],
]);

/** Joining anew answers what was torn open. On metal that is only bent it adds to the damage and takes nothing of it away. */
const answersOpening: ReadonlySet<string> = new Set(['weld', 'braze', 'bond', 'rivet']);
const openings: ReadonlySet<string> = new Set(['split spot welds', 'tear', 'crack', 'kink', 'burn']);

function answers(word: string, damage: readonly string[], carriesLoad: boolean): boolean {
  if (answersDamage.has(word)) return true;
  if (answersOpening.has(word)) return damage.length === 0 || damage.some((kind) => openings.has(kind));
  return word === 'fill' && !carriesLoad;
}

function takesMetalAway({ operation, cutsPartWay }: OperationSurvey): boolean {
  return operation.do === 'replace' || cutsPartWay === true;
}

const joiningWords: ReadonlySet<string> = new Set([
  ...['replace', 'section', 'butt weld', 'weld', 'braze', 'bond', 'rivet'],
]);

function joinsAnew({ operation, joints }: OperationSurvey): boolean {
  const byWord = operation.do !== undefined && joiningWords.has(operation.do);
  return byWord || joints.some(({ joint }) => joint.method !== undefined && isPermanent(joint.method));
}

function damagedFact(damage: readonly string[], none: Fact, at: string): Fact {
  if (damage.length === 0) return none;
  if (damage.some((kind) => kind !== 'none' && kind !== 'not yet seen'))
    return computed(true, `${at}/damage`);
  return damage.includes('not yet seen')
    ? unknown('The part was not yet seen.', `${at}/damage`)
    : computed(false, `${at}/damage`);
}
