import type { FactNames } from '../generated/fact-names.ts';
import type { Opening, PlanMeasurements, PlanMeasurementsPointsItem } from '../generated/plan-types.ts';
import { readYears } from '../quantity/year-range.ts';
import { coverage } from '../vehicle/coverage.ts';
import type { Fact } from './fact.ts';
import { assumed, computed, computedOr, known, statedOr, unknown } from './make-fact.ts';
import { coversVehicle } from './maker-evidence.ts';
import { measuredWorkFacts } from './measured-work.ts';
import { dayOf, listOf, quantityOf, signedLengthOf } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { Survey } from './survey.ts';
import { zeroPointFacts } from './zero-points.ts';

type FactsOf<Kind extends keyof FactNames> = Readonly<Record<FactNames[Kind], Fact>>;

/** Tolerance where neither point nor plan states one, mm. Common practice, no source. */
const usualToleranceMm = 3;

/** The measuring as a whole, and each point and opening. None when the plan has no measurements. */
export function measurementSheets(survey: Survey, vehicleSheet: FactSheet): readonly FactSheet[] {
  const { measurements } = survey.plan;
  if (measurements === undefined) return [];
  const whole: FactSheet = {
    kind: 'measurement',
    at: '/measurements',
    facts: wholeFacts(survey, measurements),
    standsOn: [vehicleSheet],
  };
  const tolerance = toleranceOf(survey, measurements);
  const zero = new Set(measurements.zero_points ?? []);
  const points = (measurements.points ?? []).map((point, index): FactSheet => ({
    kind: 'point',
    at: `/measurements/points/${String(index)}`,
    facts: pointFacts(point, `/measurements/points/${String(index)}`, tolerance, zero),
    standsOn: [whole],
  }));
  const openings = (measurements.openings ?? []).map((opening, index): FactSheet => ({
    kind: 'opening',
    at: `/measurements/openings/${String(index)}`,
    facts: openingFacts(opening, `/measurements/openings/${String(index)}`, tolerance),
    standsOn: [whole],
  }));
  return [whole, ...points, ...openings];
}

function wholeFacts(survey: Survey, measurements: PlanMeasurements): FactsOf<'measurement'> {
  const at = '/measurements';
  const points = measurements.points ?? [];
  const after = measurements.after !== undefined || points.some((point) => point.after !== undefined);
  const dropped = after
    ? points.filter((p) => p.before !== undefined && p.after === undefined && p.dropped_because === undefined)
    : [];
  return {
    ...zeroPointFacts(survey, measurements),
    ...measuredWorkFacts(survey, measurements),
    'measurement.data_sheet_covers': dataSheetCovers(survey, measurements),
    'measurement.data_sheet_missing': computedOr(
      dataSheetMissing(measurements),
      `${at}/data_sheet`,
      'No data sheet is named, or nothing is missing of it.',
    ),
    'measurement.numbers_stated': computed(
      points.length > 0 &&
        points.every((p) => p.nominal !== undefined && (p.before !== undefined || p.after !== undefined)),
      `${at}/points`,
    ),
    'measurement.calibration': calibration(measurements, survey.context.asOfDay),
    'measurement.after_stated': computed(after, at),
    'measurement.dropped': computedOr(
      dropped.map((p) => p.name ?? 'a point without a name').join(', ') || undefined,
      `${at}/points`,
      'No point was dropped.',
    ),
    'measurement.system': statedOr(
      measurements.system,
      `${at}/system`,
      'The kind of measuring system is not stated.',
    ),
  };
}

function dataSheetMissing({ data_sheet: sheet }: PlanMeasurements): string | undefined {
  if (sheet === undefined) return undefined;
  const missing = [
    ...(sheet.document === undefined ? ['number'] : []),
    ...(sheet.revision === undefined ? ['revision'] : []),
  ];
  return missing.join(' and no ') || undefined;
}

function dataSheetCovers(survey: Survey, { data_sheet: sheet }: PlanMeasurements): Fact {
  const at = '/measurements/data_sheet';
  if (sheet === undefined) return unknown('No measuring data sheet is named.', at);
  const { maker, model, body, model_year: modelYear } = survey.plan.vehicle;
  const years = sheet.years === undefined ? undefined : readYears(sheet.years);
  const answer = coverage(
    { maker, model, body, modelYear },
    {
      maker: sheet.maker,
      models: sheet.model === undefined ? undefined : [sheet.model],
      bodies: sheet.body === undefined ? undefined : [sheet.body],
      years: years?.ok === true ? { from: years.from, to: years.to } : undefined,
    },
  );
  if (answer.covers === 'cannot tell')
    return unknown(answer.reason.replace('The reference', 'The data sheet'), at);
  return computed(answer.covers === 'yes', at, answer.covers === 'no' ? answer.reason : undefined);
}

function calibration(measurements: PlanMeasurements, asOfDay: number): Fact {
  const at = '/measurements/calibration_due';
  const due = dayOf(measurements.calibration_due);
  if (due === undefined) return unknown('The day on which the calibration is due is not written.', at);
  const used = [
    dayOf(measurements.before),
    dayOf(measurements.before_welding),
    dayOf(measurements.after),
  ].filter((day) => day !== undefined);
  const last = used.length === 0 ? asOfDay : Math.max(...used);
  return computed(last <= due ? 'in date' : 'overdue', at);
}

/** The tolerance of the plan as a whole. */
interface Tolerance {
  readonly mm: number;
  readonly isStated: boolean;
  /** A maker’s page is cited for tolerances wider than the usual one. */
  readonly isCited: boolean;
}

function toleranceOf(survey: Survey, measurements: PlanMeasurements): Tolerance {
  const own = quantityOf(measurements.tolerance, 'length');
  return {
    mm: own ?? usualToleranceMm,
    isStated: own !== undefined,
    isCited: listOf(measurements.tolerance_cite).some((cite) => coversVehicle(survey, cite.reference)),
  };
}

function toleranceFact(own: number | undefined, usual: Tolerance, at: string): Fact {
  if (own !== undefined) return known(own, 'stated', `${at}/tolerance`);
  return usual.isStated
    ? known(usual.mm, 'stated', '/measurements/tolerance')
    : assumed(usual.mm, `No tolerance is stated; ${String(usualToleranceMm)} mm is common practice.`, at);
}

/** Wider than usual, and nobody but the plan says so. */
function isOwnWord(toleranceMm: number, { isCited }: Tolerance): boolean {
  return toleranceMm > usualToleranceMm && !isCited;
}

function pointFacts(
  point: PlanMeasurementsPointsItem,
  at: string,
  usual: Tolerance,
  zero: ReadonlySet<string>,
): FactsOf<'point'> {
  const nominal = point.nominal?.map(signedLengthOf);
  const deviation = largestDifference(nominal, point.after?.map(signedLengthOf));
  const before = largestDifference(nominal, point.before?.map(signedLengthOf));
  const own = quantityOf(point.tolerance, 'length');
  const mm = own ?? usual.mm;
  const ownWord = isOwnWord(mm, usual);
  const reason = 'Nominal or measured value after the repair is not stated.';
  const reasonBefore = 'Nominal or measured value before the repair is not stated.';
  return {
    'point.name': statedOr(point.name, at, 'The point has no name.'),
    'point.zero': computed(point.name !== undefined && zero.has(point.name), at),
    'point.deviation_before': computedOr(before, `${at}/before`, reasonBefore),
    'point.over_before': computedOr(
      over(before, ownWord ? usualToleranceMm : mm),
      `${at}/before`,
      reasonBefore,
    ),
    'point.deviation_after': computedOr(deviation, `${at}/after`, reason),
    'point.tolerance': toleranceFact(own, usual, at),
    'point.tolerance_own_word': computed(ownWord, `${at}/tolerance`),
    'point.over_tolerance': computedOr(over(deviation, mm), `${at}/after`, reason),
    'point.over_usual': computedOr(over(deviation, usualToleranceMm), `${at}/after`, reason),
  };
}

function openingFacts(opening: Opening, at: string, usual: Tolerance): FactsOf<'opening'> {
  const after = opening.diagonals_after?.map((text) => quantityOf(text, 'length'));
  const nominal = opening.nominal?.map((text) => quantityOf(text, 'length'));
  const difference =
    nominal === undefined || nominal.length < 2
      ? after !== undefined && after[0] !== undefined && after[1] !== undefined
        ? Math.abs(after[0] - after[1])
        : undefined
      : largestDifference(nominal, after);
  const own = quantityOf(opening.tolerance, 'length');
  const mm = own ?? usual.mm;
  const reason = 'Both diagonals after the repair are not stated.';
  return {
    'opening.name': statedOr(opening.name, at, 'The opening has no name.'),
    'opening.difference_after': computedOr(difference, at, reason),
    'opening.tolerance': toleranceFact(own, usual, at),
    'opening.tolerance_own_word': computed(isOwnWord(mm, usual), `${at}/tolerance`),
    'opening.over_tolerance': computedOr(over(difference, mm), at, reason),
    'opening.over_usual': computedOr(over(difference, usualToleranceMm), at, reason),
  };
}

/** Room for the last digits of a difference: 1203.0 mm from 1200.0 mm is exactly 3 mm. */
const slackMm = 1e-6;

function over(difference: number | undefined, toleranceMm: number): number | undefined {
  if (difference === undefined) return undefined;
  const margin = difference - toleranceMm;
  return Math.abs(margin) < slackMm ? 0 : margin;
}

function largestDifference(
  nominal: readonly (number | undefined)[] | undefined,
  measured: readonly (number | undefined)[] | undefined,
): number | undefined {
  if (nominal === undefined || measured === undefined || measured.length < nominal.length) return undefined;
  let largest = 0;
  for (const [axis, value] of nominal.entries()) {
    const other = measured[axis];
    if (value === undefined || other === undefined) return undefined;
    largest = Math.max(largest, Math.abs(other - value));
  }
  return largest;
}
