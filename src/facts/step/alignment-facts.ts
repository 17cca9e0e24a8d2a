import type { FactNames } from '../../generated/fact-names.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import { contradictionFacts } from './alignment-contradictions.ts';
import { isCopied, judgeRow, widestRange } from './alignment-row.ts';
import type { AlignmentValue } from './alignment-row.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import { listOf } from '../quantity-of.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { endOfPart } from './vehicle-end.ts';
import type { VehicleEnd } from './vehicle-end.ts';
import { cameRightFacts } from './wheel-came-right.ts';

type AlignmentFact = Extract<
  FactNames['step'],
  `step.${'values' | 'values_out' | 'values_open' | 'values_short' | 'values_lacking' | 'values_from' | 'values_copied' | 'wheels_unlike' | 'wheels_apart' | 'wheel_came_right' | 'thrust_off_centre' | 'toes_contradict' | `widest_${'angle' | 'toe'}${'' | '_of'}`}`
>;
type AlignmentFacts = Readonly<Record<AlignmentFact, Fact>>;

const other = unknown('The step is another.');
const ofAnotherStep: AlignmentFacts = {
  'step.values': other,
  'step.values_out': other,
  'step.values_open': other,
  'step.values_short': other,
  'step.values_lacking': other,
  'step.values_from': other,
  'step.values_copied': other,
  'step.wheels_unlike': other,
  'step.wheels_apart': other,
  'step.wheel_came_right': other,
  'step.thrust_off_centre': other,
  'step.toes_contradict': other,
  'step.widest_angle': other,
  'step.widest_angle_of': other,
  'step.widest_toe': other,
  'step.widest_toe_of': other,
};

/** The numbers of the wheel alignment; whatever is said of the whole, a wheel that was measured is judged. */
export function alignmentFacts(survey: Survey, { what, at }: StepDraft): AlignmentFacts {
  if (what !== 'wheel alignment') return ofAnotherStep;
  const place = `${at}/values`;
  const rows = survey.plan.verify?.alignment?.values ?? [];
  if (rows.length === 0) return { ...ofAnotherStep, 'step.values': computed('none', place) };
  const answers = rows.map(judgeRow);
  const listed = (is: 'out' | 'open', reason: string): Fact => {
    const texts = answers.flatMap((answer) => (answer.is === is ? [answer.text] : []));
    const first = answers.findIndex((answer) => answer.is === is);
    return computedOr(texts.join('; ') || undefined, `${place}/${String(Math.max(first, 0))}`, reason);
  };
  const short = shortOf(survey, rows);
  const [angle, toe] = [
    widestRange(rows, (of) => !of.endsWith('toe')),
    widestRange(rows, (of) => of.endsWith('toe')),
  ];
  const noRange = 'No such range is stated in degrees.';
  return {
    'step.values': computed('stated', place),
    'step.values_out': listed('out', 'No value is out of its range.'),
    'step.values_open': listed('open', 'Every value is compared with its range.'),
    'step.values_short': computedOr(
      short.join(', ') || undefined,
      place,
      'Camber and toe are there, of both sides, and caster of an axle in front that was touched.',
    ),
    'step.values_lacking': computedOr(
      lackingIn(rows, short).join(', ') || undefined,
      place,
      'Nothing is missing.',
    ),
    'step.values_copied': computed(isCopied(rows), place),
    'step.widest_angle': computedOr(angle?.degrees, place, noRange),
    'step.widest_angle_of': computedOr(angle?.name, place, noRange),
    'step.widest_toe': computedOr(toe?.degrees, place, noRange),
    'step.widest_toe_of': computedOr(toe?.name, place, noRange),
    'step.values_from': valuesFrom(survey, `${at}/cite`),
    ...contradictionFacts(survey, rows, place),
    ...cameRightFacts(survey, rows, place),
  };
}

const axles = ['front', 'rear'] as const;
const sides = ['left', 'right'] as const;

/**
 * What is not there: camber and toe of no wheel at all, or of one side of an axle; and of an axle whose wheels, or what carries them, was
 * hit or worked on, any of both sides, with caster in front.
 */
function shortOf(survey: Survey, rows: readonly AlignmentValue[]): readonly string[] {
  const has = (of: string, at?: string): boolean =>
    rows.some((row) => row.of === of && (at === undefined || row.at === at));
  const touched = touchedAxles(survey);
  return (['camber', 'toe', 'caster'] as const).flatMap((of) => {
    if (of === 'toe' ? !has('toe') && !has('total toe') : of === 'camber' && !has(of)) return [of];
    return axles.flatMap((axle) => {
      if (of === 'caster' && axle === 'rear') return [];
      const gone = sides.filter((side) => !has(of, `${axle} ${side}`));
      const isWhole = of === 'toe' && has('total toe', `${axle} axle`);
      const isAsked = gone.length === 1 || (gone.length === 2 && touched.has(axle));
      return isWhole || !isAsked ? [] : gone.map((side) => `${of} ${axle} ${side}`);
    });
  });
}

/** Kinds that set a wheel or carry what sets it. */
const setsWheels: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['suspension part', 'steering part', 'subframe', 'front rail', 'rear rail'] as const),
  ...(['strut tower', 'apron', 'wheelhouse', 'wheel'] as const),
]);

/** The axles at which something of that was damaged or worked on; a part that does not say where it sits tells nothing. */
function touchedAxles({ parts }: Survey): ReadonlySet<VehicleEnd> {
  const ends = parts
    .filter(({ part }) => part.kind !== undefined && setsWheels.has(part.kind))
    .filter(
      ({ part, operations }) =>
        damageKinds(part).some((kind) => kind !== 'none') || operations.some(({ works }) => works === true),
    )
    .map(({ name, part }) => endOfPart(name, part.kind));
  return new Set(ends.filter((end) => end !== undefined));
}

/** What a whole print-out holds beside that. */
function lackingIn(rows: readonly AlignmentValue[], short: readonly string[]): readonly string[] {
  const isAsked = (word: string): boolean => short.some((text) => text.includes(word));
  return [
    ...(['caster', 'thrust angle'] as const).filter(
      (of) => !isAsked(of) && !rows.some((row) => row.of === of),
    ),
    ...axles
      .filter((axle) => !isAsked(axle) && !rows.some(({ at }) => at?.startsWith(axle) === true))
      .map((axle) => `the ${axle} axle`),
    ...(rows.every(({ before }) => before === undefined) ? ['the values before the work'] : []),
  ];
}

/** Values of memory are nobody's; a bench's own data count where the plan lists them as a reference that covers the vehicle. */
function valuesFrom(survey: Survey, at: string): Fact {
  const cited = listOf(survey.plan.verify?.alignment?.cite).flatMap(({ reference }) => {
    const one = reference === undefined ? undefined : survey.referenceById.get(reference);
    const isRecollection = ['memory', 'last job', 'training'].includes(one?.reference.kind ?? '');
    return one === undefined || isRecollection ? [] : [one.coverage.covers];
  });
  if (cited.includes('yes')) return computed('this vehicle', at);
  return computed(cited.includes('no') ? 'another vehicle' : 'not told', at);
}
