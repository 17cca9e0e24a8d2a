import type { Part } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed } from '../make-fact.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';

type InsideFact = 'part.inside_protected' | 'part.inside_done' | 'part.inside_before_heat';
type Cavity = NonNullable<NonNullable<Survey['plan']['finish']>['cavities']>[number];

/** Primer and wax inside a hollow member: stated, done, and not before the heat that would burn them. */
export function insideProtection(
  survey: Survey,
  { part, at }: PartSurvey,
): Readonly<Record<InsideFact, Fact>> {
  const cavities = cavitiesOf(survey, part).filter(({ cavity }) => isMeant(cavity));
  const done = cavities.filter(({ cavity }) => cavity.done !== undefined);
  const open = cavities.find(({ cavity }) => cavity.done === undefined);
  return {
    'part.inside_protected': computed(
      cavities.some(({ cavity }) => protects(cavity)),
      `${at}/id`,
    ),
    'part.inside_done': computed(
      cavities.some(({ cavity }) => protects(cavity)) && done.length === cavities.length,
      open?.at ?? '/finish/cavities',
    ),
    'part.inside_before_heat': computed(
      done.length > 0 && done.every(({ cavity }) => liesBeforeHeat(survey, part, cavity)),
      done[0]?.at ?? '/finish/cavities',
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

function protects({ wax, primer }: Cavity): boolean {
  return wax !== undefined && primer !== undefined;
}

/** Only what the days and times prove: on one day without times the order is the usual one. */
function liesBeforeHeat(survey: Survey, part: Part, cavity: Cavity): boolean {
  const own = whenOf(cavity.done);
  if (own === undefined) return false;
  return survey.operations.some((one) => {
    if (one.hot === false) return false;
    const isOwn = one.part.part === part;
    const joints = one.joints.filter(
      ({ joint }) => isOwn || joint.to === part.id || (joint.sheets ?? []).some((id) => id === part.id),
    );
    if (!isOwn && joints.length === 0) return false;
    return [one.operation.done, ...joints.map(({ joint }) => joint.done)].some((text) => {
      const work = whenOf(text);
      return work !== undefined && notAfter(work, own) === false;
    });
  });
}
