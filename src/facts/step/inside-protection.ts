import type { Part } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradictedBy } from '../make-fact.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { primerUnfit, waxUnfit } from './primer-unfit.ts';
import { saysScant } from './scant-words.ts';
import { placeOfMoment } from './work-moments.ts';

type InsideFact =
  'part.inside_scant' | 'part.inside_protected' | 'part.inside_done' | 'part.inside_before_heat';
type Cavity = NonNullable<NonNullable<Survey['plan']['finish']>['cavities']>[number];

/** Primer and wax inside a hollow member: stated, done, and not before the heat that would burn them. */
export function insideProtection(
  survey: Survey,
  { part, at }: PartSurvey,
): Readonly<Record<InsideFact, Fact>> {
  const cavities = cavitiesOf(survey, part).filter(({ cavity }) => isMeant(cavity));
  const done = cavities.filter(({ cavity }) => cavity.done !== undefined);
  const open = cavities.find(({ cavity }) => cavity.done === undefined);
  const scant = cavities.find(({ cavity }) => scantWords(cavity) !== undefined);
  const later = done.map(({ cavity }) => heatAfter(survey, part, cavity));
  return {
    'part.inside_protected': computed(
      cavities.some(({ cavity }) => protects(cavity)),
      `${at}/id`,
    ),
    'part.inside_scant': computedOr(
      scantWords(scant?.cavity),
      scant?.at ?? '/finish/cavities',
      'No words tell of too little primer or wax inside.',
    ),
    'part.inside_done': computed(
      cavities.some(({ cavity }) => protects(cavity)) && done.length === cavities.length,
      open?.at ?? '/finish/cavities',
    ),
    'part.inside_before_heat': contradictedBy(
      done[0]?.at ?? '/finish/cavities',
      done.length === later.filter((places) => places.length > 0).length ? later.flat() : [],
    ),
  };
}

/** The entries on the inside of a part, each with its place in the plan. */
export function cavitiesOf(
  { plan }: Survey,
  { id }: Part,
): readonly { readonly cavity: Cavity; readonly at: string }[] {
  if (id === undefined) return [];
  return (plan.finish?.cavities ?? []).flatMap((cavity, index) =>
    cavity.part === id ? [{ cavity, at: `/finish/cavities/${String(index)}` }] : [],
  );
}

/** What was done was meant, whatever the plan said before. */
function isMeant({ planned, done }: Cavity): boolean {
  return planned !== false || done !== undefined;
}

/** The words of a coat inside that tell of too little of it, or of one that is none for the inside. */
function scantWords(cavity: Cavity | undefined): string | undefined {
  return (
    [cavity?.wax, cavity?.primer].find(saysScant) ?? waxUnfit(cavity?.wax) ?? primerUnfit(cavity?.primer)
  );
}

function protects({ wax, primer }: Cavity): boolean {
  return wax !== undefined && primer !== undefined;
}

/** Only what the days and times prove: on one day without times the order is the usual one. */
function heatAfter(survey: Survey, part: Part, cavity: Cavity): readonly string[] {
  const own = whenOf(cavity.done);
  if (own === undefined) return [];
  return survey.operations.flatMap((one) => {
    if (one.hot === false) return [];
    const isOwn = one.part.part === part;
    const joints = one.joints.filter(
      ({ joint }) => isOwn || joint.to === part.id || (joint.sheets ?? []).some((id) => id === part.id),
    );
    if (!isOwn && joints.length === 0) return [];
    const place = placeOfMoment({ ...one, joints }, (work) => notAfter(work, own) === false);
    return place === undefined ? [] : [place];
  });
}
