import type { FactNames } from '../../generated/fact-names.ts';
import { readWheelSetting } from '../../quantity/read-wheel-setting.ts';
import { rangeOf, rowName } from './alignment-row.ts';
import type { AlignmentValue, Range } from './alignment-row.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

type ContradictionFact = Extract<
  FactNames['step'],
  `step.${'wheels_unlike' | 'wheels_apart' | 'thrust_off_centre' | 'toes_contradict'}`
>;

/** What the rows of a wheel alignment say against each other. The limits are common practice, no source. */
export function contradictionFacts(
  survey: Survey,
  rows: readonly AlignmentValue[],
  place: string,
): Readonly<Record<ContradictionFact, Fact>> {
  const told = (found: readonly Contradiction[], reason: string): Fact =>
    computedOr(
      found.map(({ text }) => text).join('; ') || undefined,
      found[0] === undefined ? place : `${place}/${String(rows.indexOf(found[0].row))}`,
      reason,
    );
  return {
    'step.wheels_unlike': told(wheelsUnlike(survey, rows), 'Left and right are specified alike, or cited.'),
    'step.wheels_apart': told(
      wheelsApart(survey, rows),
      'Left and right stand alike after the repair as far as they are specified alike, are cited, or not measured both.',
    ),
    'step.thrust_off_centre': told(
      rows.flatMap(offCentre),
      'The thrust angle is specified about nothing, or not at all.',
    ),
    'step.toes_contradict': told(
      axles.flatMap((axle) => toesOf(rows, axle)),
      'Toe of wheels, total toe and thrust angle agree, or one of them is not stated.',
    ),
  };
}

interface Contradiction {
  readonly row: AlignmentValue;
  readonly text: string;
}

const axles = ['front', 'rear'] as const;

/** Makers let the two sides differ by fractions of a degree, for the crown of the road. */
const mostUnlikeDegrees = 0.5;
/** By how much one range may be the wider of the two. */
const mostWider = 1.2;
/** Sums of minutes are not exact. */
const exact = 0.0001;

function wheelsUnlike(survey: Survey, rows: readonly AlignmentValue[]): readonly Contradiction[] {
  return pairsOf(survey, rows).flatMap(({ of, axle, left, one, other, a, b }): readonly Contradiction[] => {
    const isTurned = Math.min(a, b) < -exact && Math.max(a, b) > exact;
    const [narrow, wide] = [one.to - one.from, other.to - other.from].toSorted((x, y) => x - y);
    const isStretched = (wide ?? 0) > mostWider * (narrow ?? 0) + exact;
    if (!isTurned && !isStretched && Math.abs(a - b) <= mostUnlikeDegrees + exact) return [];
    return [{ row: left, text: `${axle} ${of} left ${one.text}, right ${other.text}` }];
  });
}

/** The two ends of two ranges add up to more than a car runs straight with. From memory. */
const mostApartDegrees = { camber: 0.75, caster: 1 };

/** Each within its own range, and yet farther from one another than a car runs straight with, beside what is specified. */
function wheelsApart(survey: Survey, rows: readonly AlignmentValue[]): readonly Contradiction[] {
  return pairsOf(survey, rows).flatMap(({ of, axle, left, right, a, b }): readonly Contradiction[] => {
    const [l, r] = [printed(left.after), printed(right.after)];
    if (l?.unit !== '°' || r?.unit !== '°') return [];
    if (Math.abs(l.value - r.value - (a - b)) <= mostApartDegrees[of] + exact) return [];
    return [{ row: left, text: `${axle} ${of} ${left.after ?? ''} left, ${right.after ?? ''} right` }];
  });
}

interface WheelPair {
  readonly of: 'camber' | 'caster';
  readonly axle: (typeof axles)[number];
  readonly left: AlignmentValue;
  readonly right: AlignmentValue;
  readonly one: Range;
  readonly other: Range;
  /** Middles of the two ranges. */
  readonly a: number;
  readonly b: number;
}

/** Both wheels of an axle, where both have a range and not both rows cite a page of this vehicle for it. */
function pairsOf(survey: Survey, rows: readonly AlignmentValue[]): readonly WheelPair[] {
  const isCited = ({ cite }: AlignmentValue): boolean =>
    listOf(cite).some(({ reference }) => coversVehicle(survey, reference));
  return (['camber', 'caster'] as const).flatMap((of) =>
    axles.flatMap((axle): readonly WheelPair[] => {
      const [left, right] = [rowOf(rows, of, `${axle} left`), rowOf(rows, of, `${axle} right`)];
      if (left === undefined || right === undefined || (isCited(left) && isCited(right))) return [];
      const [one, other] = [rangeOf(left), rangeOf(right)];
      if (typeof one === 'string' || typeof other === 'string') return [];
      const [a, b] = [(one.from + one.to) / 2, (other.from + other.to) / 2];
      return [{ of, axle, left, right, one, other, a, b }];
    }),
  );
}

function rowOf(rows: readonly AlignmentValue[], of: string, at: string): AlignmentValue | undefined {
  return rows.find((row) => row.of === of && row.at === at);
}

/** A bench rounds what is nothing. A range is off its middle where that is more than the makers' minutes. */
const mostOffDegrees = { specified: 0.02, range: 5 / 60 };

function offCentre(row: AlignmentValue): readonly Contradiction[] {
  if (row.of !== 'thrust angle') return [];
  const range = rangeOf(row);
  if (typeof range === 'string') return [];
  const most = row.specified === undefined ? mostOffDegrees.range : mostOffDegrees.specified;
  const middle = Math.abs((range.from + range.to) / 2);
  return middle <= most + exact ? [] : [{ row, text: range.text }];
}

const occasions = ['before', 'after'] as const;

/** Total toe is the sum of the two wheels, the thrust angle half the difference of the rear ones; which way counts as left, benches differ in. */
function toesOf(rows: readonly AlignmentValue[], axle: (typeof axles)[number]): readonly Contradiction[] {
  const [left, right] = [rowOf(rows, 'toe', `${axle} left`), rowOf(rows, 'toe', `${axle} right`)];
  if (left === undefined || right === undefined) return [];
  const total = rowOf(rows, 'total toe', `${axle} axle`);
  const thrust = axle === 'rear' ? rows.find(({ of }) => of === 'thrust angle') : undefined;
  return occasions.flatMap((occasion): readonly Contradiction[] => {
    const [l, r] = [printed(left[occasion]), printed(right[occasion])];
    if (l === undefined || r === undefined || l.unit !== r.unit) return [];
    const sum = l.value + r.value;
    const half = Math.abs(l.value - r.value) / 2;
    const rounded = l.rounded + r.rounded;
    const of = (row: AlignmentValue | undefined, against: (value: number) => number, what: string) => {
      const own = printed(row?.[occasion]);
      if (row === undefined || own === undefined || own.unit !== l.unit) return [];
      const most = (own.unit === 'mm' ? 0.5 : 0.05) + own.rounded + rounded;
      if (Math.abs(against(own.value)) <= most + exact) return [];
      const text = `${rowName(row)} ${row[occasion] ?? ''} ${occasion} the repair, and ${what} ${left[occasion] ?? ''} left, ${right[occasion] ?? ''} right`;
      return [{ row, text }];
    };
    return [
      ...of(total, (value) => value - sum, 'toe'),
      ...of(thrust, (value) => Math.abs(value) - half, 'half the difference of rear toe'),
    ];
  });
}

interface Printed {
  readonly value: number;
  readonly unit: '°' | 'mm';
  /** Half of the last place that is written. */
  readonly rounded: number;
}

function printed(text: string | undefined): Printed | undefined {
  const reading = text === undefined ? undefined : readWheelSetting(text);
  if (text === undefined || reading?.ok !== true) return undefined;
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
  const inUnit = /['′’´]\s*$/.test(text) ? 1 / 60 : /in(?:ch(?:es)?)?\s*$/i.test(text) ? 25.4 : 1;
  return { value: reading.value, unit: reading.unit, rounded: (10 ** -decimals / 2) * inUnit };
}
