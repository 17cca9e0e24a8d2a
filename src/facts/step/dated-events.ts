import type { OrderEvent } from '../../generated/pack-types.ts';
import { isBatteryFitted } from './battery-fitted.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { isFitted, joined, tightened } from './dated-work.ts';
import type { DatedEvent } from './dated-work.ts';
import type { Calibration } from './step-draft.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { endNamed } from './vehicle-end.ts';

type Happened = (survey: Survey) => readonly DatedEvent[];

/** When each of the things happened that rows of a pack set in an order. What is not dated is not there. */
export const datedEvents: Readonly<Record<OrderEvent, Happened>> = {
  'scan before the repair': ({ plan }) =>
    one('scan before the repair', '/verify/scan_before', plan.verify?.scan_before),
  'batteries disconnected': ({ plan }) =>
    one('disconnecting of the batteries', '/make_safe/low_voltage', plan.make_safe?.low_voltage),
  'measurement of the clamped part': ({ plan }) =>
    at('measurement of the clamped part', '/measurements/before_welding', plan.measurements?.before_welding),
  'measurement after the repair': ({ plan }) =>
    at('measurement after the repair', '/measurements/after', plan.measurements?.after),
  'hot work': ({ operations }) =>
    operations.filter(({ hot }) => hot === true).flatMap((work) => joined(work, 'hot work on')),
  // Glass goes in last, on paint; nothing of it burns, and no metal is left bare behind it.
  joint: ({ operations }) =>
    operations.filter((work) => !isGlassBonded(work)).flatMap((work) => joined(work, 'joint of')),
  'structural joint': ({ operations }) =>
    operations.filter(({ part }) => part.structural !== false).flatMap((work) => joined(work, 'joint of')),
  primer: ({ plan }) => one('priming of bared metal', '/finish/primer', plan.finish?.primer),
  sealer: ({ plan }) => one('sealing of the seams', '/finish/sealer', plan.finish?.sealer),
  'underbody coating': ({ plan }) => one('underbody coating', '/finish/underbody', plan.finish?.underbody),
  bake: ({ plan }) => one('bake', '/finish/bake', plan.finish?.bake),
  'cavity protection': ({ plan, partById }) =>
    (plan.finish?.cavities ?? []).flatMap((cavity, index) =>
      one(
        `protection of the inside of ${partById.get(cavity.part ?? '')?.name ?? 'a cavity'}`,
        `/finish/cavities/${String(index)}`,
        cavity,
      ),
    ),
  'painting of a joined part': ({ operations }) =>
    operations
      .filter(({ operation, part }) => {
        const isJoined = operations.some((other) => other.part === part && joined(other, '').length > 0);
        return operation.do === 'refinish' && operation.off_vehicle !== true && isJoined;
      })
      .flatMap((work) => worked(work, 'painting', undefined)),
  'straightening of a part': (survey) => workedAs(survey, ['straighten', 'heat'], 'straightening'),
  'welding of a part': ({ operations }) =>
    operations
      .filter(({ hot }) => hot === true)
      .flatMap((work) => joined(work, 'joint of').map((event) => ({ ...event, about: work.part.at }))),
  'filling of a part': (survey) => workedAs(survey, ['fill'], 'filling'),
  'painting of a part': (survey) => workedAs(survey, ['refinish'], 'painting'),
  'painting off the vehicle': ({ operations }) =>
    operations
      .filter(({ operation, offVehicle }) => operation.do === 'refinish' && offVehicle)
      .flatMap((work) => worked(work, 'painting off the vehicle', work.part.at)),
  // A skin that is put on a door beside the vehicle is painted with it.
  'fitting of a part': ({ operations }) =>
    operations
      .filter(
        (work) =>
          isFitted(work) &&
          !work.offVehicle &&
          work.joints.length === 0 &&
          goesOnWithoutWelding(work.part.part.kind),
      )
      .flatMap((work) => worked(work, 'fitting', work.part.at)),
  'structure released to the last weld': (survey) => released(survey, 'structure before the last weld'),
  'flange released to be closed': (survey) => released(survey, 'flange before closing'),
  'restraint wiring released': (survey) => released(survey, 'restraint wiring before the trim'),
  'structural release': ({ plan }) =>
    one('release of the structure', '/verify/structural_release', plan.verify?.structural_release),
  'belts bolted on': ({ plan }) =>
    at(
      'tightening of the bolts of the belts',
      '/make_safe/restraints/fasteners/tightened',
      plan.make_safe?.restraints?.fasteners?.tightened,
    ),
  'belts back after the work': ({ plan }) => {
    const { units = [], fasteners } = plan.make_safe?.restraints ?? {};
    return units.some(({ unit, treatment }) => unit === 'belt pretensioner' && treatment === 'removed')
      ? at(
          'tightening of the bolts of the belts that were taken off',
          '/make_safe/restraints/fasteners/tightened',
          fasteners?.tightened,
        )
      : [];
  },
  'seats bolted on': (survey) => tightened(survey, ['seat', 'restraint unit']),
  'running gear bolted on': (survey) =>
    tightened(survey, ['suspension part', 'steering part', 'subframe', 'wheel']),
  'traction battery bolted on': (survey) => tightened(survey, ['traction battery', 'battery tray']),
  'traction battery fitted': ({ operations }) =>
    operations
      .filter(isBatteryFitted)
      .flatMap(({ operation, at: place }) => one('fitting of the traction battery', place, operation)),
  'cover of a radar fitted': ({ operations }) =>
    operations
      .filter(({ part, operation }) => part.part.radar_behind === true && isLaidBefore(operation.do))
      .flatMap((work) =>
        worked(work, work.operation.do === 'refinish' ? 'painting' : 'fitting', endNamed(work.part.name)),
      ),
  'windscreen fitted': ({ operations }) =>
    operations
      .filter((work) => work.part.part.kind === 'glass' && isFitted(work) && isWindscreen(work.part.name))
      .flatMap((work) => worked(work, 'fitting', endNamed(work.part.name))),
  'lamp fitted': ({ operations }) =>
    operations
      .filter((work) => work.part.part.kind === 'lamp' && isFitted(work) && !isBehind(work.part.name))
      .flatMap((work) => worked(work, 'fitting', endNamed(work.part.name))),
  'wheel alignment': ({ plan }) => {
    const alignment = plan.verify?.alignment;
    return alignment?.result === 'not required' ? [] : one('wheel alignment', '/verify/alignment', alignment);
  },
  'restraint completion': ({ plan }) =>
    one('completion of the restraint system', '/verify/restraints', plan.verify?.restraints),
  'high-voltage re-commissioning': ({ plan }) =>
    one('re-commissioning of the traction voltage', '/verify/high_voltage', plan.verify?.high_voltage),
  'sensor calibration': (survey) => calibrated(survey, () => true),
  'radar calibration': (survey) => calibrated(survey, ({ sensor = '' }) => /\bradar/i.test(sensor)),
  'camera calibration': (survey) => calibrated(survey, ({ sensor = '' }) => /\bcamera/i.test(sensor)),
  'lamp setting': (survey) => calibrated(survey, ({ sensor = '' }) => /lamp|headlight/i.test(sensor)),
  'scan after the repair': ({ plan }) =>
    one('scan after the repair', '/verify/scan_after', plan.verify?.scan_after),
  'road test': ({ plan }) => one('road test', '/verify/road_test', plan.verify?.road_test),
  'warning lamps': ({ plan }) =>
    one('look at the warning lamps', '/verify/warning_lamps', plan.verify?.warning_lamps),
};

function at(name: string, place: string, done: string | undefined): readonly DatedEvent[] {
  return done === undefined ? [] : [{ name, done, at: place }];
}

function one(
  name: string,
  place: string,
  step: { readonly done?: string; readonly planned?: unknown } | undefined,
): readonly DatedEvent[] {
  return at(name, `${place}/done`, step?.done);
}

function worked(
  { operation, at: place, part }: OperationSurvey,
  what: string,
  about: string | undefined,
): readonly DatedEvent[] {
  return one(`${what} of ${part.name}`, place, operation).map(({ name, ...event }) => ({
    name,
    ...event,
    ...(part.part.id === undefined ? {} : { part: part.part.id }),
    ...(about === undefined ? {} : { about }),
  }));
}

/** What was done to parts by some words, each only held against others of the same part. */
function workedAs({ operations }: Survey, words: readonly string[], what: string): readonly DatedEvent[] {
  return operations
    .filter(({ operation }) => operation.do !== undefined && words.includes(operation.do))
    .flatMap((work) => worked(work, what, work.part.at));
}

function isGlassBonded({ part, joints }: OperationSurvey): boolean {
  return part.part.kind === 'glass' && joints.every(({ joint }) => joint.method === 'adhesive');
}

function isLaidBefore(word: string | undefined): boolean {
  return word === 'replace' || word === 'remove and refit' || word === 'refinish' || word === 'fill';
}

function isWindscreen(name: string): boolean {
  return /wind(?:screen|shield)/i.test(name);
}

function isBehind(name: string): boolean {
  return /\b(?:rear|back|tail|plate|side)\b/i.test(name);
}

function released({ plan, partById }: Survey, point: string): readonly DatedEvent[] {
  return (plan.hold_points ?? []).flatMap((held, index) => {
    if (held.point !== point) return [];
    const of = held.part === undefined ? '' : ` of ${partById.get(held.part)?.name ?? held.part}`;
    return one(`hold point "${point}"${of}`, `/hold_points/${String(index)}`, held);
  });
}

/** What was not made, or is of no sensor that is there, took place on no day. */
function calibrated({ plan }: Survey, isMeant: (one: Calibration) => boolean): readonly DatedEvent[] {
  return (plan.verify?.calibrations ?? []).flatMap((calibration, index) => {
    const { sensor, kind } = calibration;
    if (kind === 'not required' || kind === 'not fitted' || !isMeant(calibration)) return [];
    const end = endNamed(sensor ?? '');
    return one(
      sensor === undefined ? 'calibration of a sensor' : `calibration of ${sensor}`,
      `/verify/calibrations/${String(index)}`,
      calibration,
    ).map(({ name, ...event }) => ({ name, ...event, ...(end === undefined ? {} : { about: end }) }));
  });
}
