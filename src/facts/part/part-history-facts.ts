import type { FactNames } from '../../generated/fact-names.ts';
import { drainsToldShut } from './drains-told.ts';
import { insideToldBeforeWeld } from './inside-told.ts';
import { linkedParts } from './linked-parts.ts';
import { cavitiesOf } from '../step/inside-protection.ts';
import { isNotAfter } from '../step/day-order.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradicted, statedOr } from '../make-fact.ts';
import { goesOnWithoutWelding } from './part-kinds.ts';
import { isWelded } from '../joint/joint-methods.ts';
import { listOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { anyYes } from '../tri-state.ts';
import type { TriState } from '../tri-state.ts';

type HistoryFact = Extract<
  FactNames['part'],
  | `part.${'short_radius' | 'line_left' | 'hit_directly' | 'donor_taken_off' | 'donor_flooded'}`
  | `part.${'bolted_kind' | 'foam_disturbed' | 'foam_renewed' | 'drains_open' | 'drains_told_shut' | 'inside_told_before_weld'}`
  | `part.${'inside_before_bake' | 'radar_behind'}`
>;

/** What befell a part, where it comes from, and what of its cavity is put right again. */
export function partHistoryFacts(survey: Survey, one: PartSurvey): Readonly<Record<HistoryFact, Fact>> {
  const { part, at } = one;
  const { plan } = survey;
  const cavities = cavitiesOf(survey, part);
  const drains = cavities.filter(({ cavity }) => cavity.drains_open !== undefined);
  const shut = drains.find(({ cavity }) => cavity.drains_open === false);
  const baked = plan.finish?.bake?.done;
  const beforeBake = cavities.map(({ cavity: { done }, at: place }) => {
    const isAfter = isNotAfter(baked, done);
    return { answer: isAfter === undefined ? undefined : !isAfter, place };
  });
  const early = beforeBake.find(({ answer }) => answer === true);
  const foamOut = takenOut(one);
  const toldShut = drainsToldShut(survey, one);
  const toldEarly = insideToldBeforeWeld(survey, one);
  const damage = `${at}/damage`;
  const donor = `${at}/donor`;
  return {
    'part.short_radius': statedOr(
      part.damage?.short_radius,
      `${damage}/short_radius`,
      'Whether its bend is sharp or runs smoothly is not stated (`short_radius`).',
    ),
    'part.line_left': statedOr(
      part.damage?.line_left,
      `${damage}/line_left`,
      'Whether a line or crease is left after straightening is not stated (`line_left`).',
    ),
    'part.hit_directly': computed(
      part.id !== undefined && (plan.damage?.direct ?? []).includes(part.id),
      '/damage/direct',
    ),
    'part.donor_taken_off': statedOr(
      part.donor?.taken_off,
      `${donor}/taken_off`,
      'How it came off the donor is not stated (`taken_off`).',
    ),
    'part.donor_flooded': statedOr(
      part.donor?.flooded,
      `${donor}/flooded`,
      'Whether the donor stood in water is not stated (`flooded`).',
    ),
    'part.bolted_kind': computed(goesOnWithoutWelding(part.kind), `${at}/kind`),
    'part.foam_disturbed': computedOr(
      foamOut === undefined ? anyYes([foamDisturbed(one), weldedFromOutside(survey, one)]) : true,
      foamOut ?? `${at}/holds`,
      'Whether the part that holds foam is cut or heated cannot be told.',
    ),
    'part.foam_renewed': computed(
      [one, ...linkedParts(survey, one)]
        .flatMap((other) => cavitiesOf(survey, other.part))
        .some(({ cavity }) => isSomething(cavity.foam)) || one.operations.some(renewsFoam),
      '/finish/cavities',
    ),
    'part.drains_open': statedOr(
      drains.length === 0 ? undefined : shut === undefined,
      shut === undefined ? (cavities[0]?.at ?? '/finish/cavities') : `${shut.at}/drains_open`,
      'Whether its drain holes are open is not stated (`drains_open`).',
    ),
    'part.drains_told_shut': computedOr(
      toldShut?.words,
      toldShut?.at ?? '/finish/cavities',
      'No words say that its drain holes are shut.',
    ),
    'part.inside_told_before_weld': computedOr(
      toldEarly?.words,
      toldEarly?.at ?? '/finish/cavities',
      'No words put it inside before the part is joined in.',
    ),
    'part.inside_before_bake':
      early === undefined
        ? computedOr(
            beforeBake.length === 0 ? undefined : anyYes(beforeBake.map(({ answer }): TriState => answer)),
            '/finish/cavities',
            'The days that would tell whether it was protected before the bake are not written.',
          )
        : contradicted(true, early.place, ['/finish/bake/done']),
    'part.radar_behind': statedOr(
      part.radar_behind,
      `${at}/radar_behind`,
      'Whether a radar looks through it is not stated (`radar_behind`).',
    ),
  };
}

function foamDisturbed({ part, operations }: PartSurvey): TriState {
  const holdsFoam = (part.holds ?? []).some((item) => item === 'foam' || item === 'sound pad');
  if (!holdsFoam) return false;
  return anyYes(
    operations.map(({ operation, hot, cutsPartWay }) =>
      operation.do === 'replace' ? true : anyYes([hot, cutsPartWay]),
    ),
  );
}

/** Whether a new or cut skin over a hollow part with foam is welded to it: what lies at that flange is burnt or torn, unless it is listed beside the work. */
function weldedFromOutside(survey: Survey, { part }: PartSurvey): boolean {
  const { holds, id, under } = part;
  if (id === undefined || under === undefined || !(holds ?? []).includes('foam')) return false;
  const skins = listOf(under);
  return survey.operations.some(
    ({ hot, joints, operation, part: skin }) =>
      hot === true &&
      (operation.do === 'replace' || operation.do === 'section') &&
      skins.includes(skin.part.id ?? '') &&
      joints.some(
        ({ joint: { method, sheets, to } }) =>
          method !== undefined && isWelded(method) && (to === id || (sheets ?? []).includes(id)),
      ) &&
      !(operation.near ?? []).some(({ item }) => item === 'foam'),
  );
}

/** Where foam is said to be taken out beside hot work. A sound pad goes back like a trim. */
function takenOut({ operations }: PartSurvey): string | undefined {
  for (const { operation, at } of operations) {
    const index = (operation.near ?? []).findIndex(
      ({ item, treatment }) => item === 'foam' && treatment === 'removed',
    );
    if (index >= 0) return `${at}/near/${String(index)}`;
  }
  return undefined;
}

function renewsFoam({ operation }: PartSurvey['operations'][number]): boolean {
  return (operation.near ?? []).some(
    ({ item, treatment }) => (item === 'foam' || item === 'sound pad') && treatment === 'renewed',
  );
}

function isSomething(text: string | undefined): boolean {
  return text !== undefined && !/^(?:none|nil|no|without|not)\b/i.test(text.trim());
}
