import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { isElectric, isResistance } from '../joint/joint-methods.ts';
import { assumed, computedOr, statedOr } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { OperationSurvey } from '../survey.ts';
import { saysNone } from './step-draft.ts';

type CurrentFact = Extract<
  FactNames['operation'],
  `operation.${'arc_work' | 'current_path_unsaid' | 'earth_clamp_on' | 'earth_clamp_distance' | 'control_units_state'}`
>;

/** Which way the welding current takes back: where the clamp sits, and what becomes of the control units beside it. */
export function currentPathFacts(one: OperationSurvey): Readonly<Record<CurrentFact, Fact>> {
  const { operation, at } = one;
  const {
    earth_clamp_on: on,
    earth_clamp: clamp,
    control_units_state: state,
    control_units: units,
  } = operation;
  const unsaid = [
    ...((clamp ?? on) === undefined ? ['the place of the earth clamp'] : []),
    ...(state === undefined && saysNone(units) ? ['what is done with control units'] : []),
  ];
  return {
    'operation.arc_work': computedOr(arcWork(one), `${at}/joints`, 'No arc is struck.'),
    'operation.current_path_unsaid': computedOr(
      unsaid.join(' and ') || undefined,
      (clamp ?? on) === undefined ? `${at}/earth_clamp` : `${at}/control_units`,
      'Clamp and control units are both stated.',
    ),
    'operation.earth_clamp_on':
      on === undefined && saysThroughBearing(clamp)
        ? assumed('wheel, hub or suspension', 'Read from the words of `earth_clamp`.', `${at}/earth_clamp`)
        : statedOr(
            on,
            on === undefined ? `${at}/earth_clamp` : `${at}/earth_clamp_on`,
            'On what the earth clamp sits is not stated in fixed words.',
          ),
    'operation.earth_clamp_distance': statedOr(
      quantityOf(operation.earth_clamp_distance, 'length'),
      `${at}/earth_clamp_distance`,
      'How far the earth clamp sits from the weld is not stated.',
    ),
    'operation.control_units_state':
      state === undefined && saysLeftPluggedIn(units)
        ? assumed('left plugged in', 'Read from the words of `control_units`.', `${at}/control_units`)
        : statedOr(
            state,
            state === undefined ? `${at}/control_units` : `${at}/control_units_state`,
            'What becomes of control units is not stated in fixed words.',
          ),
  };
}

/** A gun for spots closes its own circuit; a laser and a flame carry no current. */
function arcWork({
  operation,
  joints,
  offVehicle,
  hot,
  electricWelding,
}: OperationSurvey): string | undefined {
  if (offVehicle || hot === false) return undefined;
  const byArc = joints.some(
    ({ joint: { method } }) => method === undefined || (isElectric(method) && !isResistance(method)),
  );
  const isUnsaid = joints.length === 0 && electricWelding !== false;
  const work = [
    ...(byArc || isUnsaid ? ['welding'] : []),
    ...(operation.cut_with === 'plasma' ? ['plasma cut'] : []),
  ];
  return work.join(' and ') || undefined;
}

// Most texts hold none of these words, and to compile the patterns takes milliseconds.
const bearing = /hub|wheel|disc|spring|wishbone|control arm|axle|bearing|shaft|steering|suspension/i;
const leaving = /stay|left|remain|kept|not |^plugged|^connected/i;

function saysThroughBearing(text = ''): boolean {
  return bearing.test(text) && throughBearing.test(text);
}

function saysLeftPluggedIn(text = ''): boolean {
  return leaving.test(text) && leftPluggedIn.test(text);
}

/** Words that begin so leave no doubt; whoever means something else has the fixed words to say it with. */
const throughBearing =
  /^(?:to|on|at)?\s*(?:the\s+|a\s+)?(?:\S+\s+){0,3}?(?:hubs?|wheels?|brake discs?|springs?|wishbones?|control arms?|axles?|bearings?|drive ?shafts?|steering|suspension)\b(?! ?(?:arch|house|housing|well|tub))/i;
const leftPluggedIn =
  /^(?:(?:all|both|they|the|control|units?|modules?)\s+)*(?:stay|stays|are left|left|remain|remains|kept)\s+(?:all\s+)?(?:in|on|plugged|connected|fitted|where|as)\b(?!.*\b(?:unplugged|disconnected|removed)\b)|^(?:not (?:unplugged|disconnected|removed|touched)|plugged in|connected)\b/i;
