import { readWheelSetting } from '../../quantity/read-wheel-setting.ts';
import type { Survey } from '../survey.ts';

type Alignment = NonNullable<NonNullable<Survey['plan']['verify']>['alignment']>;
export type AlignmentValue = NonNullable<Alignment['values']>[number];

/** What a row of the bench says of the wheel as it goes, in words. */
export type RowAnswer =
  | { readonly is: 'within' }
  | { readonly is: 'out'; readonly text: string }
  /** It cannot be compared, and why. */
  | { readonly is: 'open'; readonly text: string };

/** What a row is called: front left camber, thrust angle. */
export function rowName({ of, at }: AlignmentValue): string {
  return [at, of ?? 'a value'].filter((word) => word !== undefined).join(' ');
}

/** Of a degree or a millimetre: sums of minutes are not exact, and no bench reads that fine. */
const exact = 0.0001;

/** Compares the value after the repair with its range, ends included. A row in two units, or without a range, is open. */
export function judgeRow(row: AlignmentValue): RowAnswer {
  const name = rowName(row);
  const open = (why: string): RowAnswer => ({ is: 'open', text: `${name} (${why})` });
  if (row.of === undefined) return open('what is measured is not stated');
  if (row.of !== 'thrust angle' && row.at === undefined) return open('the wheel or axle is not stated');
  const onAxle = row.at?.endsWith('axle') === true;
  if (row.of === 'total toe' ? row.at !== undefined && !onAxle : onAxle && row.of !== 'thrust angle')
    return open(onAxle ? 'it is of a wheel, and an axle is named' : 'it is of an axle, and a wheel is named');

  const units = new Set(settings(row).map(({ unit }) => unit));
  if (units.size > 1) return open('degrees and millimetres are mixed');
  if (units.has('mm') && !row.of.endsWith('toe')) return open('it is an angle and is given in mm');
  const range = rangeOf(row);
  if (typeof range === 'string') return open(range);
  const after = valueOf(row.after);
  if (after === undefined) return open('no value after the repair');
  if (after >= range.from - exact && after <= range.to + exact) return { is: 'within' };
  return { is: 'out', text: `${name} ${row.after ?? ''} (${range.text})` };
}

/** Fewer rows can hit their specified values by chance. */
const fewestToTell = 4;

/** Whether every value after the repair is the specified one: no bench prints that. */
export function isCopied(rows: readonly AlignmentValue[]): boolean {
  const compared = rows.filter(({ specified, after }) => specified !== undefined && after !== undefined);
  return (
    compared.length >= fewestToTell &&
    compared.every(({ specified, after }) => valueOf(specified) === valueOf(after))
  );
}

/** The widest range of some rows, as half of it in degrees; undefined where none of them has one in degrees. */
export function widestRange(
  rows: readonly AlignmentValue[],
  isMeant: (of: string) => boolean,
): { readonly degrees: number; readonly name: string } | undefined {
  const ranges = rows.flatMap((row) => {
    const range = row.of !== undefined && isMeant(row.of) ? rangeOf(row) : undefined;
    const isAngle = settings(row).every(({ unit }) => unit === '°');
    return range === undefined || typeof range === 'string' || !isAngle
      ? []
      : [{ degrees: (range.to - range.from) / 2, name: `${rowName(row)} (${range.text})` }];
  });
  return ranges.toSorted((one, other) => other.degrees - one.degrees)[0];
}

/** Where a value may lie, in the unit of its row. */
export interface Range {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The range, or why there is none. */
export function rangeOf({ specified, tolerance, from, to }: AlignmentValue): Range | string {
  const [middle, width, low, high] = [specified, tolerance, from, to].map(valueOf);
  if (low !== undefined && high !== undefined) {
    if (width !== undefined) return 'a tolerance and a range: which of the two?';
    if (low > high) return 'its range ends before it begins';
    return { from: low, to: high, text: `${from ?? ''} to ${to ?? ''}` };
  }
  if (middle === undefined) return 'no specified value';
  if (width === undefined) return 'neither a tolerance nor both ends of a range';
  if (width < 0) return 'its tolerance is negative';
  return { from: middle - width, to: middle + width, text: `${specified ?? ''} ± ${tolerance ?? ''}` };
}

function settings(row: AlignmentValue): readonly { readonly value: number; readonly unit: string }[] {
  return [row.specified, row.tolerance, row.from, row.to, row.before, row.after].flatMap((text) => {
    const reading = text === undefined ? undefined : readWheelSetting(text);
    return reading?.ok === true ? [reading] : [];
  });
}

function valueOf(text: string | undefined): number | undefined {
  const reading = text === undefined ? undefined : readWheelSetting(text);
  return reading?.ok === true ? reading.value : undefined;
}
