import type { Cite, Cites, Matter } from '../../generated/plan-types.ts';
import { coversVehicle, materialEvidence } from './maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import { isBody, isOfOther, mattersOfBolting } from './matter-of.ts';
import type { PartSurvey, ReferenceSurvey, Survey } from '../survey.ts';
import { bestCitation, surveyCitations } from './survey-references.ts';

/** A document on which something else than an operation rests: a wait, a limit, an isolation, what a part is made of. */
export interface Paper {
  readonly reference: ReferenceSurvey;
  /** What rests on it, as a report says it. */
  readonly what: string;
  /** Pointer of the citation. */
  readonly at: string;
  readonly placeStated: boolean;
  /** When that was done, as written. */
  readonly done?: string;
  /** Whether the document is about something else, by what is stated of it or by its title. */
  readonly ofOtherMatter?: true;
}

interface Leaning {
  readonly cites: Cites | undefined;
  readonly at: string;
  readonly what: string;
  readonly done?: string | undefined;
  /** What such a page is about, and the part whose name in its title will do; absent where any page will. */
  readonly matters?: readonly Matter[] | undefined;
  readonly of?: PartSurvey;
}

/**
 * What rests on each reference beside operations. Only what counts is listed: a citation that carries no fact, or of a
 * document that is not this vehicle’s, is judged where it stands; of several the best one counts.
 */
export function surveyPapers(survey: Survey): ReadonlyMap<ReferenceSurvey, readonly Paper[]> {
  const papers = new Map<ReferenceSurvey, Paper[]>();
  for (const leaning of [...leaningsOfSteps(survey), ...survey.parts.flatMap((one) => ofPart(survey, one))]) {
    const paper = paperOf(survey, leaning);
    if (paper === undefined) continue;
    const known = papers.get(paper.reference);
    if (known === undefined) papers.set(paper.reference, [paper]);
    else known.push(paper);
  }
  return papers;
}

function paperOf(survey: Survey, { cites, at, what, done, matters, of }: Leaning): Paper | undefined {
  if (cites === undefined) return undefined;
  const isList = Array.isArray(cites);
  const all = surveyCitations(
    listOf(cites),
    (index) => (isList ? `${at}/${String(index)}` : at),
    survey.referenceById,
  );
  const best = bestCitation(all.filter(({ id }) => coversVehicle(survey, id)));
  if (best?.reference === undefined) return undefined;
  return {
    reference: best.reference,
    what,
    at: best.at,
    placeStated: best.place !== undefined || best.reference.reference.single_sheet === true,
    ...(done === undefined ? {} : { done }),
    ...(matters !== undefined && isOfOther(best.reference, matters, of) ? { ofOtherMatter: true } : {}),
  };
}

function leaningsOfSteps({ plan }: Survey): readonly Leaning[] {
  const { make_safe: makeSafe, measurements, finish, verify } = plan;
  const { restraints, high_voltage: high, fire } = makeSafe ?? {};
  const { isolation } = high ?? {};
  const at = '/make_safe';
  return [
    {
      cites: isolation?.cite,
      at: `${at}/high_voltage/isolation/cite`,
      what: 'the high-voltage isolation',
      done: isolation?.done,
    },
    {
      cites: restraints?.wait_cite,
      at: `${at}/restraints/wait_cite`,
      what: 'the wait of the restraints',
      done: restraints?.done,
    },
    {
      cites: restraints?.replacement_list,
      at: `${at}/restraints/replacement_list`,
      what: 'the list of restraint parts to replace',
    },
    {
      cites: restraints?.fasteners?.cite,
      at: `${at}/restraints/fasteners/cite`,
      what: 'the torque of the belts’ bolts',
      done: restraints?.fasteners?.tightened,
    },
    {
      cites: restraints?.wiring_cite,
      at: `${at}/restraints/wiring_cite`,
      what: 'the repair of restraint wiring',
    },
    {
      cites: restraints?.control_unit_cite,
      at: `${at}/restraints/control_unit_cite`,
      what: 'what becomes of the restraint control unit',
    },
    // Beside fuel and gas only: what is cited for nothing carries nothing.
    ...(fire?.fluids === undefined
      ? []
      : [{ cites: fire.cite, at: `${at}/fire/cite`, what: 'fuel and gas beside hot work' }]),
    {
      cites: finish?.bake?.battery_limit?.cite,
      at: '/finish/bake/battery_limit/cite',
      what: 'the battery’s limit in the bake',
      matters: ['high voltage', 'paint', 'body structure'],
      done: finish?.bake?.done,
    },
    {
      cites: measurements?.tolerance_cite,
      at: '/measurements/tolerance_cite',
      what: 'the tolerance of the measuring',
    },
    {
      cites: verify?.alignment?.cite,
      at: '/verify/alignment/cite',
      what: 'the wheel alignment',
      done: verify?.alignment?.done,
    },
    ...(verify?.alignment?.values ?? []).flatMap(({ cite }, index) =>
      cite === undefined
        ? []
        : [
            {
              cites: cite,
              at: `/verify/alignment/values/${String(index)}/cite`,
              what: 'a value of the wheel alignment',
              done: verify?.alignment?.done,
            },
          ],
    ),
    ...(verify?.calibrations ?? []).map(({ cite, sensor, done }, index) => ({
      cites: cite,
      at: `/verify/calibrations/${String(index)}/cite`,
      what: `the calibration of ${sensor ?? 'a sensor'}`,
      done,
    })),
  ];
}

const bodyWork: readonly Matter[] = ['body structure'];

function ofPart(survey: Survey, one: PartSurvey): readonly Leaning[] {
  const { part, at, name, structural, operations } = one;
  const ofOperations = operations.flatMap(({ operation, at: place, joints }): readonly Leaning[] => [
    {
      cites: operation.fasteners?.cite,
      at: `${place}/fasteners/cite`,
      what: `the torque of the bolts of ${name}`,
      matters: mattersOfBolting(one),
      of: one,
      ...(operation.fasteners?.tightened === undefined ? {} : { done: operation.fasteners.tightened }),
    },
    {
      cites: operation.clear_cite,
      at: `${place}/clear_cite`,
      what: `what lies around the work on ${name}`,
    },
    {
      cites: operation.film_cite,
      at: `${place}/film_cite`,
      what: `the paint limit of ${name}`,
      matters: ['driver assistance', 'paint', 'body structure'],
      of: one,
    },
    {
      cites: operation.added_metal_cite,
      at: `${place}/added_metal_cite`,
      what: `the metal added to ${name}`,
    },
    { cites: operation.limit?.cite, at: `${place}/limit/cite`, what: `the limit of the heat on ${name}` },
    ...(operation.near ?? []).flatMap(({ cite }, index) =>
      cite === undefined
        ? []
        : [
            {
              cites: cite,
              at: `${place}/near/${String(index)}/cite`,
              what: `what stays beside the work on ${name}`,
            },
          ],
    ),
    ...(structural === false
      ? []
      : joints.map(({ joint, at: jointAt }) => ({
          cites: joint.cite,
          at: `${jointAt}/cite`,
          what: `a joint of ${name}`,
          done: joint.done,
        }))),
  ]);
  return [
    {
      cites: part.cosmetic_by,
      at: `${at}/cosmetic_by`,
      what: `that ${name} carries no crash load`,
      matters: isBody(one) ? bodyWork : undefined,
      of: one,
    },
    {
      cites: part.damage?.tolerable_by,
      at: `${at}/damage/tolerable_by`,
      what: `that the damage of ${name} may stay`,
    },
    ...(structural === false
      ? []
      : [
          { cites: part.donor?.cite, at: `${at}/donor/cite`, what: `that ${name} may be second-hand` },
          {
            cites: gradeCite(survey, one),
            at: `${at}/grade_from`,
            what: `what ${name} is made of`,
            matters: isBody(one) ? bodyWork : undefined,
            of: one,
          },
        ]),
    ...ofOperations,
  ];
}

function gradeCite(survey: Survey, { part }: PartSurvey): Cite | undefined {
  const from = part.grade_from;
  if (from?.reference === undefined || materialEvidence(survey, part) !== 'maker document') return undefined;
  return { reference: from.reference, ...(from.at === undefined ? {} : { at: from.at }) };
}
