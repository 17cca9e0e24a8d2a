import type { CheckTrigger } from '../context.ts';
import { isJoinedIn } from './joined-in.ts';
import { kindIs } from '../part/kind-table.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import { sideOfWords } from '../part/side-named.ts';
import { endOfPart } from './vehicle-end.ts';
import type { VehicleEnd } from './vehicle-end.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { allYes, anyYes } from '../tri-state.ts';

/** A check that the work of a plan makes necessary, and why. What cannot be told asks for nothing here. */
export interface CheckNeeded {
  readonly asksFor: CheckTrigger['asksFor'];
  /** Words of which one stands in the name of the sensor that answers; empty where any does. */
  readonly sensor: readonly string[];
  /** The end of the vehicle at which the sensor sits that answers; undefined where either does. */
  readonly end?: VehicleEnd;
  /** Of a hold point: which. */
  readonly point?: string;
  readonly because: string;
  /** Something befell a part; else the work as a whole asks for it. */
  readonly ofPart?: true;
  /** What befell a part that reaches from side to side, and so the sensors of both. */
  readonly across?: string;
}

/** What the triggers of the packs ask for, in their order; of one check and one sensor the first reason counts. */
export function checksNeeded(survey: Survey): readonly CheckNeeded[] {
  const needed = new Map<string, CheckNeeded>();
  for (const trigger of survey.context.triggers ?? []) {
    const { asksFor, sensor, point } = trigger;
    const key = `${asksFor}/${point ?? sensor[0] ?? ''}`;
    for (const reason of reasonsOf(survey, trigger)) {
      const ofEnd = `${key}/${reason.end ?? ''}`;
      const before = needed.get(ofEnd);
      if (before !== undefined) {
        if (before.across === undefined && reason.across !== undefined)
          needed.set(ofEnd, { ...before, across: reason.across });
        continue;
      }
      needed.set(ofEnd, { asksFor, sensor, ...reason, ...(point === undefined ? {} : { point }) });
    }
  }
  return withoutLoose([...needed.values()]);
}

type Reason = Pick<CheckNeeded, 'because' | 'end' | 'ofPart' | 'across'>;

/** The first reason; of sensors the first at either end, since what aims ahead does not answer for what looks back. */
function reasonsOf(survey: Survey, trigger: CheckTrigger): readonly Reason[] {
  for (const work of trigger.work) {
    if (wasDone[work](survey)) return [{ because: workInWords[work] }];
  }
  const found = new Map<VehicleEnd | undefined, Reason>();
  for (const part of survey.parts) {
    if (!isMeant(part, trigger) || isNoRadarBehind(part, trigger)) continue;
    const end = trigger.sensor.length === 0 ? undefined : endOfPart(part.name, part.part.kind);
    const first = found.get(end);
    if (first !== undefined && (first.across !== undefined || !isAcross(part))) continue;
    const befell = (trigger.was.length === 0 ? happenings : trigger.was).find((one) => befalls[one](part));
    if (befell === undefined) continue;
    const because = `${part.name} ${inWords[befell]}`;
    const across = isAcross(part) ? { across: because } : {};
    found.set(end, { because, ofPart: true, ...(end === undefined ? {} : { end }), ...first, ...across });
  }
  return [...found.values()];
}

function isAcross({ part, name }: PartSurvey): boolean {
  const side = part.side ?? sideOfWords(name);
  return kindIs(part.kind, 'from side to side') && side !== 'left' && side !== 'right';
}

/** What either end answers for, the sensor that is asked for at one end answers for as well. */
function withoutLoose(needed: readonly CheckNeeded[]): readonly CheckNeeded[] {
  const isSame = (one: CheckNeeded, other: CheckNeeded): boolean =>
    one.asksFor === other.asksFor && one.sensor[0] === other.sensor[0];
  return needed.filter(
    (one) => one.end !== undefined || !needed.some((other) => other.end !== undefined && isSame(one, other)),
  );
}

function isMeant({ part, name }: PartSurvey, { kinds, holds, named, unlessNamed }: CheckTrigger): boolean {
  if (kinds.length + holds.length === 0) return false;
  const low = name.toLowerCase();
  const has = (word: string): boolean => low.includes(word.toLowerCase());
  return (
    (kinds.length === 0 || (part.kind !== undefined && kinds.includes(part.kind))) &&
    (holds.length === 0 || (part.holds ?? []).some((item) => holds.includes(item))) &&
    (named.length === 0 || named.some(has)) &&
    !unlessNamed.some(has)
  );
}

/** A cover or panel behind which no radar sits, by its own words, asks for none. What it was mounted on may still. */
function isNoRadarBehind({ part }: PartSurvey, { sensor }: CheckTrigger): boolean {
  return (
    (part.kind === 'bumper cover' || part.kind === 'back panel') &&
    part.radar_behind === false &&
    !(part.holds ?? []).includes('sensor') &&
    sensor.length > 0 &&
    sensor.every((word) => word === 'radar')
  );
}

const happenings = ['hit', 'worked on', 'taken off', 'painted', 'joined in'] as const;
type Happening = (typeof happenings)[number];

const inWords: Readonly<Record<Happening, string>> = {
  hit: 'was hit',
  'worked on': 'was worked on',
  'taken off': 'came off',
  painted: 'was painted',
  'joined in': 'is joined in',
};

const befalls: Readonly<Record<Happening, (part: PartSurvey) => boolean>> = {
  hit: ({ part }) => damageKinds(part).some((kind) => !harmless.has(kind)),
  'worked on': ({ operations }) => operations.some(({ works }) => works === true),
  'taken off': ({ operations }) => operations.some(isOneOf('replace', 'remove and refit')),
  painted: ({ operations }) => operations.some(isOneOf('refinish', 'fill')),
  'joined in': ({ operations }) => operations.some(isJoinedIn),
};

const harmless: ReadonlySet<string> = new Set([
  ...['none', 'scratch', 'surface rust', 'not yet seen', 'rusted through'],
]);

function isOneOf(...words: readonly string[]): (one: OperationSurvey) => boolean {
  return ({ operation }) => operation.do !== undefined && words.includes(operation.do);
}

type Work = CheckTrigger['work'][number];

const workInWords: Readonly<Record<Work, string>> = {
  'electric welding': 'the body was welded electrically',
  'structural work': 'a part that carries crash load was worked on',
  'restraint unit off': 'restraint units came off',
  'restraint unit deployed': 'a restraint unit deployed',
  'high voltage isolated': 'the traction voltage was isolated',
  'wheels aligned': 'the wheels were aligned',
  'restraint wiring repaired': 'restraint wiring was repaired',
  'structure joined': 'a part that carries crash load is joined in',
};

const wasDone: Readonly<Record<Work, (survey: Survey) => boolean>> = {
  'electric welding': ({ operations }) => operations.some(({ electricWelding }) => electricWelding === true),
  'restraint wiring repaired': ({ plan }) => {
    const wiring = plan.make_safe?.restraints?.wiring;
    return wiring !== undefined && wiring !== 'untouched';
  },
  'structure joined': ({ operations }) =>
    operations.some((one) => one.part.structural !== false && isJoinedIn(one)),
  'structural work': ({ operations }) =>
    anyYes(operations.map(({ works, part }) => allYes([works, part.structural]))) === true,
  'restraint unit off': ({ plan }) =>
    (plan.make_safe?.restraints?.units ?? []).some(
      ({ treatment }) => treatment === 'removed' || treatment === 'replaced',
    ),
  'restraint unit deployed': ({ plan }) => {
    const { units, deployed } = plan.make_safe?.restraints ?? {};
    return deployed === true || (units ?? []).some(({ state }) => state === 'deployed');
  },
  'high voltage isolated': ({ plan }) => {
    const isolation = plan.make_safe?.high_voltage?.isolation;
    return isolation !== undefined && isolation.planned !== false;
  },
  'wheels aligned': ({ plan }) => {
    const alignment = plan.verify?.alignment;
    return alignment !== undefined && alignment.planned !== false && alignment.result !== 'not required';
  },
};
