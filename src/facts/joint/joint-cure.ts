import type { Joint } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradictedBy } from '../make-fact.ts';
import { quantityOf, whenOf } from '../quantity-of.ts';
import type { When } from '../quantity-of.ts';
import { isNotAfter } from '../step/day-order.ts';
import { hungOn } from '../part/hung-on.ts';
import type { JointMatter } from './joint-matter.ts';
import { readCure, secondsApart } from './cure-time.ts';
import type { Cure } from './cure-time.ts';
import { hasAdhesive } from './joint-methods.ts';

type CureFact =
  | 'joint.cured_before_joined'
  | 'joint.cured_too_soon'
  | 'joint.loaded_before_cure'
  | 'joint.cure_when_measured'
  | 'joint.cure_text'
  | 'joint.cure_temperature';

/** The adhesive of a joint as it sets: against the days on which the body was measured, moved and handed over. */
export function cureFacts(matter: JointMatter): Readonly<Record<CureFact, Fact>> {
  const { survey, operation } = matter;
  const { joint, at } = matter.one;
  const { adhesive, method } = joint;
  const place = `${at}/adhesive`;
  const joined = joint.done ?? operation.operation.done;
  const has = adhesive !== undefined || (method !== undefined && hasAdhesive(method));
  const bond: Bond = {
    joined,
    cured: adhesive?.cured,
    cure: readCure(adhesive?.cure),
    handlingSeconds: quantityOf(adhesive?.handling_time, 'time'),
  };
  const measured = has ? measuredWhile(bond, survey.plan.measurements?.after) : notAsked;
  const tooSoon = curedTooSoon(bond);
  return {
    'joint.cured_before_joined': contradictedBy(
      `${place}/cured`,
      isNotAfter(joined, bond.cured) === false
        ? [`${joint.done === undefined ? operation.at : at}/done`]
        : [],
    ),
    'joint.cured_too_soon': computedOr(
      tooSoon
        ? `joined ${joined ?? ''}, cured ${bond.cured ?? ''}, cure “${adhesive?.cure ?? ''}”`
        : undefined,
      `${place}/cured`,
      'The time from joining to cure is long enough, or not written.',
    ),
    'joint.loaded_before_cure': computedOr(
      (has ? loadsOf(matter, bond) : []).join(', ') || undefined,
      bond.cured === undefined ? place : `${place}/cured`,
      'Nothing that loads the joint is dated before it had cured, or the days are not written.',
    ),
    'joint.cure_when_measured': computed(measured, place),
    'joint.cure_temperature': computedOr(
      bond.cure?.warmestCelsius,
      `${place}/cure`,
      'At which temperature the adhesive cures is not stated.',
    ),
    'joint.cure_text': computedOr(
      has ? cureText(joint, joined, survey.plan.measurements?.after) : undefined,
      place,
      'There is no adhesive.',
    ),
  };
}

/** Whether the adhesive of a joint has cured at a moment; undefined where days and times do not tell. */
export function hasSet({ adhesive }: Joint, joined: string | undefined, moment: When): boolean | undefined {
  const bond: Bond = {
    joined,
    cured: adhesive?.cured,
    cure: readCure(adhesive?.cure),
    handlingSeconds: undefined,
  };
  return bears(bond, moment, 'load');
}

interface Bond {
  readonly joined: string | undefined;
  /** When it is said to have cured. */
  readonly cured: string | undefined;
  readonly cure: Cure | undefined;
  /** After this it bears being moved and let go of. */
  readonly handlingSeconds: number | undefined;
}

const notAsked = 'not asked';

/**
 * After a week at room temperature every two-part adhesive of body repair has cured, s; from memory of their data sheets, which
 * give one to seven days.
 */
const longestCureSeconds = 7 * 86_400;

function measuredWhile(
  bond: Bond,
  after: string | undefined,
): 'over' | 'under way' | 'not told' | 'not asked' {
  const [joined, measured] = [whenOf(bond.joined), whenOf(after)];
  if (joined === undefined || measured === undefined) return notAsked;
  const standing = bears(bond, measured, 'handling');
  if (standing !== undefined) return standing ? 'over' : 'under way';
  const isLong = secondsApart(joined, measured).atLeast >= longestCureSeconds && bond.cure?.isWarm !== true;
  return isLong || whenOf(bond.cured)?.day === measured.day ? 'over' : 'not told';
}

/** Whether the bond bears being let go of, or driven, at a moment; undefined where days and times do not tell. */
function bears(bond: Bond, moment: When, what: 'handling' | 'load'): boolean | undefined {
  const [joined, cured] = [whenOf(bond.joined), whenOf(bond.cured)];
  const handled = what === 'handling' ? bond.handlingSeconds : undefined;
  if (handled !== undefined) return isPast(joined, moment, handled, handled);
  if (cured !== undefined) return isPast(cured, moment, 0, 0);
  if (bond.cure === undefined) return undefined;
  const { shortestSeconds, longestSeconds, isWarm } = bond.cure;
  return isPast(joined, moment, shortestSeconds, isWarm ? Infinity : longestSeconds);
}

/** No before the shorter time has gone by, yes after the longer. */
function isPast(
  from: When | undefined,
  moment: When,
  shorterSeconds: number,
  longerSeconds: number,
): boolean | undefined {
  if (from === undefined) return undefined;
  const { atLeast, atMost } = secondsApart(from, moment);
  return atLeast >= longerSeconds ? true : atMost < shorterSeconds ? false : undefined;
}

/**
 * What is dated before the joint bears it: a body on its wheels or under a pull, and what is hung on the sheets, once it bears
 * handling; the road, once it has cured.
 */
function loadsOf({ survey, stack }: JointMatter, bond: Bond): readonly string[] {
  const { plan, operations } = survey;
  const handling: readonly Load[] = [
    ['the wheel alignment', plan.verify?.alignment?.done],
    ...operations
      .filter(
        ({ straightens, works, part }) =>
          straightens === true && works !== false && part.structural !== false,
      )
      .filter(({ operation: { done } }) => isNotAfter(done, bond.joined) === false)
      .map(({ operation, part }): Load => [`the pulling of ${part.name}`, operation.done]),
    ...hungOn(survey, stack)
      .map(({ operation, part }): Load => [
        `the fitting of ${part.name}`,
        operation.done ?? operation.fasteners?.tightened,
      ])
      .filter(([, done]) => isNotAfter(bond.joined, done) === true),
  ];
  const driven: readonly Load[] = [
    ['the road test', plan.verify?.road_test?.done],
    ['the signature', plan.sign_off?.date],
  ];
  const early =
    (what: 'handling' | 'load') =>
    ([, done]: Load): boolean => {
      const moment = whenOf(done);
      return moment !== undefined && bears(bond, moment, what) === false;
    };
  return [...handling.filter(early('handling')), ...driven.filter(early('load'))].map(([name]) => name);
}

type Load = readonly [name: string, done: string | undefined];

function curedTooSoon({ joined, cured, cure }: Bond): boolean {
  const [from, to] = [whenOf(joined), whenOf(cured)];
  if (from === undefined || to === undefined || cure === undefined) return false;
  const { atMost } = secondsApart(from, to);
  // Before it was joined at all is another sentence.
  return atMost >= 0 && atMost < cure.shortestSeconds;
}

function cureText({ adhesive }: Joint, joined: string | undefined, after: string | undefined): string {
  const { cured, cure, handling_time: handling } = adhesive ?? {};
  const said = [
    `joined ${joined ?? 'on no stated day'}`,
    ...(after === undefined ? [] : [`measured ${after}`]),
    ...(cured === undefined ? [] : [`cured ${cured}`]),
    ...(handling === undefined ? [] : [`handling after ${handling}`]),
    ...(cure === undefined ? [] : [`cure “${cure}”`]),
  ];
  return said.join(', ');
}
