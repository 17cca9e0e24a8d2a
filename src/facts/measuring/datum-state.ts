import { checkDatum } from '../../measure/datum.ts';
import type { DatumCheck } from '../../measure/datum.ts';
import { exchangedPoints, putBack } from '../../measure/exchanged.ts';
import { misreadPoints, takenBack } from '../../measure/misread-point.ts';
import type { MisreadPoint } from '../../measure/misread-point.ts';
import { misreadSet } from '../../measure/misread-set.ts';
import type { MisreadSet } from '../../measure/misread-set.ts';
import { oneOffAsRead } from '../../measure/one-off-as-read.ts';
import { distanceMm } from '../../measure/place.ts';
import type { Place } from '../../measure/place.ts';
import { deviationOf, fitRigid } from '../../measure/rigid-fit.ts';
import type { FittedMotion, PointPair } from '../../measure/rigid-fit.ts';
import { noMotion } from '../../measure/rigid-motion.ts';
import type { MeasuredPoint } from './measured-points.ts';

export type Occasion = 'before' | 'after';

/** One measuring of the body, carried into the axes of the data sheet as far as its zero points allow. */
export interface DatumState {
  readonly occasion: Occasion;
  /** The zero points that bear a nominal place and a reading. */
  readonly zero: readonly MeasuredPoint[];
  /** Undefined where the zero points do not carry a fit; readings are then taken as they are written. */
  readonly fit: FittedMotion | undefined;
  /** Why there is none, although zero points enough are named and stand wide enough. */
  readonly fault: string | undefined;
  readonly check: (DatumCheck & { readonly names: readonly string[] }) | undefined;
  /** What all readings together look like, where it is no body. */
  readonly misread: MisreadSet | undefined;
  readonly misreadPoints: ReadonlyMap<MeasuredPoint, MisreadPoint & { readonly otherName?: string }>;
  /** Points of which each was read in the row of the other. All but `misread` and `misreadPoints` is reckoned with slips taken back. */
  readonly exchanges: readonly PointExchange[];
  /** Where it was read, slips taken back; undefined where its nominal place or its reading is not stated. */
  readonly reading: (point: MeasuredPoint) => Place | undefined;
  /** Read minus nominal, mm; undefined where a place is missing or all readings are another shape. */
  readonly deviation: (point: MeasuredPoint) => Place | undefined;
}

export interface PointExchange {
  readonly one: MeasuredPoint;
  readonly other: MeasuredPoint;
  readonly asWrittenMm: number;
  readonly putBackMm: number;
}

/** The fit of one measuring; undefined when no point bears a reading of it. `toleranceMm`: from when on zero points disagree. */
export function datumState(
  points: readonly MeasuredPoint[],
  zeroNamed: number,
  occasion: Occasion,
  toleranceMm: number,
): DatumState | undefined {
  const written = points.flatMap((point): readonly ReadPoint[] => {
    const { nominal, [occasion]: measured } = point;
    return nominal === undefined || measured === undefined ? [] : [{ point, nominal, measured }];
  });
  if (!points.some((point) => point.written[occasion] !== undefined)) return undefined;
  const misread = misreadSet(written);
  const { read, exchanges, slips } = misread === undefined ? settled(written) : asWritten(written);
  const zero = read.filter(({ point }) => point.isZero);
  const fitted = fitRigid(zero);
  const fit = fitted.ok ? fitted : undefined;
  const motion = fit?.motion ?? noMotion;
  const places = new Map(read.map(({ point, measured }) => [point, measured]));
  return {
    occasion,
    zero: zero.map(({ point }) => point),
    fit,
    fault: fitted.ok || zeroNamed < 3 ? undefined : faultOf(zero, occasion),
    check: misread === undefined ? checkOf(zero, read, fit, toleranceMm) : undefined,
    misread,
    misreadPoints: slips,
    exchanges,
    reading: (point) => places.get(point),
    deviation: (point) => {
      const [{ nominal }, measured] = [point, places.get(point)];
      if (nominal === undefined || measured === undefined || misread !== undefined) return undefined;
      return deviationOf(motion, { nominal, measured });
    },
  };
}

function asWritten(read: readonly ReadPoint[]): Settled {
  return { read, exchanges: [], slips: new Map() };
}

interface Settled {
  readonly read: readonly ReadPoint[];
  readonly exchanges: readonly PointExchange[];
  readonly slips: DatumState['misreadPoints'];
}

/** The readings with slips taken back: what each slip is, is told for itself, and must not carry off all other points. */
function settled(written: readonly ReadPoint[]): Settled {
  const found = exchangedPoints(written, zeroIndices(written));
  const exchanges = found.flatMap(({ one, other, asWrittenMm, putBackMm }): readonly PointExchange[] => {
    const [first, second] = [written[one]?.point, written[other]?.point];
    if (first === undefined || second === undefined) return [];
    return [{ one: first, other: second, asWrittenMm, putBackMm }];
  });
  const put = putBack(
    written,
    found.map(({ one, other }) => [one, other] as const),
  );
  const slips = slipsOf(put);
  // Fewer points carry no datum, and a slip is only guessed at.
  const areCarried = put.length - slips.size >= 3;
  const read = put.map((one) => {
    const slip = slips.get(one.point);
    return slip === undefined || !areCarried ? one : { ...one, measured: takenBack(one.measured, slip) };
  });
  return { read, exchanges, slips };
}

function zeroIndices(read: readonly ReadPoint[]): readonly number[] {
  return read.flatMap(({ point }, index) => (point.isZero ? [index] : []));
}

interface ReadPoint extends PointPair {
  readonly point: MeasuredPoint;
}

function faultOf(zero: readonly ReadPoint[], occasion: Occasion): string | undefined {
  if (zero.length < 3) {
    const count = ['none', 'only one', 'only two'][zero.length] ?? 'too few';
    return `${count} of the zero points ${zero.length > 1 ? 'bear' : 'bears'} a nominal place and a reading ${occasion} the repair`;
  }
  // A data sheet whose zero points lie on one line is found for itself.
  return isLine(zero)
    ? undefined
    : `the zero points, as they were read ${occasion} the repair, lie on one line`;
}

function isLine(zero: readonly ReadPoint[]): boolean {
  return !fitRigid(zero.map(({ nominal }) => ({ nominal, measured: nominal }))).ok;
}

/** Zero points count as read in the axes of the data sheet when they lie this near where it has them, mm. */
const asSheetMm = 1;

function checkOf(
  zero: readonly ReadPoint[],
  read: readonly ReadPoint[],
  fit: FittedMotion | undefined,
  toleranceMm: number,
): DatumState['check'] {
  const check = fit === undefined ? undefined : checkDatum(zero, toleranceMm);
  if (fit === undefined || check === undefined) return undefined;
  const names = (indices: readonly number[]): readonly string[] =>
    indices.map((index) => zero[index]?.point.called).filter((name) => name !== undefined);
  const others = read.filter(({ point }) => !point.isZero);
  const lifted = oneOffAsRead(zero, others, fit.motion, { closeMm: asSheetMm, offMm: toleranceMm });
  if (check.errorMm > toleranceMm || lifted === undefined) return { names: names(check.suspects), ...check };
  return { ...check, errorMm: lifted.offMm, suspects: [lifted.index], names: names([lifted.index]) };
}

function slipsOf(read: readonly ReadPoint[]): DatumState['misreadPoints'] {
  const zero = zeroIndices(read);
  const slips = new Map<MeasuredPoint, MisreadPoint & { readonly otherName?: string }>();
  for (const [index, slip] of misreadPoints(read, zero)) {
    const point = read[index]?.point;
    const other = slip.kind === 'swapped' ? read[slip.other]?.point.called : undefined;
    if (point !== undefined) slips.set(point, other === undefined ? slip : { ...slip, otherName: other });
  }
  return slips;
}

/** Two points that the data sheet has in one place, or whose places were copied. */
export function inOnePlace(points: readonly MeasuredPoint[]): readonly (readonly MeasuredPoint[])[] {
  const groups = new Map<string, MeasuredPoint[]>();
  for (const point of points) {
    if (point.nominal === undefined) continue;
    const key = point.nominal.map((value) => value.toFixed(2)).join(' ');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [point]);
    else group.push(point);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

/**
 * Whether the readings after the repair are those before it, to the last digit: of three points and more, of which at least one was off.
 * No measuring repeats itself so.
 */
export function isCopied(points: readonly MeasuredPoint[]): boolean {
  const both = points.filter(({ before, after }) => before !== undefined && after !== undefined);
  const isSame = both.every(
    ({ before, after }) => before !== undefined && after !== undefined && distanceMm(before, after) === 0,
  );
  const isOff = both.some(
    ({ nominal, before }) =>
      nominal !== undefined && before !== undefined && distanceMm(nominal, before) > leastOffMm,
  );
  return both.length >= 3 && isSame && isOff;
}

/**
 * Whether every reading is the number of the data sheet to the last digit, or off it by one and the same way, of two points and more besides the zero points, which a
 * system may be set on. One axis comes out so by chance, and hardly six of two points.
 */
export function isFromSheet(points: readonly MeasuredPoint[], occasion: Occasion): boolean {
  const off = points.flatMap(({ nominal, isZero, [occasion]: measured }) =>
    nominal === undefined || measured === undefined ? [] : [{ isZero, way: between(nominal, measured) }],
  );
  const [first] = off;
  const isOneWay = off.every(({ way }) => first !== undefined && distanceMm(way, first.way) < countingMm);
  return off.filter(({ isZero }) => !isZero).length >= 2 && isOneWay;
}

function between([x, y, z]: Place, [toX, toY, toZ]: Place): Place {
  return [toX - x, toY - y, toZ - z];
}

/** Sums of decimals are not exact, mm. */
const countingMm = 1e-6;

/** What instruments show as nothing, mm. */
const leastOffMm = 0.05;
