import type { FactNames } from '../generated/fact-names.ts';
import type { Opening, PlanMeasurements, PlanMeasurementsPointsItem } from '../generated/plan-types.ts';
import { readYears } from '../quantity/year-range.ts';
import { coverage } from '../vehicle/coverage.ts';
import type { Fact } from './fact.ts';
import { assumed, computed, computedOr, known, statedOr, unknown } from './make-fact.ts';
import { damageKinds } from './part-damage-facts.ts';
import { dayOf, quantityOf, signedLengthOf } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { Survey } from './survey.ts';
import { anyYes } from './tri-state.ts';

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
  const tolerance = toleranceOf(measurements);
  const points = (measurements.points ?? []).map((point, index): FactSheet => ({
    kind: 'point',
    at: `/measurements/points/${String(index)}`,
    facts: pointFacts(point, `/measurements/points/${String(index)}`, tolerance),
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
    'measurement.zero_points':
      measurements.zero_points === undefined
        ? unknown('No zero points are named.', `${at}/zero_points`)
        : computed(new Set(measurements.zero_points).size, `${at}/zero_points`),
    'measurement.zero_point_in_damage': zeroPointInDamage(survey, measurements),
    'measurement.data_sheet_covers': dataSheetCovers(survey, measurements),
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

function zeroPointInDamage(survey: Survey, measurements: PlanMeasurements): Fact {
  const at = '/measurements/zero_points';
  const zero = measurements.zero_points ?? [];
  const inDamage = anyYes(
    zero.map((name) => {
      const on = measurements.points?.find((point) => point.name === name)?.on;
      const part = on === undefined ? undefined : survey.partById.get(on)?.part;
      if (part === undefined) return undefined;
      const kinds = damageKinds(part);
      if (kinds.length === 0 || kinds.includes('not yet seen')) return undefined;
      return kinds.some((kind) => kind !== 'none' && kind !== 'scratch' && kind !== 'surface rust');
    }),
  );
  return computedOr(
    inDamage,
    at,
    'On which parts the zero points lie, and whether those are sound, is not stated.',
  );
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

interface Tolerance {
  readonly mm: number;
  readonly isStated: boolean;
}

function toleranceOf(measurements: PlanMeasurements): Tolerance {
  const own = quantityOf(measurements.tolerance, 'length');
  return own === undefined ? { mm: usualToleranceMm, isStated: false } : { mm: own, isStated: true };
}

function toleranceFact(own: number | undefined, usual: Tolerance, at: string): Fact {
  if (own !== undefined) return known(own, 'stated', `${at}/tolerance`);
  return usual.isStated
    ? known(usual.mm, 'stated', '/measurements/tolerance')
    : assumed(usual.mm, `No tolerance is stated; ${String(usualToleranceMm)} mm is common practice.`, at);
}

function pointFacts(point: PlanMeasurementsPointsItem, at: string, usual: Tolerance): FactsOf<'point'> {
  const nominal = point.nominal?.map(signedLengthOf);
  const after = point.after?.map(signedLengthOf);
  const deviation = largestDifference(nominal, after);
  const own = quantityOf(point.tolerance, 'length');
  const reason = 'Nominal or measured value after the repair is not stated.';
  return {
    'point.name': statedOr(point.name, at, 'The point has no name.'),
    'point.deviation_after': computedOr(deviation, `${at}/after`, reason),
    'point.tolerance': toleranceFact(own, usual, at),
    'point.over_tolerance': computedOr(over(deviation, own ?? usual.mm), `${at}/after`, reason),
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
  const reason = 'Both diagonals after the repair are not stated.';
  return {
    'opening.name': statedOr(opening.name, at, 'The opening has no name.'),
    'opening.difference_after': computedOr(difference, at, reason),
    'opening.over_tolerance': computedOr(over(difference, own ?? usual.mm), at, reason),
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
