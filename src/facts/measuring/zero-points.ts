import type { FactNames } from '../../generated/fact-names.ts';
import type { PlanMeasurements } from '../../generated/plan-types.ts';
import { pointBase } from '../../measure/point-base.ts';
import { clauseOfDamage } from './found-in-words.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import { isOnSoundStretch } from './sound-stretch.ts';
import type { Survey } from '../survey.ts';
import { anyYes } from '../tri-state.ts';

type ZeroPointFact = Extract<FactNames['measurement'], `measurement.zero_point${string}`>;

/** The points that the datum is fitted to: how many, on what, and how wide they stand. */
export function zeroPointFacts(
  survey: Survey,
  measurements: PlanMeasurements,
  body: MeasuredBody,
): Readonly<Record<ZeroPointFact, Fact>> {
  const at = '/measurements/zero_points';
  const names = new Set(measurements.zero_points ?? []);
  // A zero point that the plan does not list is asked for by its part and place as much as one that it does.
  const byName = new Map(
    body.points.filter(({ isZero }) => isZero).map((point) => [point.written.name, point]),
  );
  const points = [...names].map((name) => byName.get(name));
  const places = points.map((point) => point?.nominal).filter((place) => place !== undefined);
  const base = places.length < points.length ? undefined : pointBase(places);
  const notTold = 'The nominal places of the zero points are not stated.';
  return {
    'measurement.zero_points':
      measurements.zero_points === undefined
        ? unknown('No zero points are named.', at)
        : computed(names.size, at),
    'measurement.zero_point_in_damage': inDamage(survey, body, points, at),
    'measurement.zero_point_in_words': inWords(survey, points, at),
    'measurement.zero_point_span': computedOr(base?.spanMm, at, notTold),
    'measurement.zero_point_width': computedOr(base?.widthMm, at, notTold),
  };
}

/** The parts may be said to be sound; what was found away from the impact is held against that. */
function inWords(survey: Survey, points: readonly (MeasuredPoint | undefined)[], at: string): Fact {
  const found = survey.plan.damage?.indirect?.found;
  const told =
    found === undefined
      ? []
      : points.flatMap((point) => {
          const part = survey.partById.get(point?.written.on ?? '');
          const clause = part === undefined ? undefined : clauseOfDamage(found, part.part);
          return point === undefined || part === undefined || clause === undefined
            ? []
            : [{ name: point.called, on: part.name, clause }];
        });
  const names = told.map(({ name }) => name).join(', ');
  return computedOr(
    told[0] === undefined ? undefined : `${names} on ${told[0].on} ("${told[0].clause}")`,
    at,
    'What was found away from the impact names no part on which a zero point lies.',
  );
}

function inDamage(
  survey: Survey,
  body: MeasuredBody,
  points: readonly (MeasuredPoint | undefined)[],
  at: string,
): Fact {
  const answer = anyYes(
    points.map((point) => {
      const part = point?.written.on === undefined ? undefined : survey.partById.get(point.written.on)?.part;
      if (part === undefined || point === undefined) return undefined;
      const kinds = damageKinds(part);
      if (kinds.length === 0 || kinds.includes('not yet seen')) return undefined;
      const isHit = kinds.some((kind) => kind !== 'none' && kind !== 'scratch' && kind !== 'surface rust');
      return isHit && !isOnSoundStretch(survey, body, point);
    }),
  );
  return computedOr(
    answer,
    at,
    'On which parts the zero points lie, and whether those are sound, is not stated.',
  );
}
