import type { FactNames } from '../../generated/fact-names.ts';
import type { PlanMeasurements } from '../../generated/plan-types.ts';
import { readYears } from '../../quantity/year-range.ts';
import { coverage } from '../../vehicle/coverage.ts';
import type { Fact } from '../fact.ts';
import { datumFacts } from './datum-facts.ts';
import { exchangedFacts } from './exchanged-facts.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { measuredBody } from './measured-body.ts';
import type { MeasuredBody } from './measured-body.ts';
import { measuringShown } from './measuring-shown.ts';
import type { MeasuringShown } from './measuring-shown.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { measuredWorkFacts } from './measured-work.ts';
import { openingFacts } from './opening-facts.ts';
import { pointFacts } from './point-facts.ts';
import { dayOf, whenOf } from '../quantity-of.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import { lazySheet } from '../lazy-sheet.ts';
import type { FactSheet } from '../sheet.ts';
import type { Survey } from '../survey.ts';
import { unreadAt } from '../unread.ts';
import { widestTolerance } from './widest-tolerance.ts';
import { wrongSideFact } from './wrong-side.ts';
import { zeroPointFacts } from './zero-points.ts';

const measurementFacts: FactGroups<[Survey, PlanMeasurements, MeasuredBody], FactNames['measurement']> =
  factGroups(
    ['measurement.'],
    wholeFacts,
    zeroPointFacts,
    (survey: Survey, _measurements: PlanMeasurements, body: MeasuredBody) =>
      datumFacts(body, survey.context.stage === 'release'),
    (survey: Survey, _measurements: PlanMeasurements, body: MeasuredBody) =>
      exchangedFacts(body, survey.context.stage === 'release'),
    measuredWorkFacts,
    widestTolerance,
    (survey: Survey, _measurements: PlanMeasurements, body: MeasuredBody) => ({
      'measurement.wrong_side': wrongSideFact(survey, body),
    }),
  );

type OfOtherGroups =
  | keyof ReturnType<typeof zeroPointFacts>
  | keyof ReturnType<typeof datumFacts>
  | keyof ReturnType<typeof exchangedFacts>
  | keyof ReturnType<typeof measuredWorkFacts>
  | keyof ReturnType<typeof widestTolerance>
  | 'measurement.wrong_side';

/** The measuring as a whole, and each point and opening. None when the plan has no measurements. */
export function measurementSheets(survey: Survey, vehicleSheet: FactSheet): MeasurementSheets {
  const { measurements } = survey.plan;
  if (measurements === undefined) return { sheets: [], shown: undefined };
  const body = measuredBody(survey, measurements);
  const whole = lazySheet(measurementFacts, [survey, measurements, body], {
    kind: 'measurement',
    at: '/measurements',
    standsOn: [vehicleSheet],
  });
  const points = body.points.map((point): FactSheet => ({
    kind: 'point',
    at: point.at,
    facts: pointFacts(survey, body, point),
    standsOn: [whole],
  }));
  const written = measurements.openings ?? [];
  const openings = written.map((opening, index): FactSheet => {
    const at = `/measurements/openings/${String(index)}`;
    return {
      kind: 'opening',
      at,
      facts: openingFacts(survey, body, opening, at),
      standsOn: [whole],
    };
  });
  return { sheets: [whole, ...points, ...openings], shown: measuringShown(body) };
}

export interface MeasurementSheets {
  readonly sheets: readonly FactSheet[];
  /** What a report shows of the points; undefined when none has a deviation. */
  readonly shown: MeasuringShown | undefined;
}

function wholeFacts(
  survey: Survey,
  measurements: PlanMeasurements,
  body: MeasuredBody,
): Omit<Readonly<Record<FactNames['measurement'], Fact>>, OfOtherGroups> {
  const at = '/measurements';
  const points = measurements.points ?? [];
  const after = measurements.after !== undefined || points.some((point) => point.after !== undefined);
  const dropped = after
    ? body.points
        .filter((point) => !isUnread(survey, point, 'after'))
        .filter(
          ({ written: p }) =>
            p.before !== undefined && p.after === undefined && p.dropped_because === undefined,
        )
    : [];
  return {
    'measurement.data_sheet_covers': dataSheetCovers(survey, measurements),
    'measurement.data_sheet_missing': computedOr(
      dataSheetMissing(measurements),
      `${at}/data_sheet`,
      'No data sheet is named, or nothing is missing of it.',
    ),
    'measurement.numbers_stated': computed(
      points.length > 0 &&
        body.points.every(
          (point) =>
            isStated(survey, point, 'nominal') &&
            (isStated(survey, point, 'before') || isStated(survey, point, 'after')),
        ),
      `${at}/points`,
    ),
    'measurement.calibration': calibration(measurements, survey.context.asOfDay),
    'measurement.after_stated': computed(after, at),
    'measurement.dropped': computedOr(
      dropped.map(({ written }) => written.name ?? 'a point without a name').join(', ') || undefined,
      dropped[0]?.at ?? `${at}/points`,
      'No point was dropped.',
    ),
    'measurement.system': statedOr(
      measurements.system,
      `${at}/system`,
      'The kind of measuring system is not stated.',
    ),
  };
}

type PlaceKey = 'nominal' | 'before' | 'after';

/** Written, if only so that it cannot be read. */
function isStated(survey: Survey, point: MeasuredPoint, key: PlaceKey): boolean {
  return point.written[key] !== undefined || isUnread(survey, point, key);
}

function isUnread(survey: Survey, { at }: MeasuredPoint, key: PlaceKey): boolean {
  return unreadAt(survey, `${at}/${key}`) !== undefined;
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
    whenOf(measurements.before)?.day,
    whenOf(measurements.before_welding)?.day,
    whenOf(measurements.after)?.day,
  ].filter((day) => day !== undefined);
  const last = used.length === 0 ? asOfDay : Math.max(...used);
  return computed(last <= due ? 'in date' : 'overdue', at);
}
